import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { listen, speak, spoken } from "../support/scripted-ear.ts";

let world: World;
beforeAll(async () => {
  world = await opened("lace.R-DA.DA");
});
afterAll(() => world.close());

describe("lacing, both hands in the rope", () => {
  it("the lead laces every seam without touching the phone; another one looks each half over, on a phone of their own", async () => {
    const lead = await world.screen("p1", { ear: "good" });
    const other = await world.screen("p2", { ear: "good" });
    await listen(lead);
    await listen(other);
    let [calls, early] = [0, 0];
    for (;;) {
      const { gate, step, revision } = await world.state();
      if (!/^(lace|tied|looked)\./.test(step)) break;
      for (const page of [lead, other]) await page.locator(`article.call[data-revision="${revision}"]`).waitFor({ state: "attached" });
      calls += 1;
      if (gate === null) {
        expect(await speak(lead, calls % 3 === 0 ? "done, next" : "next")).toMatchObject({ went: "done" });
        continue;
      }
      if (gate.check.kind === "wind") {
        expect((await speak(lead, "albatross six gusting nine")).went).toBe("readBack");
        expect((await speak(lead, "albatross correct")).went).toBe("done");
        continue;
      }
      if (calls % 2 === 0) {
        expect((await speak(lead, "albatross next")).went).toBe("refused");
        early += 1;
      }
      const page = step.startsWith("tied") ? lead : other;
      const words = step.startsWith("tied") ? "albatross tied off" : "albatross none missed";
      const back = await speak(page, words);
      expect(back).toMatchObject({ went: "readBack", notice: expect.stringMatching(/Correct, or wrong\?$/) });
      expect((await world.state()).gate?.status).toBe("open");
      expect((await speak(page, "albatross correct")).went).toBe("done");
      expect((await world.state()).step).not.toBe(step);
    }
    expect((await world.state()).step).toBe("straps.threaded");
    expect(calls).toBeGreaterThan(17);
    expect(early).toBeGreaterThan(0);
    expect((await spoken(lead)).some((said) => /^Seam 1, Alpha-Bravo half: lace to the quarter ring, 20 feet/.test(said))).toBe(true);
    expect(world.troubles).toEqual([]);
  });
});
