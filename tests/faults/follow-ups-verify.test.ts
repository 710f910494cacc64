import { copyFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openJournal } from "../../server/journal/open-file.ts";
import { ANY } from "../../server/journal/oversight.ts";
import { verifyRecords } from "../../server/verify-records.ts";
import { testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";

const folder = scratchFolder("follow-ups");
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const sound = join(folder, "sound.db");
let files = 0;
const copyWith = (sql: string) => {
  const file = join(folder, `copy-${++files}.db`);
  copyFileSync(sound, file);
  const db = new Database(file);
  db.exec(`DROP TRIGGER followUps_stay; DROP TRIGGER followUps_last; ${sql}`);
  db.close();
  return file;
};
function verify(file: string) {
  const out: string[] = [];
  const status = verifyRecords([file], { print: (line) => out.push(line), complain: (line) => out.push(line) });
  return { status, line: out.find((one) => one.startsWith("Follow-ups")) };
}

/** A job with something to look at, and three things said of it. */
beforeAll(async () => {
  const journal = openJournal(sound);
  const world = testApp(journal);
  const job = await openedJob(undefined, world);
  await job.say({ type: "answer", gate: "sheet.atHand", value: { kind: "unknown" } });
  const [found] = await journal.oversight.findings({ ...ANY, kind: "outOfLimit" }, null, 1);
  const about = { job: job.job, kind: "outOfLimit", entry: found!.finding.entry };
  for (const [i, is] of ["noted", "followedUp", "accepted"].entries())
    await world.post("/findings/followups", { key: `said-0000${i}`, ...about, is, text: `said ${i}` });
  await journal.close();
});

describe("the follow-ups in a data file are verified", () => {
  it("in a line of their own, where there are any", () => {
    expect(verify(sound)).toEqual({ status: 0, line: expect.stringMatching(/^Follow-ups: 3 entries, last hash [\da-f]{64}, holds\.$/) });
    expect(verify(copyWith("DELETE FROM followUps"))).toEqual({ status: 0, line: undefined });
  });
  it.each([
    ["UPDATE followUps SET bytes = x'7b7d' WHERE no = 2", 2, "is not as it was written"],
    ["DELETE FROM followUps WHERE no = 2", 2, "is missing, or stands in the wrong place"],
    ["DELETE FROM followUps WHERE no = 1", 1, "is missing, or stands in the wrong place"],
    ["UPDATE followUps SET what = 'accepted' WHERE no = 1", 1, "is filed otherwise than it was written"],
    ["UPDATE followUps SET entry = 9 WHERE no = 3", 3, "is filed otherwise than it was written"],
    ["UPDATE followUps SET key = 'another' WHERE no = 3", 3, "is filed otherwise than it was written"],
    ["UPDATE followUps SET prev = hash WHERE no = 2", 2, "is filed otherwise than it was written"],
  ])("after %s they do not hold", (sql, no, why) => {
    expect(verify(copyWith(sql))).toEqual({ status: 1, line: expect.stringContaining(`does not hold: entry ${no} ${why}`) });
  });
  it("nobody changes or takes out one in a file", () => {
    const db = new Database(sound);
    expect(() => db.exec("UPDATE followUps SET no = 9")).toThrow(/never changed/);
    expect(() => db.exec("DELETE FROM followUps")).toThrow(/never deleted/);
    db.close();
  });
});
