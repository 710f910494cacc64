import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { verifyHouse } from "../../machines/record/verify-house.ts";
import { readConfig } from "../../server/config.ts";
import { createHouse } from "../../server/house.ts";
import type { LiveJobs } from "../../server/jobs.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { type KeptDays, removeExpired } from "../../server/retention.ts";
import { brief, MORNING, testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

const DAY_MS = 24 * 3600 * 1000;

describe.each([
  ["in a file", () => sqliteJournal(":memory:")],
  ["in memory", memoryJournal],
])("what is kept of jobs %s", (_, make) => {
  let journal: Journal;
  beforeEach(() => {
    journal = make();
  });
  afterEach(() => journal.close());

  /** As the program does it at a moment, with the house stream that notes it. */
  const expired = async (liveJobs: LiveJobs, kept: KeptDays, now: number) => {
    const house = createHouse({ journal, clock: () => ({ wall: now, elapsedMs: 0 }) }, () => {});
    await house.daily();
    await removeExpired({ journal, liveJobs, house }, kept, now);
  };

  it("is kept for good where nobody set anything", async () => {
    const job = await openedJob(undefined, testApp(journal));
    await expired(job.liveJobs, { names: null, records: null }, MORNING + 9999 * DAY_MS);
    expect([Object.keys(await journal.people(job.job)).length, (await journal.read(job.job)).length]).toEqual([7, 1]);
  });
  it("loses its names after the days that were set, and no sooner; its record stays", async () => {
    const job = await openedJob(undefined, testApp(journal));
    await expired(job.liveJobs, { names: 400, records: null }, MORNING + 399 * DAY_MS);
    expect(Object.keys(await journal.people(job.job))).toHaveLength(7);
    await expired(job.liveJobs, { names: 400, records: null }, MORNING + 401 * DAY_MS);
    expect([await journal.people(job.job), (await journal.read(job.job)).length]).toEqual([{}, 1]);
    expect(await (await job.app.request(`/jobs/${job.job}/record`)).text()).not.toContain("Ines");
  });
  it("goes whole, with its codes and passes, and no other job with it", async () => {
    const world = testApp(journal);
    const old = await openedJob(undefined, world);
    await journal.access.keepCodes(old.job, [{ code: "AAA", job: old.job, leads: true }]);
    world.clock.setWall(500 * 24 * 3600);
    const young = await openedJob({ ...brief(), title: "Young" }, world);
    const openedAs = (await young.entries())[0]!.hash;
    await expired(world.liveJobs, { names: null, records: 400 }, MORNING + 501 * DAY_MS);
    expect([await journal.read(old.job), await journal.people(old.job), (await journal.folds()).map(({ job }) => job)]).toEqual([
      [],
      {},
      [young.job],
    ]);
    expect((await world.app.request(`/jobs/${old.job}`)).status).toBe(404);
    // Noted beforehand, it is missed by nobody who verifies.
    const { problems, removed } = verifyHouse(await journal.house.lines(), (id) =>
      id === young.job ? { entries: 1, hashAt: () => openedAs } : null,
    );
    expect([problems, removed.map(({ job }) => job)]).toEqual([[], [old.job]]);
    // Nothing but that takes an entry away.
    expect((await young.say({ type: "note", text: "still here" })).no).toBe(2);
  });
});

describe("the names of one job", () => {
  it("are erased by the office once it is closed, and show as ids from then on", async () => {
    const job = await openedJob();
    const post = (person: string) =>
      job.app.request(`/jobs/${job.job}/names`, {
        method: "POST",
        headers: { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost" },
        body: new URLSearchParams({ person }).toString(),
      });
    const early = await post("p3");
    expect([early.status, await early.text()]).toEqual([409, expect.stringContaining("The job is still open")]);
    await job.say({ type: "standDown", because: "called off" });
    expect((await post("p3")).status).toBe(303);
    const page = await (await job.app.request(`/jobs/${job.job}/names`)).text();
    expect(page).toContain("p3, erased");
    expect(page).not.toContain("Maren");
    for (const person of ["p3", "p99", "__proto__", "<b>"]) expect((await post(person)).status).toBe(422);
  });
});

describe("how long names and records are kept", () => {
  it.each(["0", "29", "-400", "1.5", "soon", "1e9x"])("is not %s days, and that is said", (days) => {
    expect(() => readConfig({ RIDGECALL_NAMES_DAYS: days })).toThrow(`RIDGECALL_NAMES_DAYS is "${days}"`);
  });
  it("is for good where nothing is set", () => {
    expect(readConfig({}).kept).toEqual({ names: null, records: null });
    expect(readConfig({ RIDGECALL_NAMES_DAYS: "400", RIDGECALL_RECORDS_DAYS: "3650" }).kept).toEqual({ names: 400, records: 3650 });
  });
});
