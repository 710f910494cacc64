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
const worked = () => foldAll(job.entries()).fold.worked;
const note = () => job.say({ type: "note", text: "still at it" });
const MINUTE = 60;
/** Minutes that were added to a phase by what is done in between. */
const addedTo = (phase: string, by: () => void): number => {
  const before = worked().byPhase[phase] ?? 0;
  by();
  return Math.round(((worked().byPhase[phase] ?? 0) - before) / 60_000);
};

describe("work is the time between two words to the guide", () => {
  beforeEach(async () => {
    await job.to((s) => s.step === "drive.AB");
  });
  it("an hour of driving stakes is an hour of work in the phase", () => {
    expect(
      addedTo("anchorsSet", () => {
        job.clock.pass(60 * MINUTE);
        note();
      }),
    ).toBe(60);
  });
  it("a night is not work, though the phase stood open over it", () => {
    expect(
      addedTo("anchorsSet", () => {
        job.clock.pass(14 * 60 * MINUTE);
        note();
      }),
    ).toBe(0);
  });
  it("a gap of ninety minutes is work, and one of a minute more is not", () => {
    const over = MAX_WORK_GAP_MS / 1000;
    note();
    const gap = (seconds: number) =>
      addedTo("anchorsSet", () => {
        job.clock.pass(seconds - 1);
        note();
      });
    expect([gap(over), gap(over + MINUTE)]).toEqual([90, 0]);
  });
  it("time held is not work, from the hold to the carry on; what was worked before the hold is", () => {
    expect(
      addedTo("anchorsSet", () => {
        job.clock.pass(10 * MINUTE);
        job.say({ type: "hold" }, "Odd");
        job.clock.pass(20 * MINUTE);
        note();
        job.clock.pass(20 * MINUTE);
        job.say({ type: "carryOn" });
      }),
    ).toBe(10);
    expect(worked().held).toBe(false);
  });
  it("a hold word in a sentence only pauses: that moment is work", () => {
    expect(
      addedTo("anchorsSet", () => {
        job.say({ type: "pause" }, "Odd");
        job.clock.pass(5 * MINUTE);
        job.say({ type: "carryOn" });
      }),
    ).toBe(5);
  });
  it("time at the present call is told apart, and begins again at the next", () => {
    job.clock.pass(30 * MINUTE);
    note();
    expect(Math.round(worked().atCallMs / 60_000)).toBe(30);
    job.say({ type: "next" });
    expect([worked().step, worked().atCallMs]).toEqual(["showing.AB", 0]);
  });
  it("making safe is counted on its own", () => {
    job.say({ type: "makeSafe", because: "a line found" });
    expect(
      addedTo("makingSafe", () => {
        job.clock.pass(15 * MINUTE);
        note();
      }),
    ).toBe(15);
  });
});

it("nothing is work before the first word: a job may be opened in the office", () => {
  job.clock.pass(45 * MINUTE);
  note();
  expect(worked().byPhase).toEqual({});
});

describe("a phase is done", () => {
  it("when next leads out of it, and not before", async () => {
    await job.to((s) => s.phase === "anchorsSet");
    expect(worked().done).toEqual(["utilitiesMarked"]);
    await job.to((s) => s.phase === "sectionsJoined");
    expect(worked().done).toEqual(["utilitiesMarked", "anchorsSet"]);
  });
  it("no more when it is gone back into, and again when it is left again", async () => {
    await job.to((s) => s.phase === "anchorsSet");
    job.say({ type: "back" });
    expect(worked().done).toEqual([]);
    await job.to((s) => s.phase === "anchorsSet");
    expect(worked().done).toEqual(["utilitiesMarked"]);
  });
  it("no more when a changed plan puts the guide back into it", async () => {
    await job.to((s) => s.phase === "perimeterRaised");
    const longer = readBrief({ ...brief(), tent: { ...brief().tent, lengthFt: 120, midsFt: [20, 20] } }).frozen;
    const { no } = job.say({ type: "amend", because: "cloth is one mid longer", to: longer });
    job.say({ type: "agree", target: no }, "Maren");
    const { done, work } = worked();
    expect(foldAll(job.entries()).fold.phase).toBe("utilitiesMarked");
    expect([done, work]).toEqual([[], workOf(longer)]);
  });
  it("not when the job is stood down in it: nor by the strike that follows", async () => {
    await job.to((s) => s.phase === "perimeterRaised");
    job.say({ type: "standDown", because: "rained off" });
    await job.to((s) => s.closed);
    expect(worked().done).toEqual(["utilitiesMarked", "anchorsSet", "sectionsJoined", "struck"]);
  });
  it("nine of them after a job from end to end, over making safe and back", async () => {
    await job.to((s) => s.phase === "interiorRaised");
    job.say({ type: "makeSafe", because: "a strap torn" });
    await job.to((s) => s.phase === "interiorRaised");
    expect(worked().done).toHaveLength(4);
    await job.to((s) => s.closed);
    expect(worked().done).toHaveLength(9);
  });
});
