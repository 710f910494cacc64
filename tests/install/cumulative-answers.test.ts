import { describe, expect, test } from "vitest";
import type { Role } from "../../machines/install/brief.ts";
import { accepts, isComplete, mergeAnswers, wantedParts } from "../../machines/install/checks/any-check.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { gate as declared, type Value } from "../../machines/install/gates.ts";
import { allSteps } from "../../machines/install/job.ts";
import { briefOf, frozenOf } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";
import { taped } from "../support/marks.ts";
import { forty } from "../tent/tents.ts";

const brief = briefOf(forty);
const { script } = frozenOf(brief);
const crewAt = (id: string) => {
  const crew = new Crew(brief).goTo(id);
  const answer = (value: Value, role: Role = "lead") => crew.say({ type: "answer", gate: id, value }, role);
  return {
    answer,
    next: () => crew.next(),
    say: (ask: Intent) => crew.say(ask),
    get call() {
      return crew.call;
    },
  };
};
/** Refused: what is asked where the job stands, and how its answer is. */
const asked = (gate: string, status: string) => ({
  refused: [{ why: "gate", gate, status, asked: "here", because: null, notBefore: null }],
});
const square = () => {
  const { check } = allSteps(script).find((s) => s.id === "squared")!.gate!;
  return check as Extract<typeof check, { kind: "lengths" }>;
};
const good = taped(square().want);
const lengths = (ft: Record<string, number>): Value => ({ kind: "lengths", ft });

describe("the squaring gate, length by length", () => {
  test("next is refused after four, and passes with the fifth", () => {
    const crew = crewAt("squared");
    for (const name of ["AB", "BC", "CD", "DA"] as const)
      expect(crew.answer(lengths({ [name]: good[name] }))).toMatchObject({ did: "answered" });
    expect(crew.next()).toEqual(asked("squared", "open"));
    expect(crew.answer(lengths({ AC: good.AC }))).not.toHaveProperty("and");
    expect(crew.call).toBe("squared");
    expect(crew.next()).toEqual({ did: "moved" });
  });
  test("all six at once go on by themselves", () => {
    const crew = crewAt("squared");
    expect(crew.answer(lengths(good))).toMatchObject({ did: "answered", and: "moved" });
    expect(crew.call).toBe("marked");
  });
  test("a length that was misread is put right by saying it again", () => {
    const crew = crewAt("squared");
    crew.answer(lengths({ ...good, DA: good.DA + 1 }));
    expect(crew.next()).toEqual(asked("squared", "outOfLimit"));
    expect(crew.answer(lengths({ DA: good.DA }))).toMatchObject({ did: "answered", and: "moved" });
  });
  test("not known clears what was measured", () => {
    const crew = crewAt("squared");
    const { AC, BD: _, ...sides } = good;
    crew.answer(lengths(sides));
    crew.answer({ kind: "unknown" });
    expect(crew.answer(lengths({ AC }))).toMatchObject({ did: "answered" });
    expect(crew.next()).toEqual(asked("squared", "open"));
  });
  test("a yes is no length, and neither is a length of none of the six, of nothing, or under nothing", () => {
    const crew = crewAt("squared");
    for (const value of [{ kind: "yesNo", yes: true }, lengths({ AX: 40 }), lengths({}), lengths({ AB: -40 })] as Value[])
      expect(crew.answer(value)).toEqual({ refused: [{ why: "wrongKind", gate: "squared" }] });
  });
  test("is asked again when the stations change", () => {
    const gate = allSteps(script).find((s) => s.id === "squared")!.gate!;
    expect(gate.reopenedBy).toContain("stations");
  });
  test("is hard: there is no leaving it", () => {
    const crew = crewAt("squared");
    expect(crew.say({ type: "waive", gate: "squared", because: "in a hurry" })).toEqual({
      refused: [{ why: "hardGate", gate: "squared" }],
    });
  });
});

describe("the loading list, line by line", () => {
  const want = (() => {
    const { check } = allSteps(script).find((s) => s.id === "kit.loaded")!.gate!;
    return (check as Extract<typeof check, { kind: "counts" }>).want;
  })();
  const [first] = Object.keys(want) as [string];
  const counts = (n: Record<string, number>): Value => ({ kind: "counts", n });

  test("two people count different lines, and neither undoes the other", () => {
    const crew = crewAt("kit.loaded");
    for (const [item, n] of Object.entries(want)) crew.answer(counts({ [item]: n }), item === first ? "lead" : "crew");
    expect(crew.next()).toEqual({ did: "moved" });
    expect(crew.call).toBe("talk.hazards");
  });
  test("one short keeps it shut, and the lead may leave it with a reason", () => {
    const crew = crewAt("kit.loaded");
    crew.answer(counts({ ...want, [first]: want[first]! - 1 }));
    expect(crew.next()).toEqual(asked("kit.loaded", "outOfLimit"));
    crew.say({ type: "waive", gate: "kit.loaded", because: "one comes with the second truck" });
    expect(crew.next()).toEqual({ did: "moved" });
  });
  test("more than wanted is no fault", () => {
    const crew = crewAt("kit.loaded");
    expect(crew.answer(counts({ ...want, [first]: want[first]! + 10 }))).toMatchObject({ did: "answered", and: "moved" });
  });
  test("a thing that is not on the list, half of one, or fewer than none is no count", () => {
    const crew = crewAt("kit.loaded");
    for (const n of [{ marquee: 1 }, { [first]: 1.5 }, { [first]: -1 }, {}])
      expect(crew.answer(counts(n))).toEqual({ refused: [{ why: "wrongKind", gate: "kit.loaded" }] });
  });
});

describe("what came back is held against what was loaded", () => {
  const asks = { kind: "counts", want: { stakePlate: 44, sidePole: 30 }, as: "kit.loaded" } as const;
  const loaded = { "kit.loaded": { value: { kind: "counts", n: { stakePlate: 46 } } } } as never;
  test("as many as were counted onto the truck, and as planned where nobody counted", () =>
    expect(wantedParts(asks, { answers: loaded })).toEqual({ stakePlate: 46, sidePole: 30 }));
  test("as planned where nothing was counted at all", () => expect(wantedParts(asks, { answers: {} })).toEqual(asks.want));
  test("is judged once every line was counted", () => {
    expect(isComplete(asks, { kind: "counts", n: { stakePlate: 46 } }, { answers: {} })).toBe(false);
    expect(isComplete(asks, { kind: "counts", n: { stakePlate: 46, sidePole: 30 } }, { answers: {} })).toBe(true);
  });
  test("what was loaded and then dropped from the plan still has to come back", () => {
    const dropped = { kind: "counts", want: { sidePole: 30 }, as: "kit.loaded" } as const;
    const gate = { id: "back.kit", ...declared(dropped) };
    const back = { kind: "counts", n: { stakePlate: 46 } } as const;
    expect(accepts(gate, back, { answers: loaded })).toBe(true);
    expect(accepts(gate, back, { answers: {} })).toBe(false);
    expect(isComplete(dropped, { kind: "counts", n: { sidePole: 30 } }, { answers: loaded })).toBe(false);
  });
  test("what is newly said stands over what was said before", () =>
    expect(mergeAnswers(asks, { kind: "counts", n: { stakePlate: 1, sidePole: 2 } }, { kind: "counts", n: { sidePole: 3 } })).toEqual({
      kind: "counts",
      n: { stakePlate: 1, sidePole: 3 },
    }));
});
