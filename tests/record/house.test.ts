import { describe, expect, it } from "vitest";
import { digest, hashOf } from "../../machines/digest/digest.ts";
import { dayOf, type HouseEntry, houseEntryAfter, NO_HOUSE, readHouse, standAfter, type Tip } from "../../machines/record/house.ts";
import { compareWithHouse, verifyHouse } from "../../machines/record/verify-house.ts";

const DAY = 24 * 3600 * 1000;
const hash = (text: string) => hashOf(new TextEncoder().encode(text));
const tip = (job: string, no: number, version = ""): Tip => ({ job, no, hash: hash(`${job} ${no}${version}`) });

/** A house stream with an entry for each day, made from where every job stood. */
function streamOf(...days: readonly (readonly Tip[])[]) {
  let stand = NO_HOUSE;
  return days.map((tips, day) => {
    const made = houseEntryAfter(stand, tips, day * DAY);
    stand = standAfter(stand, made);
    return made;
  });
}
const asLines = (stream: ReturnType<typeof streamOf>) =>
  stream.map(({ entry, bytes, hash: of }) => ({ no: entry.no, bytes, hash: of, filed: { prev: entry.prev } }));
/** Jobs as they are, by how many entries each has. */
const kept =
  (jobs: Record<string, number>, version = "") =>
  (job: string) =>
    Object.hasOwn(jobs, job)
      ? { entries: jobs[job]!, hashAt: (no: number) => (no <= jobs[job]! ? hash(`${job} ${no}${version}`) : null) }
      : null;

describe("an entry of the house stream", () => {
  it("names the day in UTC, and only jobs whose last entry is another one", () => {
    const [first, second] = streamOf([tip("a", 3), tip("b", 1)], [tip("b", 4), tip("a", 3), tip("c", 1)]);
    expect(first!.entry).toMatchObject({ no: 1, day: "1970-01-01", jobs: 2, tips: [tip("a", 3), tip("b", 1)], gone: [] });
    expect(second!.entry).toMatchObject({ no: 2, day: "1970-01-02", jobs: 3, tips: [tip("b", 4), tip("c", 1)], gone: [] });
    expect(dayOf(Date.UTC(2026, 5, 2, 23, 59, 59, 999))).toBe("2026-06-02");
  });
  it("comes out to the byte, in whatever order the jobs are given", () => {
    const tips = [tip("b", 1), tip("a", 3)];
    expect(houseEntryAfter(NO_HOUSE, tips, 0).hash).toBe(houseEntryAfter(NO_HOUSE, [...tips].reverse(), 0).hash);
  });
  it("names a job that is taken away on purpose apart: it is counted no more, and missed by no later entry", () => {
    const first = houseEntryAfter(NO_HOUSE, [tip("a", 3), tip("b", 1)], 0);
    const second = houseEntryAfter(standAfter(NO_HOUSE, first), [tip("a", 3), tip("b", 1)], DAY, ["b"]);
    const third = houseEntryAfter(standAfter(standAfter(NO_HOUSE, first), second), [tip("a", 3)], 2 * DAY);
    expect([second, third].map(({ entry: { jobs, tips, gone, removed } }) => ({ jobs, tips, gone, removed }))).toEqual([
      { jobs: 1, tips: [], gone: [], removed: ["b"] },
      { jobs: 1, tips: [], gone: [], removed: [] },
    ]);
    const lines = asLines([first, second, third]);
    expect(readHouse(lines).broken).toBeNull();
    const { problems, removed } = verifyHouse(lines, kept({ a: 3 }));
    expect([problems, removed]).toEqual([[], [{ job: "b", day: "1970-01-02" }]]);
    // Taken away or not: one that is still there has to be as it was.
    expect(verifyHouse(lines, kept({ a: 3, b: 0 })).problems).toMatchObject([{ is: "cutOff", job: "b" }]);
    expect(verifyHouse(lines, kept({ a: 3, b: 1 })).removed).toEqual([]);
  });
  it("names a job that is there no more", () => {
    const [, second] = streamOf([tip("a", 3), tip("b", 1)], [tip("a", 3)]);
    expect(second!.entry).toMatchObject({ jobs: 1, tips: [], gone: ["b"] });
  });
});

