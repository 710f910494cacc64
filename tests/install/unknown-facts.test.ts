import { describe, expect, it } from "vitest";
import type { Brief } from "../../machines/install/brief.ts";
import { type FactName, unknownIn } from "../../machines/install/facts.ts";
import { allSteps } from "../../machines/install/job.ts";
import { disagreements } from "../proof/disagreements.ts";
import { briefOf, frozenOf, MIDDLE, SMALL } from "../proof/fixtures.ts";
import { gateMutants } from "../proof/mutants.ts";
import { PAPER } from "../support/answers.ts";
import { nothingKnown } from "../support/briefs.ts";
import { Crew } from "../support/crew.ts";

const known = briefOf(SMALL);
const without = (...facts: readonly FactName[]): Brief => {
  const none = nothingKnown(known);
  return {
    ...known,
    ...(facts.includes("sheet") ? { sheet: null } : {}),
    ...(facts.includes("ticket") ? { ticket: null } : {}),
    site: { ...known.site, ...Object.fromEntries(facts.flatMap((fact) => (fact in none.site ? [[fact, null]] : []))) },
  };
};
/** Where each is first needed. */
const FIRST: readonly (readonly [FactName, string])[] = [
  ["sheet", "sheet.atHand"],
  ["rallyPoint", "talk.rallyPoint"],
  ["stormShelter", "talk.rallyPoint"],
  ["firstAid", "talk.firstAid"],
  ["ticket", "locate.ticket"],
];

describe.each(FIRST)("with %s not known", (fact, call) => {
  const crew = () => new Crew(without(fact)).goTo(call);

  it(`stands at ${call} behind a hard gate that no answer, paper, reason or "next" opens`, () => {
    const there = crew();
    const values = [
      { kind: "yesNo", yes: true },
      { kind: "document", named: "RC-80100 rev C" },
      { kind: "unknown" },
      { kind: "count", n: 3 },
      PAPER,
    ] as const;
    for (const value of values)
      expect(there.say({ type: "answer", gate: call, value })).toMatchObject({ refused: [{ why: "wrongKind", gate: call }] });
    expect(there.say({ type: "waive", gate: call, because: "no time" })).toMatchObject({ refused: [{ why: "hardGate", gate: call }] });
    expect(there.next()).toMatchObject({ refused: [{ why: "gate", gate: call, status: "open", asked: "here" }] });
    expect(there.call).toBe(call);
  });
  it("goes on at the same call once a second person agrees to what it is", () => {
    const there = crew();
    const proposal = there.entry;
    there.say({ type: "amend", because: "known now", to: frozenOf(known) });
    expect(there.say({ type: "agree", target: proposal }, "lead")).toEqual({ refused: [{ why: "sameAsProposer" }] });
    expect(there.missing).toBe(call);
    expect(there.say({ type: "agree", target: proposal }, "deputy")).toEqual({ did: "amended" });
    expect(there.call).toBe(call);
    expect(there.gate(call)?.check.kind).not.toBe("notKnown");
    expect(there.goTo("baseline").call).toBe("baseline");
  });
  it("has the hold, the hurt, the way out and the stand down open", () => {
    const there = crew();
    expect(there.say({ type: "hold" }, "trainee")).toEqual({ did: "held" });
    expect(there.say({ type: "carryOn", became: null })).toEqual({ did: "carriedOn" });
    expect(there.say({ type: "hurt", words: "her arm" }, "crew")).toMatchObject({ did: "hurt" });
    expect(there.say({ type: "carryOn", became: "with the medics" })).toEqual({ did: "carriedOn" });
    expect(there.thunder("watcher")).toHaveProperty("did");
    expect(there.say({ type: "makeSafe", because: "a squall" }, "crew")).toHaveProperty("did");
    there.goTo("safe.ground.looked");
    there.answer("good");
    expect(there.say({ type: "standDown", because: "called off" })).toHaveProperty("did");
  });
});

describe("a job of which nothing is known", () => {
  const nothing = nothingKnown(known);
  it("has every gate of the table, as hard as the table says, and notices each that is taken away", () => {
    for (const brief of [nothing, nothingKnown(briefOf(MIDDLE, { site: { soilKnown: true } }))]) {
      const frozen = frozenOf(brief);
      expect(disagreements(frozen)).toEqual([]);
      expect(gateMutants(frozen).filter((m) => !m.caughtBy)).toEqual([]);
    }
  });
  it("has no gate that judges by a sheet, a ticket or a place: what would is not known either", () => {
    const { script } = frozenOf(nothing);
    const kinds = Object.fromEntries(allSteps(script).flatMap(({ id, gate }) => (gate ? [[id, gate.check.kind]] : [])));
    for (const id of ["sheet.atHand", "kit.spread", "stakes.size", "talk.briefed", "locate.ticket", "locate.answers"])
      expect([id, kinds[id]]).toEqual([id, "notKnown"]);
    expect(Object.values(kinds).filter((kind) => kind === "each")).toHaveLength(1);
  });
  it("is held to the limits that hold where a sheet is silent", () => {
    const { limits } = frozenOf(nothing);
    expect([limits.raiseGustMph.is, limits.stopGustMph.is, limits.insideGustMph.is, limits.maxShowingIn.is]).toEqual([20, 25, 30, 6]);
    expect([limits.toleranceIn.is, limits.stakeLeanDeg.is]).toEqual([24, { from: 0, to: 15 }]);
  });
  it("becomes known one by one, each where it is asked", () => {
    const crew = new Crew(nothing);
    const left: FactName[] = ["sheet", "rallyPoint", "stormShelter", "firstAid", "ticket"];
    for (const [fact, call] of FIRST) {
      left.splice(left.indexOf(fact), 1);
      if (crew.call !== call) crew.goTo(call);
      expect(crew.missing).toBe(call);
      expect(crew.amend(frozenOf(without(...left)))).toEqual({ did: "amended" });
    }
    expect(unknownIn(crew.job.frozen.brief)).toEqual([]);
    expect(crew.goTo("straps.choked").call).toBe("straps.choked");
  });
  it("finds a looser figure in a sheet that comes no reason to refuse it: all was shut before", () => {
    const crew = new Crew(nothing);
    const sheet = { raiseGustMph: 25, stopGustMph: 30, embedmentIn: 40 };
    expect(crew.amend(frozenOf(briefOf(SMALL, { sheet })))).toEqual({ did: "amended" });
  });
});

describe("what is known", () => {
  it.each(FIRST)("%s stays known: no change takes it away, and so no looser one gets around its number", (fact) => {
    const crew = new Crew(known).goTo("white.footprint");
    expect(crew.say({ type: "amend", because: "lost it", to: frozenOf(without(fact)) })).toEqual({
      refused: [{ why: "forgets", facts: [fact] }],
    });
    expect(crew.job.proposed).toBeNull();
  });
  it("a stake line nearer the poles is still looser while nobody has the sheet", () => {
    const crew = new Crew(without("sheet"));
    const nearer = { ...without("sheet"), tent: { ...known.tent, setbackFt: known.tent.setbackFt - 1 } };
    expect(crew.say({ type: "amend", because: "the hedge", to: frozenOf(nearer) })).toEqual({
      refused: [{ why: "looserLimit", paper: "sheet", fields: ["tent.setbackFt"] }],
    });
  });
});
