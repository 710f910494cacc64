import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";

/** A call of each kind that there is to answer. */
const CALLS = ["sheet.atHand", "kit.loaded", "locate.answers", "overhead.1", "squared", "stakes.bent", "laid.order", "sides.laid"];
let world: World;
beforeAll(async () => {
  world = await opened(...CALLS);
});
afterAll(() => world.close());

/** What axe finds on a page, text at less than 7 to 1 with it; once all was looked at, only what other colors change. */
async function found(page: Page, onlyColors = false): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  return page.evaluate(async (onlyColors) => {
    const { run } = (window as unknown as { axe: typeof axe }).axe;
    const contrast = ["color-contrast", "color-contrast-enhanced"];
    const resultTypes: axe.resultGroups[] = ["violations"];
    const enhanced = { "color-contrast-enhanced": { enabled: true } };
    const { violations } = await run(document, onlyColors ? { runOnly: contrast, resultTypes } : { rules: enhanced, resultTypes });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")}: ${failureSummary}`),
    );
  }, onlyColors);
}

const PAGES = [
  "",
  "jobs/new",
  "tents",
  "tents/new?width=40&length=60",
  "findings",
  ..."more words tent settings people wind weather call picture answers trouble stand-down change plan layout truck time record amend discrepancy"
    .split(" ")
    .map((path) => `jobs/JOB/${path}`),
];

/** All of it once; then what other colors change. */
async function expectNothing(page: Page): Promise<void> {
  expect(await found(page)).toEqual([]);
  for (const media of [{ colorScheme: "dark" }, { colorScheme: "light", forcedColors: "active" }] as const) {
    await page.emulateMedia(media);
    expect(await found(page, true), JSON.stringify(media)).toEqual([]);
  }
  await page.emulateMedia({ forcedColors: "none" });
}

describe("axe finds nothing in light, dark and forced colors", () => {
  it.each(PAGES)("on /%s", async (path) => {
    const page = await world.screen("p1");
    await page.goto(`${world.url}${path.replace("JOB", world.job)}`);
    await expectNothing(page);
  });

  it.each(CALLS)("at the call %s, open and held", async (call) => {
    const job = world.at(call);
    const page = await job.screen("p1");
    await expectNothing(page);
    await job.say({ as: "p4", key: "hold-00001", seen: 1, type: "hold" });
    await page.locator(".call .alarm").waitFor();
    expect(await found(page)).toEqual([]);
  });
});
