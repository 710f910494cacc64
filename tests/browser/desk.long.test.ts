import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { AGAIN_MS } from "../../views/pages/guide/client/desk.ts";
import { en } from "../../views/text/en/en.ts";
import { opened, press, type World } from "../support/browser.ts";
import { leastContrast } from "../support/contrast.ts";
import { DESK, leading, PHONE, WAIT_MS } from "../support/shared-browser.ts";

/** A yes or no, a number pad, a length off the tape, a lift, and a call that asks nothing. */
const CALLS = ["talk.briefed", "talk.headcount", "squared", "lift.center.C1", "baseline"] as const;
const POLLING = { timeout: WAIT_MS };
const NARROW = { width: 900, height: 700 };
const PRINT_PX = 780;

let world: World;
beforeAll(async () => {
  world = await opened(...CALLS);
});
afterAll(() => world.close());

async function guideAt(step: (typeof CALLS)[number], viewport: { width: number; height: number }) {
  const page = await world.at(step).screen("p1");
  await page.setViewportSize(viewport);
  return page;
}
const boxOf = (page: Page, selector: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((e) => {
      const { left, right, top, bottom, width, height } = e.getBoundingClientRect();
      return { left, right, top, bottom, width, height };
    });
const shown = (page: Page, selector: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((e) => e.checkVisibility());

describe("a guide on a desk, large and narrow", () => {
  it.each(CALLS)(
    "has the tent at the left, large, and the call with all that answers it at the right, without scrolling: %s",
    async (step) => {
      const page = await guideAt(step, DESK);
      for (const viewport of [DESK, NARROW]) {
        await page.setViewportSize(viewport);
        const [tent, middle, call] = [await boxOf(page, "#desk svg"), await boxOf(page, ".middle"), await boxOf(page, "#call")];
        expect(tent.right).toBeLessThanOrEqual(middle.left);
        expect(tent.width).toBeGreaterThan(viewport.width * 0.4);
        expect(tent.height).toBeGreaterThan(viewport.height * 0.5);
        expect(await shown(page, ".drawing")).toBe(false);
        expect(call.top).toBeGreaterThanOrEqual(middle.top);
        const answers = await page
          .locator(".answers :is(button, a.button, input:not([type=hidden])), .dock :is(button, a.button)")
          .evaluateAll((all) => all.filter((e) => e.checkVisibility()).map((e) => e.getBoundingClientRect().bottom));
        expect(answers.length).toBeGreaterThan(1);
        expect(Math.max(...answers)).toBeLessThanOrEqual(viewport.height);
        const [width, height] = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.scrollHeight]);
        expect([width! <= viewport.width, height! <= viewport.height]).toEqual([true, true]);
      }
    },
  );
});

describe("a guide on a desk", () => {
  it("has what was said before above the call, scrolled up to", async () => {
    const page = await guideAt("lift.center.C1", DESK);
    const [last, call] = [await boxOf(page, ".earlier li:last-child"), await boxOf(page, "#call")];
    expect(last.bottom).toBeLessThanOrEqual(call.top);
    const middle = await boxOf(page, ".middle");
    expect(last.top).toBeGreaterThanOrEqual(middle.top);
  });
  it("draws the tent at the call that it stands at, when the call moves on", async () => {
    const page = await guideAt("baseline", DESK);
    const before = await page.locator("#desk title").textContent();
    await press(page, ".answers .main button");
    expect(await page.locator("#call .drawing title").textContent()).not.toBe(before);
    await page.waitForFunction(
      () => document.querySelector("#desk title")?.textContent === document.querySelector("#call .drawing title")?.textContent,
    );
    expect(await page.locator("#desk").getAttribute("class")).toBe("desk");
  });
  it("asks again for a drawing that failed or did not come, and keeps the old one until then", async () => {
    const job = world.at("baseline");
    const page = await job.screen("p1", { clock: true });
    await page.setViewportSize(DESK);
    let asked = 0;
    await page.route("**/drawing", (route) => {
      asked++;
      if (asked === 1) return route.fulfill({ status: 502, contentType: "text/html", body: "<p>Bad gateway</p>" });
      return asked === 2 ? route.abort() : route.continue();
    });
    await press(page, ".answers .main button");
    for (const tries of [1, 2]) {
      await expect.poll(() => asked, POLLING).toBe(tries);
      await page.locator("#desk.behind:not(.htmx-request) svg").waitFor();
      await job.say({ as: "p5", key: `note-0000${tries}`, seen: 1, type: "note", text: `the gate is open ${tries}` });
      await page.locator(".earlier", { hasText: `the gate is open ${tries}` }).waitFor();
      expect(asked).toBe(tries);
      await page.clock.fastForward(AGAIN_MS);
    }
    await page.locator("#desk:not(.behind) svg").waitFor();
    expect(asked).toBe(3);
    expect(await page.locator("#desk title").textContent()).toBe(await page.locator("#call .drawing title").textContent());
    expect(await page.locator("#notice").textContent()).not.toContain(en.client.notSent);
    // What failed here did so on purpose.
    world.troubles.splice(0);
  });
  it("asks for no second drawing on a phone", async () => {
    const page = await guideAt("squared", PHONE);
    const asked: string[] = [];
    page.on("request", (request) => asked.push(new URL(request.url()).pathname));
    await press(page, ".dock .hold button");
    expect(asked.filter((path) => path.endsWith("/drawing"))).toEqual([]);
    expect([await shown(page, "#desk"), await shown(page, ".page-header")]).toEqual([false, false]);
  });
  it("has neither header nor second drawing on paper", async () => {
    const page = await guideAt("lift.center.C1", { width: PRINT_PX, height: 1000 });
    await page.emulateMedia({ media: "print" });
    for (const width of [PRINT_PX, DESK.width]) {
      await page.setViewportSize({ width, height: 1000 });
      expect([await shown(page, "#desk"), await shown(page, ".page-header"), await shown(page, ".drawing")]).toEqual([false, false, true]);
    }
  });
});

