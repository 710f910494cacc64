import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { GateState, GuideState } from "../../views/pages/guide/state.ts";
import { kitName, partName } from "../../views/text/en/names.ts";
import { answerOnPage, opened, play, press, type World } from "../support/browser.ts";
import { goodAnswer, walk } from "../support/crew-lead.ts";
import { talk } from "../support/scripted-ear.ts";
import { ASLEEP } from "../support/shared-browser.ts";
import { isOpen, Sorts } from "../support/sorts.ts";
import type { Stand } from "../support/stand.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

const UNITS = { in: "inches", ft: "feet", deg: "degrees", lbf: "pounds", turns: "turns", count: "" } as const;

type Said = {
  kind: string;
  yes?: boolean | Record<string, boolean>;
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
    case "figures":
      return [
        Object.entries(value.n as Record<string, number>)
          .map(([name, n]) => `${partName(name)} ${n} ${UNITS[value.unit!]}`.trim())
          .join(", "),
      ];
    case "each":
      return [
        Object.keys(value.yes as Record<string, boolean>)
          .map((name) => `${partName(name)} yes`)
          .join(", "),
      ];
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

const NEXT = ".answers .main button";

/** A crew on the demo job, each with a phone of their own. */
class Crew {
  private readonly phones = new Map<string, Page>();
  /** Which sorts of calls were gone through aloud. */
  private readonly spokenOf = new Sorts();
  readonly refused = new Set<string>();
  spoken = 0;

  /** Somebody's phone, once it shows how the job stands. */
  async phoneOf(person: string, revision: number): Promise<Page> {
    const known = this.phones.get(person);
    if (known?.url() === ASLEEP) await known.goto(`${world.url}jobs/${world.job}`);
    const page = known ?? (await world.screen(person, { ear: "good" }));
    this.phones.set(person, page);
    await page.locator(`article.call[data-revision="${revision}"]`).waitFor({ state: "attached" });
    return page;
  }

  /**
   * To where `stop` holds: the first of each sort is spoken, each answer read back and confirmed, by voice and by a press in turn.
   * The rest is done without a screen, the phones in their pockets. By presses alone a test of its own goes through all of it.
   */
  async raise(stop: (state: Stand) => boolean): Promise<void> {
    for (let n = 0; n < 1000; n++) {
      // Five phones that follow hundreds of entries nobody looks at take most of the time.
      for (const phone of this.phones.values()) if (phone.url() !== ASLEEP) await phone.goto(ASLEEP);
      const stand = await walk(world.state, world.say, (s) => stop(s) || this.spokenOf.isNew(s));
      if (stop(stand)) return;
      this.spokenOf.add(stand);
      const lead = await this.phoneOf("p1", stand.revision);
      if (isOpen(stand.gate)) {
        await this.refusedOnce(lead, stand.phase);
        const state = await world.state();
        await this.answer(state.gate!, state);
      } else expect((await talk(lead, "next")).went, stand.step).toBe("done");
    }
    throw new Error("1,000 calls and still not there");
  }

  /** In each phase the first open gate is tried to be passed. */
  private async refusedOnce(lead: Page, phase: string): Promise<void> {
    if (this.refused.has(phase)) return;
    expect((await talk(lead, "next")).went, phase).toBe("refused");
    this.refused.add(phase);
  }

  private async answer(gate: GateState, state: GuideState): Promise<void> {
    const answer = goodAnswer(gate, state);
    const page = await this.phoneOf("wind" in answer ? "p1" : answer.as, state.revision);
    const said = words(gate, state);
    for (const text of said) {
      expect(await talk(page, text), `${state.step}: ${text}`).toMatchObject({ went: "readBack" });
      if (this.spoken % 2 === 0) expect((await talk(page, "correct")).went).toBe("done");
      else await press(page, ".answers .correct button");
      this.spoken += 1;
      if (!(await this.asksStill(gate))) break;
    }
    if (gate.check.kind === "counts") await answerOnPage(page, world, await world.state());
    const { thread } = await world.state();
    expect(await this.asksStill(gate), `${state.step}: ${thread.at(-1)?.said}, ${thread.at(-1)?.reply}`).toBe(false);
  }

  private async asksStill({ id }: GateState): Promise<boolean> {
    const { gate } = await world.state();
    return isOpen(gate) && gate.id === id;
  }
}

describe("the demo job on phones", () => {
  it("goes up by voice and buttons mixed: held from another phone, amended, a lift left for a gust, somebody hurt, refused on the way", async () => {
    const crew = new Crew();
    await crew.raise((s) => s.phase === "anchorsSet");

    const { revision } = await world.state();
    const [lead, pia] = [await crew.phoneOf("p1", revision), await crew.phoneOf("p5", revision)];
    await press(pia, ".dock .hold button");
    await lead.locator(".alarm", { hasText: "ON HOLD, by Pia" }).waitFor();
    await press(lead, NEXT);
    expect((await world.state()).held).toBeNull();

    const page = await world.screen("p1", { clock: true });
    await page.goto(`${world.url}jobs/${world.job}/amend`);
    await page.fill("input[name=because]", "muster point moved");
    await page.fill('input[name="site.rallyPoint"]', "the barn door");
    await page.click("button.main");
    await page.locator(".call", { hasText: "Waiting for somebody else to agree." }).waitFor();
    await page.goto(`${world.url}jobs/${world.job}?as=p3`);
    await page.locator(".call", { hasText: "Rally point: the barn door" }).waitFor();
    await press(page, ".answers .main button");
    expect(await world.state()).toMatchObject({ step: "baseline", gate: { id: "talk.briefed", asked: "before" } });

    await crew.raise((s) => s.step === "lift.quarters.line-1");
    const gust = { as: "p5", key: "gust-00001", type: "reading", kind: "wind", mph: 25, gustMph: 45 };
    await world.say({ ...gust, seen: (await world.state()).revision });
    expect((await world.state()).weather.is).toBe("stop");
    await page.goto(`${world.url}jobs/${world.job}?as=p1`);
    await page.click("text=More");
    await page.locator("main.more .safe button").click();
    await page.locator('article.call[data-step^="safe.up"]').waitFor();
    expect((await world.state()).phase).toBe("up");
    await play(page, world, (s) => !s.makingSafe, crew.refused);
    expect((await world.state()).step).toBe("under.quarters.line-1");

    await crew.raise((s) => s.phase === "tensioned");
    const hurt = await world.state();
    const [by, of] = [await crew.phoneOf("p1", hurt.revision), await crew.phoneOf("p5", hurt.revision)];
    await talk(of, "somebody's hurt");
    for (const phone of [by, of]) await phone.locator(".call .hurt .address").waitFor();
    await by.fill(".answers .became input[name=became]", "a bruise, back at work");
    await press(by, NEXT);
    expect((await world.state()).hurt).toBeNull();

    await crew.raise((s) => s.phase === "standing");
    expect(crew.spoken).toBeGreaterThan(10);
    expect(crew.refused.size).toBeGreaterThan(4);
    expect(world.troubles).toEqual([]);
  });
});
