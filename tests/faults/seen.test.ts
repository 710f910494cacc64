import { beforeEach, describe, expect, it } from "vitest";
import { testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

let job: Awaited<ReturnType<typeof openedJob>>;
beforeEach(async () => {
  job = await openedJob();
  await job.answerWell();
});

let keys = 0;
const say = async (seen: number, ask: object = { type: "next" }, as = "Ines") => {
  const told = await job.post(`/jobs/${job.job}/say`, { as, key: `beyond-${String(++keys).padStart(4, "0")}`, seen, ...ask });
  return (await told.json()) as { reply: string; reasons: { why: string }[] };
};
const place = async () => (await job.liveJobs.load(job.job)).job.snapshot.value;

describe("a command made against an entry that is not there yet", () => {
  it("three nexts at once, each against the largest number there is, move nothing", async () => {
    const before = await place();
    const told = await Promise.all([1, 2, 3].map(() => say(Number.MAX_SAFE_INTEGER)));
    expect(told.map(({ reasons }) => reasons[0]?.why)).toEqual(["notThereYet", "notThereYet", "notThereYet"]);
    expect(await place()).toEqual(before);
  });
  it("by one is refused, and told with both numbers", async () => {
    const { reply } = await say(3);
    expect(reply).toBe("Screen shows entry 3; the record ends at 2. Load the page again.");
  });
  it("against the last entry is done", async () => {
    await job.to((s) => s.step === "talk.hazards");
    expect((await say((await job.entries()).length)).reasons).toEqual([]);
  });
  it.each([
    { type: "back" },
    { type: "carryOn" },
    { type: "standDown", because: "called off" },
    { type: "answer", gate: "sheet.atHand", value: { kind: "unknown" } },
    { type: "waive", gate: "sheet.atHand", because: "no sheet" },
  ])("$type is refused too", async (ask) => expect((await say(99, ask)).reasons[0]?.why).toBe("notThereYet"));
  it.each([{ type: "hold" }, { type: "makeSafe", because: "a ring tore" }, { type: "note", text: "rain" }])(
    "$type counts whatever the screen showed",
    async (ask) => expect((await say(99, ask, "Jory")).reasons).toEqual([]),
  );
  it("spoken, is refused when it is heard: nothing waits for a correct", async () => {
    const told = await say(99, { alternatives: ["leave it because it is late"], talk: true });
    expect(told.reasons[0]?.why).toBe("notThereYet");
  });
});

it("a record with such a command replays to the same refusal", async () => {
  await say(99);
  const again = await testApp(job.journal).liveJobs.load(job.job);
  expect([again.readOnly, again.entries.length]).toEqual([null, 3]);
});
