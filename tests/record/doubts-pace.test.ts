import { beforeAll, describe, expect, it } from "vitest";
import { drivingMs } from "../../machines/record/doubts/fastest.ts";
import { MIN_READING_MS, MIN_UNREAD } from "../../machines/record/doubts/too-fast-reading.ts";
import { walkMs } from "../../machines/record/doubts/too-fast-walk.ts";
import { HOUR, MINUTE, SECOND } from "../proof/fixtures.ts";
import { goodValue } from "../support/answers.ts";
import { PacedJob } from "./doubts-crew.ts";

/** Five on site, 360 ft around, 28 stakes along A–B with its corner. */
const PEOPLE = 5;
const AROUND_FT = 360;

let raise: PacedJob;
const standing = new Map<string, PacedJob>();
/** The same unhurried raise, at a call. */
const at = (call: string): PacedJob => {
  const job = standing.get(call);
  if (!job) throw new Error(`keep ${call} first`);
  return job.fork();
};
const CALLS = [
  "talk.hazards",
  "drive.AB",
  "stakes.bent",
  "lean.outward",
  "sides.feet",
  "round.again",
  "walked",
  "looked.S1.AB",
  "plan.evacuate",
];
beforeAll(() => {
  raise = new PacedJob();
  raise.pauseMs = 4 * MINUTE;
  raise.until(() => {
    if (CALLS.includes(raise.call) && !standing.has(raise.call)) standing.set(raise.call, raise.fork());
    return standing.size === CALLS.length;
  });
});
const goodAt = (job: PacedJob, afterMs: number, more: { doubtMs?: number; aheadMs?: number } = {}) => {
  const { gate } = job.job.frozen.script.steps.find((s) => s.id === job.call)!;
  const role = gate!.secondPersonTo ? "deputy" : "lead";
  return job.tell({ type: "answer", gate: gate!.id, value: goodValue(gate!.check) }, { role, afterMs, ...more });
};

describe("a walk that is answered for", () => {
  it("sooner than the crew can walk it is a doubt, with feet, people and seconds", () => {
    const job = at("lean.outward");
    goodAt(job, 4 * SECOND);
    const [doubt] = job.doubts("tooFastWalk");
    expect(doubt).toMatchObject({ phase: "anchorsSet", by: ["lena"], entries: [job.entries.length] });
    expect(doubt!.facts).toEqual({ call: "lean.outward", feet: AROUND_FT, people: PEOPLE, seconds: 4, minSeconds: 8.7 });
  });
  it("in just the time that it takes is none", () => {
    const job = at("lean.outward");
    goodAt(job, Math.ceil(walkMs(AROUND_FT / PEOPLE)));
    expect(job.doubts("tooFastWalk")).toEqual([]);
  });
  it("by one person alone takes that person all the way around, however long the crew took before", () => {
    const [slow, fast] = [at("walked"), at("walked")];
    goodAt(fast, 40 * SECOND);
    goodAt(slow, 44 * SECOND);
    expect(fast.doubts("tooFastWalk")[0]!.facts).toMatchObject({ people: 1, minSeconds: 43.3 });
    expect(slow.doubts("tooFastWalk")).toEqual([]);
  });
  it("along a seam is as long as that half", () => {
    const job = at("looked.S1.AB");
    goodAt(job, 4 * SECOND);
    expect(job.doubts("tooFastWalk")[0]!.facts).toMatchObject({ feet: 40, people: 1, minSeconds: 4.8 });
  });
  it("once for several calls: whoever looked at it all in one round may answer the rest at once", () => {
    const job = at("sides.feet");
    goodAt(job, 3 * MINUTE);
    for (const _ of ["pins.both", "straps.turns", "straps.locked"]) goodAt(job, 3 * SECOND);
    expect(job.call).toBe("sides.notTight");
    expect(job.doubts("tooFastWalk")).toEqual([]);
  });
  it("but a round of four that took less than one of them is a doubt for three of them at least", () => {
    const job = at("sides.feet");
    for (const _ of ["feet", "pins", "turns", "locked"]) goodAt(job, 2 * SECOND);
    expect(job.doubts("tooFastWalk").map(({ facts }) => facts.call)).toEqual(["sides.feet", "pins.both", "straps.turns", "straps.locked"]);
  });
  it("with an answer that is out of limits has not been answered for yet", () => {
    const job = at("lean.outward");
    const value = { kind: "figures", unit: "deg", n: { AB: 40, BC: 3, CD: 3, DA: 3 } } as const;
    job.tell({ type: "answer", gate: "lean.outward", value }, { afterMs: 2 * SECOND });
    expect(job.doubts("tooFastWalk")).toEqual([]);
  });
  it("in parts is answered for with the last of them", () => {
    const job = at("lean.outward");
    const part = (name: string, afterMs: number) =>
      job.tell({ type: "answer", gate: "lean.outward", value: { kind: "figures", unit: "deg", n: { [name]: 3 } } }, { afterMs });
    for (const name of ["AB", "BC", "CD", "DA"]) part(name, 3 * SECOND);
    expect(job.call).toBe("stakes.corners");
    expect(job.doubts("tooFastWalk")).toEqual([]);
  });
  it("again after going back is not walked again", () => {
    const job = at("lean.outward");
    goodAt(job, MINUTE);
    job.tell({ type: "back" });
    expect(job.call).toBe("lean.outward");
    goodAt(job, SECOND);
    expect(job.doubts("tooFastWalk")).toEqual([]);
  });
  it("while the clock may not have run is not judged", () => {
    for (const clock of [{ doubtMs: SECOND }, { aheadMs: HOUR }]) {
      const job = at("lean.outward");
      goodAt(job, 2 * SECOND, clock);
      expect(job.doubts("tooFastWalk")).toEqual([]);
    }
  });
  it("is judged again once the clock runs true", () => {
    const job = at("drive.AB");
    goodAt(job, HOUR, { doubtMs: HOUR });
    job.to("lean.outward");
    goodAt(job, 2 * SECOND);
    expect(job.doubts("tooFastWalk").map(({ facts }) => facts.call)).toEqual(["lean.outward"]);
  });
});