describe("the header", () => {
  it.each([
    ["", "Jobs"],
    ["jobs/JOB", "Guide"],
    ["jobs/JOB/truck", "Truck"],
    ["jobs/JOB/record", "Record"],
  ])("of /%s says that it is %s, and is gone below 900 px and on paper", async (path, name) => {
    const page = await world.show(path.replace("JOB", world.at("lift.center.C1").job));
    await page.setViewportSize(DESK);
    expect(await page.locator(".page-header [aria-current=page]").allTextContents()).toEqual([name]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(DESK.width);
    await page.setViewportSize({ width: 899, height: 700 });
    expect(await shown(page, ".page-header")).toBe(false);
    await page.setViewportSize(DESK);
    await page.emulateMedia({ media: "print" });
    expect(await shown(page, ".page-header")).toBe(false);
  });
  it("leads from page to page", async () => {
    const page = await guideAt("lift.center.C1", DESK);
    for (const [name, path] of [
      ["Truck", /\/truck$/],
      ["Record", /\/record$/],
      ["Guide", /\/jobs\/[\w-]+$/],
      ["Tents", /\/tents$/],
      ["Jobs", /\/$/],
    ] as const) {
      await page.click(`.page-header a:text-is("${name}")`);
      await page.waitForURL(path);
    }
  });
});

describe("the list of jobs", () => {
  it("is a table from 900 px on, and cards below it", async () => {
    const page = await world.show("");
    for (const viewport of [DESK, NARROW]) {
      await page.setViewportSize(viewport);
      const cells = await page
        .locator(".listed .job")
        .first()
        .locator("th, td")
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect().top));
      expect(new Set(cells).size, `${viewport.width}`).toBe(1);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
    }
    await page.setViewportSize(PHONE);
    expect(await shown(page, ".listed thead")).toBe(false);
    const card = await boxOf(page, ".listed .job");
    expect([Math.round(card.left), Math.round(card.right)]).toEqual([16, PHONE.width - 16]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
  });
  it("is pressed anywhere on a card of a phone", async () => {
    const page = await world.show("");
    const card = page.locator(".listed .job").first();
    const { height } = await boxOf(page, ".listed .job");
    await card.click({ position: { x: 20, y: height - 8 } });
    await page.waitForURL(/\/jobs\/[\w-]+$/);
  });
  it("is searched without scripts", async () => {
    const page = await world.show("", { scripts: false });
    const find = async (text: string) => {
      await page.fill("input[name=q]", text);
      await leading(page, () => page.click(".find button"));
    };
    await find("tansy lane");
    expect(await page.locator(".listed .job").count()).toBe(CALLS.length);
    await find("no such meadow");
    expect(await page.locator(".found").textContent()).toContain("No job");
  });
});

it("every text that only a desk shows has a contrast of 7 to 1 in light and dark", async () => {
  const page = await guideAt("lift.center.C1", DESK);
  for (const path of [`jobs/${world.at("lift.center.C1").job}`, "", "?q=nothing"]) {
    await page.goto(`${world.url}${path}`);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      const least = await leastContrast(page);
      expect(least.ratio, `/${path}, ${colorScheme}: ${least.text}`).toBeGreaterThanOrEqual(7);
    }
  }
});
