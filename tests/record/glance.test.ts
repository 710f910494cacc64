import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { decide } from "../../machines/install/decide.ts";
import { type Job, openJob } from "../../machines/install/job.ts";
import { AGREED, WARNING, weatherAt } from "../../machines/install/weather.ts";
import { lookupIn } from "../../machines/record/entries.ts";
import type { Sealed } from "../../machines/record/entry.ts";
import { foldAll, foldIn, openFold } from "../../machines/record/findings.ts";
import type { Glance } from "../../machines/record/glance.ts";
import { replay } from "../../machines/record/replay.ts";
import { brief } from "../support/app.ts";
import { GOLDEN, goldenLines } from "../support/golden-file.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let golden: readonly Sealed[];
beforeAll(() => {
  golden = replay(goldenLines(readFileSync(GOLDEN, "utf8"))).entries;
});

/** Of the chart's state, what a list keeps of the weather. */
function weatherIn({ snapshot: { context } }: Job) {
  const { limits, wind, thunderAt } = context;
  const kept: readonly string[] = [WARNING, ...Object.values(AGREED)];
  return { limits, wind, thunderAt, answers: Object.fromEntries(kept.map((gate) => [gate, context.answers[gate]?.value])) };
}
const weatherOf = ({ weather: { limits, wind, thunderAt, answers } }: Glance) => ({
  limits,
  wind,
  thunderAt,
  answers: Object.fromEntries([WARNING, ...Object.values(AGREED)].map((gate) => [gate, answers[gate]?.value])),
});
const glance = async (of: OpenedJob) => foldAll(await of.entries()).fold.glance;

describe("what a list keeps of the weather", () => {
  it("is what the chart has, after every entry of a raise with a squall, a blow, rain and a changed plan", () => {
    const [first, ...rest] = golden;
    if (first?.entry.kind !== "opening") throw new Error("no opening");
    let job = openJob(first.entry.opened, first.entry.at);
    let fold = openFold(first.entry);
    for (const { entry } of rest) {
      if (entry.kind !== "command") throw new Error("a second opening");
      [job] = decide(job, entry.command);
      ({ fold } = foldIn(fold, entry, lookupIn(golden)));
      expect(weatherOf(fold.glance), `entry ${entry.no}`).toEqual(weatherIn(job));
      const at = entry.at + 60_000;
      expect(weatherAt({ ...fold.glance.weather, lastAt: fold.lastAt }, at), `entry ${entry.no}`).toBe(weatherAt(job.snapshot.context, at));
    }
  });
  it("has a warning by anybody, and a wind that only warns without the age of a reading", async () => {
    const crew = await openedJob();
    const first = crew.now();
    await crew.say({ type: "reading", reading: { kind: "wind", mph: 6, gustMph: 9, fromDeg: null, takenAt: first, place: null } }, "Maren");
    crew.clock.pass(600);
    const told = crew.now();
    await crew.say({ type: "reading", reading: { kind: "wind", mph: 18, gustMph: 23, fromDeg: null, takenAt: told, place: null } }, "Odd");
    await crew.say({ type: "reading", reading: { kind: "warning", takenAt: crew.now() } }, "Odd");
    const { weather } = await glance(crew);
    expect(weather.wind).toMatchObject({ gustMph: 23, takenAt: first });
    expect(weather.answers[WARNING]?.value).toEqual({ kind: "yesNo", yes: false });
  });
});

describe("who leads, who is hurt, what was said last", () => {
  it("is whoever leads after the job was handed over", async () => {
    const crew = await openedJob();
    expect((await glance(crew)).lead).toBe("p1");
    const { frozen } = (await crew.liveJobs.load(crew.job)).job;
    const people = frozen.brief.crew.map((p) => ({ ...p, role: p.id === "p2" ? "lead" : p.id === "p1" ? "deputy" : p.role }) as const);
    const { no } = await crew.say({ type: "amend", because: "off shift", to: { ...frozen, brief: { ...frozen.brief, crew: people } } });
    expect((await glance(crew)).lead).toBe("p1");
    await crew.say({ type: "agree", target: no }, "Tobias");
    expect((await glance(crew)).lead).toBe("p2");
  });
  it("is somebody hurt, until the lead says what became of it", async () => {
    const crew = await openedJob();
    await crew.say({ type: "hurt", words: "his hand" }, "Jory");
    await crew.say({ type: "carryOn", became: null });
    expect((await glance(crew)).hurt).toBe(true);
    await crew.say({ type: "carryOn", became: "bandaged" });
    expect((await glance(crew)).hurt).toBe(false);
  });
  it("keeps no plan that was only put forward, and is the same added up one by one and all at once", async () => {
    const crew = await openedJob({ ...brief(), title: "Another meadow" });
    const { frozen } = (await crew.liveJobs.load(crew.job)).job;
    await crew.say({ type: "amend", because: "one mid more", to: frozen });
    const { lastWord } = await glance(crew);
    expect(lastWord).toMatchObject({ by: "p1", gist: { type: "amend", because: "one mid more" }, refused: false });
    expect(lastWord!.gist).not.toHaveProperty("to");
    expect((await crew.journal.folds())[0]!.fold!.glance).toEqual(await glance(crew));
  });
});
