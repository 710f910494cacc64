import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { replay } from "../../machines/record/replay.ts";

const folder = new URL("../golden/", import.meta.url);

/** Whole records as earlier versions of the procedure wrote them, byte for byte. */
describe.each(readdirSync(folder))("a job recorded under %s", (file) => {
  const lines = readFileSync(new URL(file, folder), "utf8")
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as { no: number; hash: string; bytes: string })
    .map((line) => ({ ...line, bytes: new TextEncoder().encode(line.bytes) }));

  it("replays to the same states and outcomes to its end", () => {
    const { mismatch, entries, job } = replay(lines);
    expect(mismatch).toBeNull();
    expect(entries.length).toBe(lines.length);
    expect((job.snapshot.value as { procedure: string }).procedure).toBe("closed");
  });
});
