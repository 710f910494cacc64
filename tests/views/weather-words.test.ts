import { beforeEach, describe, expect, it } from "vitest";
import { contextOf, replyTo } from "../../machines/conversation/reply-to.ts";
import type { Reading } from "../../machines/install/commands.ts";
import { en } from "../../views/text/en/en.ts";
import { replyText } from "../../views/text/replies.ts";
import { brief, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

describe("what the strip says of the weather", () => {
  let job: OpenedJob;
  beforeEach(async () => {
    job = await openedJob();
  });
  const told = async (on = job) => (await on.read()).weather.words;
  const wind = (mph: number, gustMph: number, fromDeg: number | null): Reading => ({
    kind: "wind",
    mph,
    gustMph,
    fromDeg,
    takenAt: job.now(),
    place: null,
  });
  const read = (reading: Reading, on = job) => on.say({ type: "reading", reading });

  it("says that lightning stops the work, and when that is over by the clock of the site, never a minute early", async () => {
    const { command } = await read({ kind: "thunder", takenAt: 0 });
    const { limits } = (await job.liveJobs.load(job.job)).job.snapshot.context;
    const until = command.at + limits.thunderS * 1000;
    const words = await told();
    const [, hour, minute] = /^STOP: lightning, not before (\d\d):(\d\d)$/.exec(words) ?? [];
    expect(hour, words).toBeDefined();
    expect(Number(minute)).toBe(Math.ceil(until / 60_000) % 60);
    expect((await job.read()).weather.is).toBe("stop");
  });

  it("says that a warning does, till somebody who may calls it off", async () => {
    await read({ kind: "warning", takenAt: 0 });
    expect(await told()).toBe("STOP: weather warning, till it's called off");
  });

  it("says that the wind does, and what it has to read first", async () => {
    await read(wind(30, 44, 225));
    expect(await told()).toBe("STOP: wind 30 gusting 44 mph from SW, 0 min ago, till it reads under 25 mph");
  });

  it("names every reason that there is", async () => {
    await read({ kind: "thunder", takenAt: 0 });
    await read({ kind: "warning", takenAt: 0 });
    await read(wind(30, 44, null));
    expect(await told()).toMatch(/^STOP: lightning, not before \d\d:\d\d; weather warning, till it's called off; wind 30 gusting 44 mph,/);
  });

  it("says which side the wind comes at, where the bearing of the baseline was taken", async () => {
    const known = brief();
    const site = { ...known.site, baselineBearingDeg: 310 };
    const bearings = await openedJob({ ...known, site }, testApp());
    await read({ ...wind(8, 12, 225), takenAt: bearings.now() } as Reading, bearings);
    expect(await told(bearings)).toBe("Wind OK, 8 gusting 12 mph from SW, AB side, 0 min ago");
    await read({ ...wind(8, 12, 265), takenAt: bearings.now() } as Reading, bearings);
    expect(await told(bearings)).toBe("Wind OK, 8 gusting 12 mph from W, AB and BC sides, 0 min ago");
  });

  it("says no side where nobody took a bearing, or said where it blows from", async () => {
    await read(wind(8, 12, 225));
    expect(await told()).not.toMatch(/side/);
    await read(wind(8, 12, null));
    expect(await told()).toBe("Wind OK, 8 gusting 12 mph, 0 min ago");
  });
});

describe("a call where it matters which way the wind comes", () => {
  const strapping = "Strap every corner and seam end";
  const call = async (site: object, fromDeg: number | null) => {
    const job = await openedJob({ ...brief(), site: { ...brief().site, ...site } }, testApp());
    await job.to((s) => s.step === "lay.end-C");
    await job.say({ type: "reading", reading: { kind: "wind", mph: 6, gustMph: 9, fromDeg, takenAt: job.now(), place: null } });
    const moved = await job.say({ type: "next" });
    const { call: shown } = await job.read();
    const said = replyText(replyTo(moved, contextOf(await job.liveJobs.load(job.job), moved)), { name: String, zone: "UTC" }, en);
    return { shown: shown!.say, said };
  };

  it("names the edge that faces it, on the screen and aloud", async () => {
    const { shown, said } = await call({ baselineBearingDeg: 310 }, 225);
    expect(shown).toBe(`${strapping}, windward first: AB.`);
    expect(said).toBe(shown);
  });
  it("names both at a corner that it blows straight at", async () =>
    expect((await call({ baselineBearingDeg: 310 }, 265)).shown).toBe(`${strapping}, windward first: AB and BC.`));
  it("says it for any wind where nobody took a bearing", async () =>
    expect((await call({}, 225)).shown).toBe(`${strapping}, all before anyone walks off.`));
  it("or where nobody read its direction", async () =>
    expect((await call({ baselineBearingDeg: 310 }, null)).shown).toBe(`${strapping}, all before anyone walks off.`));
});
