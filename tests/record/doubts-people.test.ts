import { describe, expect, it } from "vitest";
import type { Intent } from "../../machines/install/commands.ts";
import type { Value } from "../../machines/install/gates.ts";
import { MIN_SECOND_LOOK_MS } from "../../machines/record/doubts/quick-second.ts";
import { briefOf, frozenOf, HOUR, MIDDLE, MINUTE, SECOND } from "../proof/fixtures.ts";
import { PAPER } from "../support/answers.ts";
import { PacedJob, plainBrief } from "./doubts-crew.ts";

const come = (call: string): PacedJob => {
  const found = kept.get(call) ?? new PacedJob().to(call);
  kept.set(call, found);
  return found.fork();
};
const kept = new Map<string, PacedJob>();

const YES: Value = { kind: "yesNo", yes: true };
const NO: Value = { kind: "yesNo", yes: false };
const answer = (gate: string, value: Value): Intent => ({ type: "answer", gate, value });
const inches = (n: number): Value => ({ kind: "measure", unit: "in", n });
const wind = (job: PacedJob, gustMph: number, mph = 4): Intent => ({
  type: "reading",
  reading: { kind: "wind", mph, gustMph, takenAt: job.at, fromDeg: null, place: null },
});

describe("a second person's look", () => {
  const looked = (afterMs: number) => {
    const job = come("laid.order");
    job.tell(answer("laid.order", YES), { afterMs: MINUTE });
    job.tell(answer("laid.looked", YES), { role: "deputy", afterMs });
    return job;
  };
  it("within seconds of the first is a doubt that names both entries and both people", () => {
    const job = looked(3 * SECOND);
    const last = job.entries.length;
    expect(job.doubts("quickSecond")).toEqual([
      {
        kind: "quickSecond",
        entries: [last - 1, last],
        phase: "sectionsJoined",
        by: ["lena", "david"],
        facts: { to: "answer", gate: "laid.looked", seconds: 3, minSeconds: 5 },
      },
    ]);
  });
  it("after as long as a look takes is none", () => expect(looked(MIN_SECOND_LOOK_MS).doubts("quickSecond")).toEqual([]));
  it("that found something is none, however quick", () => {
    const job = come("laid.order");
    job.tell(answer("laid.order", YES));
    job.tell(answer("laid.looked", NO), { role: "deputy" });
    expect(job.doubts("quickSecond")).toEqual([]);
  });
  it("is not judged where the clock may not have run", () => {
    const job = come("laid.order");
    job.tell(answer("laid.order", YES));
    job.tell(answer("laid.looked", YES), { role: "deputy", doubtMs: SECOND });
    expect(job.doubts("quickSecond")).toEqual([]);
  });
  it("by voice is counted from when the first was spoken, to when the second counted", () => {
    const job = come("laid.order");
    const talk = { source: "talk" } as const;
    const first = job.tell({ type: "readBack", intent: { type: "answer", gate: "laid.order", value: YES } }, talk);
    job.tell({ type: "correct", target: first.no }, { ...talk, afterMs: 4 * SECOND });
    const second = job.tell({ type: "readBack", intent: { type: "answer", gate: "laid.looked", value: YES } }, { ...talk, role: "deputy" });
    expect(job.doubts("quickSecond")).toEqual([]);
    job.tell({ type: "correct", target: second.no }, { ...talk, role: "deputy" });
    expect(job.doubts("quickSecond")).toEqual([]);
    expect(job.call).not.toBe("laid.looked");
  });
  it("that was read back and never confirmed is no look at all", () => {
    const job = come("laid.order");
    job.tell(answer("laid.order", YES));
    job.tell({ type: "readBack", intent: { type: "answer", gate: "laid.looked", value: YES } }, { source: "talk", role: "deputy" });
    expect(job.doubts("quickSecond")).toEqual([]);
  });
});

describe("other second people", () => {
  it("a change agreed to within seconds is a doubt", () => {
    const job = new PacedJob();
    const to = frozenOf({ ...plainBrief(), title: "another name" });
    const { no } = job.tell({ type: "amend", because: "misspelled", to });
    job.tell({ type: "agree", target: no }, { role: "competent", afterMs: 2 * SECOND });
    expect(job.doubts("quickSecond")[0]).toMatchObject({
      entries: [no, no + 1],
      by: ["lena", "cora"],
      facts: { to: "change", seconds: 2 },
    });
  });
  it("a paper looked at within seconds is a doubt, and one looked at for a minute is none", () => {
    for (const [afterMs, doubts] of [
      [2 * SECOND, 1],
      [MINUTE, 0],
    ] as const) {
      const job = come("stakes.size");
      job.tell(answer("stakes.size", PAPER));
      job.tell(answer("stakes.size", PAPER), { role: "competent", afterMs });
      expect(job.doubts("quickSecond").map(({ facts }) => facts.to)).toEqual(Array(doubts).fill("paper"));
    }
  });
  it("two people's answers from one phone are one doubt a phase, with how many", () => {
    const job = come("laid.order");
    const device = "the only phone";
    job.tell(answer("laid.order", YES), { device });
    job.tell(answer("laid.looked", YES), { role: "deputy", device, afterMs: MINUTE });
    job.to("tied.S1.AB");
    job.tell(answer("tied.S1.AB", YES), { device });
    job.tell(answer("looked.S1.AB", { kind: "count", n: 0 }), { role: "deputy", device, afterMs: MINUTE });
    const [doubt, ...more] = job.doubts("sameDevice");
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ phase: "sectionsJoined", by: ["lena", "david"], facts: { count: 2 } });
    expect(doubt!.entries.length).toBe(2);
  });
  it("on phones of their own there is nothing to see", () => expect(come("tied.S1.AB").doubts("sameDevice")).toEqual([]));
});

