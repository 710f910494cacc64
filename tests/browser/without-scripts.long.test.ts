import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, play, sayNext, type World } from "../support/browser.ts";

/** Kinds of answers that the demo job asks for; lists and lengths have tests of their own. The whole raise by forms is tried without a browser. */
const CALLS = [
  ["utilitiesMarked", "a document", "sheet.atHand"],
  ["anchorsSet", "a measurement", "drive.AB"],
  ["sectionsJoined", "a yes of somebody else", "laid.looked"],
  ["perimeterRaised", "a wind reading", "sides.laid"],
  ["interiorRaised", "as many as before, counted by somebody else", "out.quarters.line-1"],
] as const;

let world: World;
beforeAll(async () => {
  world = await opened(...CALLS.map(([, , step]) => step));
});
afterAll(() => world.close());

describe("the demo job with scripts off", () => {
  it.each(CALLS)("%s: refused by plain forms, then answered with %s, it goes on", async (phase, _, step) => {
    const job = world.at(step);
    const page = await job.screen("p1", { scripts: false });
    expect(await job.state()).toMatchObject({ phase, step });
    await sayNext(page, job);
    await page.locator(".earlier li.refused").last().waitFor();
    expect((await job.state()).step).toBe(step);
    const { state } = await play(page, job, (s) => s.step !== step, new Set([phase]));
    expect(state.step).not.toBe(step);
    expect(state.closed).toBe(false);
  });
  it("went without trouble", () => expect(world.troubles).toEqual([]));
});
