import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SETTLE_MS } from "../../views/pages/guide/client/settle.ts";
import { en } from "../../views/text/en/en.ts";
import { type OnJob, opened, type World } from "../support/browser.ts";
import { DESK } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened("locate.answers", "talk.briefed", "overhead.1", "drive.AB", "corner.first", "squared");
});
afterAll(() => world.close());

const YES = ".answers form:has(input[name=value][value=yes]) button";
const NEXT = ".answers .main button";
const focused = (page: Page) =>
  page.evaluate(() =>
    document.activeElement === document.body ? "nothing" : document.activeElement!.id || document.activeElement!.textContent,
  );
const note = async (job: OnJob, text: string) =>
  job.say({ as: "p5", key: `note-${text.replaceAll(" ", "-")}`, seen: (await job.state()).revision, type: "note", text });
const noted = (page: Page, text: string) => page.locator(".earlier", { hasText: text }).waitFor({ state: "attached" });

/** A finger comes down on a target, something happens and is looked at for as long as it takes, and the finger goes up. */
async function held(page: Page, target: string, meanwhile: () => Promise<void>): Promise<void> {
  const box = (await page.locator(target).boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await meanwhile();
  await page.clock.fastForward(SETTLE_MS);
  await page.mouse.up();
}

/** Gives the next name of a list as somebody else, and waits until this screen asks for the one after. */
async function answeredByAnother(job: OnJob, page: Page): Promise<void> {
  const { gate, revision } = await job.state();
  const name = await page.inputValue(`${YES.replace(" button", "")} input[name=name]`);
  await job.say({
    as: "p2",
    key: `each-${name}`,
    seen: revision,
    type: "answer",
    gate: gate!.id,
    value: { kind: "each", yes: { [name]: true } },
  });
  await page.locator(`.answers input[name=name]:not([value="${name}"])`).first().waitFor({ state: "attached" });
}

/** Nothing was sent: what is said after it is the next entry. */
async function expectNothingSent(job: OnJob, before: number): Promise<void> {
  await note(job, `nothing was sent since ${before}`);
  expect((await job.state()).entry).toBe(before + 1);
}

describe("a press that is let go when its button says something else", () => {
  it("answers no other name of a list than the one it came down on, by finger or by key", async () => {
    const job = world.at("locate.answers");
    const page = await job.screen("p1", { clock: true });
    await held(page, YES, () => answeredByAnother(job, page));
    expect(await page.textContent("#notice")).toBe(en.client.justMoved);
    await expectNothingSent(job, (await job.state()).entry);
    await page.locator(YES).focus();
    await page.keyboard.down("Space");
    await answeredByAnother(job, page);
    await page.clock.fastForward(SETTLE_MS);
    await page.keyboard.up("Space");
    await expectNothingSent(job, (await job.state()).entry);
  });

  it("confirms no other read-back than the one it came down on", async () => {
    const job = world.at("drive.AB");
    const page = await job.screen("p1", { clock: true });
    /** Into this same phone: a read-back is for whoever said it. */
    const say = async (words: string) => {
      const { revision: seen } = await job.state();
      const data = { as: "p1", key: `said-${words.replaceAll(" ", "-")}`, seen, alternatives: [words], talk: true };
      const told = await page.request.post(`${job.url}jobs/${job.job}/say`, { data, headers: { origin: job.url.slice(0, -1) } });
      const { entry } = (await told.json()) as { entry: number };
      await page.locator(`.read-back[data-of="${entry}"]`).waitFor();
    };
    await say("five showing");
    for (const [target, words] of [
      [".answers .correct button", "eight showing"],
      [".dock .wrong-one button", "four showing"],
    ] as const) {
      await held(page, target, () => say(words));
      expect(await page.textContent("#notice")).toBe(en.client.justMoved);
      await expectNothingSent(job, (await job.state()).entry);
    }
  });
});

describe("a key that comes late", () => {
  it("answers one call, however often it is pressed", async () => {
    const job = world.at("talk.briefed");
    const page = await job.screen("p1", { clock: true });
    const { entry, step } = await job.state();
    await page.locator(YES).focus();
    await page.keyboard.press("Enter");
    await page.locator(`article.call:not([data-step="${step}"])`).waitFor();
    // In the same place, at once and when the screen has settled.
    expect(await focused(page)).toBe("answers");
    for (const key of ["Enter", "Space"]) await page.keyboard.press(key);
    await page.locator(".answers :is(button, input)").first().focus();
    await page.keyboard.press("Enter");
    await page.locator("#answers").focus();
    await page.clock.fastForward(SETTLE_MS);
    for (const key of ["Enter", "Space"]) await page.keyboard.press(key);
    await expectNothingSent(job, entry + 1);
  });

  it("counts as a second press on the same button in the moment after a swap, and is taken after it", async () => {
    const job = world.at("corner.first");
    const page = await job.screen("p1", { clock: true });
    const { entry, step } = await job.state();
    await page.locator(NEXT).focus();
    await page.keyboard.press("Enter");
    await page.locator(`article.call:not([data-step="${step}"])`).waitFor();
    await page.locator(".dock .hold button").focus();
    await page.keyboard.press("Enter");
    await page.locator(".call .alarm").waitFor();
    await page.locator(NEXT).focus();
    await page.keyboard.press("Enter");
    await expectNothingSent(job, entry + 2);
    await page.clock.fastForward(SETTLE_MS);
    await page.keyboard.press("Enter");
    await page.locator(".call .alarm").waitFor({ state: "detached" });
    expect(await page.locator("#answers").evaluate((e) => e.matches(":focus-visible"))).toBe(true);
  });
});

describe("the focus", () => {
  it("stays on a button and in a field, with what was typed, for as long as they ask the same", async () => {
    const job = world.at("overhead.1");
    const page = await job.screen("p1", { clock: true });
    const field = ".answers .number input[name=value]";
    await page.focus(field);
    await page.keyboard.type("1");
    await note(job, "the gate is open");
    await noted(page, "the gate is open");
    await page.keyboard.type("2");
    expect(await page.inputValue(field)).toBe("12");
    for (const target of [".answers .number button[type=submit]", ".dock .hold button", ".strip .weather"]) {
      const button = page.locator(target);
      await button.focus();
      await note(job, `somebody sees ${target.length}`);
      await noted(page, `somebody sees ${target.length}`);
      expect(await button.evaluate((e) => e === document.activeElement), target).toBe(true);
    }
  });

  it("comes back to no answer when somebody has left it", async () => {
    const job = world.at("overhead.1");
    const page = await job.screen("p1", { clock: true });
    await page.setViewportSize(DESK);
    await page.locator(".answers .number button[type=submit]").focus();
    await page.locator(".desk svg").click();
    expect(await focused(page)).toBe("nothing");
    await job.say({ as: "p5", key: "hold-00001", seen: (await job.state()).revision, type: "hold" });
    await page.locator(".call .alarm").waitFor();
    expect(await focused(page)).toBe("nothing");
  });
});

describe("a press while the reply to the one before is still on its way", () => {
  it("counts: the live screen has brought the next length of the list already, and that is answered", async () => {
    const job = world.at("squared");
    const page = await job.screen("p1", { clock: true });
    let arrive = () => {};
    const late = new Promise<void>((resolve) => {
      arrive = resolve;
    });
    await page.route("**/say", async (route) => {
      const response = await route.fetch();
      await late;
      await route.fulfill({ response });
    });
    const form = ".answers form:has(input[name=length])";
    const asks = () => page.inputValue(`${form} input[name=length]`);
    const next = (than: string) => page.locator(`${form} input[name=length]:not([value="${than}"])`).first().waitFor({ state: "attached" });
    const answered = async () => {
      const length = await asks();
      await page.clock.fastForward(SETTLE_MS);
      await page.fill(`${form} input[name=value]`, "80 ft");
      await page.click(`${form} button[type=submit]`);
      return length;
    };
    const first = await answered();
    await next(first);
    const second = await answered();
    arrive();
    await next(second);
    expect(Object.keys((await job.state()).gate!.given).sort()).toEqual([first, second].sort());
  });
});
