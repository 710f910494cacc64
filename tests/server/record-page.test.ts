import { beforeEach, describe, expect, it } from "vitest";
import { type Entry, seal } from "../../machines/record/entry.ts";
import { FLAGS } from "../../machines/record/findings.ts";
import { readBrief } from "../../server/input/brief.ts";
import { brief, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
});
const page = async (query = "", path = "record") => {
  const r = await job.app.request(`/jobs/${job.job}/${path}${query}`);
  return { status: r.status, html: await r.text(), headers: r.headers };
};
/** The page as it reads: without tags, a space for each. */
const read = (html: string) =>
  html
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll(/\s+/g, " ");
const sheet = { type: "answer", gate: "sheet.atHand" } as const;
const good = { kind: "document", named: "RC-80100 rev C" } as const;
const wrong = { kind: "document", named: "RC-4040" } as const;

describe("the record of a job", () => {
  it("stands by phase, call and time: a call gone back to stands there again", async () => {
    await job.say({ ...sheet, value: good }, "Maren");
    await job.say({ type: "next" });
    await job.say({ type: "back" });
    const { html } = await page();
    expect([...html.matchAll(/<h2>([^<]*)/g)].map((m) => m[1])).toEqual(["Utilities marked"]);
    const calls = [...html.matchAll(/<h3>([^<]*)/g)].map((m) => m[1]!);
    expect(calls).toHaveLength(3);
    expect([calls[2], calls[1] === calls[0]]).toEqual([calls[0], false]);
    expect([...html.matchAll(/id="e(\d+)"/g)].map((m) => Number(m[1]))).toEqual([1, 2, 3, 4]);
  });
  it("puts what was said under the call it was said to, not under the one it led to", async () => {
    // Of somebody who may not say next: the answer and the going on are two things said.
    await job.say({ ...sheet, value: good }, "Maren");
    await job.say({ type: "next" });
    await job.say({ type: "answer", gate: "permit", value: { kind: "document", named: "PN-77" } });
    const [first, second, third] = (await page()).html.split("<article>").slice(1);
    expect(read(first!)).toContain("RC-80100 rev C");
    expect(read(first!)).toContain("Next");
    expect(read(second!)).toContain("PN-77");
    expect(read(third!)).toContain("The guide stands here now.");
  });
  it("tells the time to the second as a clock at the site shows it, summer time and all", async () => {
    const { at } = await job.say({ type: "note", text: "cloudy" });
    const utc = new Date(at).toISOString();
    expect(utc).toMatch(/^2026-06-02T12:00/);
    expect((await page()).html).toContain(`<time datetime="${utc}">2026-06-02 07:${utc.slice(14, 19)}</time>`);
  });
  it("numbers the phones as they first appear, names who first used each, and shows no cookie", async () => {
    await job.say({ type: "note", text: "one" }, "Ines", { device: "cookie-aaaa" });
    await job.say({ type: "note", text: "two" }, "Maren", { device: "cookie-bbbb" });
    await job.say({ type: "note", text: "three" }, "Odd", { device: "cookie-aaaa" });
    const { html } = await page();
    const text = read(html);
    expect(text).toContain("Maren, competent person, phone 2 (Maren), pressed Note: two");
    expect(text).toContain("Odd, trainee, phone 1 (Ines), pressed Note: three");
    expect(text).toContain("phone 1: first used by Ines; phone 2: first used by Maren");
    expect(html).not.toContain("cookie-");
  });
  it("gives the exact words that were heard, what they were taken as, and what the guide said back", async () => {
    const { no } = await job.say({ type: "readBack", intent: { ...sheet, value: wrong } }, "Ines", { source: "talk" });
    await job.say({ type: "correct", target: no }, "Ines", { source: "talk" });
    const text = read((await page()).html);
    expect(text).toContain('heard with Talk held "as heard" taken as: RC-4040, read back and not taken yet');
    expect(text).toContain(`"as heard" taken as: Correct: RC-4040 (read back in entry ${no}) RC-4040. Need RC-80100 rev C.`);
  });
  it("tells a refusal with the value that stood then, whatever has been answered since", async () => {
    await job.say({ ...sheet, value: wrong });
    await job.say({ type: "next" });
    await job.say({ ...sheet, value: good });
    expect(read((await page()).html).match(/RC-4040\. Need RC-80100 rev C\./g)).toHaveLength(2);
  });
  it("tells entries before an amendment by the script that was in force then", async () => {
    const nine = { type: "answer", gate: "rings", value: { kind: "figures", unit: "count", n: { AB: 9 } } } as const;
    await job.to((s) => s.step === "rings");
    await job.say(nine);
    const longer = readBrief({ ...brief(), tent: { ...brief().tent, lengthFt: 120, midsFt: [20, 20] } }).frozen;
    const { no } = await job.say({ type: "amend", because: "cloth is one mid longer", to: longer });
    await job.say({ type: "agree", target: no }, "Maren");
    // What the change asks again is answered where the job stands.
    await job.to((s) => s.step === "rings" && s.gate?.id === "rings");
    await job.say(nine);
    const text = read((await page()).html);
    expect(text).toContain("AB 9: want exactly 11.");
    expect(text).toContain("AB 9: want exactly 13.");
    expect(text).toContain(`Agreed to the change put forward in entry ${no}`);
  });
  it("has making safe under a heading of its own, with its reason", async () => {
    await job.to((s) => s.phase === "standing");
    await job.say({ type: "makeSafe", because: "a strap torn" }, "Odd");
    const { html } = await page();
    expect([...html.matchAll(/<h2>([^<]*)/g)].map((m) => m[1]).slice(-2)).toEqual(["Standing", "Making safe"]);
    expect(read(html)).toContain("Make safe, because a strap torn");
  });
  it("shows no words of a person as anything but text", async () => {
    await job.say({ type: "note", text: '<script>alert("x")</script>' });
    expect((await page()).html).not.toContain("<script>alert");
  });
  it("is 404 with a sentence for a job that is not there", async () => {
    const r = await job.app.request("/jobs/no-such/record");
    expect([r.status, await r.text()]).toEqual([404, expect.stringContaining("There is no job no-such")]);
  });
});

