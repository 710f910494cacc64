import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { TruckState } from "../../views/pages/truck/state.ts";
import { brief } from "../support/briefs.ts";
import { opened, type World } from "../support/browser.ts";
import { leastContrast } from "../support/contrast.ts";
import { leading, PHONE } from "../support/shared-browser.ts";
import { hundred } from "../tent/tents.ts";

let world: World;
beforeAll(async () => {
  world = await opened("kit.loaded");
});
afterAll(() => world.close());

const OPEN = ".line:not(.counted) .all-on button";
const list = () => `${world.url}jobs/${world.job}/truck`;
const state = async () => (await (await fetch(`${list()}.json`)).json()) as TruckState;
const progress = (page: Page) => page.locator(".progress").textContent();
/** Counts most lines as planned, without a screen. */
const countAllBut = async (left: number) => {
  const { lines, revision } = await state();
  const n = Object.fromEntries(
    lines
      .filter((l) => l.loaded === null)
      .map((l) => [l.item, l.wanted])
      .slice(left),
  );
  const told = await world.say({
    as: "p4",
    key: `counted-${left}`,
    seen: revision,
    type: "answer",
    gate: "kit.loaded",
    value: { kind: "counts", n },
  });
  expect(told.body.reasons).toEqual([]);
};
const back = async () => {
  const page = await world.screen("p1");
  await page.goto(`${world.url}jobs/${world.job}/more?as=p1`);
  await page.locator("form:has(input[value=back]) button").click();
  await page.waitForURL(/\/jobs\/[\w-]+\?/);
};
/** Targets under 72 px a side among what can be pressed on the page; keys of a pad are 64. */
const small = (page: Page) =>
  page.locator("button:visible, a.button:visible, input:not([type=hidden]):visible").evaluateAll((targets) =>
    targets
      .map((t) => ({
        text: t.textContent,
        key: t.hasAttribute("data-key"),
        ...(t.getBoundingClientRect().toJSON() as { width: number; height: number }),
      }))
      .filter(({ key, width, height }) => Math.min(width, height) < (key ? 64 : 72)),
  );

