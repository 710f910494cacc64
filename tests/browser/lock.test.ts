import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { lock, lockedOn, targets, unlock } from "../support/lock.ts";
import { DESK, PHONE } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened("corner.first");
});
afterAll(() => world.close());

/** Taller, there is room for the drawing that leads to a page of its own. */
const TALL = { width: 390, height: 844 };

describe("locked for the pocket", () => {
  it("only Hold and Unlock are left of the whole guide, over a reload and over what others do, on every size of screen", async () => {
    const page = await world.screen("p1");
    await lock(world, page);
    const before = await page.locator("article.call").getAttribute("data-entry");
    for (const size of [PHONE, TALL, DESK]) {
      await page.setViewportSize(size);
      expect((await targets(page)).sort(), `${size.width}`).toEqual(["HOLD", "Unlock"]);
    }
    await page.setViewportSize(TALL);
    await page.reload();
    expect(await targets(page)).toEqual(["HOLD", "Unlock"]);
    await world.say({ as: "p5", key: "hold-00001", seen: (await world.state()).revision, type: "hold" });
    await page.locator(`article.call:not([data-entry="${before}"])`).waitFor();
    expect(await targets(page)).toEqual(["HOLD", "Unlock"]);
    await world.say({ as: "p1", key: "carry-0001", seen: (await world.state()).revision, type: "carryOn" });
    await page.locator(".call .alarm").waitFor({ state: "detached" });
    await unlock(page);
    expect(await targets(page)).toEqual(expect.arrayContaining(["HOLD", "Next", "More"]));
    expect(await page.locator(".call .drawing a").evaluate((a: HTMLElement) => a.inert)).toBe(false);
  });

  // The others are looked at in lock-pages.long.test.ts.
  it.each(["picture", "more"])("only Hold and Unlock are left of /%s, and it is unlocked there", (path) => lockedOn(world, path));

  it("a phone on another page of the job is led back to the guide, and one that nobody holds can be unlocked", async () => {
    const page = await world.screen("p1");
    await lock(world, page);
    await page.goto(`${world.url}jobs/${world.job}/truck`);
    await page.locator("body.locked article.call").waitFor();
    await page.context().clearCookies();
    await page.reload();
    expect(await targets(page)).toEqual(["Unlock"]);
    await page.click("[data-unlock]");
    await page.click("[data-unlock-now]");
    await page.locator(".answers .who button").first().click();
  });

  it("takes Hold", async () => {
    const page = await world.screen("p1");
    await lock(world, page);
    await page.click(".dock .hold button");
    await page.locator(".call .alarm").waitFor();
    await world.say({ as: "p1", key: "carry-0002", seen: (await world.state()).revision, type: "carryOn" });
  });

  it("is for phones with scripts alone: without them nothing is locked, and nothing says that it could be unlocked", async () => {
    const page = await world.screen("p1", { scripts: false });
    for (const path of ["", "/picture", "/trouble"]) {
      await page.goto(`${world.url}jobs/${world.job}${path}`);
      const shown = await targets(page);
      expect(shown.length, path).toBeGreaterThan(2);
      expect(shown.filter((text) => text.startsWith("Unlock"))).toEqual([]);
    }
  });
});
