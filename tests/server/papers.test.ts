import { beforeEach, describe, expect, it } from "vitest";
import { PAPER } from "../support/answers.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
const gate = "stakes.size";
beforeEach(async () => {
  job = await openedJob();
  await job.to((s) => s.step === gate);
});
const phoneOf = (as: string) => `phone-of-${as}`;
/** Said over the wire, by somebody on a phone of their own. */
async function show(as: string, more: object = {}) {
  const { revision, entry } = await job.read();
  const body = { as, key: `paper-of-entry-${entry}`, seen: revision, type: "answer", gate, value: { ...PAPER, ...more } };
  const headers = { "content-type": "application/json", cookie: `device=${phoneOf(as)}` };
  const told = await job.app.request(`/jobs/${job.job}/say`, { method: "POST", headers, body: JSON.stringify(body) });
  return { status: told.status, body: (await told.json()) as { reply: string; problem?: string; fields?: Record<string, string> } };
}
const page = async (as: string, path = "") => {
  const r = await job.app.request(`/jobs/${job.job}${path}?as=${as}`, { headers: { cookie: `device=${phoneOf(as)}` } });
  return r.text();
};

describe("a paper that comes in", () => {
  it.each([
    ["Ines", "Ines"],
    ["ines ", "Ines"],
    ["TOBIAS,", "Tobias"],
    ["Tobías K.", "Tobias"],
    ["Ines Ahmed", "Ines"],
    ["engineer Ines", "Ines"],
  ])("from %s, who is on the crew, is refused by name", async (by, name) => {
    const { status, body } = await show("Ines", { by });
    expect([status, body.fields]).toEqual([422, { "value.by": `${name} is on this crew. The paper has to come from somebody else.` }]);
  });
  it.each([
    [
      "a number of one letter",
      { document: "x" },
      "value.document",
      "That is no number of a paper. At least 4 letters or digits, and a digit among them.",
    ],
    [
      "a number without a digit",
      { document: "letter" },
      "value.document",
      "That is no number of a paper. At least 4 letters or digits, and a digit among them.",
    ],
    ["a date as people say it", { dated: "May 28" }, "value.dated", '"May 28" is not a date. Write it like 2026-06-01.'],
    ["a day that no calendar has", { dated: "2026-02-30" }, "value.dated", '"2026-02-30" is not a date. Write it like 2026-06-01.'],
    ["no date", { dated: undefined }, "value.dated", "Nothing is given here, and it is needed."],
    ["somebody's number in the record", { by: "p3" }, "value.by", '"p3" is how the record numbers people. Give the name itself.'],
    ["no name in letters", { by: "…" }, "value.by", '"…" has no letter in it. Give a name.'],
  ])("with %s is refused at its field", async (_what, more, field, sentence) => {
    const { status, body } = await show("Ines", more);
    expect([status, body.fields]).toEqual([422, { [field]: sentence }]);
  });
  it("dated after today is refused, and said to be", async () => {
    expect((await show("Ines", { dated: "2027-01-01" })).body.reply).toBe(
      "That paper is dated 2027-01-01, after today. Read its date again.",
    );
  });
});

describe("the guide page", () => {
  it("leads to where it is asked for whose paper, its number and its date", async () => {
    const html = await page("p1", "/answers");
    for (const field of ['name="by"', 'name="document"', 'type="date" name="dated"']) expect(html).toContain(field);
    expect(html).not.toContain("I have seen this paper");
  });
  it("shows the paper that waits, with a press for everybody but the one who showed it", async () => {
    expect((await show("p1")).body.reply).toBe("Shown. A second competent person has to look at it, on their own phone.");
    const { gate: tile } = await job.read();
    expect(tile).toMatchObject({ id: gate, status: "unseen", notBy: "Ines", roles: ["lead", "deputy", "competent"] });
    const [own, other] = [await page("p1"), await page("p3")];
    for (const html of [own, other]) {
      expect(html).toContain("Paper ENG-1204 from A. Engineer, dated 2026-05-28");
      expect(html).toContain("Shown by Ines. A second competent person looks at it, on their own phone.");
    }
    expect([own.includes("I have seen this paper"), other.includes("I have seen this paper")]).toEqual([false, true]);
  });
  it("counts by the second one's press, and leads on", async () => {
    await show("p1");
    const form = /<form(?:(?!<\/form>).)*I have seen this paper.*?<\/form>/s.exec(await page("p3"))![0];
    const fields = Object.fromEntries([...form.matchAll(/name="([^"]*)" value="([^"]*)"/g)].map((m) => [m[1]!, m[2]!]));
    const pressed = await job.app.request(`/jobs/${job.job}/say`, {
      method: "POST",
      body: new URLSearchParams(fields),
      headers: { "sec-fetch-site": "same-origin", cookie: "device=phone-of-p3" },
    });
    expect(pressed.status).toBeLessThan(400);
    expect((await job.read()).gate).toMatchObject({ id: gate, status: "good", shown: null });
    await job.say({ type: "next" });
    expect((await job.read()).gate?.id).not.toBe(gate);
  });
});
