import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "./browser.ts";
import { DESK, newPhone, PHONE } from "./shared-browser.ts";
import { targetTroubles } from "./target-troubles.ts";

/** In one line, which a browser reads in a quarter of the time. */
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** A call of each kind that there is to answer. */
const CALLS = ["sheet.atHand", "kit.loaded", "locate.answers", "overhead.1", "squared", "stakes.bent", "laid.order", "sides.laid"];
/** So many of them where only what a crew has in hand is looked at. */
const SOME_CALLS = 4;
let world: World;
let draft: string;
/** Whether it is looked at in all colors and at a desk too, or on a phone in daylight alone. */
let isWhole = false;
/** One phone for all: what it shows is left for the next page, and nothing is kept on it. */
let page: Page;
/** What axe finds on a page, text at less than 7 to 1 with it; once all was looked at, only what other colors change. */
async function found(runOnly: readonly string[] | null = null): Promise<string[]> {
  return page.evaluate(async (runOnly) => {
    if (!("axe" in window)) new Function(localStorage.getItem("axe")!)();
    const { run } = (window as unknown as { axe: typeof axe }).axe;
    const resultTypes: axe.resultGroups[] = ["violations"];
    // Where text has 7 to 1 it has 4.5 to 1.
    const rules = { "color-contrast-enhanced": { enabled: true }, "color-contrast": { enabled: false } };
    const { violations } = await run(document, runOnly ? { runOnly: [...runOnly], resultTypes } : { rules, resultTypes });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")}: ${failureSummary}`),
    );
  }, runOnly);
}

/** What other colors change. */
const COLORS = ["color-contrast-enhanced"];
/** What a wider screen changes: which parts are shown, and what scrolls. Its colors have a test of their own. */
const PARTS_SHOWN = [
  "scrollable-region-focusable",
  "landmark-one-main",
  "landmark-no-duplicate-main",
  "landmark-no-duplicate-banner",
  "landmark-unique",
  "region",
  "page-has-heading-one",
  "heading-order",
  "link-name",
  "button-name",
  "aria-hidden-focus",
];

/** What a lead presses on a job. */
const GLOVED =
  "more words tent settings phone people wind weather air call photos codes answers trouble stand-down plan layout truck time learn rehearse amend discrepancy site site/lines site/place"
    .split(" ")
    .map((path) => `jobs/JOB/${path}`);
/** What a crew has in hand, and the first page. */
const IN_HAND = ["", "join", "phone", ...GLOVED];
/** The rest, which is looked at where all colors are. */
const REST = [
  "jobs/new",
  "tents",
  "tents/new?width=40&length=60",
  "tents/example-80x100-split",
  "drafts/new?tent=example-80x100-split",
  "drafts",
  "firm/people",
  "findings",
  "findings/jobs",
  "learning",
  "office/in",
  "office",
  "trust",
  "hand-work",
  ..."site/import anchors weather-plan picture change facts record names report proof check?digest=23A"
    .split(" ")
    .map((path) => `jobs/JOB/${path}`),
  ..."anchors weather-plan ground-plan ground-plan/lines ground-plan/place".split(" ").map((path) => `drafts/DRAFT/${path}`),
];

/** A draft of which a tent is told, by its id. */
async function draftOf({ url }: World): Promise<string> {
  const body = new URLSearchParams({ "tent.widthFt": "40", "tent.lengthFt": "60", key: "draft-0001" });
  const { headers } = await fetch(`${url}drafts`, { method: "POST", body, redirect: "manual", headers: { origin: new URL(url).origin } });
  return /drafts\/([\w-]+)/.exec(headers.get("location")!)![1]!;
}

const DARK = { colorScheme: "dark" } as const;
/** Colors of the system's own: a call of each kind stands for the rest. */
const FORCED = { colorScheme: "light", forcedColors: "active" } as const;

/** All of it once; then what other colors change, where those are looked at. */
async function expectNothing(...others: readonly (typeof DARK | typeof FORCED)[]): Promise<void> {
  expect(await found()).toEqual([]);
  if (!isWhole) return;
  for (const media of others) {
    await page.emulateMedia(media);
    expect(await found(COLORS), JSON.stringify(media)).toEqual([]);
  }
  await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
}

/** At a desk other parts of a page are shown; what is pressed there with a glove as well is as large as on a phone. */
async function expectNothingAtDesk(isGloved = false): Promise<void> {
  if (!isWhole) return;
  await page.setViewportSize(DESK);
  expect(await found(PARTS_SHOWN)).toEqual([]);
  if (isGloved) expect(await targetTroubles(page, false)).toEqual([]);
  await page.setViewportSize(PHONE);
}

/**
 * Looks at pages, at a call of each kind, at a stop, and with somebody hurt: at what a crew has in hand, on a phone in daylight; or
 * at every page, in all colors and at a desk too.
 */
export function everybodySees(name: string, whole: boolean): void {
  beforeAll(async () => {
    isWhole = whole;
    world = await opened(...CALLS);
    draft = whole ? await draftOf(world) : "";
    page = await newPhone();
    await page.goto(`${world.url}jobs/${world.job}?as=p1`);
    // Sending it to every page takes longer than running it there.
    await page.evaluate((axe) => localStorage.setItem("axe", axe), AXE);
  });
  afterAll(async () => {
    await page.context().close();
    await world.close();
  });

  describe(name, () => {
    it.each(whole ? [...IN_HAND, ...REST] : IN_HAND)("on /%s", async (path) => {
      await page.goto(`${world.url}${path.replace("JOB", world.job).replace("DRAFT", draft)}`);
      await expectNothing(DARK);
      const isGloved = GLOVED.includes(path);
      if (isGloved) expect(await targetTroubles(page, false)).toEqual([]);
      await expectNothingAtDesk(isGloved);
    });

    it.each(whole ? CALLS : CALLS.slice(0, SOME_CALLS))("at the call %s, open and held", async (call) => {
      const job = world.at(call);
      await page.goto(`${world.url}jobs/${job.job}?as=p1`);
      await expectNothing(DARK, FORCED);
      await expectNothingAtDesk();
      await job.say({ as: "p4", key: "hold-00001", seen: 1, type: "hold" });
      await page.locator(".call .alarm").waitFor();
      expect(await found()).toEqual([]);
    });

    it("at a stop, and with somebody hurt", async () => {
      const job = world.at("sides.laid");
      await job.say({ as: "p1", key: "thunder-01", seen: 1, type: "reading", kind: "thunder" });
      await page.goto(`${world.url}jobs/${job.job}?as=p1`);
      await page.locator(".stop-first").waitFor();
      await expectNothing(DARK, FORCED);
      await job.say({ as: "p4", key: "hurt-00001", seen: 1, type: "hurt", words: "his hand" });
      await page.locator(".call .hurt").waitFor();
      await expectNothing(DARK, FORCED);
      await expectNothingAtDesk();
      for (const path of ["jobs/JOB", ...GLOVED]) {
        await page.goto(`${job.url}${path.replace("JOB", job.job)}`);
        expect(await targetTroubles(page, true), path).toEqual([]);
      }
    });
  });
}
