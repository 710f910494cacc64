import { beforeEach, describe, expect, it } from "vitest";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { notRecordedText } from "../../views/text/en/errors.ts";
import { brief, testApp } from "../support/app.ts";
import { failingJournal } from "../support/failing-journal.ts";
import { openedJob } from "../support/job.ts";

const FULL = { why: "full", place: "/data/ridgecall.db" } as const;
const SENTENCE = notRecordedText(FULL);

let disk: ReturnType<typeof failingJournal>;
let job: Awaited<ReturnType<typeof openedJob>>;
let keys = 0;

beforeEach(async () => {
  disk = failingJournal(memoryJournal());
  job = await openedJob(brief(), testApp(disk.journal));
});
const said = (body: object, by = "Ines") => job.post(`/jobs/${job.job}/say`, { as: by, key: `said-here-${++keys}`, seen: 1, ...body });
const told = async (body: object, by?: string) => (await said(body, by)).json();
const page = async () => (await job.app.request(`/jobs/${job.job}`)).text();
const entries = async () => verifyChain(await job.journal.read(job.job)).entries.map(({ entry }) => entry);

it("the sentence names the disk, and what to do", () =>
  expect(SENTENCE).toBe("The disk with the data file /data/ridgecall.db is full, so nothing more is recorded; make room on it."));

describe("on a full disk", () => {
  beforeEach(() => {
    disk.state.failure = FULL;
  });

  it("a hold holds on every screen, and says that it is not recorded", async () => {
    expect(await told({ type: "hold" }, "Odd")).toMatchObject({
      entry: null,
      outcome: { did: "held" },
      went: "done",
      reply: `HOLD. Nobody moves till the lead says carry on. It holds, and is NOT recorded. ${SENTENCE}`,
    });
    expect((await job.read()).held).toEqual({ by: "Odd", only: null, unrecorded: SENTENCE });
    expect(await page()).toContain(`<p class="alarm">It holds, and is NOT recorded. ${SENTENCE}</p>`);
    expect(await entries()).toHaveLength(1);
  });
  it("somebody hurt holds on every screen, is told what to do, and that it is not recorded", async () => {
    expect(await told({ alternatives: ["somebody's hurt at B"] }, "Odd")).toMatchObject({
      entry: null,
      outcome: { did: "hurt" },
      went: "done",
      reply: `HOLD. Call 911: Lower meadow, gate 3, Tansy Lane. First aid: green box, truck cab. It holds, and is NOT recorded. ${SENTENCE}`,
    });
    expect((await job.read()).held).toMatchObject({ by: "Odd", only: null, unrecorded: SENTENCE });
    expect((await job.read()).hurt).toMatchObject({ by: "Odd", address: "Lower meadow, gate 3, Tansy Lane" });
    disk.state.failure = null;
    await job.liveJobs.writeHolds();
    expect((await entries())[1]).toMatchObject({ command: { type: "hurt", words: "somebody's hurt at B" }, outcome: { did: "hurt" } });
  });
  it("somebody hurt stays on every screen whatever is said after it", async () => {
    await told({ type: "hurt" }, "Odd");
    await told({ type: "hold" }, "Pia");
    await told({ alternatives: ["hold that rope"] }, "Pia");
    expect(await job.read()).toMatchObject({ hurt: { by: "Odd" }, held: { only: null } });
  });
  it("a hold reaches the screens that follow the job, at once", async () => {
    let woken = 0;
    job.hub.listen(job.job, () => woken++);
    await told({ type: "hold" });
    expect(woken).toBe(1);
  });
  it("a hold word inside a sentence pauses, and says that it is not recorded", async () => {
    expect(await told({ alternatives: ["hold that rope"] }, "Pia")).toMatchObject({ entry: null, outcome: { did: "paused" } });
    expect((await job.read()).held).toEqual({ by: "Pia", only: "paused", unrecorded: SENTENCE });
  });
  it.each([
    ["next", { type: "next" }],
    ["a note", { type: "note", text: "all standing round the cab" }],
    ["an answer", { type: "answer", gate: "sheet.atHand", value: { kind: "unknown" } }],
    ["making safe", { type: "makeSafe", because: "a line found" }],
    ["carrying on", { type: "carryOn" }],
  ])("%s is refused in one sentence that names the disk, and nothing is done", async (_what, body) => {
    const before = await job.read();
    const answer = await said(body);
    expect([answer.status, ((await answer.json()) as { problem: string }).problem]).toEqual([503, SENTENCE]);
    expect(await job.read()).toEqual(before);
  });
  it("a question is answered all the same", async () => {
    expect(await told({ heard: "why" })).toMatchObject({ went: "question" });
  });
  it("opening a job and saving a tent are refused in the same sentence", async () => {
    for (const [path, body] of [
      ["/jobs", { key: "another-1", brief: brief() }],
      ["/tents", { key: "another-2", name: "Old blue", spec: brief().tent }],
    ] as const)
      expect(await (await job.post(path, body)).json()).toMatchObject({ problem: SENTENCE });
  });
  it("a job is read that was not read before", async () => {
    const { app } = testApp(disk.journal);
    expect((await app.request(`/jobs/${job.job}`)).status).toBe(200);
  });
});

