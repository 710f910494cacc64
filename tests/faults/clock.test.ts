import { beforeEach, describe, expect, it } from "vitest";
import type { Intent } from "../../machines/install/commands.ts";
import { DEFAULTS } from "../../machines/install/limits.ts";
import { UNKNOWN_MS } from "../../machines/install/moment.ts";
import { status } from "../../machines/install/status.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { verifyJob } from "../../machines/record/verify-job.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { en } from "../../views/text/en/en.ts";
import { wholeMinute } from "../../views/text/whole-minute.ts";
import { brief, testApp } from "../support/app.ts";
import { failingJournal } from "../support/failing-journal.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
const YEAR = 365 * DAY;

let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
});

/** The same job in the application started again, when the wall clock shows so much more than before, or less. */
const restarted = async (seconds: number): Promise<OpenedJob> => {
  const world = job.restart(seconds);
  const again = await openedJob(brief(), world);
  expect(again.job).toBe(job.job);
  return again;
};
const now = async (of = job) => (await of.liveJobs.load(of.job)).now;
const wind = async (of = job, ago = 0, gustMph = 9): Promise<Intent> => ({
  type: "reading",
  reading: { kind: "wind", mph: 6, gustMph, fromDeg: null, takenAt: (await now(of)).at - ago * 1000, place: null },
});
const weather = async (of = job) => (await of.read()).weather;
const inches: Intent = { type: "answer", gate: "drive.AB", value: { kind: "measure", n: 6, unit: "in" } };
const note: Intent = { type: "note", text: "all well" };
const folded = async (of = job) => foldAll(await of.entries());
const thunder = { type: "reading", reading: { kind: "thunder", takenAt: 0 } } as const;
/** How a gate stands now. */
const stands = async (gate: string, of = job) => {
  const { job: at, now } = await of.liveJobs.load(of.job);
  const found = at.frozen.script.conditions.find((c) => c.gate.id === gate)!;
  return status(found.gate, at.snapshot.context, now.at);
};
const whole = async (of = job) => expect(verifyJob(of.job, await of.journal.read(of.job)).mismatch).toBeNull();

describe("a wall clock set back", () => {
  it("59 minutes does not make an hour-old reading a fresh one", async () => {
    await job.say(await wind());
    job.clock.pass(HOUR);
    job.clock.setWall(-59 * MINUTE);
    expect(await weather()).toMatchObject({ is: "unknown", words: expect.stringMatching(/ 60 min ago$/) });
    await job.say(note);
    expect(await weather()).toMatchObject({ is: "unknown", words: expect.stringMatching(/ 60 min ago$/) });
  });
  it("is said on the screen until an entry fits again, and is a finding once", async () => {
    await job.say(note);
    job.clock.setWall(-59 * MINUTE);
    const said = "Clock jumped 59 min back. Ages are counted without it.";
    expect((await job.read()).clock).toBe(said);
    expect(await (await job.app.request(`/jobs/${job.job}`)).text()).toContain(said);
    await job.say(note);
    expect([(await job.read()).clock, (await folded()).flags]).toEqual([said, ["clockJumped"]]);
    await job.say(note);
    expect([(await job.read()).clock, (await folded()).flags, (await folded()).fold.counts.clockJumped]).toEqual([null, [], 1]);
    expect(await (await job.app.request(`/jobs/${job.job}/record?show=clockJumped`)).text()).toContain("Clock jumped");
    await whole();
  });
  it("shuts nobody out: a new reading is fresh, and a gate that was answered before is good", async () => {
    await job.to((s) => s.step === "drive.AB");
    expect(await stands("earsAndEyes")).toBe("good");
    job.clock.setWall(-DAY);
    expect(await stands("earsAndEyes")).toBe("good");
    await job.say(await wind());
    expect((await weather()).is).toBe("workable");
    await job.to((s) => s.step === "drive.BC");
  });
  it("does not hold thunder longer, nor shorter", async () => {
    await job.say(thunder);
    job.clock.pass(20 * MINUTE);
    job.clock.setWall(-DAY);
    await job.say(note);
    job.clock.pass(9 * MINUTE);
    expect((await weather()).is).toBe("stop");
    job.clock.pass(MINUTE);
    expect((await weather()).is).not.toBe("stop");
  });
  it("under a minute is no jump, and nothing to tell", async () => {
    job.clock.setWall(-50);
    await job.say(note);
    expect([(await job.read()).clock, (await folded()).flags]).toEqual([null, []]);
  });
});

