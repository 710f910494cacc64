import { copyFileSync, renameSync, rmSync, statSync, truncateSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { lineOf, verifyJob } from "../../machines/record/verify-job.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { brief, testApp } from "../support/app.ts";
import { openingLine } from "../support/entries.ts";
import { openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";

let folder: string;
let file: string;
let job: Awaited<ReturnType<typeof openedJob>>;
let keys = 0;

beforeEach(async () => {
  folder = scratchFolder("lost");
  file = join(folder, "data.db");
  const first = openJournal(file);
  await first.open(openingLine("not-looked-at"), {});
  await first.close();
  job = await openedJob(brief(), testApp(openJournal(file)));
  await told({ type: "note", text: "here" });
});
afterEach(async () => {
  await job.journal.close();
  rmSync(folder, { recursive: true, force: true });
});
const said = (body: object, by = "Ines") => job.post(`/jobs/${job.job}/say`, { as: by, key: `said-here-${++keys}`, seen: 1, ...body });
const told = async (body: object, by?: string) => (await said(body, by)).json();

/** Another file in the place of this one, a copy to the byte. */
function replace(path: string) {
  copyFileSync(path, `${path}.copy`);
  renameSync(`${path}.copy`, path);
}

describe.each<[string, () => void, string]>([
  ["deleted with its log", () => ["", "-wal"].forEach((part) => void rmSync(file + part)), "was deleted"],
  ["deleted alone", () => rmSync(file), "was deleted"],
  ["kept, and its log deleted", () => rmSync(`${file}-wal`), "was deleted"],
  ["replaced by a copy of itself", () => replace(file), "was replaced by another"],
  ["kept, and its log replaced", () => replace(`${file}-wal`), "was replaced by another"],
  ["cut short", () => truncateSync(file, statSync(file).size - 4096), "was cut short"],
  ["cut to nothing", () => truncateSync(file, 0), "was cut short"],
  ["kept, and its log cut short", () => truncateSync(`${file}-wal`, 32), "was cut short"],
])("a data file that is %s under the running program", (_what, spoil, how) => {
  const sentence = () =>
    `The data file ${file} ${how} while in use, so nothing more is recorded; export this record, put your last copy of the file back, and start again.`;
  beforeEach(() => spoil());

  it("is noticed by the first command after, which is refused in one sentence", async () => {
    const answer = await said({ type: "note", text: "gone?" });
    expect([answer.status, await answer.json()]).toEqual([503, { problem: sentence(), fields: {} }]);
    expect((await job.entries()).length).toBe(2);
  });
  it("leaves every screen for reading only, and a hold still reaches them", async () => {
    expect((await job.read()).readOnly).toBe(sentence());
    expect(await told({ type: "hold" }, "Odd")).toMatchObject({ entry: null, outcome: { did: "held" } });
    expect(await job.read()).toMatchObject({ readOnly: sentence(), held: { by: "Odd", unrecorded: sentence() } });
  });
  it("leaves what is in memory to be exported, and that holds", async () => {
    const record = (await (await job.app.request(`/jobs/${job.job}/record.json`)).json()) as { problem: string; entries: unknown[] };
    expect([record.problem, record.entries.length]).toEqual([sentence(), 2]);
    expect(verifyJob(job.job, record.entries.map(lineOf))).toMatchObject({ entries: 2, mismatch: null });
  });
  it("is said of a job that was not in memory too: nothing is read of a file that nobody can vouch for", async () => {
    const answer = await job.app.request("/jobs/not-looked-at.json");
    expect([answer.status, await answer.json()]).toEqual([503, { problem: sentence(), fields: {} }]);
  });
  it("stays lost when another file is put there, and that one is not touched when the program ends", async () => {
    await said({ type: "note", text: "gone?" });
    rmSync(file, { force: true });
    rmSync(`${file}-wal`, { force: true });
    await openJournal(file).close();
    const before = statSync(file);
    expect((await said({ type: "note", text: "and now?" })).status).toBe(503);
    await job.journal.close();
    expect(statSync(file)).toMatchObject({ ino: before.ino, size: before.size, mtimeMs: before.mtimeMs });
  });
});
