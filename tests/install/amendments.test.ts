import { describe, expect, it } from "vitest";
import { amendmentEffect } from "../../machines/install/amend.ts";
import type { Brief } from "../../machines/install/brief.ts";
import { currentStep } from "../../machines/install/job.ts";
import { briefOf, frozenOf, MIDDLE, middleBrief, people, SMALL } from "../proof/fixtures.ts";
import { PAPER } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";

const again = (gate: string) => ({ refused: [{ why: "gate", gate, status: "open", asked: "again", because: "amendment" }] });
const withNell = (brief: Brief): Brief => ({ ...brief, crew: [...people, { id: "nell", role: "crew" }] });
const wider = (rings: Record<string, number>) => frozenOf(briefOf({ ...MIDDLE, rings }, { site: { soilKnown: true } }));

describe("an amendment", () => {
  it("takes a second person, and asks again what it touches where the job stands", () => {
    const crew = new Crew().goTo("straps.choked");
    const deeper = frozenOf(briefOf(SMALL, { sheet: { stakeLengthIn: 48 } }));
    const proposal = crew.entry;
    expect(crew.say({ type: "amend", because: "soft ground", to: deeper })).toEqual({ did: "proposed" });
    expect(crew.say({ type: "agree", target: proposal }, "lead")).toEqual({ refused: [{ why: "sameAsProposer" }] });
    expect(crew.say({ type: "agree", target: proposal }, "competent")).toEqual({ did: "amended" });
    expect(crew.call).toBe("straps.choked");
    expect(crew.next()).toMatchObject(again("sheet.atHand"));
    const { answers } = crew.job.snapshot.context;
    expect(answers["stakes.size"]).toBeUndefined();
    expect(answers["talk.briefed"]).toBeDefined();
  });

  it("that a second person disagrees with changes nothing", () => {
    const crew = new Crew().goTo("straps.choked");
    const { frozen } = crew.job;
    const proposal = crew.entry;
    crew.say({ type: "amend", because: "soft ground", to: frozenOf(briefOf(SMALL, { sheet: { stakeLengthIn: 48 } })) });
    expect(crew.say({ type: "disagree", target: proposal }, "deputy")).toEqual({ did: "discarded" });
    expect(crew.job.frozen).toBe(frozen);
    expect(crew.say({ type: "agree", target: proposal }, "deputy")).toEqual({ refused: [{ why: "noProposal" }] });
  });

  it("for a hand who comes late asks what it touches where the job stands, and walks nobody back", () => {
    const crew = new Crew(middleBrief()).goTo("out.quarters.hip-DA").ready();
    crew.amend(frozenOf(withNell(middleBrief())));
    const asked: string[] = [];
    while (crew.call === "out.quarters.hip-DA" && asked.length < 20) {
      if (crew.missing) asked.push(crew.missing);
      crew.oneMore();
    }
    expect(asked.filter((gate) => gate !== "out.quarters.hip-DA")).toEqual(["talk.briefed", "talk.headcount", "caller", "under.hands"]);
    expect(crew.call).toBe("under.quarters.line-1");
  });

  it("asks for the moved corner again, and for every distance measured from it", () => {
    const crew = new Crew(middleBrief()).goTo("kit.spread");
    const shifted = middleBrief();
    crew.amend(frozenOf({ ...shifted, tent: { ...shifted.tent, shifted: { C: { xFt: 1, yFt: 0 } } } }));
    expect(crew.call).toBe("kit.spread");
    const asked: string[] = [];
    for (let gate = crew.missing; gate !== "kit.spread" && gate !== null; gate = crew.missing) {
      asked.push(gate);
      crew.oneMore();
    }
    expect(asked).toEqual(
      expect.arrayContaining(["white.stakeLine", "locate.covers", "nearest.gas", "nearest.private", "clear.around", "squared"]),
    );
  });

  it("says the calls that it puts behind the job where it stands, and then goes on from there", () => {
    const crew = new Crew(briefOf(MIDDLE, { site: { soilKnown: true } })).goTo("tension.seamEnds");
    const { spec } = crew.job.frozen.plan;
    const one = frozenOf({
      ...briefOf(MIDDLE, { site: { soilKnown: true } }),
      tent: { ...spec, add: [{ kind: "quarter", xFt: 40, yFt: 20 }] },
    });
    crew.amend(one);
    const { added } = amendmentEffect({ ...crew.job }, one);
    expect(added).toEqual(crew.job.snapshot.context.added);
  });

  it("that gives a line one pole more has that line gone under, lifted, tied and counted out once more", () => {
    const brief = briefOf(MIDDLE, { site: { soilKnown: true } });
    const short = { ...brief, tent: { ...brief.tent, leaveOut: ["Q2"] } };
    const crew = new Crew(short).goTo("groundCloth.out");
    crew.amend(frozenOf(brief));
    const line = ["under", "lift", "tied", "out"].map((call) => `${call}.quarters.hip-DA`);
    expect(crew.job.snapshot.context.added).toEqual(line);
    const done: string[] = [];
    while (crew.call !== "groundCloth.out" || crew.job.snapshot.context.added.length > 0) {
      if (crew.call !== done.at(-1)) done.push(crew.call);
      crew.oneMore();
    }
    expect(done).toEqual(expect.arrayContaining(line));
  });

  it("with side poles up sends nobody in to drive a test stake, and judges the one that was pulled by the new figure", () => {
    const crew = new Crew().goTo("poles.pinned");
    const sheet = (pullTestLbf: number) => frozenOf(briefOf(SMALL, { sheet: { document: "RC-2020 rev B", pullTestLbf } }));
    crew.amend(sheet(800));
    expect(crew.job.snapshot.context.answers["pull.inside"]).toBeDefined();
    crew.amend(sheet(1200));
    const asked: string[] = [];
    while (crew.missing !== "poles.pinned" && asked.length < 40) {
      asked.push(crew.missing!);
      if (crew.missing === "pull.inside") break;
      crew.oneMore();
    }
    expect(asked.at(-1)).toBe("pull.inside");
    crew.say({ type: "answer", gate: "pull.inside", value: PAPER }, "lead");
    crew.say({ type: "answer", gate: "pull.inside", value: PAPER }, "deputy");
    expect(crew.missing).not.toBe("pull.inside");
  });

  it("that takes away the gate that is asked is agreed to like any other", () => {
    const crew = new Crew().goTo("permit");
    const outcome = crew.amend(frozenOf(briefOf(SMALL, { use: { permit: "notRequired" } })));
    expect(outcome).toMatchObject({ did: "amended" });
    expect(crew.job.frozen.script.steps.some((s) => s.id === "permit")).toBe(false);
  });

  it("with a new hand, agreed to on a way out, has everybody counted again there", () => {
    const crew = new Crew().goTo("raise.B");
    crew.say({ type: "makeSafe", because: "a ring tore" });
    crew.goTo("safe.up.looked");
    crew.amend(frozenOf(briefOf(SMALL, { crew: [...people, { id: "nell", role: "crew" }] })), "Nell came");
    expect(crew.missing).toBe("safe.up.headcount");
    crew.answer("good");
    crew.answer("good");
    expect(crew.missing).not.toBe("safe.up.looked");
  });

  it("that takes away the call it stands at lands on the nearest earlier one, never on a lift", () => {
    const crew = new Crew().goTo("raise.AB");
    const none = frozenOf(briefOf({ ...SMALL, spacingFt: 20 }));
    crew.amend(none);
    expect(crew.job.frozen.script.steps.some((s) => s.id === "raise.AB")).toBe(false);
    expect(currentStep(crew.job)!.work).not.toBe("lift");
  });

  it("of the rings on an edge asks that edge's marks again", () => {
    const crew = new Crew(briefOf(MIDDLE, { site: { soilKnown: true } })).goTo("straps.choked");
    crew.amend(wider({ AB: 12 }));
    expect(crew.job.snapshot.context.answers.marked).toBeUndefined();
    expect(crew.call).toBe("straps.choked");
  });
});
