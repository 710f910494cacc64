import { afterAll, beforeAll, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { IN_THE_YARD } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

it("a phone that comes in over the yard's network, without TLS, has its plain forms taken", async () => {
  const page = await world.show("", { scripts: false });
  await page.goto(`${world.url.replace("127.0.0.1", IN_THE_YARD)}jobs/${world.job}?as=p1`);
  await page.locator(".dock .hold button").click();
  await page.waitForURL(/reply=HOLD/);
  expect((await world.state()).held?.by).toBe("Ines");
});
