import { beforeAll, describe, expect, it } from "vitest";
import { asideAt } from "../../machines/rehearsal/aside.ts";
import { shownAs } from "../../server/learning/study.ts";
import { brief } from "../support/briefs.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

const [LEAD, TRAINEE] = ["p1", "p6"];
let crew: OpenedJob;
const page = async (me: string, path = "") =>
  (await (await crew.app.request(`/jobs/${crew.job}${path}`, { headers: { cookie: `device=phone-${me}; as-${crew.job}=${me}` } })).text()).replaceAll("&#39;", "'"); // biome-ignore format: one line reads best
const post = (path: string, fields: Record<string, string>, me = TRAINEE, headers: Record<string, string> = {}) =>
  crew.app.request(`/jobs/${crew.job}${path}`, {
    method: "POST",
    body: new URLSearchParams(fields),
    headers: { origin: "http://localhost", cookie: `device=phone-${me}; as-${crew.job}=${me}`, ...headers },
  });
const aside = async () => {
  const { job, entries, now } = await crew.liveJobs.load(crew.job);
  return asideAt(job, entries, now.at);
};
const ASKED = "A question for you";
const moves = async () => {
  const entries = await crew.entries();
  return entries.filter(({ entry: e }) => e.kind === "command" && "did" in e.outcome && (e.outcome.did === "moved" || e.outcome.and === "moved")).length; // biome-ignore format: one line reads best
};

describe("a trainee on a real job", () => {
  beforeAll(async () => {
    crew = await openedJob(brief());
    let made = 0;
    await crew.to(() => made++ >= 1);
    while ((await moves()) % 5 !== 0 || (await moves()) === 0)
      await crew.to(
        (
          (n) => () =>
            n++ > 0
        )(0),
      );
  });

  it("sees unfolded why a call is made, how, and what goes wrong; the lead does not", async () => {
    const { call } = await crew.read();
    expect(await page(TRAINEE)).toContain(`<dd>${call!.wrong}</dd>`);
    expect(await page(LEAD)).not.toContain(call!.wrong);
  });
  it("watches: nothing answers the call on their screen but Hold, and the lead's has all of it", async () => {
    const [mine, leads] = [await page(TRAINEE), await page(LEAD)];
    expect(mine).toContain("You watch this one. Hold is yours, like everybody's.");
    for (const type of ["next", "answer"]) {
      expect(mine).not.toContain(`name="type" value="${type}"`);
    }
    expect(leads).toMatch(/name="type" value="(?:next|answer)"/);
    expect(leads).not.toContain("You watch this one.");
  });
  it("is asked something after every fifth move, the same on every look; nobody else is", async () => {
    expect((await aside())?.id).toBe((await aside())?.id);
    expect(await page(TRAINEE)).toContain(ASKED);
    expect(await page(TRAINEE, "/now")).toContain(ASKED);
    expect(await page(LEAD)).not.toContain(ASKED);
    expect(await page(LEAD)).not.toContain('id="aside"');
  });
  it("has it below the call, shut, and Hold as everybody has it", async () => {
    const html = await page(TRAINEE);
    expect(html.indexOf('id="call"')).toBeLessThan(html.indexOf('id="aside"'));
    expect(html).not.toContain("<details open");
    expect(html).toMatch(/name="type" value="hold"/);
  });
  it("answers it in its place: no entry is made, and nothing moves", async () => {
    const before = [(await crew.entries()).length, (await crew.read()).revision];
    const { id, question } = (await aside())!;
    const fields = { id, shown: shownAs(question), given: question.right[0]! };
    const swap = { "hx-request-type": "partial" };
    const told = await (await post("/learn/aside", fields, TRAINEE, swap)).text();
    expect(told).toContain("Right.");
    expect(told).not.toContain("<html");
    await post("/learn/aside", fields, TRAINEE, swap);
    const { learning } = crew.journal;
    const cards = await learning.cards((await learning.learnerCalled("Odd"))!.id);
    expect(cards.map(({ card }) => (card as { reps: number }).reps)).toEqual([1]);
    expect([(await crew.entries()).length, (await crew.read()).revision]).toEqual(before);
    expect(await page(TRAINEE)).not.toContain(ASKED);
  });
  it("gets a page of its own where nothing swaps, with the way back to the call", async () => {
    const { id, question } = (await aside())!;
    const wrong = question.options.find((option) => option.id !== question.right[0])!.id;
    const html = await (await post("/learn/aside", { id, shown: shownAs(question), given: wrong }, "p4")).text();
    expect(html).toContain("<h1>No.");
    expect(html).toContain("Right is:");
  });
  it("is told where the job has moved on with its question", async () => {
    const answer = await post("/learn/aside", { id: "aside-none-1", shown: "", given: "1" });
    expect([answer.status, await answer.text()]).toEqual([409, expect.stringContaining("The job moved on, and that question with it.")]);
  });
  it("is asked nothing while the work is held", async () => {
    await crew.say({ type: "hold" }, "Pia");
    expect(await aside()).toBeNull();
    await crew.say({ type: "carryOn", became: null }, "Ines");
    expect(await aside()).not.toBeNull();
  });
  it("finds learning from More and from its guide", async () => {
    for (const path of ["", "/more"]) expect(await page(TRAINEE, path), path).toContain(`/jobs/${crew.job}/learn"`);
    expect(await page(LEAD, "/more")).toContain(`/jobs/${crew.job}/learn"`);
  });
});
