import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import {
  chmodSync,
  copyFileSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  watch,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { backUp } from "../../server/backup/back-up.ts";
import { copyRunning } from "../../server/backup/copy-running.ts";
import { sentenceOf } from "../../server/backup/refused.ts";
import { restoreFrom } from "../../server/backup/restore-from.ts";
import { inUse } from "../../server/journal/check-file.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { watchFile } from "../../server/journal/watch-file.ts";
import { verifyJobsIn } from "../../server/verify-records.ts";
import { brief, testApp } from "../support/app.ts";
import { bundled } from "../support/bundle.ts";
import { openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";
import { spawnServer } from "../support/spawn-server.ts";

const root = scratchFolder("backup");
afterAll(() => rmSync(root, { recursive: true, force: true }));
const sound = join(root, "sound.db");

/** A data file at rest with one job of three entries. */
beforeAll(async () => {
  const journal = openJournal(sound);
  const job = await openedJob(brief(), testApp(journal));
  for (const text of ["one", "two"]) await job.say({ type: "note", text });
  await journal.close();
});

let folders = 0;
function newFolder(): string {
  const folder = join(root, `case-${++folders}`);
  mkdirSync(folder);
  return folder;
}
/** A folder with a data file that holds, a backup beside it, and what either command says of them. */
function place() {
  const folder = newFolder();
  const [file, backup] = [join(folder, "data.db"), join(folder, "backup.db")];
  copyFileSync(sound, file);
  const said = (run: typeof backUp, names: readonly string[], on: string) => {
    const [out, complaint] = [[] as string[], [] as string[]];
    const without = (line: string) => line.replaceAll(`${folder}/`, "");
    const terminal = { print: (line: string) => out.push(without(line)), complain: (line: string) => complaint.push(without(line)) };
    return { status: run(names, on, terminal), out, complaint };
  };
  return {
    folder,
    file,
    backup,
    backUp: (to = backup, from = file) => said(backUp, [to], from),
    restore: (from = backup, to = file) => said(restoreFrom, [from], to),
    contents: () => Object.fromEntries(readdirSync(folder).map((name) => [name, contentOf(join(folder, name))])),
  };
}
type Place = ReturnType<typeof place>;
const contentOf = (file: string) => (lstatSync(file).isFile() ? hashOf(readFileSync(file)) : "no file");
/** Somebody edits the file, past what keeps its entries as they are. */
function edited(file: string, sql: string) {
  const db = new Database(file);
  db.exec(`DROP TRIGGER entries_stay; DROP TRIGGER entries_last; ${sql}`);
  db.close();
}
const BROKEN = "UPDATE entries SET bytes = x'7b7d' WHERE no = 2";
const line = (n: number) => expect.stringMatching(new RegExp(`: ${n} entries, last hash [0-9a-f]{64}, holds\\.$`));

/** The program of `npm run backup`, on a file. */
async function spawnBackup(file: string, target: string) {
  const child = spawn(process.execPath, [await bundled("server/backup.ts"), target], {
    env: { ...process.env, RIDGECALL_FILE: file },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let out = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (data) => (out += data));
  const ended = new Promise<string>((resolve) => child.once("close", () => resolve(out)));
  return { child, ended };
}
const runs = ({ exitCode, signalCode }: ChildProcess) => exitCode === null && signalCode === null;

it("the package names both programs", () => {
  const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as { scripts: Record<string, string> };
  for (const name of ["backup", "restore"]) {
    expect(scripts[name]).toBe(`node --import tsx server/${name}.ts`);
    expect(existsSync(`server/${name}.ts`)).toBe(true);
  }
});

describe("a server that is busy", () => {
  let at: Place;
  const acknowledged = new Map<string, number>();
  let job = "";
  let before = 0;
  const noted = (key: string) => ({ as: "Ines", key, seen: 0, type: "note", text: key });

  it("is backed up, acknowledges all that comes meanwhile, and all that it acknowledged before is in the backup", async () => {
    at = place();
    rmSync(at.file);
    const { url, child, stopped } = await spawnServer(at.file);
    job = ((await (await fetch(`${url}jobs.json`)).json()) as { jobs: { id: string }[] }).jobs[0]!.id;
    const say = async () => {
      const key = `busy-note-${acknowledged.size + 1}`;
      const body = JSON.stringify(noted(key));
      const r = await fetch(`${url}jobs/${job}/say`, { method: "POST", headers: { "content-type": "application/json" }, body });
      const told = (await r.json()) as { entry: number };
      expect(told).toMatchObject({ went: "done", entry: expect.any(Number) });
      acknowledged.set(key, told.entry);
    };
    while (acknowledged.size < 30) await say();
    before = acknowledged.size;
    const backup = await spawnBackup(at.file, at.backup);
    while (runs(backup.child)) await say();
    expect(await backup.ended).toMatch(/, holds\.\nHouse stream: .*\n.*backup\.db is made: 1 job, \d+ entries, [\d,]+ bytes\.\n$/);
    expect(backup.child.exitCode).toBe(0);
    expect(acknowledged.size).toBeGreaterThan(before);

    // Nor does the server notice: nobody restores over it, and it goes on with the next entry.
    expect(at.restore()).toMatchObject({
      status: 2,
      complaint: ["The data file data.db is in use, and nothing was changed; stop the server that holds it first."],
    });
    await say();
    expect([...acknowledged.values()]).toEqual([...acknowledged.keys()].map((_key, i) => i + 2));
    child.kill("SIGKILL");
    await stopped;
  });

  it("killed, it is backed up with what its log holds, and no byte of either is changed", () => {
    const killed = at.contents();
    expect(Object.keys(killed)).toEqual(["backup.db", "data.db", "data.db-wal"]);
    expect(at.backUp(join(at.folder, "later.db"))).toMatchObject({
      status: 0,
      out: [line(acknowledged.size + 1), expect.stringMatching(/^House stream: .* holds: /), expect.any(String)],
    });
    expect(at.contents()).toMatchObject(killed);
  });

  it("restored, its jobs go on where the backup was made, and what was there is kept aside with its log", async () => {
    const killed = at.contents();
    const { status, out } = at.restore();
    expect([status, out.at(-1)]).toEqual([0, "What was there before lies at data.db.replaced-1."]);
    expect(at.contents()).toMatchObject({ "data.db.replaced-1": killed["data.db"], "data.db.replaced-1-wal": killed["data.db-wal"] });
    expect(at.contents()["data.db-wal"]).toBeUndefined();

    const journal = openJournal(at.file);
    for (const [key, no] of [...acknowledged].slice(0, before)) expect((await journal.keyed(job, key))?.entry.no).toBe(no);
    const last = (await journal.read(job)).length;
    const answer = await testApp(journal, Date.now()).post(`/jobs/${job}/say`, noted("after-restore"));
    expect(await answer.json()).toMatchObject({ went: "done", entry: last + 1 });
    await journal.close();
    expect(verifyJobsIn(at.file)).toMatchObject([{ job, verdict: { entries: last + 1, mismatch: null } }]);
  });

  it("and what was moved aside can be restored the same way, with what its log held", () => {
    const { status, out } = at.restore(join(at.folder, "data.db.replaced-1"));
    expect([status, out[0], out.at(-1)]).toEqual([0, line(acknowledged.size + 1), "What was there before lies at data.db.replaced-2."]);
  });
});

it("a backup that is killed in the middle leaves no file of that name, and the data file as it was", async () => {
  const at = place();
  // A log that gives nothing keeps the backup there for as long as it lives.
  execFileSync("mkfifo", [`${at.file}-wal`]);
  const before = at.contents();
  const begun = new Promise<void>((resolve) => {
    const watcher = watch(at.folder, (_event, name) => {
      if (!name?.startsWith("backup.db.new-")) return;
      watcher.close();
      resolve();
    });
  });
  const { child, ended } = await spawnBackup(at.file, at.backup);
  await begun;
  child.kill("SIGKILL");
  expect([await ended, child.signalCode]).toEqual(["", "SIGKILL"]);
  expect(at.contents()).toMatchObject(before);
  expect(existsSync(at.backup)).toBe(false);

  // The next one is not in its way.
  rmSync(`${at.file}-wal`);
  expect(at.backUp().status).toBe(0);
});

describe("a data file whose log is begun anew while it is copied", () => {
  /** A table of rows that each say the same; a copy of two moments has some of each. */
  function written() {
    const folder = newFolder();
    const [file, to] = [join(folder, "data.db"), join(folder, "copy.db")];
    const db = new Database(file);
    db.exec("PRAGMA journal_mode = WAL; CREATE TABLE t (said INTEGER, much BLOB)");
    db.exec("INSERT INTO t SELECT 0, zeroblob(3000) FROM (VALUES (1), (2), (3), (4), (5), (6), (7), (8))");
    let round = 0;
    const rewrite = () => db.exec(`UPDATE t SET said = ${++round}; PRAGMA wal_checkpoint(RESTART); UPDATE t SET said = ${++round}`);
    const found = () => {
      const copy = new Database(to);
      const said = copy.prepare("SELECT DISTINCT said FROM t").all();
      copy.close();
      return said;
    };
    return { file, to, rewrite, found, last: () => round };
  }
  it("is copied again, as it is then", () => {
    const { file, to, rewrite, found, last } = written();
    let copied = 0;
    copyRunning(file, to, (from, into) => {
      copyFileSync(from, into);
      if (into === to && ++copied < 3) rewrite();
    });
    expect([copied, found()]).toEqual([3, [{ said: last() }]]);
  });
  it("and given up, with one sentence, where it never stays", () => {
    const { file, to, rewrite } = written();
    const copy = (from: string, into: string) => {
      copyFileSync(from, into);
      if (into === to) rewrite();
    };
    expect(() => copyRunning(file, to, copy)).toThrow(/was written to faster than it could be copied, and no copy was made; try again\.$/);
  });
});

describe("where a job does not hold", () => {
  it("it is copied all the same, as evidence, and said so, with 1", () => {
    const at = place();
    edited(at.file, BROKEN);
    const { status, out, complaint } = at.backUp();
    expect([status, complaint]).toEqual([
      1,
      ["Not every job holds: backup.db is a copy of what is there all the same, to be kept as evidence, and cannot be restored."],
    ]);
    expect(out[0]).toContain("does not hold: entry 2 is not as it was written");
    expect(verifyJobsIn(at.backup)[0]?.verdict.mismatch).toEqual({ no: 2, why: "hash" });
  });
  it("it is not restored, with 1, and the old data is untouched", () => {
    const at = place();
    expect(at.backUp().status).toBe(0);
    edited(at.backup, BROKEN);
    const before = at.contents();
    expect(at.restore()).toMatchObject({
      status: 1,
      complaint: ["Not every job in backup.db holds, and nothing was changed; use an earlier backup."],
    });
    expect(at.contents()).toEqual(before);
  });
});

const spoilt: [string, (file: string) => void, RegExp][] = [
  ["cut short", (file) => truncateSync(file, 9000), /data\.db is damaged, /],
  ["empty", (file) => truncateSync(file, 0), /data\.db is empty/],
  ["text", (file) => writeFileSync(file, "name,size\ntent,80x100\n"), /data\.db is not a Ridgecall data file/],
  ["another program's", (file) => edited(file, "PRAGMA application_id = 1"), /data\.db is not a Ridgecall data file/],
  ["newer", (file) => edited(file, "PRAGMA user_version = 99"), /data\.db was written by a newer version \(layout 99, /],
  ["not there", (file) => rmSync(file), /^There is no .*data\.db/],
  ["a log without its file", (file) => [rmSync(file), writeFileSync(`${file}-wal`, "")], /data\.db is missing, but data\.db-wal /],
  ["a folder", (file) => [rmSync(file), mkdirSync(file)], /data\.db is not a file/],
];
/** One sentence, with 2, and nothing was made, moved or changed. */
function expectRefused(at: Place, run: () => ReturnType<Place["backUp"]>, sentence: RegExp) {
  const before = at.contents();
  const { status, out, complaint } = run();
  expect([status, out, complaint]).toEqual([2, [], [expect.stringMatching(sentence)]]);
  expect(complaint[0]).toMatch(/^[^\n]*\.$/);
  expect(at.contents()).toEqual(before);
}

describe("no backup is made", () => {
  it.each(spoilt)("of a data file that is %s", (_what, spoil, sentence) => {
    const at = place();
    spoil(at.file);
    expectRefused(at, at.backUp, sentence);
  });
  it.each<[string, (at: Place) => string, RegExp, ((at: Place) => void)?]>([
    ["over a file that is there", ({ backup }) => backup, /^backup\.db is there already, /, ({ backup }) => writeFileSync(backup, "mine")],
    ["over the data file itself", ({ file }) => file, /^data\.db is there already, /],
    [
      "over a link that leads nowhere",
      ({ backup }) => backup,
      /^backup\.db is there already, /,
      ({ backup }) => symlinkSync("nowhere", backup),
    ],
    ["in the name of the data file's log", ({ file }) => `${file}-wal`, /^data\.db-wal would be taken for a part of data\.db; /],
    [
      "beside a log that would be taken for its own",
      ({ backup }) => backup,
      /^backup\.db-wal would be taken for a part of backup\.db; /,
      ({ backup }) => writeFileSync(`${backup}-wal`, ""),
    ],
    ["into a folder that is missing", ({ folder }) => join(folder, "none", "backup.db"), /^There is no folder none; /],
    ["where nobody may write", () => "/proc/self/backup.db", /^(\/proc\/self\/backup\.db cannot be written \(E\w+: |There is no folder)/],
    ["to nothing", () => "", /^Name one new file for the backup: npm run backup -- FILE\.$/],
  ])("%s", (_what, target, sentence, before) => {
    const at = place();
    before?.(at);
    expectRefused(at, () => at.backUp(target(at)), sentence);
  });
  it("where the disk has no room, which is seen before anything is written", () => {
    const at = place();
    truncateSync(at.file, 2 ** 42);
    const { status, complaint } = at.backUp();
    expect([status, complaint, readdirSync(at.folder)]).toEqual([
      2,
      [expect.stringMatching(/^There is no room for the copy on the disk with .*: it needs 4,194,368 MB and [\d,]+ MB are free; /)],
      ["data.db"],
    ]);
  });
  it.each(["ENOSPC", "EDQUOT", "SQLITE_FULL"])("where the disk fills up meanwhile, and says %s", (code) => {
    const error = Object.assign(new Error(`${code}: no space left`), { code });
    expect(sentenceOf(error, "/stick/b.db", "/stick")).toBe(
      "The disk with /stick is full, and no copy was made; make room, or use another disk.",
    );
  });
});

describe("a restore", () => {
  it.each(spoilt)("refuses a backup that is %s, and leaves the data file as it was", (_what, spoil, sentence) => {
    const at = place();
    const live = join(at.folder, "live.db");
    copyFileSync(at.file, live);
    spoil(at.file);
    expectRefused(at, () => at.restore(at.file, live), sentence);
  });
  it("makes a data file where there is none, from a backup that is read-only, and nothing is said to be aside", () => {
    const at = place();
    chmodSync(at.file, 0o444);
    const to = join(at.folder, "new.db");
    const { status, out } = at.restore(at.file, to);
    expect([status, out]).toEqual([0, [line(3), expect.stringMatching(/^new\.db is made: 1 job, 3 entries, [\d,]+ bytes\.$/)]]);
    expect([lstatSync(to).mode & 0o600, inUse(to)]).toEqual([0o600, false]);
  });
  it("puts it in the place of one that is damaged, which is what it is for, each time under a name of its own", () => {
    const at = place();
    expect(at.backUp().status).toBe(0);
    truncateSync(at.file, 9000);
    writeFileSync(`${at.file}.replaced-1-wal`, "of somebody's");
    const before = at.contents();
    expect([at.restore().out.at(-1), at.restore().out.at(-1)]).toEqual([
      "What was there before lies at data.db.replaced-2.",
      "What was there before lies at data.db.replaced-3.",
    ]);
    expect(at.contents()).toEqual({
      ...before,
      "data.db": before["backup.db"],
      "data.db.replaced-2": before["data.db"],
      "data.db.replaced-3": before["backup.db"],
    });
  });
  it("moves the file that a link leads to, and leaves the link", () => {
    const at = place();
    expect(at.backUp().status).toBe(0);
    const link = join(at.folder, "link.db");
    symlinkSync("data.db", link);
    expect(at.restore(at.backup, link).out.at(-1)).toBe("What was there before lies at data.db.replaced-1.");
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
  });
  it("refuses a place that is no file, and a command without a backup", () => {
    const at = place();
    const folder = join(at.folder, "folder");
    mkdirSync(folder);
    expectRefused(at, () => at.restore(at.file, folder), /^folder, where the data file would go, is not a file; /);
    expectRefused(at, () => at.restore("", at.backup), /^Name one backup: npm run restore -- BACKUP\.$/);
  });
});

it("people are warned of a full disk from 64 MiB on, by what the system says of the folder with the data file", () => {
  const at = place();
  const withFree = (freeBytes: number | null) => watchFile(at.file, () => freeBytes).condition();
  expect([withFree(64 * 2 ** 20), withFree(null)]).toEqual([{ is: "sound" }, { is: "sound" }]);
  expect(withFree(64 * 2 ** 20 - 1)).toEqual({ is: "low", place: at.folder, freeBytes: 64 * 2 ** 20 - 1 });
});