describe("a bad answer", () => {
  const driven = (...said: readonly (readonly [Intent, number])[]) => {
    const job = come("drive.AB");
    for (const [ask, afterMs] of said) job.tell(ask, { afterMs });
    return job.doubts("outOfLimitThen");
  };
  const bad = answer("drive.AB", inches(7.5));
  const good = answer("drive.AB", inches(5));
  it("and a good one to the same gate within seconds is a doubt, with both values", () => {
    const [doubt, ...more] = driven([bad, HOUR / 2], [good, 6 * SECOND]);
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ phase: "anchorsSet", by: ["lena"] });
    expect(doubt!.facts).toEqual({ gate: "drive.AB", was: 7.5, is: 5, unit: "in", seconds: 6, minSeconds: 15 });
  });
  it("is none once there was time to put it right", () => expect(driven([bad, HOUR / 2], [good, 15 * SECOND])).toEqual([]));
  it("is none where something was done in between, such as a note that says what", () =>
    expect(driven([bad, HOUR / 2], [{ type: "note", text: "read the wrong side" }, SECOND], [good, SECOND])).toEqual([]));
  it("is one also where only a refusal came in between", () =>
    expect(driven([bad, HOUR / 2], [{ type: "next" }, SECOND], [good, SECOND]).length).toBe(1));
  it("twice, and a good one long after, is none", () => expect(driven([bad, HOUR / 2], [bad, SECOND], [good, MINUTE])).toEqual([]));
  it("of several figures names the one that changed", () => {
    const job = come("lean.outward");
    const leans = (n: Record<string, number>) => answer("lean.outward", { kind: "figures", unit: "deg", n });
    job.tell(leans({ AB: 3, BC: 22, CD: 3, DA: 3 }), { afterMs: MINUTE });
    job.tell(leans({ BC: 12 }), { role: "competent", afterMs: 3 * SECOND });
    const [doubt] = job.doubts("outOfLimitThen");
    expect(doubt).toMatchObject({ by: ["lena", "cora"], facts: { name: "BC", was: 22, is: 12, unit: "deg" } });
  });
  it("of too few who came out is one, a yes after a no is one", () => {
    const under = come("laid.order");
    under.tell(answer("laid.order", NO));
    under.tell(answer("laid.order", YES));
    expect(under.doubts("outOfLimitThen")[0]!.facts).toMatchObject({ was: "no", is: "yes" });
    const out = come("lower.center.C2");
    out.tell(answer("lower.center.C2", { kind: "count", n: 2 }), { role: "deputy", afterMs: MINUTE });
    out.tell(answer("lower.center.C2", { kind: "count", n: 3 }), { role: "deputy", afterMs: 4 * SECOND });
    expect(out.doubts("outOfLimitThen")[0]!.facts).toMatchObject({ was: 2, is: 3, seconds: 4 });
  });
  it("wind over a limit, and under it seconds later, is one for the strictest work it opens", () => {
    const job = new PacedJob();
    job.tell(wind(job, 22.5), { afterMs: MINUTE });
    job.tell(wind(job, 17), { afterMs: 8 * SECOND });
    const [doubt] = job.doubts("outOfLimitThen");
    expect(doubt!.facts).toEqual({ gate: "wind.cloth", was: 22.5, is: 17, unit: "mph", seconds: 8, minSeconds: 15 });
  });
  it("wind that drops over a minute is none", () => {
    const job = new PacedJob();
    job.tell(wind(job, 22.5));
    job.tell(wind(job, 17), { afterMs: MINUTE });
    expect(job.doubts("outOfLimitThen")).toEqual([]);
  });
});

