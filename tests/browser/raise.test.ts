import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isCumulative } from "../../machines/install/checks/any-check.ts";
import { demoBrief } from "../../server/demo.ts";
import { readBrief } from "../../server/input/brief.ts";
import type { GateState, GuideState } from "../../views/pages/guide/state.ts";
import { kitName } from "../../views/text/en/names.ts";
import { answerOnPage, opened, play, press, type World } from "../support/browser.ts";
import { drive, goodAnswer } from "../support/crew-lead.ts";
import { PHASES } from "../support/phases.ts";
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

/** Of a long list so many lines are spoken; the rest is ticked. */
const LINES_SPOKEN = 3;

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
      return Object.entries(value.n as Record<string, number>)
        .slice(0, LINES_SPOKEN)
        .map(([item, n]) => `${n} ${kitName(item)}`);
    default:
      return [];
  }
}

const NEXT = ".dock .main button";

/** What sort of call each is, as far as a screen goes: its phase and the answer it asks for. */
const SORTS = new Map(
  readBrief(demoBrief("2026-06-01", "2026-06-14")).frozen.script.steps.map(({ id, phase, gate }) => [
    id,
    `${phase}, ${gate ? `${gate.check.kind}${gate.hard ? ", hard" : ""}${gate.secondPersonTo ? ", of somebody else" : ""}` : "nothing asked"}`,
  ]),
);
/** So many of each are gone through by hand: one spoken, one pressed. */
const BY_HAND = 2;

/** A crew on the demo job, each with a phone of their own. */
class Crew {
  private readonly phones = new Map<string, Page>();
  /** How many of each sort of call were gone through by hand. */
  private readonly byHand = new Map<string, number>();
  readonly refused = new Set<string>();
  spoken = 0;
  pressed = 0;

  /** Somebody's phone, once it shows how the job stands. */
  async phoneOf(person: string, revision: number): Promise<Page> {
    const page = this.phones.get(person) ?? (await world.screen(person, { ear: "good" }));
    this.phones.set(person, page);
    await page.locator(`article.call[data-revision="${revision}"]`).waitFor({ state: "attached" });
    return page;
  }

  private handled = ({ step }: GuideState) => this.byHand.get(SORTS.get(step) ?? step) ?? 0;

  /**
   * To where `stop` holds, by voice and buttons mixed: every second answer is spoken, each read back and confirmed, and every
   * third "next" is said. A sort of call that was gone through twice is done without a screen of its own; the phones follow.
   */
  async raise(stop: (state: GuideState) => boolean): Promise<void> {
    for (let n = 0; n < 1000; n++) {
      const { state } = await drive(world.state, world.say, (s) => stop(s) || this.handled(s) < BY_HAND);
      if (stop(state)) return;
      this.byHand.set(SORTS.get(state.step) ?? state.step, this.handled(state) + 1);
      const lead = await this.phoneOf("p1", state.revision);
      if (state.gate && state.gate.status !== "good") {
        await this.refusedOnce(lead, state.phase);
        await this.answer(state.gate, await world.state(), n);
      }
      if (n % 3 === 0) expect((await talk(lead, "next")).went, state.step).toBe("done");
      else await press(lead, NEXT);
    }
    throw new Error("1,000 calls and still not there");
  }

  /** In each phase the first open gate is tried to be passed. */
  private async refusedOnce(lead: Page, phase: string): Promise<void> {
    if (this.refused.has(phase)) return;
    await press(lead, NEXT);
    if (await lead.locator(".earlier li.refused").last().isVisible()) this.refused.add(phase);
  }

  private async answer(gate: GateState, state: GuideState, n: number): Promise<void> {
    const answer = goodAnswer(gate, state);
    const page = await this.phoneOf("wind" in answer ? "p1" : answer.as, state.revision);
    const aloud = n % 2 === 0 || isCumulative(gate.check) ? words(gate, state) : [];
    for (const said of aloud) {
      expect(await talk(page, said), `${state.step}: ${said}`).toMatchObject({ went: "readBack" });
      if (n % 4 === 0) expect((await talk(page, "correct")).went).toBe("done");
      else await press(page, ".dock .correct button");
      this.spoken += 1;
    }
    if (aloud.length === 0 || gate.check.kind === "counts") {
      await answerOnPage(page, world, state);
      this.pressed += 1;
    }
    const { gate: now, thread } = await world.state();
    expect(now?.status, `${state.step}: ${thread.at(-1)?.said}, ${thread.at(-1)?.reply}`).toBe("good");
  }
}

describe("the demo job on phones", () => {
  it("goes up by voice and buttons mixed and comes down by pressing: held from another phone, amended, made safe, refused in every phase", async () => {
    const crew = new Crew();
    await crew.raise((s) => s.phase === "anchorsSet");

    const { revision } = await world.state();
    const [lead, pia] = [await crew.phoneOf("p1", revision), await crew.phoneOf("p5", revision)];
    await press(pia, ".dock .hold button");
    await lead.locator(".alarm", { hasText: "HELD by Pia" }).waitFor();
    await press(lead, NEXT);
    expect((await world.state()).held).toBeNull();

    const page = await world.screen("p1");
    await page.goto(`${world.url}jobs/${world.job}/amend`);
    await page.fill("input[name=because]", "muster point moved");
    await page.fill('input[name="site.rallyPoint"]', "the barn door");
    await page.click("button.main");
    await page.locator(".alarm", { hasText: "muster point moved" }).waitFor();
    await page.goto(`${world.url}jobs/${world.job}?as=p3`);
    await press(page, ".alarm button");
    expect((await world.state()).step).toBe("talk.rallyPoint");

    await crew.raise((s) => s.step === "feet.quarters.line-1");
    await page.goto(`${world.url}jobs/${world.job}?as=p1`);
    await page.click("text=More");
    await page.locator("main.more .safe button").click();
    await page.locator('article.call[data-step^="safe.up"]').waitFor();
    expect((await world.state()).phase).toBe("up");
    await play(page, world, (s) => !s.makingSafe, crew.refused);
    expect((await world.state()).step).toBe("gust.quarters.line-1");

    await crew.raise((s) => s.phase === "standing");
    expect(crew.spoken).toBeGreaterThan(25);
    expect(crew.pressed).toBeGreaterThan(20);

    await page.goto(`${world.url}jobs/${world.job}?as=p1`);
    const { state } = await play(page, world, () => false, crew.refused);
    expect(state.closed).toBe(true);
    expect([...crew.refused].filter((p) => p !== "up").sort()).toEqual(PHASES);
    expect(world.troubles).toEqual([]);
  });
});
