import { beforeAll, describe, expect, it } from "vitest";
import { contextOf, type Reply, replyTo } from "../../machines/conversation/reply-to.ts";
import { en } from "../../views/text/en/en.ts";
import { replyText } from "../../views/text/replies.ts";
import { brief, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

describe("the wind at a standing tent, against what was agreed", () => {
  let job: OpenedJob;
  const told = async (mph: number, gustMph: number | null): Promise<{ reply: Reply; text: string }> => {
    const at = job.now();
    const entry = await job.say({ type: "reading", reading: { kind: "wind", mph, gustMph, fromDeg: null, takenAt: at, place: null } });
    const reply = replyTo(entry, contextOf(await job.liveJobs.load(job.job), entry));
    return { reply, text: replyText(reply, { name: (id) => id, zone: "UTC" }, en) };
  };
  const agreed = async (gate: string) => {
    const value = (await job.liveJobs.load(job.job)).job.snapshot.context.answers[gate]?.value;
    return value?.kind === "measure" ? value.n : Number.NaN;
  };
  let evacuate: number;
  let walls: number;
  beforeAll(async () => {
    job = await openedJob(brief(), testApp());
    await job.to((s) => s.phase === "inspected");
    // Before it stands, nothing of this is said.
    expect((await told(10, 35)).reply.is).not.toBe("overAgreed");
    await job.to((s) => s.step === "plan.evacuate");
    await job.say({ type: "answer", gate: "plan.evacuate", value: { kind: "measure", n: 30, unit: "mph" } });
    await job.to((s) => s.step === "plan.walls");
    await job.say({ type: "answer", gate: "plan.walls", value: { kind: "measure", n: 18, unit: "mph" } });
    await job.to((s) => s.phase === "standing");
    evacuate = await agreed("plan.evacuate");
    walls = await agreed("plan.walls");
  });

  it("stands on what was agreed", () => expect([evacuate, walls]).toEqual([30, 18]));
  it.each([
    [20, 31, "EVERYBODY OUT: 31 mph, agreed 30. Make safe."],
    [20, 30, "EVERYBODY OUT: 30 mph, agreed 30. Make safe."],
    [20, null, "EVERYBODY OUT: 30.4 mph, agreed 30. Make safe."],
    [12, 19, "Walls off: 19 mph, agreed 18."],
    [12, null, "Walls off: 18.2 mph, agreed 18."],
    [12, 26, "STOP. Everyone out. Make safe."],
    [17, null, "STOP. Everyone out. Make safe."],
  ])("%s gusting %s: %s", async (mph, gust, text) => expect((await told(mph, gust)).text).toBe(text));
  it("over what stops all work, everybody is told out by what was agreed", async () =>
    expect((await told(30, 44)).reply).toEqual({ is: "overAgreed", what: "evacuate", mph: 44, agreedMph: 30 }));
  it("under both it is only taken down", async () => expect((await told(10, 17)).reply.is).not.toBe("overAgreed"));
});
