import { copyFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { backUp } from "../../server/backup/back-up.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { verifyRecords } from "../../server/verify-records.ts";
import { brief, testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";
import { PICTURES, photoForm } from "../support/photos.ts";
import { scratchFolder } from "../support/scratch.ts";

const root = scratchFolder("photos");
afterAll(() => rmSync(root, { recursive: true, force: true }));
const sound = join(root, "sound.db");

/** One job with two photos, the first of them twice, and a third that no entry names: its server was killed in between. */
beforeAll(async () => {
  const journal = openJournal(sound);
  const job = await openedJob(brief(), testApp(journal));
  for (const [i, photo] of [PICTURES["image/jpeg"], PICTURES["image/png"], PICTURES["image/jpeg"]].entries()) {
    const body = photoForm(photo, { as: "p4", key: `photo-000${i}`, seen: "1", gate: "", text: "" });
    const headers = { origin: "http://localhost", accept: "application/json" };
    const answer = await job.app.request(`/jobs/${job.job}/photo`, { method: "POST", body, headers });
    expect(answer.status).toBe(200);
  }
  await journal.photos.put(job.job, hashOf(PICTURES["image/webp"]), { mime: "image/webp", bytes: PICTURES["image/webp"] });
  await journal.close();
});

let files = 0;
/** A copy of that file, changed behind the program's back. */
function changed(sql: string): string {
  const file = join(root, `data-${++files}.db`);
  copyFileSync(sound, file);
  const db = new Database(file);
  db.exec(sql);
  db.close();
  return file;
}
function told(go: (terminal: { print: (line: string) => void; complain: (line: string) => void }) => number) {
  const lines: string[] = [];
  const status = go({ print: (line) => lines.push(line), complain: (line) => lines.push(line) });
  return { status, text: lines.join("\n") };
}
const verify = (file: string) => told((terminal) => verifyRecords([file], terminal));

const PNG = `hash = '${hashOf(PICTURES["image/png"])}'`;

describe("photos in a data file are verified", () => {
  it("hold as they were stored, with one beside them that no entry names", () => {
    const { status, text } = verify(sound);
    expect([status, text]).toEqual([0, expect.stringMatching(/: 4 entries, last hash [0-9a-f]{64}, holds\./)]);
  });
  it.each([
    ["is gone", `DELETE FROM photos WHERE ${PNG}`, "the photo of entry 3 is missing."],
    ["is another picture", `UPDATE photos SET bytes = x'ffd8ffd9' WHERE ${PNG}`, "the photo of entry 3 is not the one that was taken."],
    [
      "is said to be of another kind",
      `UPDATE photos SET mime = 'text/html' WHERE ${PNG}`,
      "the photo of entry 3 is not the one that was taken.",
    ],
    ["lies under another job", `UPDATE photos SET job = 'job-9' WHERE ${PNG}`, "the photo of entry 3 is missing."],
    [
      "that two entries name is gone",
      `DELETE FROM photos WHERE hash = '${hashOf(PICTURES["image/jpeg"])}'`,
      "the photo of entry 2 is missing; the photo of entry 4 is missing.",
    ],
  ])("one that %s is told, with its entry", (_what, sql, sentence) => {
    const { status, text } = verify(changed(sql));
    expect([status, text]).toEqual([1, expect.stringContaining(`does not hold: ${sentence}`)]);
  });
  it("and so is a backup, which has them too", () => {
    const backup = (file: string) => told((terminal) => backUp([`${file}.copy`], file, terminal));
    expect(backup(changed("SELECT 1")).status).toBe(0);
    const spoiled = changed(`DELETE FROM photos WHERE ${PNG}`);
    expect(backup(spoiled)).toEqual({ status: 1, text: expect.stringContaining("the photo of entry 3 is missing") });
    expect(verify(`${spoiled}.copy`).status).toBe(1);
  });
});
