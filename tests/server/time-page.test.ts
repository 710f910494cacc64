import { rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { beforeEach, describe, expect, it } from "vitest";
import { openJournal } from "../../server/journal/open-file.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import type { TimeState } from "../../views/pages/time/state.ts";
import { brief, testApp } from "../support/app.ts";
import { openingLine } from "../support/entries.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";

let world: ReturnType<typeof testApp>;
let job: OpenedJob;
beforeEach(async () => {
  world = testApp();
  job = await openedJob({ ...brief(), title: "Lower meadow" }, world);
});
const get = (query = "") => world.app.request(`/jobs/${job.job}/time${query}`);
const html = async (query = "") => (await get(query)).text();
const data = async (query = "") => (await (await world.app.request(`/jobs/${job.job}/time.json${query}`)).json()) as TimeState;
const MINUTE = 60;
const row = (state: TimeState, phase: string) => state.phases.find((p) => p.phase === phase)!;

/** A job driven from end to end, so many minutes to each thing that is asked: none pass between a reading and its use. */
async function finishedJob(title: string, minutes: number, more: object = {}) {
  const other = await openedJob({ ...brief(), title, ...more }, world);
  await other.to((s) => {
    if (s.gate !== null) world.clock.pass(minutes * MINUTE);
    return s.closed;
  });
  return other;
}

describe("the page of crew and time", () => {
  it("says before the start how much work there is, with its range, and that it rests on no job", async () => {
    const page = await html();
    expect(page).toMatch(/<p class="headline">About \d+ h( \d+ min)? to raise it<\/p><p class="between">between \d+ h.* and \d+ h/);
    expect(page).toContain("With 6 people on site.");
    expect(page).toContain("on none of your own jobs yet");
    expect((await data()).finish).toBeNull();
  });
  it("says during the raise when it is likely done, on the clock of the site", async () => {
    await job.to((s) => s.step === "drive.AB");
    const state = await data();
    expect(state.headline).toMatch(/^Likely done (\w{3}, \d+ \w+ )?\d\d:\d[05]$/);
    expect(state.notes).toContain("Times are local to the site, America/Chicago.");
    const utc = new Date(state.finish!.likely).getTime();
    const local = new Intl.DateTimeFormat("en-GB", { timeZone: "America/Chicago", hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
    const five = 5 * 60_000;
    expect(state.headline).toContain(local.format(Math.round(utc / five) * five));
    expect(state.finish!.low <= state.finish!.likely && state.finish!.likely <= state.finish!.high).toBe(true);
  });
  it("names a finish on another day with its day", async () => {
    await job.to((s) => s.step === "drive.AB");
    world.clock.pass(12 * 3600);
    expect((await data()).headline).toMatch(/^Likely done \w{3},? \d+ \w+ \d\d:\d\d$/);
  });
  it("shows for each phase what it rests on, and the assumptions in plain words", async () => {
    const page = await html();
    expect(page).toContain("100 stakes to drive × 4 person-min, 6 at it: 1 h 5 min");
    expect(page).toContain("2 center poles to raise × 14 min, a team of 4: 28 min");
    expect(page).toContain("common practice, no source");
    expect(page).toContain("no finished job yet");
  });
  it("leads back to the guide, to the data, and is led to from what More has on the tent", async () => {
    const page = await html();
    for (const to of [`/jobs/${job.job}`, `/jobs/${job.job}/time.json`]) expect(page).toContain(`href="${to}"`);
    expect(await (await world.app.request(`/jobs/${job.job}/tent?as=p1`)).text()).toContain(`href="/jobs/${job.job}/time"`);
  });
  it("shows a person's words as text only", async () => {
    job = await openedJob({ ...brief(), title: "<b>bold</b>" }, world);
    expect(await html()).toContain("&lt;b&gt;bold&lt;/b&gt;");
  });
  it("of a job that is not there is refused", async () => {
    for (const path of ["/jobs/none-such/time", "/jobs/none-such/time.json"]) {
      const answer = await world.app.request(path);
      expect([answer.status, await answer.text()]).toEqual([404, expect.stringContaining("There is no job none-such")]);
    }
  });
});

describe("another crew", () => {
  it("of ten is faster, and says that it is a what-if; the way back to the brief's is offered", async () => {
    const [own, ten] = [await data(), await data("?people=10")];
    expect(ten.leftMin!.likely).toBeLessThan(own.leftMin!.likely);
    expect([ten.people, ten.onBrief]).toEqual([10, 6]);
    const page = await html("?people=10");
    expect(page).toContain("What if: with 10 people. The brief has 6.");
    expect(page).toContain("With the crew on the brief (6)");
  });
  it("of three is too few to raise a pole this long: it says so, gives no total, and that this is no word on safety", async () => {
    const page = await html("?people=3");
    expect(page).toContain("No time can be told with 3 people: &quot;Interior raised&quot; takes at least 5.");
    expect(page).toContain("That is a figure for time.");
    expect(page).toContain("Not with 3 people: at least 5");
    expect((await data("?people=3")).leftMin).toBeNull();
  });
  it.each(["0", "61", "6.5", "-3", "six", "1e1", "%3Ci%3E", "999999999999"])(
    "of %s is refused in a sentence, and what was typed stays",
    async (said) => {
      const answer = await get(`?people=${said}`);
      const page = await answer.text();
      expect(answer.status).toBe(422);
      expect(page).toContain("is not a crew. Give a whole number of people from 1 to 60.");
      expect(page).toContain(`value="${decodeURIComponent(said).replace("<", "&lt;").replace(">", "&gt;")}"`);
      expect(page).not.toContain("<i>");
      const json = await world.app.request(`/jobs/${job.job}/time.json?people=${said}`);
      expect([json.status, await json.json()]).toMatchObject([422, { fields: { people: expect.stringContaining("1 to 60") } }]);
    },
  );
  it("left empty is the one on the brief", async () => expect((await data("?people=")).people).toBe(6));
  it.each(["1", "60"])("of %s is taken", async (said) => expect((await get(`?people=${said}`)).status).toBe(200));
});

describe("what other jobs teach", () => {
  it("two finished jobs make a factor, and the page says how few they are", async () => {
    await finishedJob("Upper meadow", 6);
    await finishedJob("Mill yard", 6);
    const state = await data();
    expect(row(state, "anchorsSet").factor).toMatchObject({ jobs: 2, leftOut: 0 });
    expect(row(state, "anchorsSet").factor.likely).not.toBe(1);
    expect([state.jobs, state.caveat]).toEqual([2, "Rests on 2 finished jobs; take it as a guess."]);
  });
  it("a rehearsal, and the job itself, teach nothing", async () => {
    await finishedJob("Practice", 6, { rehearsal: true });
    await job.to((s) => {
      if (s.gate !== null) world.clock.pass(6 * MINUTE);
      return s.closed;
    });
    const state = await data();
    expect(state.phases.map((p) => p.factor.jobs)).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
  });
  it("a job that was pressed through in a minute is left out, and the page says so", async () => {
    await finishedJob("Tried out", 0);
    const state = await data();
    expect(row(state, "anchorsSet").factor).toMatchObject({ likely: 1, jobs: 0, leftOut: 1 });
    expect(await html()).toContain("1 more left out: not timed");
  });
});

describe("on its way", () => {
  it("held, it says so, and what it would be if work went on", async () => {
    await job.to((s) => s.phase === "tensioned");
    await job.say({ type: "hold" }, "Odd");
    const { headline, held, lead } = await data();
    expect([held, lead, headline]).toEqual([true, "HELD. If work went on this minute:", expect.stringMatching(/^Likely done/)]);
  });
  it("making safe, it tells no finish", async () => {
    await job.to((s) => s.phase === "interiorRaised");
    await job.say({ type: "makeSafe", because: "a strap torn" });
    expect(await data()).toMatchObject({
      headline: "Making safe. A finish is told again when the work goes on.",
      finish: null,
      leftMin: null,
    });
  });
  it("standing, it tells the strike; striking, when all is down; closed, what it took", async () => {
    await job.to((s) => s.phase === "standing");
    expect(await data()).toMatchObject({ lead: "The tent stands.", headline: expect.stringMatching(/^About .* to take it down$/) });
    await job.to((s) => s.step === "strike.unlace");
    expect((await data()).headline).toMatch(/^Likely all down/);
    await job.to((s) => s.closed);
    expect(await data()).toMatchObject({
      headline: expect.stringMatching(/^The job is closed\. The guide counted .* of work\.$/),
      finish: null,
    });
  });
  it("of a rehearsal it is what the real job would take", async () => {
    job = await openedJob({ ...brief(), title: "Practice", rehearsal: true }, world);
    await job.to((s) => s.phase === "anchorsSet");
    const { notes, finish } = await data();
    expect([finish, notes]).toEqual([null, expect.arrayContaining(["What the real job would take. A rehearsal itself is not timed."])]);
    expect(await html()).toContain("Rehearsal: nothing here is a real tent");
  });
  it("looking never adds an entry", async () => {
    const before = (await job.entries()).length;
    await html("?people=8");
    expect(await job.entries()).toHaveLength(before);
  });
});

it("a job whose record does not hang together has no finish told, and says why", async () => {
  const folder = scratchFolder("time");
  const file = join(folder, "data.db");
  const journal = openJournal(file);
  const spoiled = await openedJob(undefined, testApp(journal));
  await spoiled.to((s) => s.phase === "anchorsSet");
  await journal.close();
  const db = new Database(file);
  db.exec("DROP TRIGGER entries_stay; UPDATE entries SET bytes = x'00' WHERE no = 9");
  db.close();
  const again = openJournal(file);
  const { app } = testApp(again);
  const state = (await (await app.request(`/jobs/${spoiled.job}/time.json`)).json()) as TimeState;
  expect(state).toMatchObject({
    headline: expect.stringMatching(/^Entry 9 .* No finish is told\.$/),
    finish: null,
    leftMin: null,
    caveat: null,
  });
  await again.close();
  rmSync(folder, { recursive: true });
});

it("among 2,000 jobs the others are told from what is kept of them: no entry of theirs is read", async () => {
  const kept = sqliteJournal(":memory:");
  for (let n = 0; n < 2000; n++) await kept.open(openingLine(`job-${n}`), {});
  const asked: string[] = [];
  const counting = new Proxy(kept, {
    get: (journal, name: keyof typeof kept) => {
      asked.push(name);
      return journal[name];
    },
  });
  const many = testApp(counting);
  const one = await openedJob(undefined, many);
  asked.length = 0;
  expect((await many.app.request(`/jobs/${one.job}/time`)).status).toBe(200);
  // Once for the forecast, once for somebody hurt, and once for the lightning clock.
  expect(asked).toEqual(["condition", "folds", "condition", "condition"]);
});
