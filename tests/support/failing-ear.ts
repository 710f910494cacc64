import { expect } from "vitest";
import { en } from "../../views/text/en/en.ts";
import { press, type World } from "./browser.ts";
import type { EarMode } from "./scripted-ear.ts";

/** What a screen says whose browser's ear lets people down, and that its buttons go on working. */
export async function letsDown(world: World, mode: EarMode, line: keyof typeof en.client.status): Promise<void> {
  const page = await world.screen("p1", { ear: mode });
  await page.click("text=More");
  await page.click("text=Settings");
  await page.locator('[data-setting="listens"]').click();
  const follows = page.waitForResponse(/\/live$/);
  await page.click("text=Back to the call");
  await follows;
  await page.locator("body[data-voice]").waitFor({ state: "attached" });
  // However often it starts and stops again, and however long it says nothing.
  await page.clock.runFor(20_000);
  await page.locator("#ear-status", { hasText: en.client.status[line] }).waitFor();
  const { entry } = await world.state();
  await press(page, ".dock .hold button");
  await press(page, ".answers .main button");
  expect((await world.state()).entry).toBe(entry + 2);
}
