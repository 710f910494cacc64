import { appendFileSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import Database from "libsql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import type { Stored } from "../../server/journal/journal.ts";
import { JournalUnusable, openJournal } from "../../server/journal/open-file.ts";
import { appendUntilKilled } from "../support/append-loop.ts";
import { asStored, chainOf } from "../support/entries.ts";
import { named } from "../support/people.ts";
import { scratchFolder } from "../support/scratch.ts";

const root = scratchFolder("damaged");
afterAll(() => rmSync(root, { recursive: true, force: true }));
/** Two sound data: closed, and as a kill leaves them, with the entries in the log. */
const atRest = join(root, "at-rest");
const killed = join(root, "killed");
const record = chainOf("job-1", 60);

beforeAll(async () => {
  mkdirSync(atRest);
  const journal = openJournal(join(atRest, "data.db"));
  await journal.open(record[0]!, named({ p1: "Ines" }));
  for (const line of record.slice(1)) await journal.append(line);
  await journal.close();
  mkdirSync(killed);
  await appendUntilKilled(join(killed, "data.db"), { entries: 1200 });
});

let copies = 0;
function copyOf(folder: string): string {
  const copy = join(root, `copy-${++copies}`);
  cpSync(folder, copy, { recursive: true });
  return join(copy, "data.db");
}

/** Every file of a folder with a hash of what it holds. */
const contents = (folder: string) =>
  readdirSync(folder).map((name) => {
    const path = join(folder, name);
    return [name, statSync(path).isFile() ? hashOf(readFileSync(path)) : "a folder"];
  });

/** The sentence with which a file is turned away, in a folder that stays as it was. */
async function refusal(file: string): Promise<string> {
  const folder = join(file, "..");
  const before = contents(folder);
  try {
    await openJournal(file).close();
  } catch (error) {
    expect(error).toBeInstanceOf(JournalUnusable);
    expect(contents(folder)).toEqual(before);
    const sentence = (error as Error).message.replaceAll(file, "FILE");
    expect(sentence).toMatch(/^[^.\n]*FILE[^.\n]*; [^.\n]*(?:-wal[^.\n]*)?\.$/);
    return sentence;
  }
  throw new Error("was opened");
}

function overwrite(file: string, from: number, length: number) {
  const bytes = readFileSync(file);
  bytes.fill(0xa5, from, from + length);
  writeFileSync(file, bytes);
}
function sql(file: string, text: string) {
  const db = new Database(file);
  db.exec(text);
  db.close();
}

/** Puts one text in place of another wherever it lies in the file; both equally long, a character a byte. */
function bend(file: string, from: string, to: string) {
  const before = readFileSync(file, "latin1");
  expect(before).toContain(from);
  writeFileSync(file, before.replaceAll(from, to), "latin1");
}
function another(file: string) {
  rmSync(file);
  sql(file, "CREATE TABLE entries (a); CREATE TABLE names (b)");
}
function folderInstead(file: string) {
  rmSync(file);
  mkdirSync(file);
}

describe("a file that cannot be used is turned away in one sentence and left as it was:", () => {
  it.each<[string, (file: string) => void, RegExp]>([
    ["cut off in the middle of a page", (f) => truncateSync(f, 9000), /is damaged/],
    ["cut off after its first page", (f) => truncateSync(f, 4096), /is damaged/],
    ["cut off in its header", (f) => truncateSync(f, 60), /is damaged/],
    ["cut off to nothing", (f) => truncateSync(f, 0), /is empty/],
    ["with another beginning", (f) => overwrite(f, 0, 100), /is not a Ridgecall data file, or its beginning is damaged/],
    ["with its list of tables overwritten", (f) => overwrite(f, 100, 900), /is damaged/],
    ["with a bent letter in what counts its findings", (f) => bend(f, "UPDATE findingTallies", "UPDATE gindingTallies"), /is damaged/],
    ["with a page overwritten", (f) => overwrite(f, 3 * 4096, 4096), /is damaged/],
    [
      "with nothing in its pages",
      (f) => writeFileSync(f, Buffer.concat([readFileSync(f).subarray(0, 100), Buffer.alloc(40_000)])),
      /is damaged/,
    ],
    ["of text", (f) => writeFileSync(f, "name,size\ntent,80x100\n".repeat(50)), /is not a Ridgecall data file/],
    ["of another program's SQLite", another, /is not a Ridgecall/],
    ["with one letter of a table's making bent", (f) => bend(f, "bytes BLOB", "bytfs BLOB"), /is damaged/],
    ["whose index has lost an entry", (f) => bend(f, "job-1job-1-key-9", "job-1job-1-kfy-9"), /is damaged/],
    ["without a table", (f) => sql(f, "DROP TABLE names"), /is damaged/],
    ["of a newer layout", (f) => sql(f, "PRAGMA user_version = 9"), /newer version \(layout 9, this one knows 4\)/],
    ["that is a folder", folderInstead, /is not a file/],
  ])("one %s", async (_what, damage, sentence) => {
    const file = copyOf(atRest);
    damage(file);
    expect(await refusal(file)).toMatch(sentence);
  });
  it("one in a folder that is not there, or under a file", () => {
    expect(() => openJournal(join(root, "none", "data.db"))).toThrow(
      /cannot be opened \(ENOENT: no such file or directory\); check the path/,
    );
    expect(() => openJournal(join(atRest, "data.db", "data.db"))).toThrow(/cannot be opened \(ENOTDIR: not a directory\); check the path/);
  });
});

describe("a file that a kill left with its log", () => {
  it("is opened with what the log holds, when the log is whole", async () => {
    const journal = openJournal(copyOf(killed));
    const rows = await journal.read("job-1");
    expect([rows.length >= 1200, verifyChain(rows).holds]).toEqual([true, true]);
    await journal.close();
  });
  it("is turned away when it is damaged, and its log is left as it was", async () => {
    const file = copyOf(killed);
    expect(statSync(`${file}-wal`).size).toBeGreaterThan(0);
    overwrite(file, 20 * 4096, 40 * 4096);
    expect(await refusal(file)).toMatch(/is damaged and was left as it is; move it away, with any -wal/);
  });
  it("is turned away when it is missing and only the log is there", async () => {
    const file = copyOf(killed);
    rmSync(file);
    expect(await refusal(file)).toMatch(/is missing, but FILE-wal with its last entries is there/);
  });
  it("is opened when rubbish follows in the log: what was never finished is nothing", async () => {
    const file = copyOf(killed);
    const before = openJournal(copyOf(killed));
    const rows = await before.read("job-1");
    await before.close();
    appendFileSync(`${file}-wal`, Buffer.alloc(5000, 0xa5));
    const journal = openJournal(file);
    expect(await journal.read("job-1")).toEqual(rows);
    await journal.close();
  });
});

it("a name that is no longer text is read as well as it can be", async () => {
  const file = copyOf(atRest);
  bend(file, "Ines", "In\xffs");
  const journal = openJournal(file);
  expect(await journal.names("job-1")).toEqual({ p1: "In\ufffds" });
  await journal.close();
});

it("any few bytes changed anywhere: turned away untouched, or the chain says what is wrong, or nothing of the record is", async () => {
  const sound = readFileSync(join(atRest, "data.db"));
  // Bytes as text: a matcher goes through them one by one, which takes longer than all the rest.
  const written = ({ bytes, ...row }: Stored) => JSON.stringify([row, Buffer.from(bytes).toString("latin1")]);
  const whole = asStored(record).map(written);
  const place = fc.oneof(fc.nat(sound.length - 1), fc.nat(8191));
  await fc.assert(
    fc.asyncProperty(fc.array(fc.tuple(place, fc.integer({ min: 1, max: 255 })), { minLength: 1, maxLength: 4 }), async (changes) => {
      const file = copyOf(atRest);
      const bytes = Uint8Array.from(sound);
      for (const [at, by] of changes) bytes[at]! ^= by;
      writeFileSync(file, bytes);
      const before = contents(join(file, ".."));
      try {
        const journal = openJournal(file);
        const rows = await journal.read("job-1");
        if (verifyChain(rows).holds) expect(rows.map(written)).toEqual(whole);
        await journal.close();
      } catch (error) {
        if (!(error instanceof JournalUnusable)) throw error;
        expect(contents(join(file, ".."))).toEqual(before);
      } finally {
        rmSync(join(file, ".."), { recursive: true });
      }
    }),
    { numRuns: 300 },
  );
});