describe("a house stream is read", () => {
  const stream = streamOf([tip("a", 3)], [tip("a", 5), tip("b", 1)], [tip("a", 5), tip("b", 2)]);
  it("whole, with what the next entry is made from", () => {
    const { entries, stand, broken } = readHouse(asLines(stream));
    expect([entries.length, broken, stand.last?.hash, [...stand.days]]).toEqual([
      3,
      null,
      stream[2]!.hash,
      ["1970-01-01", "1970-01-02", "1970-01-03"],
    ]);
    expect([...stand.known.values()]).toEqual([tip("a", 5), tip("b", 2)]);
  });
  /** The same with one entry made otherwise, and its hash with it. */
  const remade = (at: number, change: Partial<HouseEntry>) =>
    asLines(stream).map((line, i) => {
      if (i !== at) return line;
      const entry = { ...stream[at]!.entry, ...change };
      const bytes = digest.bytes(entry);
      return { ...line, bytes, hash: hashOf(bytes) };
    });
  it.each<[string, ReturnType<typeof asLines>, number, string]>([
    ["that another one was put into", remade(1, { prev: hash("x") }), 2, "prev"],
    ["that says another number of jobs than it comes to", remade(2, { jobs: 9 }), 3, "count"],
    ["whose last digest over all jobs is another one", remade(2, { all: hash("x") }), 3, "count"],
    ["with an entry changed, which then is not followed", remade(0, { at: 7 }), 2, "prev"],
    ["with an entry left out", asLines(stream).filter((_, i) => i !== 1), 2, "gap"],
    [
      "with bytes that are none",
      asLines(stream).map((l, i) => (i === 1 ? { ...l, bytes: new Uint8Array(), hash: hashOf(new Uint8Array()) } : l)),
      2,
      "notJson",
    ],
  ])("%s up to there", (_what, lines, no, why) => {
    const house = readHouse(lines);
    expect([house.broken, house.entries.length]).toEqual([{ no, why }, no - 1]);
    // What comes next still follows what lies there.
    expect(house.stand.last?.no).toBe(lines.at(-1)!.no);
  });
  it("of nothing is nothing", () => expect(readHouse([])).toMatchObject({ entries: [], broken: null, stand: { last: null } }));
});

describe("jobs are held against a house stream", () => {
  const lines = asLines(streamOf([tip("a", 3)], [tip("a", 9), tip("b", 2)], [tip("a", 12), tip("b", 2)]));
  it("that are as it says, or longer: nothing is wrong, and it is said up to where", () => {
    const { problems, agrees } = verifyHouse(lines, kept({ a: 20, b: 2, unheardOf: 1 }));
    expect([problems, agrees.get("a"), agrees.get("b"), agrees.has("unheardOf")]).toEqual([
      [],
      { no: 12, day: "1970-01-03" },
      { no: 2, day: "1970-01-02" },
      false,
    ]);
  });
  it.each([
    [{ a: 11, b: 2 }, "cutOff", 12, 11, { no: 9, day: "1970-01-02" }],
    [{ a: 4, b: 2 }, "cutOff", 12, 4, { no: 3, day: "1970-01-01" }],
    [{ a: 2, b: 2 }, "cutOff", 12, 2, null],
    [{ b: 2 }, "gone", 12, 0, null],
  ])("of which %j are left: the last that it said is told, and up to where it still is so", (jobs, is, no, has, agrees) => {
    expect(verifyHouse(lines, kept(jobs)).problems).toEqual([{ is, job: "a", said: { no, day: "1970-01-03" }, has, agrees }]);
  });
  it("one that was rewritten is told by the first entry that is another one", () => {
    const { problems } = verifyHouse(lines, (job) => (job === "a" ? kept({ a: 20 }, " forged")("a") : kept({ b: 2 })(job)));
    expect(problems).toEqual([{ is: "rewritten", job: "a", said: { no: 3, day: "1970-01-01" }, has: 20, agrees: null }]);
  });
  it("one alone, where only that is asked about", () => {
    expect(compareWithHouse(readHouse(lines), () => null, "b").problems).toMatchObject([{ is: "gone", job: "b" }]);
  });
});
