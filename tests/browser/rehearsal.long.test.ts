import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { newPhone } from "../support/shared-browser.ts";
import { targetTroubles } from "../support/target-troubles.ts";

let world: World;
let page: Page;
beforeAll(async () => {
  world = await opened("sheet.atHand");
  page = await newPhone();
});
afterAll(async () => {
  await page.context().close();
  await world.close();
});

describe("a rehearsal that answers back, in a browser", () => {
  it("is chosen, led with the site speaking up, waited in without a reload, and gone over", async () => {
    await page.goto(`${world.url}jobs/${world.job}/rehearse?seed=4`);
    expect(await targetTroubles(page, false)).toEqual([]);
    await page.locator("select[name=trouble]").selectOption("several");
    await page.locator("select[name=from]").selectOption("interiorRaised");
    await page.locator("button[value=lead]").click();
    await page.locator(".site .look").waitFor();
    expect(await page.locator(".lesson-box").count()).toBe(0);
    // A mark that a reload would take away.
    await page.evaluate(() => Object.assign(window, { stayed: true }));
    await page.locator(".site-ways button").last().click();
    await page.locator(".earlier", { hasText: "30 minutes go by" }).waitFor({ state: "attached" });
    expect(await page.evaluate(() => "stayed" in window)).toBe(true);
    await page.locator(".site-ways a").click();
    await page.locator("button.main").click();
    await page.locator(".score").waitFor();
    expect(await targetTroubles(page, false)).toEqual([]);
  });
  it("shows walked what is right, with why, how and what goes wrong beside it", async () => {
    await page.goto(`${world.url}jobs/${world.job}/rehearse`);
    await page.locator("button[value=walk]").click();
    await page.locator(".site .right").waitFor();
    expect(await page.locator(".lesson-box").count()).toBe(1);
  });
});
