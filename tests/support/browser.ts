import { randomUUID } from "node:crypto";
import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Hono } from "hono";
import type { Page } from "playwright-core";
import type { StepId } from "../../machines/install/ids.ts";
import type { Clocks } from "../../machines/install/moment.ts";
import { createAssets } from "../../server/assets.ts";
import { createHub } from "../../server/hub.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { type Running, run } from "../../server/program.ts";
import { SETTLE_MS } from "../../views/pages/guide/client/settle.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { en } from "../../views/text/en/en.ts";
import { LANGUAGES } from "../../views/text/languages.ts";
import { forTrials } from "./access.ts";
import { goodAnswer, type Say } from "./crew-lead.ts";
import { raisedFile } from "./recorded-raise.ts";
import { scratchFolder } from "./scratch.ts";
import { type EarMode, scriptedEar } from "./scripted-ear.ts";
import { lentPhone, type PageKind } from "./shared-browser.ts";

/** What pages load is made once, for all programs of a worker. */
let files: Hono | undefined;
/**
 * Goes slowly from `from` on: nothing that the program gives people time for, a read-back or a wind reading, is over before a
 * test on a slow machine comes to it.
 */
function slowClock(from: number): () => Clocks {
  const start = performance.now();
  const elapsed = () => Math.floor((performance.now() - start) / TIMES_SLOWER);
  return () => ({ wall: from + elapsed(), elapsedMs: elapsed() });
}
const TIMES_SLOWER = 50;

/** The program as it is started by hand, on a port of its own, but for a slow clock and for what belongs to a process. */
export async function served(file: string, now: number, demo = true): Promise<Running> {
  files ??= createAssets();
  const journal = openJournal(file);
  // Nobody signs in: to hash a passphrase for it at every start takes as long as a test.
  await journal.access.keepSecret("passphrase", "none");
  const world = {
    journal,
    hub: createHub(),
    clock: slowClock(now),
    newId: randomUUID,
    wakeWord: "albatross",
    access: forTrials(),
    languages: LANGUAGES,
  };
  return run(world, files, { host: "127.0.0.1", port: 0, secure: null, demo, passphrase: null });
}

/**
 * The program, a real browser, and the demo job: as it is opened, or standing at a call after a recorded raise, one job
 * for each call that is named. `troubles` gathers what went wrong in any page.
 */
export async function opened(...at: readonly StepId[]) {
  const folder = scratchFolder("browser");
  const file = join(folder, "data.db");
  const raised = at.length > 0 ? await raisedFile(file, at) : null;
  const server = await served(file, raised?.now ?? Date.now());
  const troubles: string[] = [];
  /** A page of the program on somebody's phone. */
  const show = async (path: string, options: ScreenOptions = {}): Promise<Page> => {
    const page = await phone(options);
    page.on("pageerror", (e) => troubles.push(e.message));
    // What is on its way when a page is left comes to nothing; what fails besides, the browser tells of by itself.
    const answered = /status of 4\d\d|htmx:error: Failed to fetch/;
    // Where a test moves time on, a request that is on its way runs out of it.
    const expected = clocked.has(page) ? new RegExp(`${answered.source}|htmx:error: timeout`) : answered;
    page.on("console", (m) => m.type() === "error" && !expected.test(m.text()) && troubles.push(m.text()));
    await page.goto(`${server.url}${path}`);
    return page;
  };
  /** One job: a screen of somebody on it, and how it stands. */
  const jobOf = (job: string) => ({
    url: server.url,
    job,
    troubles,
    screen: (as: string, options?: ScreenOptions) => show(`jobs/${job}?as=${as}`, options),
    state: async () => (await (await fetch(`${server.url}jobs/${job}.json`)).json()) as GuideState,
    say: async (body: object) => {
      const told = await fetch(`${server.url}jobs/${job}/say`, {
        method: "POST",
        headers: { "content-type": "application/json", origin: server.url.slice(0, -1) },
        body: JSON.stringify(body),
      });
      return { status: told.status, body: (await told.json()) as Awaited<ReturnType<Say>>["body"] };
    },
  });
  const close = async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
  const { jobs } = (await (await fetch(`${server.url}jobs.json`)).json()) as { jobs: { id: string }[] };
  return {
    ...jobOf(raised?.jobs.get(at[0]!) ?? jobs[0]!.id),
    at: (step: StepId) => jobOf(raised!.jobs.get(step)!),
    on: jobOf,
    show,
    close,
  };
}

