import { beforeEach, describe, expect, it } from "vitest";
import { OFFICE } from "../../server/journal/access.ts";
import type { FindingsState } from "../../views/pages/findings/state.ts";
import { testApp } from "../support/app.ts";
import { failingJournal } from "../support/failing-journal.ts";
import { filled } from "../support/filled.ts";
import { guardedApp } from "../support/guarded.ts";
import { keep, recordOf } from "../support/seen-jobs.ts";

let world: ReturnType<typeof testApp>;
let about: { job: string; kind: string; entry: number };
let keys = 0;
beforeEach(async () => {
  world = testApp();
  await keep(world.journal, recordOf("job-1", { entries: 50 }), { p1: "Ines", p3: "Maren" });
  const { job, kind, entry } = (await data()).cards[0]!;
  about = { job, kind, entry };
});
const data = async (query = "") => (await (await world.app.request(`/findings.json${query}`)).json()) as FindingsState;
const card = async () => (await data()).cards.find(({ kind, entry }) => kind === about.kind && entry === about.entry)!;
const say = (more: object, key = `say-${String(++keys).padStart(5, "0")}`) =>
  world.post("/findings/followups", { key, ...about, is: "noted", text: "asked the lead", ...more });
const stream = async () => {
  const lines = [];
  for (let last = await world.journal.oversight.lastFollowUp(); lines.length === 0 && last; last = null) lines.push(last.entry);
  return lines[0]?.no ?? 0;
};

describe("what a manager says of a finding", () => {
  it("stands with it from then on: noted, had seen to by somebody, let stand", async () => {
    await say({});
    await say({ is: "followedUp", text: "walk it again", who: "p3" });
    await say({ is: "accepted", text: "walked again, all tight" });
    const { followUps, state } = await card();
    expect(state).toBe("accepted");
    expect(followUps.map(({ isText, who, text }) => [isText, who, text])).toEqual([
      ["Noted", null, "asked the lead"],
      ["To be seen to", "by Maren", "walk it again"],
      ["Let stand", null, "walked again, all tight"],
    ]);
  });
  it("goes by the form on its card, without a script, and leads back to it", async () => {
    const html = await (await world.app.request(`/findings?kind=${about.kind}`)).text();
    const fields = { ...filled(/<article.*?<\/article>/s.exec(html)![0]), text: "seen it", is: "accepted", who: "p3" };
    const answer = await world.app.request("/findings/followups", {
      method: "POST",
      body: new URLSearchParams(fields as Record<string, string>),
      headers: { origin: "http://localhost", cookie: "device=desk-in-the-office" },
    });
    const id = `${about.job}-${about.kind}-${about.entry}`;
    expect([answer.status, answer.headers.get("location")]).toEqual([303, `/findings?kind=${about.kind}#${id}`]);
    expect((await card()).followUps).toMatchObject([{ is: "accepted", who: null, text: "seen it" }]);
    expect(html).toContain(`id="${id}"`);
  });
  it("is looked for by what became of it", async () => {
    const before = (await data()).found;
    await say({ is: "accepted" });
    expect([(await data("?state=accepted")).found, (await data("?state=open")).found]).toEqual([1, before - 1]);
  });
  it("is only text, whatever is in it", async () => {
    await say({ text: '<script>alert("x")</script> & <b>bold</b>' });
    const html = await (await world.app.request("/findings")).text();
    expect(html).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; &lt;b&gt;bold&lt;/b&gt;");
  });
  it("is done once for a key, however often it comes, and never for another request", async () => {
    const key = "say-again-1";
    const [one, two] = [await say({}, key), await say({}, key)];
    expect([one.status, await one.json()]).toEqual([201, await two.json()]);
    expect([await stream(), (await say({ text: "another" }, key)).status, await stream()]).toEqual([1, 409, 1]);
  });
  it("from two desks in the same moment stands one after the other", async () => {
    const answers = await Promise.all([say({}), say({ text: "so did I" }), say({ is: "accepted" })]);
    expect([answers.map(({ status }) => status), await stream()]).toEqual([[201, 201, 201], 3]);
  });
  it.each([
    ["nothing", { text: "  " }, "text", "Empty."],
    ["five kilobytes", { text: "x".repeat(5000) }, "text", "Keep it under 1000 characters."],
    ["something that nobody does", { is: "erased" }, "is", '"erased" is not one of: noted, accepted, followedUp.'],
    ["a kind that is none", { kind: "songs" }, "kind", '"songs" is not one of:'],
    ["an entry that is none", { entry: 0.5 }, "entry", "Give a whole number."],
    ["a key of three letters", { key: "abc" }, "key", "8 to 80"],
    ["a field that nobody knows", { mood: "bad" }, "mood", '"mood" is not known'],
    ["somebody who is not on that job", { is: "followedUp", who: "p44" }, "who", "Nobody on that job is p44."],
    ["somebody for a note", { who: "p3" }, "who", "Nobody is named for a note"],
  ])("is refused in a sentence: %s", async (_what, more, field, sentence) => {
    const answer = await say(more);
    const { fields } = (await answer.json()) as { fields: Record<string, string> };
    expect([answer.status, fields[field], await stream()]).toEqual([422, expect.stringContaining(sentence), 0]);
  });
  it.each([
    ["a job that there is none of", { job: "job-9" }],
    ["an entry without it", { entry: 9999 }],
  ])("is refused where there is no such finding: %s", async (_what, more) => {
    const answer = await say(more);
    expect([answer.status, ((await answer.json()) as { problem: string }).problem]).toEqual([
      404,
      "There is no such finding any more, or there never was. Look at the list again.",
    ]);
  });
  it("is not kept where there is no room, and says so", async () => {
    const { journal, state } = failingJournal(world.journal);
    const full = testApp(journal);
    state.failure = { why: "full", place: "/data" };
    const answer = await full.post("/findings/followups", { key: "no-room-1", ...about, is: "noted", text: "asked" });
    expect([answer.status, await stream()]).toEqual([503, 0]);
  });
});

describe("on a server that asks who comes in", () => {
  it("only the office says anything of a finding, and the stream has the device that it was said on", async () => {
    const { app, world: guarded, browser } = await guardedApp();
    await keep(guarded.journal, recordOf("job-1", { entries: 50 }), { p1: "Ines" });
    const fields = { ...about, entry: String(about.entry), key: "guarded-1", is: "noted", text: "asked" };
    const post = (body: Record<string, string>) =>
      app.request("/findings/followups", { method: "POST", body: new URLSearchParams(body), headers: { origin: "http://localhost" } });
    expect([(await post(fields)).status >= 300, await guarded.journal.oversight.lastFollowUp()]).toEqual([true, null]);
    const office = browser();
    await office.signIn();
    expect((await office.post("/findings/followups", fields)).status).toBe(303);
    const { device } = (await guarded.journal.oversight.lastFollowUp())!.entry;
    expect((await guarded.journal.access.passes(device)).map(({ job }) => job)).toEqual([OFFICE]);
  });
});
