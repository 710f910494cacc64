import { beforeEach, describe, expect, it } from "vitest";
import { workOf } from "../../machines/install/quantities.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { MAX_WORK_GAP_MS } from "../../machines/record/work-time.ts";
import { readBrief } from "../../server/input/brief.ts";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
});
const worked = async () => foldAll(await job.entries()).fold.worked;
const note = () => job.say({ type: "note", text: "still at it" });
const MINUTE = 60;
/** Minutes that were added to a phase by what is done in between. */
const addedTo = async (phase: string, by: () => Promise<unknown>): Promise<number> => {
  const before = (await worked()).byPhase[phase] ?? 0;
  await by();
  return Math.round((((await worked()).byPhase[phase] ?? 0) - before) / 60_000);
};

describe("work is the time between two words to the guide", () => {
  beforeEach(async () => {
    await job.to((s) => s.step === "drive.AB");
  });
  it("an hour of driving stakes is an hour of work in the phase", async () => {
    expect(
      await addedTo("anchorsSet", async () => {
        job.clock.pass(60 * MINUTE);
        await note();
      }),
    ).toBe(60);
  });
  it("a night is not work, though the phase stood open over it", async () => {
    expect(
      await addedTo("anchorsSet", async () => {
        job.clock.pass(14 * 60 * MINUTE);
        await note();
      }),
    ).toBe(0);
  });
  it("a gap of ninety minutes is work, and one of a minute more is not", async () => {
    const over = MAX_WORK_GAP_MS / 1000;
    await note();
    const gap = (seconds: number) =>
      addedTo("anchorsSet", async () => {
        // To look before, to look at the entry that is shown, and to say it, takes a second each.
        job.clock.pass(seconds - 3);
        await note();
      });
    expect([await gap(over), await gap(over + MINUTE)]).toEqual([90, 0]);
  });
  it("time held is not work, from the hold to the carry on; what was worked before the hold is", async () => {
    expect(
      await addedTo("anchorsSet", async () => {
        job.clock.pass(10 * MINUTE);
        await job.say({ type: "hold" }, "Odd");
        job.clock.pass(20 * MINUTE);
        await note();
        job.clock.pass(20 * MINUTE);
        await job.say({ type: "carryOn", became: null });
      }),
    ).toBe(10);
    expect((await worked()).held).toBe(false);
  });
  it("a hold word in a sentence only pauses: that moment is work", async () => {
    expect(
      await addedTo("anchorsSet", async () => {
        await job.say({ type: "pause" }, "Odd");
        job.clock.pass(5 * MINUTE);
        await job.say({ type: "carryOn", became: null });
      }),
    ).toBe(5);
  });
  it("time at the present call is told apart, and begins again at the next", async () => {
    job.clock.pass(30 * MINUTE);
    await note();
    expect(Math.round((await worked()).atCallMs / 60_000)).toBe(30);
    await job.say({ type: "answer", gate: "drive.AB", value: { kind: "measure", n: 4, unit: "in" } });
    expect([(await worked()).step, (await worked()).atCallMs]).toEqual(["drive.BC", 0]);
  });
  it("making safe is counted on its own", async () => {
    await job.say({ type: "makeSafe", because: "a line found" });
    expect(
      await addedTo("makingSafe", async () => {
        job.clock.pass(15 * MINUTE);
        await note();
      }),
    ).toBe(15);
  });
});

it("nothing is work before the first word: a job may be opened in the office", async () => {
  job.clock.pass(45 * MINUTE);
  await note();
  expect((await worked()).byPhase).toEqual({});
});

describe("a phase is done", () => {
  it("when next, or a good answer, leads out of it, and not before", async () => {
    await job.to((s) => s.phase === "anchorsSet");
    expect((await worked()).done).toEqual(["utilitiesMarked"]);
    await job.to((s) => s.phase === "sectionsJoined");
    expect((await worked()).done).toEqual(["utilitiesMarked", "anchorsSet"]);
  });
  it("no more when it is gone back into, and again when it is left again", async () => {
    await job.to((s) => s.phase === "anchorsSet");
    await job.say({ type: "back" });
    expect((await worked()).done).toEqual([]);
    await job.to((s) => s.phase === "anchorsSet");
    expect((await worked()).done).toEqual(["utilitiesMarked"]);
  });
  it("still when a changed plan asks some of it again: the guide stays where it is", async () => {
    await job.to((s) => s.phase === "perimeterRaised");
    const { done: before } = await worked();
    const longer = readBrief({ ...brief(), tent: { ...brief().tent, lengthFt: 120, midsFt: [20, 20] } }).frozen;
    const { no } = await job.say({ type: "amend", because: "cloth is one mid longer", to: longer });
    await job.say({ type: "agree", target: no }, "Maren");
    const { done, work } = await worked();
    expect(foldAll(await job.entries()).fold.phase).toBe("perimeterRaised");
    expect([done, work]).toEqual([before, workOf(longer)]);
  });
  it("still when a changed plan puts a call of it behind the guide, before that call and after it", async () => {
    await job.to((s) => s.phase === "sectionsJoined");
    const { done: before } = await worked();
    const unknown = readBrief({ ...brief(), site: { ...brief().site, soilKnown: false } }).frozen;
    const { no } = await job.say({ type: "amend", because: "that is fill, not loam", to: unknown });
    await job.say({ type: "agree", target: no }, "Maren");
    await job.to((s) => s.phase === "anchorsSet");
    expect((await worked()).done).toEqual(before);
    await job.to((s) => s.phase === "sectionsJoined");
    expect((await worked()).done).toEqual(before);
    await job.to((s) => s.phase === "perimeterRaised");
    expect((await worked()).done).toEqual([...before, "sectionsJoined"]);
  });
  it("not when the job is stood down in it: nor by the strike that follows", async () => {
    await job.to((s) => s.phase === "perimeterRaised");
    await job.say({ type: "standDown", because: "rained off" });
    await job.to((s) => s.closed);
    expect((await worked()).done).toEqual(["utilitiesMarked", "anchorsSet", "sectionsJoined", "struck"]);
  });
  it("nine of them after a job from end to end, over making safe and back", async () => {
    await job.to((s) => s.phase === "interiorRaised");
    await job.say({ type: "makeSafe", because: "a strap torn" });
    await job.to((s) => s.phase === "interiorRaised");
    expect((await worked()).done).toHaveLength(4);
    await job.to((s) => s.closed);
    expect((await worked()).done).toHaveLength(9);
  });
});
