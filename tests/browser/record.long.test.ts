import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Running } from "../../server/program.ts";
import { served } from "../support/browser.ts";
import { leastContrast } from "../support/contrast.ts";
import { fileOfRecords } from "../support/records.ts";
import { scratchFolder } from "../support/scratch.ts";
import { DESK, lentPhone, type PageKind, PHONE } from "../support/shared-browser.ts";

let folder: string;
let server: Running;
let jobs: { whole: string; changed: string };
const troubles: string[] = [];

beforeAll(async () => {
  folder = scratchFolder("screens");
  jobs = await fileOfRecords(join(folder, "data.db"));
  server = await served(join(folder, "data.db"), Date.now(), false);
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

async function shown(path: string, { viewport, ...kind }: PageKind & { viewport?: typeof DESK } = {}): Promise<Page> {
  const page = await lentPhone(kind);
  if (viewport) await page.setViewportSize(viewport);
  page.on("pageerror", (e) => troubles.push(e.message));
  page.on("console", (m) => m.type() === "error" && troubles.push(m.text()));
  await page.goto(`${server.url}${path}`);
  return page;
}
const paths = (): [string, string][] => [
  ["the record", `jobs/${jobs.whole}/record`],
  ["a record looked through", `jobs/${jobs.whole}/record?show=refused,waived,outOfLimit,wentBack`],
  ["a changed plan's record", `jobs/${jobs.changed}/record?show=amended,late`],
  ["all jobs at a glance", "findings/jobs"],
  ["what to look at", "findings"],
];

it.each([0, 1, 2, 3, 4])("page %d is read on a phone without scrolling sideways, at a contrast of 7 to 1 in light and dark", async (n) => {
  const [name, path] = paths()[n]!;
  const page = await shown(path);
  expect(await page.evaluate(() => document.documentElement.scrollWidth), name).toBe(PHONE.width);
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    const least = await leastContrast(page);
    expect(least.ratio, `${colorScheme}: ${least.text}`).toBeGreaterThanOrEqual(7);
  }
});

it("all that can be pressed on a phone is 72 px at least, either way", async () => {
  for (const [name, path] of paths()) {
    const page = await shown(path);
    // What is not near is laid out when it is measured.
    const all = page.locator("main :is(a, button, label)");
    expect(await all.count(), name).toBeGreaterThan(3);
    const small = await all.evaluateAll((targets) =>
      targets.flatMap((target) => {
        const { width, height } = target.getBoundingClientRect();
        // What a press unfolds is not there yet.
        return width === 0 || (width >= 71.5 && height >= 71.5) ? [] : [`${target.textContent} ${width}×${height}`];
      }),
    );
    expect(small, name).toEqual([]);
  }
});

it("at a desk all jobs stand in one table, a column for each mark, nothing cut off", async () => {
  const page = await shown("findings/jobs", { viewport: DESK });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(DESK.width);
  const tops = await page
    .locator(".jobs")
    .first()
    .locator("tr")
    .nth(2)
    .locator("th, td")
    .evaluateAll((cells) => cells.map((c) => c.getBoundingClientRect().top));
  expect([tops.length, new Set(tops).size]).toEqual([12, 1]);
});

it("a manager goes from a count to those entries, ticks another mark, and goes back to all: without scripts", async () => {
  const page = await shown("findings/jobs", { scripts: false });
  await page.locator("td[data-name='Left out'] a").first().click();
  await page.waitForURL(/\/record\?show=waived$/);
  expect(await page.locator(".phase li").count()).toBe(1);
  expect(await page.locator(".phase li").textContent()).toContain("Left, because no such thing here");
  await page.getByLabel("Out of limits").check();
  await page.getByRole("button", { name: "Show only these" }).click();
  await page.waitForURL(/show=waived&show=outOfLimit$/);
  expect(await page.locator(".phase li .mark").allTextContents()).toEqual(["Out of limits", "Left out"]);
  await page.getByRole("link", { name: "Show all entries" }).click();
  await page.waitForURL(/\/record$/);
  expect(await page.locator(".phase li").count()).toBeGreaterThan(150);
});

it("on paper each phase begins a page of A4, with the counts and without buttons", async () => {
  const page = await shown(`jobs/${jobs.whole}/record`, { viewport: DESK });
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".filter, .ways").evaluateAll((all) => all.map((e) => getComputedStyle(e).display))).toEqual(["none", "none"]);
  expect(await page.locator(".on-paper").isVisible()).toBe(true);
  const phases = page.locator(".phase");
  const breaks = await phases.evaluateAll((all) => all.map((p) => getComputedStyle(p).breakBefore));
  expect(new Set(breaks)).toEqual(new Set(["page"]));
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  expect(new Set(pdf.match(/\/MediaBox ?\[[^\]]*\]/g))).toEqual(new Set(["/MediaBox [0 0 594.95996 841.91998]"]));
  expect(pdf.match(/\/Type ?\/Page\b/g)!.length).toBeGreaterThan(await phases.count());
});

it.each([
  ["a4", "595 842"],
  ["letter", "612 792"],
])("the report on %s: all on pages of that size, a row never across two, nothing cut off at the right", async (paper, size) => {
  const page = await shown(`jobs/${jobs.whole}/report?paper=${paper}`, { viewport: DESK });
  await page.emulateMedia({ media: "print" });
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  const boxes = [...pdf.matchAll(/\/MediaBox ?\[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, ...sides]) =>
    sides.map((n) => Math.round(Number(n))).join(" "),
  );
  expect(new Set(boxes)).toEqual(new Set([size]));
  const pages = pdf.match(/\/Type ?\/Page\b/g)!.length;
  expect(pages).toBeGreaterThan(8);
  expect(pages).toBeLessThan(20);
  // As wide as the paper between its margins.
  await page.setViewportSize({ width: paper === "a4" ? 688 : 710, height: 900 });
  const { cut, split } = await page.evaluate(() => {
    const right = document.documentElement.clientWidth + 1;
    const all = [...document.querySelectorAll<HTMLElement>("main *")].filter((e) => e.getClientRects().length > 0);
    return {
      cut: all.filter((e) => e.getBoundingClientRect().right > right).map((e) => e.outerHTML.slice(0, 80)),
      split: [...document.querySelectorAll(".gate, .ending")].filter((e) => getComputedStyle(e).breakInside !== "avoid").length,
    };
  });
  expect([cut, split]).toEqual([[], 0]);
});

it("nothing went wrong in any of these pages", () => expect(troubles).toEqual([]));
