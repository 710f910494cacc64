import { readFileSync } from "node:fs";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { DOUBT_KINDS } from "../../machines/record/doubts/doubt.ts";
import { addDoubts, doubtsIn, doubtsOf, openDoubts } from "../../machines/record/doubts/doubts.ts";
import { type Entries, lookupIn } from "../../machines/record/entries.ts";
import type { CommandEntry, Opening } from "../../machines/record/entry.ts";
import { MINUTE, SECOND } from "../proof/fixtures.ts";
import { GOLDEN, goldenLines } from "../support/golden-file.ts";
import { PacedJob, plainBrief, plannedMs } from "./doubts-crew.ts";

/** Seeded pseudorandom numbers from 0 up to 1: a 32-bit linear congruential generator. */
function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** A crew that takes between a third and three times what is planned for each call, measures, and reads a wind that changes. */
function believable(seed: number): PacedJob {
  const next = random(seed);
  const between = (from: number, to: number) => from + (to - from) * next();
  const job = new PacedJob();
  const planned = plannedMs(job.job.frozen);
  let last = "";
  job.pauseMs = () => {
    const isWork = job.call !== last;
    last = job.call;
    return isWork ? (planned.get(job.call) ?? MINUTE) * between(0.35, 3) : between(6, 60) * SECOND;
  };
  job.measures = (check, value) =>
    check.kind === "measure" && value.kind === "measure"
      ? { ...value, n: Math.max(0, value.n + (check.from === null ? -1 : 1) * next()) }
      : value;
  job.wind = () => {
    const mph = Math.round(between(2, 9) * 10) / 10;
    const reading = {
      kind: "wind",
      mph,
      gustMph: Math.round((mph + between(1, 6)) * 10) / 10,
      takenAt: job.at,
      fromDeg: null,
      place: null,
    } as const;
    return job.say({ type: "reading", reading });
  };
  return job.until(() => job.call === "closed");
}

const golden = (): Entries =>
  goldenLines(readFileSync(GOLDEN, "utf8")).map(({ bytes }) => ({
    entry: JSON.parse(new TextDecoder().decode(bytes)),
  })) as unknown as Entries;

/** Entry by entry, with all that is kept written down and read again in between. */
function oneByOne(entries: Entries) {
  const [first, ...rest] = entries;
  let state = openDoubts(first!.entry as Opening);
  for (const { entry } of rest) state = JSON.parse(JSON.stringify(addDoubts(state, entry as CommandEntry, lookupIn(entries))));
  return doubtsOf(state);
}

describe("a raise and a strike in twenty seconds", () => {
  let hurried: PacedJob;
  beforeAll(() => {
    hurried = PacedJob.playedBy(80);
  });
  it("take no longer than that", () => expect(hurried.at - hurried.entries[0]!.at).toBeLessThan(20 * SECOND));
  it("stand there with at least five kinds of doubt", () => {
    const kinds = new Set(doubtsIn(hurried.record).map(({ kind }) => kind));
    expect([...kinds]).toEqual(["quickSecond", "tooFastWalk", "tooFastDriving", "tooFastReading", "tooFastPhase"]);
  });
  it("name every phase but the stand as too fast", () =>
    expect(hurried.doubts("tooFastPhase").map(({ phase }) => phase)).toEqual([
      "utilitiesMarked",
      "anchorsSet",
      "sectionsJoined",
      "perimeterRaised",
      "interiorRaised",
      "tensioned",
      "inspected",
      "struck",
    ]));
  it("say where and by whom: entries of the record in their order, and people of the crew", () => {
    for (const { entries, by } of doubtsIn(hurried.record)) {
      expect(entries.length).toBeGreaterThan(0);
      expect(entries).toEqual([...new Set(entries)].sort((a, b) => a - b));
      expect(entries.at(-1)).toBeLessThanOrEqual(hurried.entries.length);
      expect(["lena", "david"]).toEqual(expect.arrayContaining([...by]));
    }
  });
  it("come in the order of their kinds", () => {
    const order = doubtsIn(hurried.record).map(({ kind }) => DOUBT_KINDS.indexOf(kind));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });
  it("are nobody's business in a rehearsal", () =>
    expect(doubtsIn(PacedJob.playedBy(80, plainBrief({ rehearsal: true })).record)).toEqual([]));
  it("come to the same entry by entry, kept as JSON in between", () => {
    const all = doubtsIn(hurried.record);
    expect(oneByOne(hurried.record)).toEqual(all);
    expect(JSON.parse(JSON.stringify(all))).toEqual(all);
  });
  it("keep little: less than a tenth of the record", () => {
    const [first, ...rest] = hurried.record;
    let state = openDoubts(first!.entry as Opening);
    for (const { entry } of rest) state = addDoubts(state, entry as CommandEntry, lookupIn(hurried.record));
    expect(JSON.stringify(state).length).toBeLessThan(JSON.stringify(hurried.entries).length / 10);
  });
});

it("a crew that works at a believable pace has nothing to look at", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      expect(doubtsIn(believable(seed).record)).toEqual([]);
    }),
    { numRuns: 5 },
  );
});

it("a record with squalls, changes, a hurt hand and refusals comes to the same entry by entry, up to any entry", () => {
  const entries = golden();
  expect(oneByOne(entries)).toEqual(doubtsIn(entries));
  const [first, ...rest] = entries;
  let state = openDoubts(first!.entry as Opening);
  for (const [i, { entry }] of rest.entries()) {
    state = addDoubts(state, entry as CommandEntry, lookupIn(entries));
    if (i % 40 === 0) expect(doubtsOf(state)).toEqual(doubtsIn(entries.slice(0, i + 2)));
  }
});

it("a record that does not begin with its opening is told so", () =>
  expect(() => doubtsIn(golden().slice(1))).toThrow("does not begin with an opening"));