describe("a wall clock that stood a year ahead for one note", () => {
  beforeEach(async () => {
    job.clock.setWall(YEAR);
    await job.say(note);
  });
  it("is said, makes what was read before old, and both ways are findings", async () => {
    expect((await job.read()).clock).toMatch(/^Clock jumped 365 d ahead\. /);
    job.clock.setWall(-YEAR);
    expect((await job.read()).clock).toMatch(/^Clock jumped 365 d back\. /);
    await job.say(note);
    await job.say(note);
    expect([(await job.read()).clock, (await folded()).fold.counts.clockJumped]).toEqual([null, 2]);
    await whole();
  });
  it("leaves the next readings fresh, and everything goes on", async () => {
    job.clock.setWall(-YEAR);
    await job.say(await wind());
    expect(await weather()).toMatchObject({ is: "workable", words: expect.stringMatching(/ 0 min ago$/) });
    await job.to((s) => s.phase === "anchorsSet");
    expect((await job.read()).clock).toBeNull();
  });
  it("shows times of day as they were, and takes no work time for it", async () => {
    job.clock.setWall(-YEAR);
    await job.say(note);
    const { thread } = await job.read();
    expect(thread.map(({ time }) => time)).toEqual(["07:00", "07:00"]);
    const { fold } = await folded();
    expect(new Date(fold.lastWall).getUTCFullYear()).toBe(2026);
    expect(Object.values(fold.phaseMs).reduce((a, b) => a + b, 0)).toBeLessThan(MINUTE * 1000);
  });
});

it("a clock that went ahead may be right, for a machine that stood still: readings are that much older, thunder is not", async () => {
  await job.say(await wind());
  await job.say(thunder);
  job.clock.setWall(HOUR);
  await job.say(note);
  job.clock.pass(29 * MINUTE);
  expect((await weather()).is).toBe("stop");
  job.clock.pass(MINUTE);
  expect(await weather()).toMatchObject({ is: "unknown", words: expect.stringMatching(/ 90 min ago$/) });
});

describe("a restart", () => {
  it("an hour later is an hour", async () => {
    await job.say(await wind());
    await job.say(thunder);
    const again = await restarted(HOUR);
    expect(await weather(again)).toMatchObject({ is: "unknown", words: expect.stringMatching(/ 60 min ago$/) });
    expect((await again.read()).clock).toBeNull();
    await again.say(note);
    expect((await folded(again)).flags).toEqual([]);
    await whole(again);
  });
  it("with the clock set back asks again all that ages, is told, and shuts nobody out", async () => {
    await job.to((s) => s.step === "drive.AB");
    await job.say(await wind());
    expect(await stands("earsAndEyes")).toBe("good");
    const again = await restarted(-HOUR);
    expect([await stands("earsAndEyes", again), (await weather(again)).is]).toEqual(["stale", "unknown"]);
    expect((await again.read()).clock).toBe(
      "Clock went back 1 h or more while the guide was off. How long it was off is not known: all that ages is asked again.",
    );
    await again.say(note);
    expect([await stands("earsAndEyes", again), (await folded(again)).flags]).toEqual(["stale", ["clockJumped"]]);
    await again.say(await wind(again));
    expect((await weather(again)).is).toBe("workable");
    await again.to((s) => s.step === "drive.BC");
    await whole(again);
  });
  it("with the clock set back keeps thunder as near as it was", async () => {
    await job.say(thunder);
    const again = await restarted(-HOUR);
    expect(await weather(again)).toMatchObject({ is: "stop" });
    await again.say(note);
    again.clock.pass(29 * MINUTE);
    expect((await weather(again)).is).toBe("stop");
    again.clock.pass(MINUTE);
    expect((await weather(again)).is).not.toBe("stop");
  });
  it("counts on from there: a clock set back afterward, before anything is said, takes nothing off", async () => {
    await job.say(await wind());
    const again = await restarted(HOUR);
    await again.read();
    again.clock.setWall(-59 * MINUTE);
    expect(await weather(again)).toMatchObject({ is: "unknown", words: expect.stringMatching(/ 60 min ago$/) });
    await again.say(note);
    expect((await folded(again)).flags).toEqual(["clockJumped"]);
    await whole(again);
  });
  it("adds more than the longest that anything stays good", () => {
    const seconds = Object.entries(DEFAULTS).flatMap(([name, limit]) => (name.endsWith("S") ? [Number(limit.is)] : []));
    expect(seconds.length).toBeGreaterThan(5);
    expect(UNKNOWN_MS / 1000).toBeGreaterThan(Math.max(...seconds));
  });
});

