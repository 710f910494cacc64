import { beforeEach, describe, expect, it } from "vitest";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { plainBrowser } from "../support/plain-forms.ts";

type Told = { status: number; reply: string; outcome: object | null; entry: number | null; went: string; problem?: string };

describe("the lead is handed over", () => {
  let job: OpenedJob;
  let keys = 0;
  beforeEach(async () => {
    job = await openedJob();
  });
  const tell = async (body: object): Promise<Told> => {
    const seen = (await job.read()).revision;
    const answer = await job.post(`/jobs/${job.job}/say`, { key: `hand-${String(++keys).padStart(6, "0")}`, seen, as: "Ines", ...body });
    return { status: answer.status, ...((await answer.json()) as Omit<Told, "status">) };
  };
  const roles = async () => Object.fromEntries((await job.read()).people.map((p) => [p.name, p.role]));
  const lines = async () => (await job.liveJobs.load(job.job)).entries.length;

  it.each([
    ["by name", { type: "handOver", to: "Maren" }],
    ["by id", { type: "handOver", to: "p3" }],
    ["in words that are typed", { heard: "hand over to Maren" }],
    ["aloud, with the button held", { alternatives: ["Maren has the lead"], talk: true }],
    ["aloud, after the wake word", { alternatives: ["albatross hand over to maren"] }],
  ])("%s: put forward, and it counts when the one who takes it agrees", async (_how, body) => {
    const put = await tell(body);
    expect(put).toMatchObject({ status: 200, outcome: { did: "proposed" } });
    expect(put.reply).toContain("Maren");
    expect(await roles()).toMatchObject({ Ines: "lead", Maren: "competent" });
    const { proposed } = await job.read();
    expect(proposed).toMatchObject({ by: "Ines", because: "the lead is handed over", asksAgain: [] });
    expect(await tell({ type: "agree", target: proposed!.entry })).toMatchObject({ went: "refused" });
    expect(await tell({ as: "Maren", type: "agree", target: proposed!.entry })).toMatchObject({ outcome: { did: "amended" } });
    expect(await roles()).toMatchObject({ Ines: "deputy", Tobias: "deputy", Maren: "lead" });
  });

  it("the call stays where it was, and no answer is asked again", async () => {
    await job.answerWell();
    const before = await job.read();
    await tell({ type: "handOver", to: "Tobias" });
    await tell({ as: "Tobias", type: "agree", target: (await job.read()).proposed!.entry });
    const after = await job.read();
    expect([after.step, after.gate?.status]).toEqual([before.step, before.gate?.status]);
    expect((await tell({ as: "Tobias", type: "hold" })).outcome).toEqual({ did: "held" });
    expect((await tell({ as: "Tobias", type: "carryOn" })).outcome).toEqual({ did: "carriedOn" });
  });

  it.each([
    ["somebody of the crew", "Jory", "Jory, crew, can't take the lead. Only a deputy or a competent person can."],
    ["a manager", "Lasse", "Lasse, manager, can't take the lead. Only a deputy or a competent person can."],
    ["the lead", "Ines", "Ines has the lead already."],
    ["a stranger", "Otto", '"Otto" is not on this job. On it: Ines, Tobias, Maren, Jory, Pia, Odd, Lasse.'],
    ["an id of nobody", "p99", '"p99" is not on this job. On it: Ines, Tobias, Maren, Jory, Pia, Odd, Lasse.'],
  ])("not to %s: one sentence, and nothing is recorded", async (_who, to, sentence) => {
    const before = await lines();
    for (const body of [{ type: "handOver", to }, { heard: `hand over to ${to}` }, { alternatives: [`hand over to ${to}`], talk: true }])
      expect(await tell(body)).toMatchObject({ status: 422, problem: sentence });
    expect(await lines()).toBe(before);
  });

  it("not by one of the crew: only lead or deputy hand it over", async () =>
    expect(await tell({ as: "Jory", type: "handOver", to: "Maren" })).toMatchObject({
      went: "refused",
      reply: "Not for crew. Only lead, deputy.",
    }));

  it("into the open microphone it is left alone: it needs the wake word, the button or a press", async () => {
    const before = await lines();
    expect(await tell({ alternatives: ["hand over to Maren"] })).toMatchObject({ status: 200, went: "leftAlone" });
    expect(await lines()).toBe(before);
  });

  it("without scripts, by a button for each who may take it", async () => {
    const browser = plainBrowser(job.app);
    await browser.open(`/jobs/${job.job}?as=p1`);
    await browser.open(`/jobs/${job.job}/people`);
    const forms = browser.forms("hand-over");
    expect(forms.map(({ fields }) => fields.to)).toEqual(["p2", "p3"]);
    await browser.send(forms[1]!);
    expect((await job.read()).proposed!.because).toBe("the lead is handed over");
  });

  it("a first name is enough where nobody else has it", async () => {
    const people = { ...brief(), crew: brief().crew.map((p) => (p.name === "Maren" ? { ...p, name: "Maren Holt" } : p)) };
    job = await openedJob(people);
    expect(await tell({ heard: "hand over the lead to Maren" })).toMatchObject({ outcome: { did: "proposed" } });
    expect((await job.read()).proposed!.because).toBe("the lead is handed over");
  });
});

describe("the lead's phone is gone", () => {
  it("the deputy leads after two presses, and every screen shows it", async () => {
    const job = await openedJob();
    const browser = plainBrowser(job.app);
    await browser.open(`/jobs/${job.job}?as=p2`);
    await browser.open(`/jobs/${job.job}/people`);
    const take = browser.forms("hand-over").find(({ fields }) => fields.type === "takeLead")!;
    await browser.send(take);
    expect(browser.text("strip")).toContain("Tobias, lead");
    const state = await job.read();
    expect(state.people.map(({ id, role }) => [id, role])).toEqual(
      expect.arrayContaining([
        ["p2", "lead"],
        ["p1", "deputy"],
      ]),
    );
    expect(state.thread.at(-1)).toMatchObject({ said: "I take the lead", reply: "You lead now. Every screen shows it." });
    expect(((await (await job.app.request("/jobs.json")).json()) as { jobs: { lead: string }[] }).jobs[0]!.lead).toBe("Tobias");
  });
  it("nobody else is offered it, nor takes it", async () => {
    const job = await openedJob();
    const browser = plainBrowser(job.app);
    for (const person of ["p1", "p3", "p4", "p6", "p7"]) {
      await browser.open(`/jobs/${job.job}?as=${person}`);
      await browser.open(`/jobs/${job.job}/people`);
      expect(browser.forms("hand-over").filter(({ fields }) => fields.type === "takeLead")).toEqual([]);
      expect((await job.say({ type: "takeLead" }, person)).outcome).toMatchObject({ refused: [{ why: "role" }] });
    }
  });
  it("a record with it replays to the same, and goes on under the new lead", async () => {
    const job = await openedJob();
    await job.say({ type: "takeLead" }, "Tobias");
    const again = job.restart(1);
    const state = (await (await again.app.request(`/jobs/${job.job}.json`)).json()) as GuideState;
    expect([state.readOnly, state.people.find(({ role }) => role === "lead")?.id]).toEqual([null, "p2"]);
  });
});
