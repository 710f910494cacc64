import { beforeEach, describe, expect, it } from "vitest";
import { stateDigest } from "../../machines/install/job.ts";
import { replay } from "../../machines/record/replay.ts";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
let keys = 0;
beforeEach(async () => {
  job = await openedJob({ ...brief(), crew: [...brief().crew, { name: "Wim", role: "trainee" }] });
});
type Told = {
  reply: string;
  outcome: object | null;
  reasons: { why: string; text: string }[];
  entry: number;
  fields?: Record<string, string>;
};
const say = async (body: object) => {
  const { revision } = await job.read();
  const answer = await job.app.request(`/jobs/${job.job}/say`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ as: "Ines", key: `found-${++keys}-key`, seen: revision, ...body }),
  });
  return { status: answer.status, body: (await answer.json()) as Told };
};
const spoken = (words: string, more: object = {}) => say({ alternatives: [words], talk: true, ...more });
const points = [{ alongFt: 5, offFt: -7.5 }, { alongFt: 45, offFt: -7.5 }]; // biome-ignore format: one line reads best

describe("a line that is found while the work goes on", () => {
  it("is spoken, read back with its numbers, and shuts once it is confirmed", async () => {
    const read = await spoken("gas, from 5 along and seven and a half left to 45 along and seven and a half left");
    expect(read.body.reply).toContain("Found: gas line, from 5 ft along, 7 ft 6 in left to 45 ft along, 7 ft 6 in left");
    const done = await spoken("correct", { readBack: read.body.entry });
    expect(done.body.outcome).toMatchObject({ did: "found" });
    expect(done.body.reply).toContain('"gas 1" is on the plan, and too near.');
    expect((await job.liveJobs.load(job.job)).job.frozen.brief.siteModel?.buried.map(({ id }) => id)).toEqual(["gas 1"]);
  });
  it("that is told without a side is answered with the side that it was taken to be on", async () => {
    const typed = await say({ heard: "gas, from 12 along and 180 off to 90 along and 185 off" });
    expect(typed.body.reply).toMatch(/^Taken from 12 ft along, 180 ft right to 90 ft along, 185 ft right\. "gas 1" is on the plan\./);
  });
  it("of many points is answered with its ends", async () => {
    const typed = await say({
      heard: "gas, from 1 along 80 left to 2 along 80 left to 3 along 80 left to 4 along 80 left to 5 along 80 left",
    });
    expect(typed.body.reply).toMatch(/^Taken from 1 ft along, 80 ft left to 5 ft along, 80 ft left, by 3 points between\. /);
  });
  it("is typed, counts at once, by a trainee", async () => {
    const typed = await say({ as: "Wim", heard: "overhead, voltage unknown, from 0 along 90 right to 100 along 90 right" });
    expect(typed.body.outcome).toMatchObject({ did: "found" });
  });
  it("is pressed with its points, and gets a name of the program's", async () => {
    const pressed = await say({ type: "found", what: { is: "thing", kind: "building", shape: { is: "path", points } } });
    expect(pressed.body.reply).toContain('"building 1" is on the plan, and too near.');
  });
  it.each([
    [{ is: "buried", kind: "gas", points: [points[0]] }, "what.points", "1 point is too few. At least 2."],
    [{ is: "buried", kind: "beer", points }, "what.kind", '"beer" is none of the kinds here. Choose one.'],
    [{ is: "overhead", kv: -5, points }, "what.kv", "-5 is too small. At least 0."],
    [{ is: "moat", points }, "what.is", "moat"],
  ])("is refused as %j, by the field, and nothing is told to the job", async (what, field, sentence) => {
    const { entries } = await job.liveJobs.load(job.job);
    const refused = await say({ type: "found", what });
    expect([refused.status, refused.body.fields?.[field]]).toEqual([422, expect.stringContaining(sentence)]);
    expect((await job.liveJobs.load(job.job)).entries.length).toBe(entries.length);
  });
  it("is refused where the site would have more stretches than may be told: it could never be corrected", async () => {
    const line = (n: number, offFt: number) => ({ is: "buried", kind: "gas", points: Array.from({ length: n }, (_, i) => ({ alongFt: i % 900, offFt })) }); // biome-ignore format: one line reads best
    for (let i = 0; i < 5; i++) await say({ type: "found", what: line(1000, 900 + i) });
    const asked = [{ type: "found", what: line(100, 990) }, { heard: "gas, from 5 along and 8 left to 45 along and 8 left to 50 along and 9 left to 60 along and 9 left to 70 along and 8 left to 80 along and 8 left to 90 along and 8 left" }]; // biome-ignore format: one line reads best
    for (const one of asked) {
      const { body } = await say(one);
      expect(body).toMatchObject({
        outcome: { refused: [{ why: "siteFull", most: 5000 }] },
        reply: expect.stringContaining("full at 5,000"),
      });
    }
  });
  it("replays to the same state, to the bit", async () => {
    await say({ heard: "gas, from 5 along and 8 left to 45 along and 8 left" });
    await say({ type: "note", text: "phoned it in" });
    const { job: live } = await job.liveJobs.load(job.job);
    const again = replay(await job.journal.read(job.job));
    expect(stateDigest(again.job)).toBe(stateDigest(live));
    expect(again.job.frozen.brief).toEqual(live.frozen.brief);
  });
});