describe("when there is room again", () => {
  beforeEach(async () => {
    disk.state.failure = FULL;
    await told({ type: "hold" }, "Odd");
  });

  it("the hold is recorded before anything else, with who said it and when; and nothing goes on past it", async () => {
    const before = (await job.read()).held;
    disk.state.failure = null;
    expect(await told({ type: "next" })).toMatchObject({ entry: 3, reasons: [{ why: "movedOn" }] });
    const [, hold] = await entries();
    expect(hold).toMatchObject({ no: 2, command: { type: "hold", by: "p6" }, outcome: { did: "held" } });
    expect([before?.by, (await job.read()).held]).toEqual(["Odd", { by: "Odd", only: null, unrecorded: null }]);
  });
  it("the hold is recorded without anybody saying anything, once it is tried again", async () => {
    await job.liveJobs.writeHolds();
    expect((await job.read()).held?.unrecorded).toBe(SENTENCE);
    disk.state.failure = null;
    await job.liveJobs.writeHolds();
    expect((await job.read()).held).toEqual({ by: "Odd", only: null, unrecorded: null });
    expect(await entries()).toHaveLength(2);
  });
  it("several holds are recorded in the order they were said, each once", async () => {
    const again = { as: "Pia", key: "pressed-twice", seen: 1, type: "hold" };
    for (let n = 0; n < 2; n++) await job.post(`/jobs/${job.job}/say`, again);
    disk.state.failure = null;
    await job.liveJobs.writeHolds();
    expect((await entries()).map((e) => (e.kind === "command" ? [e.command.type, e.command.by] : []))).toEqual([
      [],
      ["hold", "p6"],
      ["hold", "p5"],
    ]);
  });
  it("the lead carries on as after any hold", async () => {
    disk.state.failure = null;
    await job.liveJobs.writeHolds();
    expect(await told({ type: "carryOn", seen: (await job.read()).revision })).toMatchObject({ outcome: { did: "carriedOn" } });
    expect((await job.read()).held).toBeNull();
  });
});

it("with little room left every screen is warned, while all is still recorded", async () => {
  disk.state.condition = { is: "low", place: "/data", freeBytes: 40 * 1024 * 1024 };
  const sentence = "Only 40 MB are free on the disk with /data; make room on it while everything still gets recorded.";
  expect((await job.read()).warning).toBe(sentence);
  expect(await page()).toContain(`<p class="warning">${sentence}</p>`);
  expect(await told({ type: "note", text: "seen" })).toMatchObject({ entry: 2 });
});
