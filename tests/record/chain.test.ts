import { beforeAll, describe, expect, it } from "vitest";
import { replay } from "../../machines/record/replay.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { brief, testApp } from "../support/app.ts";

type Lines = Awaited<ReturnType<ReturnType<typeof testApp>["journal"]["read"]>>;
let lines: Lines;

beforeAll(async () => {
  const { post, journal } = testApp();
  const { job } = (await (await post("/jobs", { key: "open-0001", brief: brief() })).json()) as { job: string };
  for (let n = 1; n <= 6; n++)
    await post(`/jobs/${job}/say`, { as: "Ines", key: `note-0000${n}`, seen: 0, type: "note", text: `stake ${n}` });
  lines = await journal.read(job);
});

const swapped = (i: number, by: Partial<Lines[number]>) => lines.map((line, at) => (at === i ? { ...line, ...by } : line));

describe("a record", () => {
  it("that nobody touched holds, and replays to what was recorded", () => {
    expect(verifyChain(lines).holds).toBe(true);
    expect(replay(lines).mismatch).toBeNull();
  });
  it("with one byte changed does not hold from that entry on", () => {
    const bytes = Uint8Array.from(lines[3]!.bytes);
    bytes[bytes.length - 5]! ^= 1;
    expect(verifyChain(swapped(3, { bytes }))).toMatchObject({ holds: false, firstMismatch: 4, why: "hash" });
  });
  it("with an entry missing in the middle names the place", () =>
    expect(verifyChain(lines.filter((_, i) => i !== 2))).toMatchObject({ holds: false, firstMismatch: 3, why: "gap" }));
  it("with two entries swapped names the first", () =>
    expect(verifyChain([...lines.slice(0, 2), lines[3]!, lines[2]!, ...lines.slice(4)])).toMatchObject({ holds: false, firstMismatch: 3 }));
  it("opens for reading only where it is broken, with what holds before", () => {
    const { entries, mismatch } = replay(swapped(4, { bytes: lines[3]!.bytes }));
    expect([entries.length, mismatch]).toEqual([4, { no: 5, why: "chain" }]);
  });
});