describe("next, refused", () => {
  const pressed = (times: number, afterMs: number) => {
    const job = come("drive.AB");
    for (let i = 0; i < times; i++) job.tell({ type: "next" }, { afterMs });
    return job;
  };
  it("three times at a gate before its answer is a doubt, once it is answered", () => {
    const job = pressed(3, MINUTE);
    expect(job.doubts("refusedBeforeAnswer")).toEqual([]);
    job.tell(answer("drive.AB", inches(4)), { role: "competent", afterMs: MINUTE });
    const last = job.entries.length;
    expect(job.doubts("refusedBeforeAnswer")).toEqual([
      {
        kind: "refusedBeforeAnswer",
        entries: [last - 3, last - 2, last - 1, last],
        phase: "anchorsSet",
        by: ["lena", "cora"],
        facts: { gate: "drive.AB", count: 3 },
      },
    ]);
  });
  it("twice is none", () => {
    const job = pressed(2, MINUTE);
    job.tell(answer("drive.AB", inches(4)));
    expect(job.doubts("refusedBeforeAnswer")).toEqual([]);
  });
  it("by a glove that presses five times in two seconds counts once", () => {
    const job = pressed(5, 400);
    job.tell(answer("drive.AB", inches(4)));
    expect(job.doubts("refusedBeforeAnswer")).toEqual([]);
  });
  it("and a bad answer has not answered it", () => {
    const job = pressed(3, MINUTE);
    job.tell(answer("drive.AB", inches(8)));
    expect(job.doubts("refusedBeforeAnswer")).toEqual([]);
    job.tell(answer("drive.AB", inches(4)), { afterMs: MINUTE });
    expect(job.doubts("refusedBeforeAnswer").length).toBe(1);
  });
  it("for too much wind is answered by a reading under the limit", () => {
    const job = come("laid.order");
    job.tell(wind(job, 22));
    for (let i = 0; i < 3; i++) job.tell({ type: "next" }, { afterMs: MINUTE });
    job.tell(answer("laid.order", YES));
    for (let i = 0; i < 3; i++) job.tell({ type: "next" }, { afterMs: MINUTE });
    job.tell(wind(job, 21));
    expect(job.doubts("refusedBeforeAnswer").map(({ facts }) => facts.gate)).toEqual(["laid.order"]);
    job.tell(wind(job, 12), { afterMs: MINUTE });
    expect(job.doubts("refusedBeforeAnswer").map(({ facts }) => facts)).toEqual([
      { gate: "laid.order", count: 3 },
      { gate: "wind.cloth", count: 3 },
    ]);
  });
});

describe("wind readings", () => {
  const read = (winds: readonly (readonly [mph: number, gustMph: number])[], everyMs: number, doubtMs = 0) => {
    const job = new PacedJob();
    for (const [mph, gustMph] of winds) job.tell(wind(job, gustMph, mph), { afterMs: everyMs, doubtMs });
    return job.doubts("sameReading");
  };
  const same = (n: number) => Array.from({ length: n }, () => [6.2, 9.4] as const);
  it("four in a row that are equal, over more than an hour, are a doubt", () => {
    const [doubt, ...more] = read(same(4), 25 * MINUTE);
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ entries: [2, 3, 4, 5], by: ["lena"], facts: { mph: 6.2, gustMph: 9.4, count: 4, seconds: 4500 } });
  });
  it("three are none, and neither are four within the hour", () => {
    expect(read(same(3), HOUR)).toEqual([]);
    expect(read(same(4), 19 * MINUTE)).toEqual([]);
  });
  it("another one in between begins a new row", () => expect(read([...same(2), [6.2, 9.5], ...same(2)], HOUR)).toEqual([]));
  it("of a calm are not compared", () =>
    expect(
      read(
        Array.from({ length: 6 }, () => [0, 0.8] as const),
        HOUR,
      ),
    ).toEqual([]));
  it("are not, where the clock may not have run", () => expect(read(same(6), HOUR, SECOND)).toEqual([]));
});

describe("measurements", () => {
  const exact = (break_?: string) => {
    const job = new PacedJob(briefOf(MIDDLE, { site: { soilKnown: true, overheadKv: [7.2] } }));
    job.measures = (check, value) => {
      if (check.kind === "measure" && value.kind === "measure" && check.from !== null && check.to !== null)
        return { ...value, n: check.to };
      return value;
    };
    job.until(() => {
      if (job.call === break_) job.tell(answer(break_, inches(3.5)), { afterMs: 20 * MINUTE });
      return job.call === "plan.evacuate";
    });
    return job.doubts("alwaysExact");
  };
  it("that are always exactly the limit are one doubt, with how many gates and where", () => {
    const [doubt, ...more] = exact();
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ phase: "utilitiesMarked", by: ["lena"] });
    expect(doubt!.facts.count).toBeGreaterThanOrEqual(10);
    expect(doubt!.entries.length).toBe(doubt!.facts.count);
  });
  it("of which a single one is not are none", () => expect(exact("drive.CD")).toEqual([]));
  it("at nine gates are none yet", () => {
    const job = new PacedJob();
    job.measures = (check, value) =>
      check.kind === "measure" && value.kind === "measure" ? { ...value, n: check.to ?? check.from! } : value;
    job.to("lean.outward");
    expect(job.doubts("alwaysExact")).toEqual([]);
  });
});
