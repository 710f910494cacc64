import { beforeEach, describe, expect, it } from "vitest";
import { foldAll } from "../../machines/record/findings.ts";
import { askable, isRight } from "../../machines/rehearsal/questions/items.ts";
import { graded } from "../../machines/rehearsal/repetition.ts";
import { MAX_NEW_A_DAY, roundFrom } from "../../machines/rehearsal/round.ts";
import { createStudy, questionOf, shownAs } from "../../server/learning/study.ts";
import { removeExpired } from "../../server/retention.ts";
import { brief } from "../support/briefs.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

const SMALL = { ...brief(), tent: { ...brief().tent, widthFt: 20, lengthFt: 20, midsFt: [], onePiece: true, splitEnds: false, quarterRings: 0 as const, centerPoleFt: 13 } }; // biome-ignore format: one line reads best
const TRAINEE = "p6";

let crew: OpenedJob;
beforeEach(async () => {
  crew = await openedJob(SMALL);
});

const at = (path = "") => `/jobs/${crew.job}/learn${path}`;
const cookie = (me: string) => `device=phone-of-${me}; as-${crew.job}=${me}`;
const get = (path: string, me = TRAINEE) => crew.app.request(path, { headers: { cookie: cookie(me) } });
const html = async (path: string, me = TRAINEE) => (await (await get(path, me)).text()).replaceAll("&#39;", "'").replaceAll("&quot;", '"');
const post = (path: string, fields: Record<string, string>, me = TRAINEE) =>
  crew.app.request(path, {
    method: "POST",
    body: new URLSearchParams(fields),
    headers: { origin: "http://localhost", cookie: cookie(me) },
  });

async function begun(me = TRAINEE): Promise<string> {
  const to = (await post(at(), {}, me)).headers.get("location")!;
  return new URL(to, "http://localhost").searchParams.get("round")!;
}
const roundIs = async (id: string) => roundFrom((await crew.journal.learning.round(id))!.body)!;
/** The question of a round, with what its form sends for an answer of its options, by whether it is right. */
async function questionAt(id: string, no: number) {
  const question = questionOf(await crew.liveJobs.load(crew.job), await roundIs(id), no)!;
  const wrong = question.right.length > 1 ? question.right.toReversed() : [question.options.find((o) => o.id !== question.right[0])!.id];
  const form = (given: readonly string[]) => ({ round: id, no: String(no), given: given.join(","), shown: shownAs(question) });
  return { question, right: form(question.right), wrong: form(wrong) };
}
const learnerId = async () => (await crew.journal.learning.learnerCalled("Odd"))!.id;
const cards = async () => crew.journal.learning.cards(await learnerId());

describe("a round of questions", () => {
  it("is begun by a press, asks one question a page, and tells at once whether it was right, and why", async () => {
    const id = await begun();
    const page = await html(at(`/questions?round=${id}`));
    expect(page).toContain(`Question 1 of ${MAX_NEW_A_DAY}`);
    const { right, wrong, question } = await questionAt(id, 0);
    expect(isRight(question, right.given.split(","))).toBe(true);
    const told = (await post(at("/questions"), wrong)).headers.get("location")!;
    expect(await html(told)).toContain("<h1>No.");
    expect(await html(told)).toContain("<dt>Why</dt>");
    expect(await html(at(`/questions?round=${id}`))).toContain(`Question 2 of ${MAX_NEW_A_DAY + 1}`);
    const next = (await questionAt(id, 1)).right;
    expect(await html((await post(at("/questions"), next)).headers.get("location")!)).toContain("<h1>Right.");
    expect((await roundIs(id)).asked.slice(0, 2).map(({ grade }) => grade)).toEqual(["missed", "right"]);
  });
  it("counts a press that comes twice once, and begins one round where it is begun twice", async () => {
    const id = await begun();
    expect(await begun()).toBe(id);
    const { right, wrong } = await questionAt(id, 0);
    await Promise.all([post(at("/questions"), right), post(at("/questions"), right)]);
    const [first] = await cards();
    expect((first!.card as { reps: number }).reps).toBe(1);
    expect((await post(at("/questions"), wrong)).status).toBe(409);
    expect(await cards()).toEqual([first]);
  });
  it("believes no form about what is right: it takes only options of the question that it showed", async () => {
    const id = await begun();
    const { right } = await questionAt(id, 0);
    const sent = async (fields: Record<string, string>) => (await post(at("/questions"), { ...right, ...fields })).status;
    expect(await sent({ given: "9" })).toBe(422);
    expect(await sent({ given: "" })).toBe(422);
    expect(await sent({ no: "77" })).toBe(422);
    expect(await sent({ no: "first" })).toBe(422);
    expect(await sent({ shown: "000000000000" })).toBe(409);
    expect(await cards()).toEqual([]);
  });
  it("is over after five minutes: an answer after that does not count, and says so", async () => {
    const id = await begun();
    const { right } = await questionAt(id, 0);
    crew.clock.pass(301);
    const late = await post(at("/questions"), right);
    expect([late.status, await late.text()]).toEqual([409, expect.stringContaining("That round was over before this answer.")]);
    expect([await cards(), (await roundIs(id)).asked[0]!.given]).toEqual([[], null]);
    expect(await begun()).not.toBe(id);
  });
  it("is one's own: another person's phone is told so, and so is one of another job, or of none", async () => {
    const id = await begun();
    await begun("p4");
    const { right } = await questionAt(id, 0);
    expect((await post(at("/questions"), right, "p4")).status).toBe(403);
    expect(await html(at(`/questions?round=${id}`), "p4")).toContain("That round is somebody else's. Begin your own.");
    expect((await get(at("/questions?round=nothing"))).status).toBe(404);
    const other = await openedJob({ ...SMALL, title: "another" }, crew);
    expect(await html(`/jobs/${other.job}/learn/questions?round=${id}&as=${TRAINEE}`)).toContain("There's no such round on this job.");
  });
  it("ends with how it went, and what was missed comes back on another day", async () => {
    const id = await begun();
    for (let no = 0; (await roundIs(id)).asked[no]; no++)
      await post(at("/questions"), (await questionAt(id, no))[no === 0 ? "wrong" : "right"]);
    expect(await html(at(`/questions?round=${id}`))).toContain(`${MAX_NEW_A_DAY - 1} of ${MAX_NEW_A_DAY} right at the first try.`);
    expect(await html(at())).toContain("Nothing to go over right now.");
    expect((await post(at(), {})).headers.get("location")).toBe(at());
    crew.clock.pass(24 * 3600 * 2);
    expect(await html(at())).toContain("to go over.");
  });
  it("of a job that was taken away is of none, in a sentence", async () => {
    const id = await begun();
    await crew.liveJobs.remove(crew.job);
    const answer = await post(at("/questions"), { round: id, no: "0", given: "1", shown: "" });
    expect([answer.status, await answer.text()]).toEqual([404, expect.stringContaining("There is no job")]);
  });
  it("wants to know whose it is", async () => {
    const answer = await crew.app.request(at(), { method: "POST", headers: { origin: "http://localhost" }, body: new URLSearchParams() });
    expect([answer.status, await answer.text()]).toEqual([422, expect.stringContaining("Say who you are first.")]);
    expect(await (await crew.app.request(at())).text()).toContain("Say who you are first.");
  });
});

