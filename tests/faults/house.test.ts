import { copyFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { shownLetters } from "../../machines/digest/letters.ts";
import { shortDigest } from "../../machines/digest/short-digest.ts";
import { type Entry, type JobId, NO_ENTRY, type Sealed, seal } from "../../machines/record/entry.ts";
import { type HouseEntry, houseEntryAfter, NO_HOUSE, standAfter } from "../../machines/record/house.ts";
import { createHouse } from "../../server/house.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { verifyRecords } from "../../server/verify-records.ts";
import { brief, MORNING, testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";

const DAY_S = 24 * 3600;
const root = scratchFolder("house");
afterAll(() => rmSync(root, { recursive: true, force: true }));
const sound = join(root, "sound.db");
const TITLE = "Mill yard";

let long: JobId;
let short: JobId;
/** The long job's entries: the house stream of the first day knows the first twenty, that of the second all but the last two. */
let entries: readonly Sealed[];
const onPaper = { job: "", jobBefore: "", house: "", houseBefore: "" };

/** A small tent, as each verification plays its job again. */
const small = (title: string) => ({
  ...brief(),
  title,
  tent: { ...brief().tent, widthFt: 20, lengthFt: 20, midsFt: [], onePiece: true, splitEnds: false, quarterRings: 0, centerPoleFt: 13 },
});
const paper = (hash: string) => shownLetters(shortDigest(hash));

beforeAll(async () => {
  const journal = openJournal(sound);
  const world = testApp(journal, MORNING - 60_000);
  const house = createHouse({ journal, clock: () => ({ wall: world.now(), elapsedMs: 0 }) }, () => {});
  const one = await openedJob(small(TITLE), world);
  const note = (n: number) => one.say({ type: "note", text: `note ${n}` });
  for (let n = 2; n <= 20; n++) await note(n);
  onPaper.jobBefore = paper((await one.entries()).at(-1)!.hash);
  await house.daily();
  onPaper.houseBefore = paper((await journal.house.lines()).at(-1)!.hash);
  const two = await openedJob(small("Lower meadow"), world);
  await two.say({ type: "note", text: "here" });
  world.clock.pass(DAY_S);
  for (let n = 21; n <= 48; n++) await note(n);
  await house.daily();
  for (let n = 49; n <= 50; n++) await note(n);
  [long, short, entries] = [one.job, two.job, await one.entries()];
  onPaper.job = paper(entries.at(-1)!.hash);
  onPaper.house = paper((await journal.house.lines()).at(-1)!.hash);
  await journal.close();
});

let files = 0;
type Write = (db: InstanceType<typeof Database>) => void;
/** A copy of the file that somebody edits, past what keeps its entries as they are. */
function edited(edit: Write): string {
  const file = join(root, `case-${++files}.db`);
  copyFileSync(sound, file);
  const db = new Database(file);
  for (const trigger of ["entries_stay", "entries_last", "house_stays", "house_lasts"]) db.exec(`DROP TRIGGER ${trigger}`);
  edit(db);
  db.close();
  return file;
}
const sql =
  (text: string): Write =>
  (db) =>
    db.exec(text);

function verify(file: string, ...more: string[]) {
  const [out, complaint] = [[] as string[], [] as string[]];
  const status = verifyRecords([file, ...more], { print: (line) => out.push(line), complain: (line) => complaint.push(line) });
  return { status, out, text: out.join("\n"), complaint };
}
const cutAfter = (no: number) => sql(`DELETE FROM entries WHERE job = '${long}' AND no > ${no}`);

/** The job rewritten from an entry on by somebody who knows how it is made: another note, and every hash after it made anew. */
const rewrittenFrom =
  (no: number): Write =>
  (db) => {
    const line = db.prepare("UPDATE entries SET prev = ?, hash = ?, bytes = ? WHERE job = ? AND no = ?");
    for (const { entry, hash, bytes } of forgedFrom(no)) line.run(entry.prev, hash, Buffer.from(bytes), long, entry.no);
  };
function forgedFrom(no: number): Sealed[] {
  let prev = entries[no - 2]?.hash ?? NO_ENTRY;
  return entries.slice(no - 1).map(({ entry }) => {
    const told = entry.no === no && entry.kind === "command" ? { command: { ...entry.command, text: "never said" } } : {};
    const sealed = seal({ ...entry, ...told, prev } as Entry);
    prev = sealed.hash;
    return sealed;
  });
}
/** And the house stream with it, as if it had always been so. */
const withHouse =
  (no: number): Write =>
  (db) => {
    rewrittenFrom(no)(db);
    const at = (job: JobId, upTo: number) =>
      (db.prepare("SELECT job, no, hash FROM entries WHERE job = ? AND no <= ? ORDER BY no DESC LIMIT 1").all(job, upTo) as never[])[0]!;
    const was = db.prepare("SELECT bytes FROM house ORDER BY no").all() as { bytes: Uint8Array }[];
    const [first, second] = was.map(({ bytes }) => (JSON.parse(new TextDecoder().decode(bytes)) as HouseEntry).at);
    const days = [
      [first!, [at(long, 20)]],
      [second!, [at(long, 48), at(short, 2)]],
    ] as const;
    let stand = NO_HOUSE;
    db.exec("DELETE FROM house");
    for (const [wall, tips] of days) {
      const made = houseEntryAfter(stand, tips, wall);
      db.prepare("INSERT INTO house VALUES (?, ?, ?, ?)").run(made.entry.no, made.entry.prev, made.hash, Buffer.from(made.bytes));
      stand = standAfter(stand, made);
    }
  };

it("a file that nobody touched holds, and so does its house stream, with its digest and what it cannot show", () => {
  const { status, out } = verify(sound);
  expect(status).toBe(0);
  expect(out[2]).toBe(
    `House stream: 2 entries, the last of 2026-06-03, digest ${onPaper.house}, holds: no job is shorter or other than it says.`,
  );
  expect(out[3]).toContain(
    "what was recorded after the house stream's last entry, of 2026-06-03, could be missing at its end without a trace here",
  );
});

describe("the end of a job cut off, with every hash intact", () => {
  it.each([3, 5, 12, 44])("of the last %i entries: the record itself hangs together, and the house stream says what is missing", (cut) => {
    const { status, out } = verify(edited(cutAfter(50 - cut)));
    expect(status).toBe(1);
    expect(out[0]).toMatch(new RegExp(`^${TITLE}: ${50 - cut} entries, last hash [0-9a-f]{64}, holds\\.$`));
    expect(out[2]).toContain(`${TITLE}: its end is missing. On 2026-06-03 it had 48 entries, and ${50 - cut} are left`);
  });
  it("of entries after the last day of the house stream is found by no chain, which is said; the digest on paper finds it", () => {
    const file = edited(cutAfter(48));
    expect(verify(file).status).toBe(0);
    const { status, text } = verify(file, "--digest", onPaper.job);
    expect([status, text]).toEqual([1, expect.stringContaining("Nothing in this file comes to that digest")]);
  });
  it("and written on from there: found, with the last entry that is as it was", async () => {
    const file = edited(cutAfter(30));
    const journal = openJournal(file);
    const { liveJobs } = testApp(journal, MORNING + 9 * DAY_S * 1000);
    const from = { seen: 30, as: "Ines", device: "a-phone", request: "0".repeat(64) };
    for (let n = 0; n < 25; n++)
      await liveJobs.say<never>(long, { ...from, key: `after-cut-${n}` }, () => ({
        intent: { type: "note", text: `after ${n}` },
        source: "press",
        heard: null,
      }));
    await journal.close();
    const { status, out } = verify(file);
    expect([status, out[0]]).toEqual([1, expect.stringMatching(/: 55 entries, last hash \w+, holds\.$/)]);
    expect(out[2]).toContain(
      `${TITLE}: it was rewritten. Its entry 48 is not the one of 2026-06-03; up to entry 20, of 2026-06-02, it is as it was`,
    );
  });
});

describe("a job rewritten from its middle, with every hash after it made anew", () => {
  it("holds by itself, and is found by the house stream, which says up to where it is as it was", () => {
    const { status, out } = verify(edited(rewrittenFrom(25)));
    expect([status, out[0]]).toEqual([1, expect.stringMatching(/: 50 entries, last hash \w+, holds\.$/)]);
    expect(out[2]).toContain(`${TITLE}: it was rewritten. Its entry 48 is not the one of 2026-06-03; up to entry 20, of 2026-06-02`);
  });
  it("from before all that the house stream knows: found, and nothing of it is as it was", () => {
    const { out } = verify(edited(rewrittenFrom(7)));
    expect(out[2]).toContain(`${TITLE}: it was rewritten. Its entry 20 is not the one of 2026-06-02`);
    expect(out[2]).not.toContain("up to entry");
  });
  it("is found by the digest of a later entry on paper, where there is no house stream", () => {
    const file = edited((db) => {
      rewrittenFrom(25)(db);
      db.exec("DELETE FROM house");
    });
    expect(verify(file).status).toBe(0);
    expect(verify(file, "--digest", onPaper.job)).toMatchObject({ status: 1 });
    const before = verify(file, "--digest", onPaper.jobBefore);
    expect(before).toMatchObject({ status: 0 });
    expect(before.text).toContain(`That is ${TITLE} at entry 20: everything up to there is as it was when the digest was written down.`);
  });
  it("and the house stream with it: both hold, and the house digest on paper finds it", () => {
    const file = edited(withHouse(25));
    expect(verify(file)).toMatchObject({ status: 0 });
    expect(verify(file, "--digest", onPaper.house)).toMatchObject({ status: 1 });
    expect(verify(file, "--digest", onPaper.houseBefore)).toMatchObject({
      status: 0,
      text: expect.stringContaining("That is the house stream up to 2026-06-02"),
    });
  });
});

describe("a digest from paper", () => {
  it("is taken in either case, however it is parted, and in one argument", () => {
    expect(verify(sound, `--digest=${onPaper.house.toLowerCase().replaceAll("-", " ")}`)).toMatchObject({
      status: 0,
      text: expect.stringContaining("That is the house stream up to 2026-06-03, its last day"),
    });
  });
  it("that was misread by one letter names the letter", () => {
    const read = `${onPaper.house[0] === "A" ? "B" : "A"}${onPaper.house.slice(1)}`;
    expect(verify(sound, "--digest", read)).toMatchObject({
      status: 1,
      text: expect.stringContaining(`comes to ${onPaper.house}: that differs at letter 1`),
    });
  });
  it.each([
    ["with letters that are in none", "OIL-234-567-89A-BCD", "I, L, O"],
    ["too short", "ABC-DEF", "7"],
  ])("%s is said to be misread", (_what, typed, told) => {
    expect(verify(sound, "--digest", typed)).toMatchObject({ status: 1, text: expect.stringContaining(told) });
  });
});

describe("other damage", () => {
  it("a job deleted whole is found", () => {
    const { status, out } = verify(edited(sql(`DELETE FROM entries WHERE job = '${short}'; DELETE FROM names WHERE job = '${short}'`)));
    expect([status, out[1]]).toEqual([1, expect.stringContaining(`Job ${short}: it is gone. On 2026-06-03 it had 2 entries`)]);
  });
  it("a job deleted whole is told as gone by the next entry too, after which the stream goes on", async () => {
    const file = edited(sql(`DELETE FROM entries WHERE job = '${short}'`));
    const journal = openJournal(file);
    await createHouse({ journal, clock: () => ({ wall: MORNING + 5 * DAY_S * 1000, elapsedMs: 0 }) }, () => {}).daily();
    const last = JSON.parse(new TextDecoder().decode((await journal.house.lines()).at(-1)!.bytes));
    await journal.close();
    expect(last).toMatchObject({ no: 3, day: "2026-06-07", gone: [short], jobs: 1 });
    expect(verify(file)).toMatchObject({ status: 1, text: expect.stringContaining("it is gone") });
  });
  it.each([
    ["a byte of it changed", "UPDATE house SET bytes = replace(bytes, 'day', 'dax') WHERE no = 1", "entry 1 is not as it was written"],
    ["an entry of it missing", "DELETE FROM house WHERE no = 1", "entry 1 is missing, or stands in the wrong place"],
    ["filed as following another", "UPDATE house SET prev = hash WHERE no = 2", "entry 2 is filed otherwise than it was written"],
  ])("the house stream with %s does not hold", (_what, text, why) => {
    const { status, out } = verify(edited(sql(text.replace("replace(bytes", "CAST(replace(bytes").replace("'dax')", "'dax') AS BLOB)"))));
    expect([status, out[2]]).toEqual([1, expect.stringContaining(`House stream: does not hold: its ${why}`)]);
  });
});
