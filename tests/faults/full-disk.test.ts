import { copyFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { openDatabase } from "../../server/journal/data-file.ts";
import { NotWritten } from "../../server/journal/journal.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { journalIn } from "../../server/journal/sqlite.ts";
import { asStored, chainOf, lineAfter, openingLine } from "../support/entries.ts";
import { named } from "../support/people.ts";
import { scratchFolder } from "../support/scratch.ts";

let folder: string;
let file: string;
beforeEach(() => {
  folder = scratchFolder("full");
  file = join(folder, "data.db");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A journal in a file that SQLite may not let grow any more: it says SQLITE_FULL, as it does where a disk is full. */
async function fullJournal() {
  const db = openDatabase(file);
  const journal = journalIn(db, file);
  const chain = chainOf("job-1", 3);
  await journal.open(chain[0]!, {});
  for (const line of chain.slice(1)) await journal.append(line);
  db.pragma("max_page_count = 1");
  let last = chain.at(-1)!;
  const taken = [...chain];
  /** Appends until there is no room, and gives what was said then. */
  const fill = async (): Promise<unknown> => {
    for (;;) {
      const next = lineAfter(last);
      try {
        await journal.append(next);
      } catch (error) {
        return error;
      }
      last = next;
      taken.push(next);
    }
  };
  const more = () => db.pragma("max_page_count = 100000");
  return { db, journal, fill, taken, more };
}

describe("a data file that may not grow", () => {
  it("says that the disk is full, keeps what it acknowledged, and nothing of what it did not", async () => {
    const { journal, fill, taken } = await fullJournal();
    expect(await fill()).toEqual(new NotWritten({ why: "full", place: file }));
    expect(await journal.read("job-1")).toEqual(asStored(taken));
    expect((await journal.folds())[0]).toMatchObject({ entries: taken.length, tip: taken.at(-1)!.hash });
    await journal.close();
    const again = openJournal(file);
    expect(await again.read("job-1")).toEqual(asStored(taken));
    await again.close();
  });
  it("goes on where it was when there is room again", async () => {
    const { journal, fill, taken, more } = await fullJournal();
    await fill();
    more();
    await journal.append(lineAfter(taken.at(-1)!));
    expect(verifyChain(await journal.read("job-1"))).toMatchObject({ holds: true, entries: { length: taken.length + 1 } });
    await journal.close();
  });
  it("refuses each of those that came at one moment, and none is left half there", async () => {
    const { journal, fill, taken, more } = await fullJournal();
    await fill();
    const openings = ["job-2", "job-3"].map((job) => openingLine(job));
    const results = await Promise.allSettled([
      ...openings.map((opening) => journal.open(opening, named({ p1: "Ines" }))),
      journal.append(lineAfter(taken.at(-1)!)),
    ]);
    expect(results.map((r) => r.status === "rejected" && r.reason instanceof NotWritten)).toEqual([true, true, true]);
    more();
    expect([await journal.read("job-2"), await journal.names("job-2"), (await journal.folds()).length]).toEqual([[], {}, 1]);
    await Promise.all(openings.map((opening) => journal.open(opening, named({ p1: "Ines" }))));
    expect(await journal.folds()).toHaveLength(3);
    await journal.close();
  });
  it("is closed without a complaint where its log finds no room, and what is in the log is there when it is opened again", async () => {
    const { db, journal, taken } = await fullJournal();
    const pragma = db.pragma.bind(db);
    db.pragma = (source, options) => {
      if (source.startsWith("journal_mode")) throw Object.assign(new Error("database or disk is full"), { code: "SQLITE_FULL" });
      return pragma(source, options);
    };
    await journal.close();
    // In a copy: statements that were not collected yet still hold the file in this process.
    for (const part of ["", "-wal"]) copyFileSync(file + part, join(folder, `copy.db${part}`));
    const again = openJournal(join(folder, "copy.db"));
    expect(await again.read("job-1")).toEqual(asStored(taken));
    await again.close();
  });
});