describe("what was learned", () => {
  it("shows phase by phase, with what the rule still wants, for the one who learns and for the office", async () => {
    const { learning } = crew.journal;
    const learner = await learning.learner("Odd", "l-odd");
    const struck = askable((await crew.liveJobs.load(crew.job)).job.frozen).filter(({ phase }) => phase === "struck");
    const now = crew.now();
    const known = graded(graded(null, "right", now - 2 * 86_400_000, "a"), "right", now - 86_400_000, "b");
    const round = { id: "r-1", learner: learner.id, job: crew.job, at: 1, body: {} };
    for (const [i, { id }] of struck.entries()) await learning.saveRound({ ...round, version: i + 1 }, { item: id, card: known });
    const rehearsal = { from: crew.job, learner: learner.id, way: "lead", trouble: "several", seed: 1, at: now } as const;
    await learning.startRehearsal({ ...rehearsal, job: "gone", over: { at: now, moments: 9, unsafe: 0, whole: true } });
    for (const page of [await html(at()), await html("/learning")]) {
      expect(page).toContain(`${struck.length} known today`);
      expect(page).toContain("1 rehearsal more to lead");
      expect(page).toContain("That job is gone.");
      expect(page).toContain("The employer names a competent person");
      expect(page).not.toMatch(/Struck: \d+ of \d+ known,/);
    }
  });
  it("is in no record, fold or finding of a job, and goes on as the job does not", async () => {
    const before = await crew.entries();
    const fold = await crew.journal.fold(crew.job);
    const id = await begun();
    await post(at("/questions"), (await questionAt(id, 0)).right);
    expect(await crew.entries()).toEqual(before);
    expect(await crew.journal.fold(crew.job)).toEqual(fold);
    expect(foldAll(before).fold).toEqual(fold!.fold); // biome-ignore format: one line reads best
  });
  it("is erased with the name, by the office and on the firm's list", async () => {
    const study = createStudy(crew.journal, () => "l-new");
    const live = await crew.liveJobs.load(crew.job);
    for (const path of [`/jobs/${crew.job}/names`, "/firm/people"]) {
      await crew.journal.learning.learner("Odd", "l-odd");
      const rehearsal = await openedJob({ ...SMALL, rehearsal: true }, crew);
      await post(path.replace(crew.job, rehearsal.job), { person: TRAINEE, name: "ODD" });
      expect((await study.student(live, TRAINEE)).learner, path).toBeNull();
    }
  });
  it("stays while the name is on a job that is kept, and goes with the last one", async () => {
    await crew.journal.learning.learner("Odd", "l-odd");
    const kept = { journal: crew.journal, liveJobs: crew.liveJobs, house: { takeAway: async () => true } };
    await removeExpired(kept, { names: 30, records: null }, crew.now());
    expect(await crew.journal.learning.learners()).toHaveLength(1);
    await crew.journal.firm.forgetBefore(crew.now());
    await removeExpired(kept, { names: 30, records: null }, crew.now() + 31 * 86_400_000);
    expect(await crew.journal.learning.learners()).toHaveLength(0);
  });
});