describe("by the wall clock", () => {
  const spoken = async (...alternatives: string[]) => {
    const seen = (await job.liveJobs.load(job.job)).entries.length;
    const told = await job.post(`/jobs/${job.job}/say`, { as: "Ines", key: `spoken-${seen}-0000`, seen, alternatives, talk: true });
    return (await told.json()) as { reply: string };
  };
  const typed = async (ask: object) => {
    const { entries } = await job.liveJobs.load(job.job);
    const body = { as: "Ines", key: `typed-${entries.length}-0000`, seen: entries.length, ...ask };
    return (await (await job.post(`/jobs/${job.job}/say`, body)).json()) as { reasons: { why: string }[] };
  };
  it("a ticket runs out", async () => {
    await job.to((s) => s.step === "drive.AB");
    expect(await stands("locate.ticket")).toBe("good");
    job.clock.setWall(60 * DAY);
    expect(await stands("locate.ticket")).toBe("stale");
    await job.say(note);
    job.clock.setWall(-60 * DAY);
    expect(await stands("locate.ticket")).toBe("good");
  });
  it("what was said to a ticket stays as it was told then, whatever the clock does later", async () => {
    await job.to((s) => s.step === "drive.AB");
    const named = brief().ticket.number;
    const { no } = await job.say({ type: "answer", gate: "locate.ticket", value: { kind: "document", named } });
    const told = async () => (await job.read()).thread.find((line) => line.no === no)!.reply;
    const then = await told();
    job.clock.setWall(-60 * DAY);
    expect(await told()).toBe(then);
    await job.say(note);
    expect(await told()).toBe(then);
  });
  it("a ticket is not in force yet", async () => {
    await job.to((s) => s.step === "drive.AB");
    job.clock.setWall(-60 * DAY);
    expect(await stands("locate.ticket")).toBe("early");
    expect((await job.say(inches)).outcome).toMatchObject({ asks: { gate: "locate.ticket", status: "early" } });
  });
  it("a ticket that ran out while the guide was off is out, and one that runs out while it is on", async () => {
    await job.to((s) => s.step === "drive.AB");
    expect(await stands("locate.ticket", await restarted(60 * DAY))).toBe("stale");
    job.clock.pass(60 * DAY);
    expect(await stands("locate.ticket")).toBe("stale");
  });
  it("a reading is taken, whatever the clock did before; one of later is refused, unless it can only stop", async () => {
    const at = (wall: number) => new Date(wall).toISOString();
    job.clock.setWall(-5 * HOUR);
    await job.say(note);
    const { wall } = await now();
    const reading = { type: "reading", kind: "wind", mph: 6, gustMph: 9 };
    expect((await typed({ ...reading, takenAt: at(wall + 60_000) })).reasons[0]?.why).toBe("future");
    expect((await typed({ ...reading, takenAt: at(wall - 60_000) })).reasons).toEqual([]);
    expect((await weather()).words).toMatch(/ 1 min ago$/);
    expect((await typed({ ...reading, gustMph: 60, takenAt: at(wall + HOUR * 1000) })).reasons).toEqual([]);
    expect((await weather()).is).toBe("stop");
  });
  it("a time that is said is understood, and told", async () => {
    job.clock.setWall(2 * HOUR);
    await job.say(note);
    // Nine in the morning at the site.
    expect((await spoken("wind 6 gusting 9 at ten to nine")).reply).toContain("08:50");
  });
  it("an end of thunder is told", async () => {
    await job.to((s) => s.step === "drive.AB");
    job.clock.setWall(-2 * HOUR);
    const { wall } = await job.say(thunder);
    expect((await job.say(inches)).outcome).toMatchObject({ asks: { gate: "thunder", notBefore: wall + 30 * MINUTE * 1000 } });
    const shown = en.when.clock(brief().zone, wholeMinute(wall + 30 * MINUTE * 1000));
    expect((await job.read()).thread.at(-1)!.reply).toContain(`before ${shown}`);
  });
});

it("a job is raised on a clock that is set again and again, and its own time never goes back", async () => {
  for (const by of [-HOUR, YEAR, -DAY, 5 * MINUTE, -YEAR]) {
    job.clock.setWall(by);
    let looked = 0;
    await job.to(() => ++looked > 12);
  }
  const entries = await job.entries();
  const { fold } = await folded();
  expect([fold.counts.clockJumped, entries.every(({ entry }, i) => i === 0 || entry.at > entries[i - 1]!.entry.at)]).toEqual([5, true]);
  await whole();
});

it("holds that waited for the disk count from when they were said, each on from the one before", async () => {
  const { journal, state } = failingJournal(memoryJournal());
  const full = await openedJob(brief(), testApp(journal));
  const hold = (key: string) => full.post(`/jobs/${full.job}/say`, { as: "Odd", key: `hold-${key}-0001`, seen: 1, type: "hold" });
  state.failure = { why: "full", place: "/data/ridgecall.db" };
  await hold("first");
  full.clock.pass(10 * MINUTE);
  await hold("second");
  full.clock.pass(10 * MINUTE);
  state.failure = null;
  await full.say(note);
  const opened = (await full.entries())[0]!.entry.at;
  const at = (await full.entries()).map(({ entry }) => Math.floor((entry.at - opened) / 60_000));
  expect(at).toEqual([0, 0, 10, 20]);
  expect((await folded(full)).fold.counts.clockJumped).toBe(0);
  await whole(full);
});
