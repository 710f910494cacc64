import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isCumulative } from "../../machines/install/checks/any-check.ts";
import type { GateState, GuideState } from "../../views/pages/guide/state.ts";
import { kitName } from "../../views/text/en/names.ts";
import { answerOnPage, opened, press, type World } from "../support/browser.ts";
import { goodAnswer } from "../support/crew-lead.ts";
import { talk } from "../support/scripted-ear.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

const UNITS = { in: "inches", ft: "feet", deg: "degrees", lbf: "pounds", turns: "turns" } as const;

type Said = {
  kind: string;
  yes?: boolean;
  n?: number | Record<string, number>;
  unit?: keyof typeof UNITS;
  named?: string;
  ft?: Record<string, number>;
};

/** What a crew says to a gate, one thing after the other. */
function words(gate: GateState, state: GuideState): string[] {
  const answer = goodAnswer(gate, state);
  if ("wind" in answer) return ["six gusting nine"];
  const value = answer.value as Said;
  switch (value.kind) {
    case "yesNo":
      return [value.yes ? "yes" : "no"];
    case "count":
      return [String(value.n)];
    case "measure":
      return [`${value.n} ${UNITS[value.unit!]}${value.unit === "deg" && value.n !== 0 ? " out" : ""}`];
    case "document":
      return [`number ${value.named}`];
    case "lengths":
      return Object.entries(value.ft!).map(([name, ft]) => `${name[0]} to ${name[1]}, ${ft} feet`);
    case "counts":
      return Object.entries(value.n as Record<string, number>).map(([item, n]) => `${n} ${kitName(item)}`);
    default:
      return [];
  }
}

describe("the demo job, each person with a phone of their own", () => {
  it("goes up by voice and buttons mixed, every second answer spoken with the talk button, read back and confirmed", async () => {
    const phones = new Map<string, Page>();
    const phoneOf = async (person: string, turn: number) => {
      const page = phones.get(person) ?? (await world.screen(person, { ear: "good" }));
      phones.set(person, page);
      await page.locator(`article.call[data-revision="${turn}"]`).waitFor({ state: "attached" });
      return page;
    };
    let [spoken, pressed] = [0, 0];
    for (let n = 0; n < 1000; n++) {
      const state = await world.state();
      if (state.phase === "standing") break;
      const lead = await phoneOf("p1", state.revision);
      const { gate } = state;
      if (gate && gate.status !== "good") {
        const answer = goodAnswer(gate, state);
        const page = "wind" in answer ? lead : await phoneOf(answer.as, state.revision);
        const aloud = n % 2 === 0 || isCumulative(gate.check) ? words(gate, state) : [];
        for (const said of aloud) {
          expect(await talk(page, said), `${state.step}: ${said}`).toMatchObject({ went: "readBack" });
          if (n % 4 === 0) expect((await talk(page, "correct")).went).toBe("done");
          else await press(page, ".dock .correct button");
          spoken += 1;
        }
        if (aloud.length === 0) {
          await answerOnPage(page, world, state);
          pressed += 1;
        }
        const { gate: now, thread } = await world.state();
        expect(now?.status, `${state.step}: ${thread.at(-1)?.said}, ${thread.at(-1)?.reply}`).toBe("good");
      }
      if (n % 3 === 0) expect((await talk(lead, "next")).went, state.step).toBe("done");
      else await press(lead, ".dock .main button");
    }
    expect((await world.state()).phase).toBe("standing");
    expect(spoken).toBeGreaterThan(40);
    expect(pressed).toBeGreaterThan(20);
    expect(world.troubles).toEqual([]);
  });
});