/** A phone with a clock or an ear of its own is lent to whoever asks for the same. */
async function phone({ ear, clock, ...kind }: ScreenOptions): Promise<Page> {
  const isClocked = clock === true || ear !== undefined;
  const page = await lentPhone({ ...kind, ear, isClocked }, async (made) => {
    const context = made.context();
    if (isClocked) await context.clock.install();
    if (!ear) return;
    await context.addInitScript(scriptedEar, ear);
    // What comes of it where no other ear takes over.
    if (ear !== "good") await context.route("**/assets/ear.json", (route) => route.fulfill({ json: null }));
    await context.grantPermissions(["microphone"]);
  });
  if (isClocked) clocked.add(page);
  return page;
}
/** Pages whose time a test moves on. */
const clocked = new WeakSet<Page>();
type ScreenOptions = PageKind & {
  readonly ear?: EarMode;
  /** The page's time goes on by itself until the test moves it on. So it is wherever a page listens. */
  readonly clock?: boolean;
};
export type World = Awaited<ReturnType<typeof opened>>;
/** One job of it. */
export type OnJob = Omit<World, "at" | "on" | "show" | "close">;

/** Whoever works by keyboard comes to it by the Tab key from where they are; more often than this nobody would. */
const MAX_TABS = 150;

/** Runs in the page: how many stops of the Tab key are before a target, by the order of the document; at least one where it is not there. */
function tabsLeft(selector: string): number {
  const target = document.querySelector(selector);
  if (document.activeElement === target) return 0;
  const stops = [
    ...document.querySelectorAll<HTMLElement>("a[href], button, input:not([type=hidden]), select, summary, [tabindex]"),
  ].filter((e) => e.tabIndex >= 0 && e.getClientRects().length > 0);
  // What has the focus need not be a stop itself.
  const from = document.activeElement;
  const isBefore = (stop: Element) => stop === from || (from?.compareDocumentPosition(stop) ?? 0) & Node.DOCUMENT_POSITION_PRECEDING;
  const before = stops.findLastIndex(isBefore);
  return Math.max(1, stops.indexOf(target as HTMLElement) - before);
}

/** To the first target of a selector by the Tab key. */
async function tabTo(page: Page, selector: string): Promise<void> {
  await page.locator(selector).first().waitFor();
  for (let tabs = 0; ; tabs++) {
    const left = await page.evaluate(tabsLeft, selector);
    if (left === 0) return;
    if (tabs > MAX_TABS) throw new Error(`${selector} is not reached by keyboard`);
    // All at once: each waited for by itself takes most of a frame.
    await Promise.all(Array.from({ length: left }, () => page.keyboard.press("Tab")));
  }
}

/** Until the page takes a press: as long after a swap as it takes somebody to look. Where a test moves time on, at once. */
async function rest(page: Page): Promise<void> {
  if (clocked.has(page)) await page.clock.fastForward(SETTLE_MS);
  else await page.locator("body:not([data-settling])").waitFor({ state: "attached" });
}

/**
 * Presses by keyboard alone, and waits until the page shows a later entry than before; presses again where the call had just
 * moved.
 */
export async function press(page: Page, selector: string): Promise<void> {
  for (let tries = 0; tries < 100; tries++) {
    await rest(page);
    await tabTo(page, selector);
    const before = await page.evaluate((selector) => {
      document.querySelector("#notice")!.textContent = "";
      const { dataset } = document.documentElement;
      delete dataset.key;
      // A swap that comes in between takes the focus along, or settles anew: the key is for nothing then, and nothing says so.
      const isTaken = () => document.activeElement?.matches(selector) && document.body.dataset.settling === undefined;
      addEventListener("keydown", () => Object.assign(dataset, { key: isTaken() ? "taken" : "lost" }), { capture: true, once: true });
      return document.querySelector<HTMLElement>("article.call")!.dataset.entry;
    }, selector);
    await page.keyboard.press("Enter");
    // In one go in the page: it is looked at again and again, and in the next page where the press leads to one.
    const moved = await page.waitForFunction(
      ({ before, justMoved }) => {
        const call = document.querySelector<HTMLElement>("article.call");
        if (call && call.dataset.entry !== before) return "later";
        if (document.documentElement.dataset.key === "lost") return "lost";
        const notices = [...document.querySelectorAll(".notice")];
        return notices.some((notice) => notice.textContent?.includes(justMoved)) ? "justMoved" : null;
      },
      { before, justMoved: en.client.justMoved },
      { polling: 20 },
    );
    if ((await moved.jsonValue()) === "later") return;
  }
  throw new Error(`pressed ${selector} a hundred times and the call was always just moving`);
}

/** Types into a field, come to by keyboard. */
async function type(page: Page, selector: string, text: string): Promise<void> {
  await tabTo(page, selector);
  await page.keyboard.type(text);
}

/** Types a number: where the page has keys of its own, into their field from wherever the focus is. */
async function typeNumber(page: Page, selector: string, text: string): Promise<void> {
  await page.locator(selector).first().waitFor();
  if (!(await page.locator("[data-key]").first().isVisible())) return type(page, selector, text);
  await page.keyboard.type(text);
}

/** Says next in words, where no button does: the gate is open. */
export async function sayNext(page: Page, world: OnJob): Promise<void> {
  await page.goto(`${world.url}jobs/${world.job}/words`);
  await type(page, ".in-words input[name=heard]", "next");
  await page.keyboard.press("Enter");
  await page.locator("article.call").waitFor();
}

