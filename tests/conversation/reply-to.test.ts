import { beforeEach, describe, expect, it } from "vitest";
import { contextOf, type Reply, replyTo } from "../../machines/conversation/reply-to.ts";
import type { CommandEntry } from "../../machines/record/entry.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
});
/** What the guide says back to an entry as the job stands now. */
const replied = async (said: CommandEntry | Promise<CommandEntry>): Promise<Reply> => {
  const entry = await said;
  return replyTo(entry, contextOf(await job.liveJobs.load(job.job), entry));
};

describe("what the guide says back, as facts", async () => {
  it("a next past an open gate names the gate and its call", async () =>
    expect(await replied(job.say({ type: "next" }))).toMatchObject({
      is: "refused",
      reasons: [{ refusal: { why: "gate", gate: "sheet.atHand", status: "open" }, question: { wordsKey: "sheet.atHand" }, value: null }],
    }));
  it("an answer out of limits is recorded, and is said to be so with its value", async () =>
    expect(await replied(job.say({ type: "answer", gate: "sheet.atHand", value: { kind: "document", named: "RC-4040" } }))).toMatchObject({
      is: "notGood",
      reason: { refusal: { status: "outOfLimit" }, value: { named: "RC-4040" } },
    }));
  it("a good answer leads on, and the next call is told", async () =>
    expect(await replied(await job.answerWell())).toMatchObject({ is: "wentOn", did: "moved", to: { id: "permit" } }));
  it("a part of a list says what is still missing", async () => {
    await job.to((s) => s.step === "kit.loaded");
    const reply = await replied(job.say({ type: "answer", gate: "kit.loaded", value: { kind: "counts", n: { stakePlate: 1 } } }));
    if (reply.is !== "notGood" || reply.reason.finding?.kind !== "counts") throw new Error(JSON.stringify(reply));
    expect(reply.reason.finding.missing).not.toContain("stakePlate");
    expect(reply.reason.finding.off).toMatchObject([{ item: "stakePlate", n: 1 }]);
  });
  it("what is heard is read back with its question, and said to be out of limit before it is confirmed", async () =>
    expect(
      await replied(
        job.say({ type: "readBack", intent: { type: "answer", gate: "sheet.atHand", value: { kind: "document", named: "X-1" } } }),
      ),
    ).toMatchObject({ is: "readBack", question: { wordsKey: "sheet.atHand" }, outOfLimit: true, takenAt: null }));
  it("a reading of ten minutes ago is read back with its time, one of just now without", async () => {
    const { at } = (await job.liveJobs.load(job.job)).now;
    const wind = (takenAt: number) =>
      ({
        type: "readBack",
        intent: { type: "reading", reading: { kind: "wind", mph: 5, gustMph: null, fromDeg: null, takenAt, place: null } },
      }) as const;
    expect(await replied(job.say(wind(at - 600_000)))).toMatchObject({ is: "readBack", takenAt: at - 600_000 });
    expect(await replied(job.say(wind(at)))).toMatchObject({ is: "readBack", takenAt: null });
  });
  it("said again later, it is the same: later answers change nothing about it", async () => {
    const entry = await job.say({ type: "next" });
    const first = await replied(entry);
    await job.to((s) => s.step === "talk.hazards");
    expect(await replied(entry)).toEqual(first);
  });
});
