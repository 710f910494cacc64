import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { NOTHING_TOLD } from "../../machines/install/anchorage.ts";
import { pulls } from "../support/anchorages.ts";
import { brief } from "../support/app.ts";
import { opened, type World } from "../support/browser.ts";
import { newPhone } from "../support/shared-browser.ts";

const told = (alongFt: number, offFt: number) => ({ alongFt, offFt });
const WHOLE = {
  ...brief(),
  use: { ...brief().use, walls: false },
  anchorage: { ...NOTHING_TOLD, gustMph: 60, exposure: "C", underRoof: "clear", pulls: pulls(1500, 1200, 1000), rainSincePulls: false },
  siteModel: {
    buried: [
      { id: "gas 1", kind: "gas", told: "ticket", points: [told(-20, -9), told(130, -3)] },
      { id: "water 1", kind: "water", told: "private", points: [told(40, -60), told(60, 140)] },
    ],
    overhead: [{ id: "wire 1", kv: 7.2, points: [told(-40, -30), told(-38, 120)] }],
    things: [{ id: "barn", kind: "building", shape: { is: "polygon", corners: [told(20, 110), told(60, 110), told(60, 140)] } }],
  },
};

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

describe("the page of a site on paper", () => {
  it("of an 80 by 100 with all that can be told takes no more than 12 sheets of Letter, with all of it open", async () => {
    const headers = { "content-type": "application/json", origin: new URL(world.url).origin };
    const answer = await fetch(`${world.url}jobs`, { method: "POST", headers, body: JSON.stringify({ key: "open-00009", brief: WHOLE }) });
    const { job } = (await answer.json()) as { job: string };
    const page = await newPhone();
    await page.goto(`${world.url}jobs/${job}/site?as=p1`);
    const pdf = (await page.pdf({ format: "Letter" })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)!.length).toBeLessThanOrEqual(12);
    await page.emulateMedia({ media: "print" });
    await page.locator(".station-figures").waitFor();
    await page.locator(".clearances").waitFor();
    await page.context().close();
  });
});