const NEXT = ".answers .main button";

/** The page in the hands of somebody: theirs already, or newly opened. */
async function holdAs(page: Page, world: OnJob, state: GuideState, person: string): Promise<void> {
  const { name, roleName } = state.people.find((p) => p.id === person)!;
  if ((await page.locator(".strip", { hasText: `${name}, ${roleName}` }).count()) > 0) return;
  await page.goto(`${world.url}jobs/${world.job}?as=${person}`);
}

/** Answers the gate on the page as a well-prepared crew does: by its own buttons and fields, on the screen of whom it allows. */
export async function answerOnPage(page: Page, world: OnJob, state: GuideState): Promise<void> {
  const gate = state.gate!;
  const answer = goodAnswer(gate, state);
  if ("wind" in answer) {
    await typeNumber(page, ".answers .wind input[name=mph]", "6");
    await type(page, ".answers .wind input[name=gustMph]", "9");
    return press(page, ".answers .wind button.main");
  }
  await holdAs(page, world, state, answer.as);
  const value = answer.value as {
    kind: string;
    yes?: boolean | Record<string, boolean>;
    n?: number | Record<string, number>;
    ft?: Record<string, number>;
    named?: string;
  };
  const form = `.answers form:has(input[name=kind][value=${value.kind}])`;
  const mine = `${form}:has(input[name=gate][value="${gate.id}"])`;
  /** As it is asked for: which one, until the gate asks for no more. */
  const each = async (name: string, answered: (of: string) => Promise<void>) => {
    const which = page.locator(`${mine} input[name=${name}]`).first();
    while ((await which.count()) > 0) await answered((await which.getAttribute("value"))!);
  };
  const keyIn = async (text: string) => {
    await typeNumber(page, `${mine} input[name=value]`, text);
    await press(page, `${mine} button[type=submit]`);
  };
  if (value.kind === "yesNo") return press(page, `${form}:has(input[name=value][value=${value.yes ? "yes" : "no"}]) button`);
  if (value.kind === "lengths") return each("length", (name) => keyIn(`${value.ft![name]} ft`));
  if (value.kind === "figures") return each("name", (name) => keyIn(String((value.n as Record<string, number>)[name])));
  if (value.kind === "each") return each("name", () => press(page, `${mine}:has(input[name=value][value=yes]) button`));
  if (value.kind === "counts") return countAll(page, world);
  const field = `${form} input[name=value]:not([type=hidden])`;
  if (value.n !== undefined) await typeNumber(page, field, String(value.n));
  else await type(page, field, value.named!);
  await press(page, `${form}:has(input[name=value]:not([type=hidden])) button[type=submit]`);
}

const OPEN_LINE = ".line:not(.counted) .all-on button";
/** So many lines of a list are ticked by a thumb. */
const LINES_TICKED = 3;

/** Ticks off what is left of the list on its own page, and comes back to the guide; the most of it is counted without a screen. */
async function countAll(page: Page, world: OnJob): Promise<void> {
  const { gate, entry, people } = await world.state();
  const left = Object.entries(gate!.want as Record<string, number>).filter(([item]) => !(item in gate!.given));
  const value = { kind: "counts", n: Object.fromEntries(left.slice(LINES_TICKED)) };
  const lead = people.find((p) => p.role === "lead")!.id;
  if (left.length > LINES_TICKED)
    await world.say({ as: lead, key: `counted-${entry}`, seen: entry, type: "answer", gate: gate!.id, value });
  const guide = page.url();
  await page.goto(`${world.url}jobs/${world.job}/truck`);
  const open = page.locator(OPEN_LINE);
  for (let left = await open.count(); left > 0; left = await open.count()) {
    await tabTo(page, OPEN_LINE);
    await page.keyboard.press("Enter");
    await page.waitForLoadState();
    await page.waitForFunction(([line, n]) => document.querySelectorAll(line).length < n, [OPEN_LINE, left] as const);
  }
  await page.goto(guide);
}

/** Plays the job through the page until `stop`. In each phase the first open gate is refused first. */
export async function play(page: Page, world: OnJob, stop: (state: GuideState) => boolean, refused = new Set<string>()) {
  for (let n = 0; n < 1000; n++) {
    const state = await world.state();
    if (state.closed || stop(state)) return { state, refused };
    if (state.gate && state.gate.status !== "good" && state.gate.status !== "waived") {
      if (!refused.has(state.phase)) {
        await sayNext(page, world);
        if (await page.locator(".earlier li.refused").last().isVisible()) refused.add(state.phase);
      }
      await answerOnPage(page, world, await world.state());
      // A good answer goes on by itself, or shows what else is missing.
      continue;
    }
    await holdAs(page, world, state, state.people.find((p) => p.role === "lead")!.id);
    await press(page, NEXT);
  }
  throw new Error("1,000 calls and still not there");
}
