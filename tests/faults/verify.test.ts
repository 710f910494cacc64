import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { type Entry, NO_ENTRY, type Sealed, seal } from "../../machines/record/entry.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { verifyRecords } from "../../server/verify-records.ts";
import { brief, testApp } from "../support/app.ts";
import { chainOf } from "../support/entries.ts";
import { openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";
import { spawnServer } from "../support/spawn-server.ts";

type Exported = {
  job: string;
  entries: Record<string, unknown>[];
  people: Record<string, { name: string; salt: string }>;
  findings: Record<string, number>;
  kit: unknown[];
};
const root = scratchFolder("verify");
afterAll(() => rmSync(root, { recursive: true, force: true }));
const sound = join(root, "sound.db");
let record: Exported;
let other: Exported;
let sealed: readonly Sealed[];

/** Two jobs in one file, and what is exported of them. */
beforeAll(async () => {
  const journal = openJournal(sound);
  const world = testApp(journal);
  const read = async (job: string) => (await (await world.app.request(`/jobs/${job}/record.json`)).json()) as Exported;
  const one = await openedJob(brief(), world);
  for (let n = 0; n < 8; n++) await one.say(n % 3 === 0 ? { type: "next" } : { type: "note", text: `note ${n}` });
  const two = await openedJob({ ...brief(), title: "Two\nlines \u001b[31mred" }, world);
  await two.say({ type: "note", text: "here" });
  [record, other, sealed] = [await read(one.job), await read(two.job), await one.entries()];
  await journal.close();
});

/** What is said of jobs; `all` is what is said of the house stream as well. */
function verify(file: string) {
  const [all, complaint] = [[] as string[], [] as string[]];
  const terminal = { print: (line: string) => all.push(line), complain: (line: string) => complaint.push(line.replaceAll(file, "FILE")) };
  const status = verifyRecords([file], terminal);
  return { status, out: all.filter((line) => !/^(?:House stream|What no file)/.test(line)), all, complaint };
}
let files = 0;
function folderWith(name: string, put: (file: string) => void): string {
  const folder = join(root, `case-${++files}`);
  mkdirSync(folder);
  const file = join(folder, name);
  put(file);
  return file;
}
const exported = (value: unknown) =>
  folderWith("record.json", (file) => writeFileSync(file, typeof value === "string" ? value : JSON.stringify(value)));
const changed = (change: (record: Exported) => void) => {
  const copy = structuredClone(record);
  change(copy);
  return exported(copy);
};
const copyWith = (sql: string) =>
  folderWith("data.db", (file) => {
    copyFileSync(sound, file);
    const db = new Database(file);
    db.exec(`DROP TRIGGER entries_stay; DROP TRIGGER entries_last; ${sql}`);
    db.close();
  });
const contents = (file: string) => readdirSync(join(file, "..")).map((name) => [name, hashOf(readFileSync(join(file, "..", name)))]);
const title = "Demo: harvest supper, lower meadow (invented)";

describe("a data file is verified", () => {
  it("a line for each job: title, entries, last hash, and that it holds", () => {
    const { status, out } = verify(sound);
    expect([status, out]).toEqual([
      0,
      [
        `${title}: 9 entries, last hash ${record.entries.at(-1)!.hash}, holds.`,
        `Two lines [31mred: 2 entries, last hash ${other.entries.at(-1)!.hash}, holds.`,
      ],
    ]);
  });
  it("by the command of the package too, which ends with the same, and complains on the other stream", () => {
    const command = (file: string) => spawnSync("npm", ["run", "--silent", "verify", "--", file], { encoding: "utf8" });
    const { all } = verify(sound);
    expect(command(sound)).toMatchObject({ status: 0, stdout: `${all.join("\n")}\n`, stderr: "" });
    const none = join(root, "none");
    expect(command(none)).toMatchObject({ status: 2, stdout: "", stderr: expect.stringMatching(/^\S+ cannot be read .*\n$/) });
  });
  it("and no byte of it is changed, nor anything made beside it", () => {
    const file = copyWith("");
    const before = contents(file);
    expect([verify(file).status, contents(file)]).toEqual([0, before]);
  });
  it.each([
    ["UPDATE entries SET bytes = x'7b7d' WHERE job LIKE '%1' AND no = 4", 4, "is not as it was written"],
    ["DELETE FROM entries WHERE job LIKE '%1' AND no = 5", 5, "is missing, or stands in the wrong place"],
    ["UPDATE entries SET bytes = x'00' WHERE job LIKE '%1' AND no = 1", 1, "is not as it was written"],
    ["UPDATE entries SET job = 'renamed' WHERE job LIKE '%1'", 1, "is of another job"],
    ["UPDATE entries SET prev = hash WHERE job LIKE '%1' AND no = 4", 4, "is filed otherwise than it was written"],
    ["UPDATE entries SET key = 'another-0001' WHERE job LIKE '%1' AND no = 6", 6, "is filed otherwise than it was written"],
    ["UPDATE entries SET key = 'another-0002' WHERE job LIKE '%1' AND no = 1", 1, "is filed otherwise than it was written"],
  ])("after %s it does not hold, and the other job does", (sql, no, why) => {
    const { status, out } = verify(copyWith(sql));
    expect(status).toBe(1);
    expect(out).toHaveLength(2);
    expect(out[0]).toContain(`does not hold: entry ${no} ${why}`);
    expect(out[1]).toMatch(/holds\.$/);
  });
  it("whose entries hang together, and open no job that could be played", async () => {
    const file = folderWith("data.db", () => {});
    const journal = openJournal(file);
    const [opening, ...rest] = chainOf("job-1", 3);
    await journal.open(opening!, {});
    for (const line of rest) await journal.append(line);
    await journal.close();
    const { status, out } = verify(file);
    expect([status, out]).toEqual([1, ["Tent of job-1: 3 entries, does not hold: entry 1 does not open a job (no entry before it)."]]);
  });
  it("with no job in it, and says so", async () => {
    const file = folderWith("data.db", () => {});
    await openJournal(file).close();
    expect(verify(file)).toMatchObject({ status: 0, out: [`${file} holds no job yet.`] });
  });
  it("not while a server holds it; and after a kill with what its log holds, changing neither", async () => {
    const file = folderWith("data.db", () => {});
    const { child, stopped } = await spawnServer(file);
    expect(verify(file)).toMatchObject({
      status: 2,
      complaint: ["FILE is in use; stop the server that holds it, or verify a copy or an export."],
    });
    child.kill("SIGKILL");
    await stopped;
    const before = contents(file);
    expect(before.map(([name]) => name)).toContain("data.db-wal");
    const { status, out } = verify(file);
    expect([status, out]).toEqual([0, [expect.stringMatching(/: 1 entry, last hash [0-9a-f]{64}, holds\.$/)]]);
    expect(contents(file)).toEqual(before);
  });
});

describe("the names in a data file are verified", () => {
  it("one that was changed no longer fits what its job's opening committed to", () => {
    const { status, out } = verify(copyWith("UPDATE names SET name = 'Jo' WHERE job LIKE '%1' AND person = 'p1'"));
    expect(status).toBe(1);
    expect(out[0]).toMatch(/does not hold: the name of p1 is not the one that was written\.$/);
    expect(out[1]).toMatch(/holds\.$/);
  });
  it("one that was erased leaves its job whole", async () => {
    const file = folderWith("data.db", (name) => copyFileSync(sound, name));
    const journal = openJournal(file);
    for (const { job } of await journal.folds()) await journal.eraseName(job, "p3");
    await journal.firm.forget("Maren");
    await journal.close();
    expect(verify(file).out[0]).toMatch(/holds \(1 name erased\)\.$/);
    expect(readFileSync(file).includes("Maren")).toBe(false);
  });
});

describe("an exported record is verified", () => {
  it("to the same line as the file it came from", () => {
    const { status, out } = verify(exported(record));
    expect([status, out]).toEqual([0, [`${title}: 9 entries, last hash ${sealed.at(-1)!.hash}, holds.`]]);
  });
  it("laid out again, with its fields in another order and a byte order mark, it is the same record", () => {
    const entries = record.entries.map((e) => Object.fromEntries(Object.entries(e).reverse()));
    expect(verify(exported(`\ufeff${JSON.stringify({ ...record, entries }, null, 4)}`)).status).toBe(0);
  });
  it.each<[string, () => string, number, string]>([
    ["edited", () => changed((r) => Object.assign(r.entries[3]!, { at: 7 })), 4, "is not as it was written"],
    ["with a hash edited", () => changed((r) => Object.assign(r.entries[3]!, { hash: "0".repeat(64) })), 4, "is not as it was written"],
    ["with a field more", () => changed((r) => Object.assign(r.entries[2]!, { seen: true })), 3, "is not as it was written"],
    ["with an entry missing in the middle", () => changed((r) => r.entries.splice(4, 1)), 5, "is missing, or stands in the wrong place"],
    ["with its opening missing", () => changed((r) => r.entries.shift()), 1, "is missing, or stands in the wrong place"],
    [
      "with two entries swapped",
      () => changed((r) => r.entries.splice(2, 2, r.entries[3]!, r.entries[2]!)),
      3,
      "is missing, or stands in the wrong place",
    ],
    [
      "with another job's entry in it",
      () => changed((r) => r.entries.splice(1, 1, other.entries[1]!)),
      2,
      "does not follow the one before it",
    ],
    ["of another job than it says", () => changed((r) => Object.assign(r, { job: "id-99999999" })), 1, "is of another job"],
    ["with an entry that is none", () => changed((r) => r.entries.splice(5, 1, null as never)), 6, "is not as it was written"],
    ["with an entry that is a list", () => changed((r) => r.entries.splice(0, 1, [] as never)), 1, "is not as it was written"],
  ])("%s it does not hold, and the first entry that does not fit is named", (_what, make, no, why) => {
    const { status, out } = verify(make());
    expect(status).toBe(1);
    expect(out).toEqual([expect.stringContaining(`does not hold: entry ${no} ${why} (`)]);
  });

  it.each<[string, (r: Exported) => void, RegExp]>([
    ["with a name changed", (r) => Object.assign(r.people.p1!, { name: "Jo" }), /the name of p1 is not the one that was written/],
    ["with a salt changed", (r) => Object.assign(r.people.p2!, { salt: "x" }), /the name of p2 is not the one/],
    ["with two names swapped", (r) => ([r.people.p1, r.people.p2] = [r.people.p2!, r.people.p1!]), /the name of p1 .*; the name of p2 /],
    ["with a name that is no text", (r) => Object.assign(r.people, { p1: 7 }), /the name of p1/],
    ["with somebody more", (r) => Object.assign(r.people, { p99: { name: "Jo", salt: "" } }), /p99 has a name and is in no entry/],
    ["with its marks emptied", (r) => Object.assign(r.entries[1]!, { marks: [] }), /the marks of entry 2 are not what it comes to/],
    ["with a mark more", (r) => Object.assign(r.entries[2]!, { marks: ["waived"] }), /the marks of entry 3/],
    ["with its findings softened", (r) => Object.assign(r.findings, { refused: 0 }), /the findings are not what the entries come to/],
    ["with a kit that nobody counted", (r) => r.kit.push({ item: "sidePole" }), /the kit is not what was counted/],
  ])("%s it does not hold, though every entry does", (_what, change, why) => {
    const { status, out } = verify(changed(change));
    expect([status, out]).toEqual([1, [expect.stringMatching(why)]]);
  });
  it("that says itself that its job was not whole does not hold, though the entries it has do", () => {
    const { status, out } = verify(changed((r) => Object.assign(r, { problem: "Entry 10 of this job does not fit the chain." })));
    expect([status, out]).toEqual([
      1,
      [
        expect.stringMatching(
          /, does not hold: it was exported from a job of which it says: Entry 10 of this job does not fit the chain\.$/,
        ),
      ],
    ]);
  });
  it("with names erased it holds, and says how many", () => {
    const { status, out } = verify(
      changed((r) => {
        r.people = { p1: r.people.p1! };
      }),
    );
    expect([status, out]).toEqual([0, [expect.stringMatching(/, holds \(6 names erased\)\.$/)]]);
  });

  /** The record rewritten from an entry on, hashes and all: what somebody does who knows how it is made. */
  function forgedFrom(at: number, change: (entry: Entry) => object): string {
    let prev = sealed[at - 2]?.hash ?? NO_ENTRY;
    const entries = sealed.map((line, i) => {
      if (i < at - 1) return { hash: line.hash, ...line.entry };
      const made = seal({ ...(i === at - 1 ? change(line.entry) : line.entry), prev } as Entry);
      prev = made.hash;
      return { hash: made.hash, ...made.entry };
    });
    return exported({ ...record, entries });
  }
  it.each<[string, string, number, string]>([
    ["whose outcome was forged", "outcome", 2, "does not replay to what was recorded"],
    ["whose command was forged into none", "command", 3, "does not replay to what was recorded"],
    ["that is said to open nothing", "opened", 1, "does not open a job"],
  ])("an entry %s, hashes and all, does not replay", (_what, field, no, why) => {
    const { status, out } = verify(forgedFrom(no, (entry) => ({ ...entry, [field]: field === "outcome" ? { did: "moved" } : null })));
    expect([status, out]).toEqual([1, [expect.stringContaining(`does not hold: entry ${no} ${why}`)]]);
  });
});

describe("what cannot be read is said in one line, with 2", () => {
  it.each<[string, () => string, RegExp]>([
    ["nothing at all", () => folderWith("data.db", (f) => writeFileSync(f, "")), /^FILE is empty; take another copy\.$/],
    ["no file", () => join(root, "none"), /^FILE cannot be read \(ENOENT: no such file or directory\); check the path\.$/],
    ["a folder", () => root, /^FILE is not a file; name a data file, or a record\.json/],
    ["text", () => exported("name,size\ntent,80x100\n"), /^FILE is neither a data file nor a record/],
    [
      "a record cut short",
      () => exported(JSON.stringify({ job: "x", entries: [] }).slice(0, -4)),
      /^FILE is neither a data file nor a record/,
    ],
    ["other JSON", () => exported({ jobs: [] }), /^FILE is JSON, but not a record that was exported/],
    ["a list", () => exported([1, 2]), /^FILE is JSON, but not a record/],
    ["JSON's null", () => exported("null"), /^FILE is JSON, but not a record/],
    ["a record without entries", () => exported({ job: "x", entries: [] }), /^FILE is JSON, but not a record/],
    [
      "a data file cut short",
      () =>
        folderWith("data.db", (f) => {
          copyFileSync(sound, f);
          truncateSync(f, 9000);
        }),
      /^The data file FILE is damaged/,
    ],
    ["a newer data file", () => copyWith("PRAGMA user_version = 9"), /^The data file FILE was written by a newer version/],
  ])("%s", (_what, make, sentence) => {
    const { status, out, complaint } = verify(make());
    expect([status, out, complaint]).toEqual([2, [], [expect.stringMatching(sentence)]]);
    expect(complaint[0]).not.toContain("\n");
  });
});
