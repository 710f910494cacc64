import type { Page } from "playwright-core";
import { expect } from "vitest";
import type { World } from "./browser.ts";
import { PHONE } from "./shared-browser.ts";

/** All of the document that a finger or a key can press or put something into, by what stands on it. */
export const targets = (page: Page) =>
  page
    .locator("a[href]:visible, button:visible, input:visible, select:visible, textarea:visible, summary:visible")
    .evaluateAll((all) =>
      all.filter((e) => !e.closest("[inert]") && getComputedStyle(e).pointerEvents !== "none").map((e) => e.textContent!.trim()),
    );

/** As its holder does under More; comes back to the call. */
export async function lock(world: World, page: Page): Promise<void> {
  await page.goto(`${world.url}jobs/${world.job}/settings`);
  await page.click("[data-lock]");
  await page.locator("body.locked article.call").waitFor();
}

/** Two presses, the second apart from the first. */
export async function unlock(page: Page): Promise<void> {
  const first = (await page.locator("[data-unlock]").boundingBox())!;
  await page.click("[data-unlock]");
  const second = (await page.locator("[data-unlock-now]").boundingBox())!;
  expect(first.y - (second.y + second.height)).toBeGreaterThan(8);
  expect((await targets(page)).sort()).toEqual(["HOLD", "Unlock", "Unlock: press here too"]);
  await page.click("[data-unlock-now]");
}

/** What is left of a page of a job on a phone that is locked, and once it is unlocked there. */
export async function lockedOn(world: World, path: string): Promise<void> {
  const page = await world.screen("p1");
  await lock(world, page);
  await page.goto(`${world.url}jobs/${world.job}/${path}`);
  for (const size of [PHONE, { width: 640, height: 360 }]) {
    await page.setViewportSize(size);
    expect((await targets(page)).sort()).toEqual(["HOLD", "Unlock"]);
  }
  await page.setViewportSize(PHONE);
  await unlock(page);
  expect(await targets(page)).toContain("Back to the call");
  expect(await page.locator("body.locked, [inert]").count()).toBe(0);
}
