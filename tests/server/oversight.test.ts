import { rmSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import Database from "libsql";
import { afterAll, describe, expect, it } from "vitest";
import type { Sealed } from "../../machines/record/entry.ts";
import { overseeAll } from "../../machines/record/oversight/oversight.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { ANY } from "../../server/journal/oversight.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { scratchFolder } from "../support/scratch.ts";
import { keep, recordOf } from "../support/seen-jobs.ts";
import { oversightContract } from "./oversight.contract.ts";

oversightContract("in SQLite", () => sqliteJournal(":memory:"));
oversightContract("in memory", memoryJournal);

const folder = scratchFolder("oversight");
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;
const newFile = () => join(folder, `data-${++files}.db`);

/** All that is kept for oversight, in an order of its own. */
async function kept({ oversight }: Journal) {
  const findings = (await oversight.findings(ANY, null, 9999)).map(({ finding }) => JSON.stringify(finding)).sort();
  return { findings, tallies: await sorted(oversight.tallies(ANY)), measures: await sorted(oversight.measures(ANY)) };
}
const sorted = async (all: Promise<readonly object[]>) => (await all).map((one) => JSON.stringify(one)).sort();
const whole = (lines: readonly Sealed[]) =>
  overseeAll(lines)
    .findings.map((f) => JSON.stringify(f))
    .sort();

describe("what was found entry by entry", () => {
  const lines = recordOf("job-1", { entries: 400 });
  it("is after each entry what the whole record comes to, started again or not", async () => {
    await fc.assert(
      fc.asyncProperty(fc.uniqueArray(fc.integer({ min: 1, max: lines.length }), { minLength: 4, maxLength: 6 }), async (stops) => {
        const file = newFile();
        let journal = openJournal(file);
        await journal.open(lines[0]!, {});
        for (const line of lines.slice(1, Math.max(...stops))) {
          await journal.append(line);
          if (!stops.includes(line.entry.no)) continue;
          expect((await kept(journal)).findings).toEqual(whole(lines.slice(0, line.entry.no)));
          await journal.close();
          journal = openJournal(file);
        }
        await journal.close();
        rmSync(file);
      }),
      { numRuns: 2 },
    );
  });
  it("is the same where it is found again from the first entry", async () => {
    const file = newFile();
    const journal = openJournal(file);
    await keep(journal, lines);
    const before = await kept(journal);
    await journal.refold("job-1");
    expect(await kept(journal)).toEqual(before);
    await journal.close();
  });
});

describe("what does not fit the entries", () => {
  it.each([
    ["a state that is missing", "DELETE FROM overseen"],
    ["what another version found", "UPDATE overseen SET version = version - 1; DELETE FROM findings"],
    ["a state of an earlier entry", "UPDATE overseen SET no = 2; UPDATE findings SET body = x'7b7d' WHERE kind = 'waived'"],
    ["a state that is no JSON", "UPDATE overseen SET body = x'7b'; DELETE FROM measures"],
    ["what is of no job", "INSERT INTO measures SELECT 'job-9', what, key, name, n, day, lead, size FROM measures"],
    ["counts that were changed", "UPDATE findingTallies SET count = count + 3; DELETE FROM measureTallies"],
    ["names that were never folded", "UPDATE names SET folded = ''"],
  ])("%s is put right when the file is opened", async (_what, spoil) => {
    const file = newFile();
    let journal = openJournal(file);
    await keep(journal, recordOf("job-1"), { p1: "Ines", p3: "Ömer" });
    const before = await kept(journal);
    await journal.close();
    const db = new Database(file);
    db.exec(spoil);
    db.close();
    journal = openJournal(file);
    expect(await kept(journal)).toEqual(before);
    expect((await journal.oversight.findings({ ...ANY, crew: "INES" }, null, 1)).length).toBe(1);
    await journal.close();
  });
  it("an entry that cannot be looked at is taken all the same, and leaves nothing to look at", async () => {
    const journal = sqliteJournal(":memory:");
    const [opening, second] = recordOf("job-1");
    const { seal } = await import("../../machines/record/entry.ts");
    const broken = seal({ ...opening!.entry, opened: { brief: {} } } as never);
    await journal.open(broken, {});
    await journal.append(seal({ ...second!.entry, prev: broken.hash }));
    expect([await journal.oversight.findings(ANY, null, 9), await journal.oversight.measures(ANY)]).toEqual([[], []]);
    expect(await journal.read("job-1")).toHaveLength(2);
    await journal.close();
  });
});