describe("the loading list, ticked with gloves on", () => {
  it("a glove hits every target: at least 72 px a side, the tick as wide as the screen; nothing runs off it", async () => {
    const page = await world.screen("p4");
    for (const path of ["", "?line=stakePlate"]) {
      await page.goto(`${list()}${path}`);
      expect(await small(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    }
    await page.goto(list());
    const ticks = await page.locator(".all-on button").evaluateAll((all) => all.map((b) => b.getBoundingClientRect().toJSON() as DOMRect));
    for (const { width, height } of ticks) {
      expect(height).toBeGreaterThanOrEqual(96);
      expect(width).toBeGreaterThanOrEqual(PHONE.width - 32);
    }
  });

  it("what is ticked on one phone is seen on the other, by a word and a mark; what stands below does not move under the thumb", async () => {
    const [one, two] = [await world.screen("p1"), await world.screen("p4")];
    await one.goto(list());
    await two.goto(list());
    const below = () => one.locator("#line-sidePole").evaluate((e) => e.getBoundingClientRect().top + scrollY);
    const before = await below();
    await one.locator("#line-polePlate .all-on button").click();
    const seen = two.locator("#line-polePlate.all .stands");
    await seen.waitFor();
    expect((await seen.textContent())?.replaceAll(/\s+/g, " ")).toMatch(/^✓\d+ base platesAll on$/);
    await two.locator("#line-centerPole .all-on button").click();
    await one.locator("#line-centerPole.all").waitFor();
    expect(await below()).toBe(before);
    expect(await progress(one)).toBe("2 of 41 lines on; 39 to go.");
    const { lines } = await state();
    expect(lines.filter((l) => l.loaded !== null).map((l) => l.item)).toEqual(["polePlate", "centerPole"]);
  });

  it("a number is keyed in with our own keys; a wrong one stands in its field under the sentence that refuses it", async () => {
    const page = await world.screen("p4");
    const key = (k: string) => page.locator(`.keypad [data-key="${k}"]`).click();
    await page.goto(list());
    await page.click("#line-stakePlate .other");
    await page.fill(".number input[name=value]", "5.");
    await key("5");
    await page.click(".number .main");
    expect(await page.locator("#wrong").textContent()).toMatch(/^"5\.5" is no count of stake plates\./);
    expect(await page.inputValue(".number input[name=value]")).toBe("5.5");
    await key("⌫");
    await key("⌫");
    await page.click(".number .main");
    expect(await page.locator("#line-stakePlate .is").textContent()).toMatch(/^5 on: \d+ short of \d+$/);
    expect(await page.locator(".notice").textContent()).toMatch(/^5 stake plates on: \d+ short\.$/);
  });

  it("a thumb ticks what is left, and the guide goes on", async () => {
    const page = await world.screen("p1");
    await leading(page, () => page.locator(".answers a.button", { hasText: "Open the list" }).click());
    const open = page.locator(OPEN);
    for (let left = await open.count(); left > 0; left = await open.count()) {
      await open.first().click();
      await page.waitForFunction(([sel, n]) => document.querySelectorAll(sel).length < n, [OPEN, left] as const);
    }
    await page.locator("#line-stakePlate .all-on button").click();
    await page.locator("#line-stakePlate.all").waitFor();
    expect(await progress(page)).toBe("All 41 lines on.");
    await page.locator(".ways .main").click();
    await page.locator('article.call[data-step="talk.hazards"]').waitFor();
    expect((await world.state()).step).toBe("talk.hazards");
  });

  it("without scripts the same: each press posts its line, and the page comes back there", async () => {
    await back();
    expect((await world.state()).step).toBe("kit.loaded");
    const page = await world.screen("p4", { scripts: false });
    await page.goto(list());
    await page.click("#line-stakePlate .other");
    await page.fill(".number input[name=value]", "3");
    await leading(page, () => page.click(".number .main"));
    expect(await page.locator(".notice").textContent()).toContain("3 stake plates on");
    await countAllBut(6);
    await page.reload();
    const open = page.locator(".line:not(.all) .all-on button");
    for (let left = await open.count(); left > 0; left = await open.count()) {
      await leading(page, () => open.first().click());
      expect(await open.count()).toBe(left - 1);
    }
    expect(await progress(page)).toBe("All 41 lines on.");
    expect(page.url()).toMatch(/#line-\w+$/);
  });

  it("every text has a contrast of 7 to 1 in light and dark, also where a line is short or a number refused", async () => {
    const page = await world.screen("p1");
    const expectClear = async () => {
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme });
        const least = await leastContrast(page);
        expect(least.ratio, `${colorScheme}: ${least.text}`).toBeGreaterThanOrEqual(7);
      }
    };
    await page.goto(`${list()}?line=sidePole`);
    await page.fill(".number input[name=value]", "half");
    await page.click(".number .main");
    await page.locator("#wrong").waitFor();
    await expectClear();
    await page.fill(".number input[name=value]", "2");
    await page.click(".number .main");
    await page.locator(".line.short").first().waitFor();
    await expectClear();
  });

  it("nothing went wrong in any page", () => expect(world.troubles).toEqual([]));
});

describe("printed, the list of a 100×200", () => {
  it.each([
    ["A4", "light"],
    ["Letter", "dark"],
  ] as const)("is one page of %s from a %s screen, with a box to tick on every line and room to sign", async (format, scheme) => {
    const demo = brief();
    const told = await fetch(`${world.url}jobs`, {
      method: "POST",
      headers: { "content-type": "application/json", origin: world.url.slice(0, -1) },
      body: JSON.stringify({ key: "truck-of-100-200", brief: { ...demo, tent: { ...demo.tent, ...hundred } } }),
    });
    const { job } = (await told.json()) as { job: string };
    const page = await world.screen("p1", { scheme });
    await page.goto(`${world.url}jobs/${job}/truck`);
    const pdf = (await page.pdf({ format })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".paper .box:visible").count()).toBe(await page.locator(".line").count());
    expect(await page.locator(".signs").textContent()).toMatch(/Loaded by\s*Checked by/);
    expect(await page.locator(".truck").isVisible()).toBe(false);
  });
});
