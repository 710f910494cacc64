import { beforeAll, describe, expect, it } from "vitest";
import { readBrief } from "../../server/input/brief.ts";
import { brief, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { longRecord } from "../support/long-record.ts";

const read = (html: string) =>
  html
    .replaceAll(/<(script|style|svg)\b.*?<\/\1>/gs, " ")
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll(/\s+/g, " ");
const htmlOf = async ({ app, job }: OpenedJob, query = "") => (await app.request(`/jobs/${job}/report${query}`)).text();
const sheet = { type: "answer", gate: "sheet.atHand" } as const;

describe("the report of a job that was raised and struck", () => {
  let job: OpenedJob;
  let html: string;
  let text: string;
  beforeAll(async () => {
    job = await openedJob();
    await job.say({ ...sheet, value: { kind: "document", named: "RC-4040" } }, "Maren");
    await job.say({ ...sheet, value: { kind: "document", named: "RC-80100 rev C" } });
    const soft = await job.to((s) => s.gate?.hard === false);
    await job.say({ type: "waive", gate: soft.gate!.id, because: "counted at the yard" });
    await job.to((s) => s.phase === "anchorsSet");
    await job.say(
      { type: "reading", reading: { kind: "wind", mph: 31, gustMph: 44, fromDeg: 270, takenAt: job.now(), place: "the gate" } },
      "Odd",
    );
    await job.say({ type: "reading", reading: { kind: "thunder", takenAt: job.now() } }, "Odd");
    job.clock.pass(31 * 60);
    await job.to((s) => s.step === "nearest.gas" || s.phase === "anchorsSet");
    await job.say({ type: "note", text: '<script>alert("x")</script>' });
    await job.to((s) => s.closed);
    await job.journal.eraseName(job.job, "p6");
    html = await htmlOf(job);
    text = read(await htmlOf({ ...job, ...job.restart(0) }));
  });

  it("tells the job, its papers and what it is judged by", () => {
    for (const part of [
      "Report: Demo: harvest supper, lower meadow (invented)",
      "80 × 100 ft. Stands at: Closed",
      "Address to give Lower meadow, gate 3, Tansy Lane",
      "Sheet number RC-80100 rev C",
      "Ticket number LT-2041",
      "Utilities electric nothing here; gas marked; water marked; phone, cable, fiber nothing here",
      "Gust that stops raising, mph 20 mph (this tent's sheet)",
      "Gust that clears people out, mph 30 mph (common practice, no source)",
      "All times are local to the site, America/Chicago.",
    ])
      expect(text).toContain(part);
  });
  it("names the people with their roles, and whoever was erased by their id", () => {
    expect(text).toContain("Ines, lead; Tobias, deputy; Maren, competent person; Jory, crew; Pia, crew; p6 (name erased), trainee;");
  });
  it("draws the layout", () => {
    expect(html).toContain('class="drawn-layout"');
    expect(html).toContain('aria-label="The layout, drawn to scale.');
  });
  it("has the gates in the order of the phases, each with its limit, its answers, who and when", () => {
    const captions = [...html.matchAll(/<table class="gates"><caption>([^<]*)/g)].map((m) => m[1]);
    expect(captions.slice(0, 9)).toEqual([
      "Utilities marked",
      "Anchors set",
      "Sections joined",
      "Perimeter raised",
      "Interior raised",
      "Tensioned",
      "Inspected",
      "Standing",
      "Struck",
    ]);
    expect(text).toMatch(/How many inches sticking up\? at most 6 in 3 in Ines, Tue 2 Jun 07:\d\d, entry \d+/);
  });
  it("has an answer out of limits before the one that counts, and marks it", () => {
    expect(text).toMatch(/RC-80100 rev C RC-4040 Out of limits Maren, [^,]+, entry 2 RC-80100 rev C Ines, [^,]+, entry 3 /);
  });
  it("has what was left out, with its reason", () => {
    expect(text).toMatch(/Left out, because counted at the yard Ines, [^,]+, entry \d+/);
  });
  it("tells the second person as one, by name", () => {
    expect(text).toMatch(/How many missed loops\? second person none 0 Tobias, /);
  });
  it("has every reading of the weather, when it was taken and by whom", () => {
    expect(text).toMatch(
      /Weather readings .*Wind 31 gusting 44 mph from W, read the gate p6, Tue 2 Jun [\d:]+, entry \d+ Thunder or lightning p6, /,
    );
  });
  it("has the times by phase, the kit out and back, and what stands out", () => {
    for (const part of [
      "Time taken Utilities marked",
      "Out and back Everything",
      "Refused: 0; Left out: 1; Out of limits: 1;",
      "Whole phase too fast",
    ])
      expect(text).toContain(part);
  });
  it("ends with digests, lines for the lead and the customer to sign, and what it is not", () => {
    const [, end = ""] = text.split("What it can be checked by");
    for (const part of [
      "Record so far: entry",
      "Lead: name, signature, date",
      "Customer or their person",
      "screening check",
      "licensed engineer",
    ])
      expect(end).toContain(part);
  });
  it("shows no words of a person as anything but text, and no style or script of its own", () => {
    expect(html).not.toContain("<script>alert");
    expect(html).not.toMatch(/ style="/);
  });
  it("is for A4, and for US Letter where that is asked for; another paper is refused", async () => {
    expect(html).toContain('class="report a4"');
    expect(await htmlOf(job, "?paper=letter")).toContain('class="report letter"');
    expect((await job.app.request(`/jobs/${job.job}/report?paper=a3`)).status).toBe(400);
  });
});

describe("the report", () => {
  it("of a job that has just begun says what is not answered, and what it has not come to", async () => {
    const text = read(await htmlOf(await openedJob()));
    expect(text).toContain("Which sheet is it? RC-80100 rev C No answer");
    expect(text).toContain("Not come to yet: Anchors set, Sections joined,");
    expect(text).toContain("Weather readings None was taken.");
  });
  it("of a job of which little is known says so", async () => {
    const { site, ...told } = brief();
    const bare = { ...told, sheet: null, ticket: null, site: { ...site, rallyPoint: null, overheadKv: [null, 12] } };
    const text = read(await htmlOf(await openedJob(bare)));
    for (const part of [
      "Rally point not known",
      "Its sheet Paper none yet",
      "The locate ticket Paper none yet",
      "voltage not known, 12 kV",
    ])
      expect(text).toContain(part);
  });
  it("tells a paper in place of a limit with who showed it and who looked at it", async () => {
    const job = await openedJob();
    await job.to((s) => s.gate?.id === "nearest.gas");
    const paper = { kind: "paper", by: "county gas", document: "Gas-7712", dated: "2026-05-20" } as const;
    await job.say({ type: "answer", gate: "nearest.gas", value: paper });
    expect(read(await htmlOf(job))).toContain("Paper NOT SEEN by a second person");
    await job.say({ type: "answer", gate: "nearest.gas", value: paper }, "Maren", { device: "phone-of-Maren" });
    expect(read(await htmlOf(job))).toMatch(/Gas-7712.*Paper also seen by Maren, [^,]+, entry \d+/);
  });
  it("keeps what only an earlier plan asked", async () => {
    const wires = (...overheadKv: number[]) => ({ ...brief(), site: { ...brief().site, overheadKv } });
    const job = await openedJob(wires(12, 35));
    await job.to((s) => s.phase === "anchorsSet");
    const { no } = await job.say({ type: "amend", because: "the second one is dead", to: readBrief(wires(12)).frozen });
    await job.say({ type: "agree", target: no }, "Maren");
    const text = read(await htmlOf(job));
    expect(text).toContain("Wires overhead 12 kV");
    expect(text).toMatch(/Asked under an earlier plan Asked Good is Answered Who, when, entry Overhead line 2, 35 kV/);
  });
  it("of a rehearsal says on top that nothing was at stake", async () => {
    const text = read(await htmlOf(await openedJob({ ...brief(), rehearsal: true })));
    expect(text).toMatch(/Rehearsal: nothing here is a real tent, and nothing in it counts\. Report: Demo/);
  });
  it("of a record that somebody changed has only what can be vouched for, and says so", async () => {
    const job = await openedJob();
    for (let n = 1; n <= 3; n++) await job.say({ ...sheet, value: { kind: "document", named: `RC-${n}` } });
    const read3 = async (id: string) => (await job.journal.read(id)).map((l) => (l.no === 3 ? { ...l, bytes: new Uint8Array() } : l));
    const text = read(await htmlOf({ ...job, ...testApp({ ...job.journal, read: read3 }) }));
    expect(text).toContain("Entry 3 of this job does not fit the chain.");
    expect([text.includes("RC-1 "), text.includes("RC-2 ")]).toEqual([true, false]);
  });
  it("of a long record comes part by part, its head before the rest is made", async () => {
    const { job } = await longRecord(400);
    const answer = await job.app.request(`/jobs/${job.job}/report`);
    const parts = answer.body!.getReader();
    const first = new TextDecoder().decode((await parts.read()).value);
    expect([first.startsWith("<!DOCTYPE html>"), first.includes("</html>")]).toEqual([true, false]);
    let rest = "";
    for (let part = await parts.read(); !part.done; part = await parts.read()) rest += new TextDecoder().decode(part.value);
    expect(rest).toMatch(/<\/html>$/);
  });
});