describe("on top of a record", () => {
  it("stand what the job is, its crew, its phases' times and the count of each mark", async () => {
    await job.say({ type: "next" });
    const text = read((await page()).html);
    for (const part of [
      "80 × 100 ft",
      "Ines, lead; Tobias, deputy",
      "Opened 2026-06-02 07:00",
      "Refused 1",
      "Left out 0",
      "Time taken Utilities marked",
    ])
      expect(text).toContain(part);
  });
  it("stands that it holds, and the whole hash of its last entry", async () => {
    await job.say({ type: "next" });
    const { html } = await page();
    expect(html).toContain((await job.entries()).at(-1)!.hash);
    expect(read(html)).toContain("All 2 entries check out: the chain is whole, and a replay gives the recorded states.");
  });
  it("stands the first entry that does not fit, and it and those after it are not shown", async () => {
    for (let n = 1; n <= 4; n++) await job.say({ type: "note", text: `note-${n}` });
    const read4 = async (id: string) =>
      (await job.journal.read(id)).map((l) => (l.no === 4 ? { ...l, bytes: l.bytes.map((b, i) => (i === 20 ? b ^ 1 : b)) } : l));
    const { app } = testApp({ ...job.journal, read: read4 });
    const text = read(await (await app.request(`/jobs/${job.job}/record`)).text());
    expect(text).toContain("Entry 4 of this job does not fit the chain.");
    expect(text).toContain("It and what follows are not shown: nobody can vouch for them. The 3 entries before it hold.");
    expect([text.includes("note-2"), text.includes("note-3"), text.includes("note-4")]).toEqual([true, false, false]);
  });
  it("stands which entry was changed in the file while the job was open", async () => {
    let spoil = false;
    const journal = {
      ...job.journal,
      read: async (id: string) => (await job.journal.read(id)).map((l) => (spoil && l.no === 3 ? { ...l, bytes: new Uint8Array() } : l)),
    };
    for (let n = 1; n <= 3; n++) await job.say({ type: "note", text: `note-${n}` });
    const { app } = testApp(journal);
    const seen = async () => read(await (await app.request(`/jobs/${job.job}/record`)).text());
    expect(await seen()).toContain("All 4 entries check out");
    spoil = true;
    const text = await seen();
    expect(text).toContain("Entry 3 in the data file is no longer as it was written. It and what follows are not shown");
    expect([text.includes("note-1"), text.includes("note-2")]).toEqual([true, false]);
    const data = (await (await app.request(`/jobs/${job.job}/record.json`)).json()) as { problem: string; entries: unknown[] };
    expect([data.entries.length, data.problem]).toEqual([2, "Entry 3 in the data file is no longer as it was written."]);
  });
  it("stands which entry does not replay, though the chain was made to fit", async () => {
    await job.say({ type: "note", text: "true" });
    const lines = await job.journal.read(job.job);
    const forged = seal({ ...(await job.entries())[1]!.entry, outcome: { did: "held" } } as Entry);
    const { app } = testApp({ ...job.journal, read: async () => [lines[0]!, { no: 2, hash: forged.hash, bytes: forged.bytes }] });
    expect(read(await (await app.request(`/jobs/${job.job}/record`)).text())).toContain(
      "Entry 2 of this job does not replay as it was recorded.",
    );
  });
});