describe("an edge of stakes", () => {
  it("driven sooner than this crew can is a doubt, with stakes, people and seconds", () => {
    const job = at("drive.AB");
    goodAt(job, MINUTE);
    expect(job.doubts("tooFastDriving")).toEqual([
      expect.objectContaining({
        phase: "anchorsSet",
        by: ["lena"],
        facts: { call: "drive.AB", stakes: 28, people: PEOPLE, seconds: 60, minSeconds: 224 },
      }),
    ]);
  });
  it("driven as fast as is believed is none", () => {
    const job = at("drive.AB");
    goodAt(job, drivingMs(28, PEOPLE));
    expect(job.doubts("tooFastDriving")).toEqual([]);
  });
  it("may be answered at once where all edges were driven before the first was", () => {
    const job = at("drive.AB");
    goodAt(job, 14 * MINUTE);
    for (const _ of ["BC", "CD", "DA"]) goodAt(job, 5 * SECOND);
    expect(job.doubts("tooFastDriving")).toEqual([]);
  });
  it("but not where there was time for two of the four", () => {
    const job = at("drive.AB");
    goodAt(job, 7 * MINUTE);
    for (const _ of ["BC", "CD", "DA"]) goodAt(job, 5 * SECOND);
    expect(job.doubts("tooFastDriving").map(({ facts }) => facts.call)).toEqual(["drive.CD", "drive.DA"]);
  });
});

describe("a call", () => {
  const hurried = (calls: number, ms: number) => {
    const job = at("talk.hazards");
    for (let i = 0; i < calls; i++) job.tell({ type: "next" }, { afterMs: ms });
    return job.doubts("tooFastReading");
  };
  it("gone on from three times sooner than it can be read is a doubt, once for the phase", () => {
    const [doubt, ...more] = hurried(4, 400);
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ phase: "utilitiesMarked", by: ["lena"], facts: { count: 4, fastestSeconds: 0.4, minSeconds: 1 } });
    expect(doubt!.entries.length).toBe(4);
  });
  it("gone on from once or twice is none", () => expect(hurried(MIN_UNREAD - 1, 400)).toEqual([]));
  it("gone on from in just that time is none", () => expect(hurried(4, MIN_READING_MS)).toEqual([]));
  it("answered in passing, on another phone, was not read there", () => {
    const job = at("plan.evacuate");
    const before = job.doubts("tooFastReading").length;
    for (let i = 0; i < 4; i++) {
      job.tell({ type: "answer", gate: "warning", value: { kind: "yesNo", yes: true } }, { role: "competent", afterMs: 300 });
    }
    expect(job.doubts("tooFastReading").length).toBe(before);
  });
  it("of a way out is read later: there people run", () => {
    const job = at("stakes.bent");
    job.tell({ type: "makeSafe", because: "lightning" }, { afterMs: 200 });
    for (let i = 0; i < 3; i++) job.tell({ type: "next" }, { afterMs: 200 });
    expect(job.call).toBe("safe.ground.headcount");
    expect(job.doubts("tooFastReading")).toEqual([]);
  });
});

describe("a whole phase", () => {
  it("over in a small part of what is planned is a doubt, from its first entry to its last", () => {
    const job = new PacedJob();
    job.pauseMs = 5 * SECOND;
    job.to("baseline");
    const [doubt, ...more] = job.doubts("tooFastPhase");
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ phase: "utilitiesMarked", entries: [1, job.entries.length], by: ["lena"] });
    expect(doubt!.facts).toMatchObject({ minSeconds: 126, calls: 21, people: PEOPLE });
  });
  it("gone back into and out of again was long enough the first time", () => {
    const job = new PacedJob();
    job.pauseMs = MINUTE;
    job.to("baseline");
    job.tell({ type: "back" });
    job.pauseMs = SECOND;
    job.to("corner.first");
    expect(job.doubts("tooFastPhase")).toEqual([]);
  });
  it("that was stood down into is not whole", () => {
    const job = at("stakes.bent");
    job.tell({ type: "standDown", because: "rained off" });
    job.pauseMs = SECOND;
    job.until(() => job.call === "closed");
    expect(job.doubts("tooFastPhase")).toEqual([]);
  });
});
