import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { leastContrast } from "../support/contrast.ts";
import { DESK, PHONE } from "../support/shared-browser.ts";

const STEPS = ["locate.answers", "stakes.size", "lean.outward"] as const;
let world: World;
beforeAll(async () => {
  world = await opened(...STEPS);
});
afterAll(() => world.close());

/** Targets under 72 px a side or less than 16 px apart, in the dock or in what scrolls behind it; and a page wider than its screen. */
const troubles = (page: Page) =>
  page.evaluate(() => {
    const targets = [...document.querySelectorAll<HTMLElement>("button, a.button, input:not([type=hidden]), select, summary")]
      .filter((e) => e.checkVisibility() && e.getBoundingClientRect().width > 0)
      .map((e) => ({
        name: (e.textContent || e.getAttribute("name") || "").slice(0, 30),
        box: e.getBoundingClientRect(),
        foot: e.closest(".foot"),
      }));
    const small = targets.filter(({ box }) => Math.min(box.width, box.height) < 71.5).map(({ name }) => `small: ${name}`);
    const close = targets.flatMap((a, i) =>
      targets.slice(i + 1).flatMap((b) => {
        const across = Math.max(a.box.left - b.box.right, b.box.left - a.box.right);
        const down = Math.max(a.box.top - b.box.bottom, b.box.top - a.box.bottom);
        return a.foot === b.foot && Math.max(across, down) < 15.5 ? [`close: ${a.name} / ${b.name}`] : [];
      }),
    );
    return [...small, ...close, ...(document.documentElement.scrollWidth > innerWidth ? ["wider than the screen"] : [])];
  });

/** A color scheme moves nothing: what can be hit is looked at once a size, what can be read in both schemes. */
async function expectFitForGloves(page: Page, where: string): Promise<void> {
  for (const viewport of [PHONE, DESK]) {
    await page.setViewportSize(viewport);
    expect(await troubles(page), `${where}, ${viewport.width}`).toEqual([]);
  }
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    expect((await leastContrast(page)).ratio, `${where}, ${colorScheme}`).toBeGreaterThanOrEqual(7);
  }
}

describe("what a gloved thumb hits is what it was meant for", () => {
  it.each(STEPS)("the tile at %s", async (step) => expectFitForGloves(await world.at(step).screen("p1"), step));

  it("More, the way to change the plan, and every one of them with somebody hurt", async () => {
    const job = world.at(STEPS[0]);
    const page = await job.screen("p1");
    for (const hurt of [false, true]) {
      if (hurt) await job.say({ as: "p4", key: "hurt-00001", seen: 1, type: "hurt", words: "her arm is hurt" });
      for (const path of ["", "/more", "/amend", "/plan", "/truck", "/time", "/layout", "/discrepancy"]) {
        await page.goto(`${job.url}jobs/${job.job}${path}`);
        expect(await page.locator(".hurt").isVisible()).toBe(hurt);
        await expectFitForGloves(page, `${path}${hurt ? ", hurt" : ""}`);
      }
    }
  });
});