describe("what stands out", () => {
  beforeEach(async () => {
    await job.say({ type: "next" });
    await job.say({ ...sheet, value: wrong });
    await job.say({ ...sheet, value: good });
  });
  const numbers = (html: string) => [...html.matchAll(/id="e(\d+)"/g)].map((m) => Number(m[1]));

  it("is said in a word on the entry", async () => {
    const { html } = await page();
    expect(html).toContain('<strong class="mark refused">Refused</strong>');
    expect(html).toContain('<strong class="mark outOfLimit">Out of limits</strong>');
  });
  it.each([
    ["?show=refused", [2]],
    ["?show=refused,outOfLimit", [2, 3]],
    ["?show=outOfLimit&show=refused", [2, 3]],
    ["?show=waived", []],
    ["?show=", [1, 2, 3, 4]],
  ])("%s shows entries %j", async (query, shown) => expect(numbers((await page(query)).html)).toEqual(shown));
  it("that nobody knows of is said, and all is shown", async () => {
    const { html } = await page("?show=refused,late");
    expect(numbers(html)).toEqual([1, 2, 3, 4]);
    expect(read(html)).toContain(`"late" is nothing to look for. All entries are shown. Choose from: ${FLAGS.join(", ")}.`);
  });
  it("says how many are shown, and that there are none", async () => {
    expect(read((await page("?show=refused")).html)).toContain("Showing 1 of 4 entries: Refused.");
    expect(read((await page("?show=waived")).html)).toContain("No entry of that kind.");
  });
  it("stays ticked in the form that asked for it", async () => {
    const { html } = await page("?show=refused");
    expect(html).toMatch(/value="refused" checked/);
    expect(html).not.toMatch(/value="waived" checked/);
  });
  it("stands beside each entry in the data", async () => {
    const data = (await (await job.app.request(`/jobs/${job.job}/record.json`)).json()) as {
      entries: { marks: string[] }[];
      findings: object;
    };
    expect(data.entries.map((e) => e.marks)).toEqual([[], ["refused"], ["outOfLimit"], []]);
    expect(data.findings).toMatchObject({ refused: 1, outOfLimit: 1 });
  });
});
