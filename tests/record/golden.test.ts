import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { replay } from "../../machines/record/replay.ts";
import { recordGolden } from "../support/golden.ts";
import { GOLDEN, goldenLines } from "../support/golden-file.ts";

const folder = new URL("../golden/", import.meta.url);

/** Whole records, byte for byte, as each version of the procedure wrote them. */
describe.each(readdirSync(folder))("a job recorded under %s", (file) => {
  it("replays to the same states and outcomes to its end", () => {
    const lines = goldenLines(readFileSync(new URL(file, folder), "utf8"));
    const { mismatch, entries, job } = replay(lines);
    expect(mismatch).toBeNull();
    expect(entries.length).toBe(lines.length);
    expect((job.snapshot.value as { procedure: string }).procedure).toBe("closed");
  });
});

it("has a whole raise, a hurt hand, a squall under the center pole, a blow over the standing tent, and a strike by another crew", () => {
  const { entries } = replay(goldenLines(readFileSync(GOLDEN, "utf8")));
  const commands = entries.flatMap(({ entry }) => (entry.kind === "command" ? [entry] : []));
  const readings = commands.flatMap(({ step, command: c }) => (c.type === "reading" ? [`${c.reading.kind} at ${step}`] : []));
  expect(commands.map(({ step, command: { type } }) => `${type} at ${step}`)).toContain("hurt at raise.B");
  expect(readings).toEqual(expect.arrayContaining(["thunder at lift.center.C1", "wind at watch", "rain at watch"]));
  const crews = commands.flatMap(({ command: c }) => (c.type === "amend" ? [c.to.brief.crew.length] : []));
  expect(crews).toEqual([7, 7, 8, 6]);
  expect(commands.at(-1)).toMatchObject({ step: "closed", command: { by: "p2" } });
});

/** Until a release is tagged, an issue that changes it re-records it, in a commit of its own that says why. */
it("the same job recorded today is the same to the byte", async () => {
  const [today, kept] = [(await recordGolden()).split("\n"), readFileSync(GOLDEN, "utf8").split("\n")];
  const at = today.findIndex((line, i) => line !== kept[i]);
  expect({ at, today: today[at], kept: kept[at] }).toEqual({ at: -1, today: undefined, kept: undefined });
});
