import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { DESK, IN_THE_YARD, PHONE } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened("stakes.size");
});
afterAll(() => world.close());

/**
 * Targets under 72 px a side or less than 16 px apart, in the dock or in what scrolls beside it, keys of a pad under 64 and 8; and a
 * page wider than its screen, or one that does not say what it should of somebody hurt. Every call is measured in tests of its own.
 */
const troubles = (page: Page, isHurt: boolean) =>
  page.evaluate((isHurt) => {
    const hurt = document.querySelector(".hurt")?.checkVisibility() ?? false;
    const targets = [...document.querySelectorAll<HTMLElement>("button, a.button, input:not([type=hidden]), select, summary")]
      .filter((e) => e.checkVisibility() && e.getBoundingClientRect().width > 0)
      .map((e) => ({
        name: (e.textContent || e.getAttribute("name") || "").slice(0, 30),
        box: e.getBoundingClientRect(),
        foot: e.closest(".dock"),
        key: e.closest(".keypad") !== null,
      }));
    const small = targets
      .filter(({ box, key }) => Math.min(box.width, box.height) < (key ? 63.5 : 71.5))
      .map(({ name }) => `small: ${name}`);
    const close = targets.flatMap((a, i) =>
      targets.slice(i + 1).flatMap((b) => {
        const across = Math.max(a.box.left - b.box.right, b.box.left - a.box.right);
        const down = Math.max(a.box.top - b.box.bottom, b.box.top - a.box.bottom);
        return a.foot === b.foot && Math.max(across, down) < (a.key && b.key ? 7.5 : 15.5) ? [`close: ${a.name} / ${b.name}`] : [];
      }),
    );
    return [
      ...small,
      ...close,
      ...(document.documentElement.scrollWidth > innerWidth ? ["wider than the screen"] : []),
      ...(hurt === isHurt ? [] : [`somebody hurt: ${hurt}`]),
    ];
  }, isHurt);

const PATHS = [
  "",
  ..."more words tent settings people wind weather answers call trouble stand-down amend plan truck time layout discrepancy"
    .split(" ")
    .map((path) => `/${path}`),
];

describe("what a gloved thumb hits is what it was meant for", () => {
  it("on the guide and on every page of the job, and with somebody hurt", async () => {
    const job = world;
    const page = await job.screen("p1");
    for (const hurt of [false, true]) {
      if (hurt) await job.say({ as: "p4", key: "hurt-00001", seen: 1, type: "hurt", words: "her arm is hurt" });
      for (const path of PATHS) {
        await page.goto(`${job.url}jobs/${job.job}${path}`);
        for (const viewport of [PHONE, DESK]) {
          await page.setViewportSize(viewport);
          expect(await troubles(page, hurt), `${path}, ${viewport.width}`).toEqual([]);
        }
      }
    }
  });
});

it("a phone that comes in over the yard's network, without TLS, has its plain forms taken", async () => {
  const page = await world.show("", { scripts: false });
  await page.goto(`${world.url.replace("127.0.0.1", IN_THE_YARD)}jobs/${world.job}?as=p1`);
  await page.locator(".dock .hold button").click();
  await page.waitForURL(/reply=HOLD/);
  expect((await world.state()).held?.by).toBe("Ines");
});
