import { beforeEach, describe, expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";

type Typed = Readonly<Record<string, string>>;
let world: ReturnType<typeof testApp>;
beforeEach(() => {
  world = testApp();
});
const form = (path: string, fields: Typed, cookie = "device=phone-of-ines") =>
  world.app.request(path, { method: "POST", body: new URLSearchParams(fields), headers: { origin: "http://localhost", cookie } });
const html = async (path: string, cookie = "") =>
  (await (await world.app.request(path, { headers: { cookie } })).text()).replaceAll("&#39;", "'").replaceAll("&quot;", '"');
const said = async (job: string, body: object) =>
  (await (await world.post(`/jobs/${job}/say`, body)).json()) as { went: string; reply: string; entry: number; step: string };
const open = async (of: object) => {
  const answer = await world.post("/jobs", { key: "open-00001", brief: of });
  return { status: answer.status, ...((await answer.json()) as { job: string; fields: Typed }) };
};
/** The demo job before anybody has its sheet, its ticket or its places. */
const bare = () => ({
  ...brief(),
  sheet: null,
  ticket: null,
  site: { ...brief().site, rallyPoint: null, stormShelter: null, firstAid: null },
});
const SHEET: Typed = {
  "sheet.document": "RC-1 A",
  "sheet.stakeKind": "steel pin",
  "sheet.stakeSize": "1 1/8 x 42",
  "sheet.soil": "firm loam",
};

describe("a brief from a script", () => {
  it("may say null of its sheet, its ticket and its places", async () => {
    const { status, job } = await open(bare());
    expect(status).toBe(201);
    const { sheet, ticket, site } = (await world.liveJobs.load(job)).job.frozen.brief;
    expect([sheet, ticket, site.rallyPoint, site.stormShelter, site.firstAid]).toEqual([null, null, null, null, null]);
  });
  it("that leaves them out is refused as before: nothing is forgotten by a slip", async () => {
    const { sheet: _, ticket: __, ...rest } = brief();
    const { rallyPoint: ___, ...site } = rest.site;
    const { status, fields } = await open({ ...rest, site });
    expect([status, Object.keys(fields).sort()]).toEqual([422, ["sheet", "site.rallyPoint", "ticket"]]);
  });
});

describe("a draft of which not all is known", () => {
  it("is opened without sheet, ticket and places, each said to be not known by one press or by nothing", async () => {
    const draft = `/drafts/${(await form("/drafts", { tent: "example-80x100-split" })).headers.get("location")!.split("/")[2]}`;
    const went = async (step: string, fields: Typed) => (await form(`${draft}/${step}`, fields)).headers.get("location");
    expect(await went("sheet", { "sheet.document": "half typed", go: "unknown" })).toBe(`${draft}/site`);
    expect(await went("site", { "site.address": "Gate 3", zone: "UTC" })).toBe(`${draft}/ticket`);
    expect(await went("ticket", { go: "unknown" })).toBe(`${draft}/crew`);
    expect(await html(`${draft}/sheet`)).toContain('value="half typed"');
    const job = (await went("crew", { "crew.1.name": "Ines", "crew.1.role": "lead", "crew.2.name": "Maren", "crew.2.role": "deputy" }))!;
    const { sheet, ticket, site } = (await world.liveJobs.load(job.split("/").at(-1)!)).job.frozen.brief;
    expect([sheet, ticket, site]).toMatchObject([null, null, { rallyPoint: null, stormShelter: null, firstAid: null, soilKnown: false }]);
    const next = (await form("/drafts", { tent: "example-80x100-split" })).headers.get("location")!.split("/")[2]!;
    const { fields } = (await world.journal.drafts.draft(next))!.body as { fields: Typed };
    expect(Object.keys(fields).filter((name) => name.startsWith("sheet."))).toEqual([]);
  });
  it("has its sheet again where one goes back and on", async () => {
    const draft = `/drafts/${(await form("/drafts", { tent: "example-80x100-split" })).headers.get("location")!.split("/")[2]}`;
    await form(`${draft}/sheet`, { go: "unknown" });
    const { "sheet.soil": _, ...typed } = SHEET;
    expect((await form(`${draft}/sheet`, typed)).headers.get("location")).toBe(`${draft}/site`);
    expect(((await world.journal.drafts.draft(draft.split("/")[2]!))!.body as { fields: Typed }).fields["unknown.sheet"]).toBe("");
  });
});

describe("what was not known", () => {
  let job: string;
  const as = (person: string) => `device=phone-of-${person}; as-${job}=${person}`;
  beforeEach(async () => {
    job = (await open(bare())).job;
  });

  it("leads from its call to a page of its own, and back to the call once a second person agreed", async () => {
    expect(await html(`/jobs/${job}`, as("p1"))).toContain(`href="/jobs/${job}/facts?of=sheet"`);
    const asked = await html(`/jobs/${job}/facts?of=sheet`, as("p1"));
    expect([asked.includes('name="ticket.number"'), asked.includes('name="site.rallyPoint"')]).toEqual([false, false]);
    const page = filled(asked);
    const sent = await form(`/jobs/${job}/facts`, { ...page, ...SHEET }, as("p1"));
    expect(sent.status).toBe(303);
    const { entries } = await world.liveJobs.load(job);
    const revision = (await world.liveJobs.load(job)).job.snapshot.context.revision;
    const target = entries.at(-1)!.entry.no;
    expect((await said(job, { as: "Ines", key: "agree-00001", seen: revision, type: "agree", target })).went).toBe("refused");
    expect(await said(job, { as: "Maren", key: "agree-00002", seen: revision, type: "agree", target })).toMatchObject({
      went: "done",
      step: "sheet.atHand",
    });
    const { brief: now } = (await world.liveJobs.load(job)).job.frozen;
    expect([now.sheet?.document, now.ticket, now.site.rallyPoint]).toEqual(["RC-1 A", null, null]);
    expect(now.sheet).toMatchObject({ stakeDiameterIn: 1.125, stakeLengthIn: 42 });
    const { revision: seen } = (await world.liveJobs.load(job)).job.snapshot.context;
    const value = { kind: "document", named: "RC-1 A" };
    expect(await said(job, { as: "Ines", key: "sheet-00001", seen, type: "answer", gate: "sheet.atHand", value })).toMatchObject({
      went: "done",
      step: "permit",
    });
  });
  it("is taken as the sheet says it: a gust is copied to no other, and a soil that it does not name is none", async () => {
    const { "sheet.soil": _, ...typed } = SHEET;
    await form(
      `/jobs/${job}/amend`,
      { ...filled(await html(`/jobs/${job}/amend`, as("p1"))), "site.soilKnown": "no", because: "dug" },
      as("p1"),
    );
    const { entries } = await world.liveJobs.load(job);
    const { revision } = (await world.liveJobs.load(job)).job.snapshot.context;
    await said(job, { as: "Maren", key: "agree-00001", seen: revision, type: "agree", target: entries.at(-1)!.entry.no });
    expect((await form(`/jobs/${job}/facts`, { key: "facts-0001", ...typed, "sheet.raiseGustMph": "20" }, as("p1"))).status).toBe(303);
    const { entry } = (await world.liveJobs.load(job)).entries.at(-1)!;
    const to = entry.kind === "command" && entry.command.type === "amend" ? entry.command.to.brief : null;
    expect(to?.sheet).toMatchObject({ raiseGustMph: 20, stopGustMph: null, soil: null });
  });
  it("names the soil, where the ground is said to be that", async () => {
    const { "sheet.soil": _, ...typed } = SHEET;
    const sent = await form(`/jobs/${job}/facts`, { key: "facts-0001", ...typed }, as("p1"));
    expect([sent.status, (await sent.text()).includes('id="wrong-sheet-soil">Empty')]).toEqual([422, true]);
  });
  it("is told beside its field where what was typed is wrong, and nothing typed is lost", async () => {
    const typed = { ...SHEET, "sheet.stakeSize": "long", "site.stormShelter": "the oak", "site.rallyPoint": "gate 3" };
    const sent = await form(`/jobs/${job}/facts`, { key: "facts-0001", ...typed }, as("p1"));
    expect(sent.status).toBe(422);
    const page = (await sent.text()).replaceAll("&quot;", '"');
    for (const text of ['"long" is not a stake size', "the oak is no storm shelter", 'value="gate 3"', 'value="RC-1 A"'])
      expect(page).toContain(text);
    expect((await world.liveJobs.load(job)).entries.at(-1)!.entry.no).toBe(1);
  });
  it("is not dropped without a word where only part of it was typed: the part that is missing is asked for", async () => {
    const typed = { ...filled(await html(`/jobs/${job}/facts`, as("p1"))), "sheet.stakeKind": "pin", "ticket.validTo": "2099-01-01" };
    const sent = await form(`/jobs/${job}/facts`, typed, as("p1"));
    expect(sent.status).toBe(422);
    const page = await sent.text();
    for (const text of ['value="pin"', 'value="2099-01-01"']) expect(page).toContain(text);
    expect(page.match(/Empty\. Fill it in\./g)!.length).toBeGreaterThan(1);
    expect((await world.liveJobs.load(job)).entries.at(-1)!.entry.no).toBe(1);
  });
  it("is not dropped either in the long form of a change", async () => {
    const typed = { ...filled(await html(`/jobs/${job}/amend`, as("p1"))), "sheet.stakeKind": "pin", because: "the sheet came" };
    expect((await form(`/jobs/${job}/amend`, typed, as("p1"))).status).toBe(422);
  });
  it("of which nothing is typed is no change", async () => {
    const page = filled(await html(`/jobs/${job}/facts`, as("p1")));
    const sent = await form(`/jobs/${job}/facts`, page, as("p1"));
    expect([sent.status, (await sent.text()).includes("Nothing is filled in.")]).toEqual([422, true]);
    expect((await world.liveJobs.load(job)).entries.at(-1)!.entry.no).toBe(1);
  });
  it("does not push aside a change that waits for a second person: that one is looked at first, and what was typed stays", async () => {
    expect((await form(`/jobs/${job}/facts`, { key: "facts-0001", ...SHEET }, as("p1"))).status).toBe(303);
    const { no } = (await world.liveJobs.load(job)).entries.at(-1)!.entry;
    const sent = await form(`/jobs/${job}/facts`, { key: "facts-0002", "site.rallyPoint": "gate 3" }, as("p2"));
    expect(sent.status).toBe(409);
    const page = await sent.text();
    for (const text of ["Another change waits", 'value="gate 3"']) expect(page).toContain(text);
    expect((await world.liveJobs.load(job)).job.snapshot.context.proposed?.entry).toBe(no);
  });
  it("changes nothing else: a field that was known is not taken from that page", async () => {
    await form(
      `/jobs/${job}/facts`,
      { key: "facts-0001", ...SHEET, "site.address": "elsewhere", __proto__: "x", "use.walls": "no" },
      as("p1"),
    );
    const { entry } = (await world.liveJobs.load(job)).entries.at(-1)!;
    const to = entry.kind === "command" && entry.command.type === "amend" ? entry.command.to.brief : null;
    expect([to?.site.address, to?.use.walls, to?.sheet?.document]).toEqual(["Lower meadow, gate 3, Tansy Lane", true, "RC-1 A"]);
  });
  it("stays not known in the long form of a change that says nothing of it", async () => {
    const page = filled(await html(`/jobs/${job}/amend`, as("p1")));
    const sent = await form(`/jobs/${job}/amend`, { ...page, "use.occupants": "90", because: "fewer" }, as("p1"));
    expect(sent.status).toBe(303);
    const { entry } = (await world.liveJobs.load(job)).entries.at(-1)!;
    const to = entry.kind === "command" && entry.command.type === "amend" ? entry.command.to.brief : null;
    expect([to?.sheet, to?.ticket, to?.site.firstAid, to?.use.occupants]).toEqual([null, null, null, 90]);
  });
  it("is said to be not known wherever it would be told: to whoever is hurt, in thunder, on the way out", async () => {
    const hurt = await said(job, { as: "Jory", key: "hurt-000001", seen: 1, type: "hurt", words: "her arm" });
    expect(hurt.reply).toBe("HOLD. Call 911: Lower meadow, gate 3, Tansy Lane. First aid: not known, ask the lead.");
    const page = await html(`/jobs/${job}`, as("p2"));
    expect(page).toContain("<b>First aid:</b> not known: ask the lead");
    expect(page).toContain("<b>Rally point:</b> not known: ask the lead");
    const thunder = await said(job, { as: "Jory", key: "thunder-0001", seen: 1, type: "reading", kind: "thunder" });
    expect(thunder.reply).toContain("Everyone to shelter: not known, ask the lead.");
    await said(job, { as: "Jory", key: "safe-000001", seen: 1, type: "makeSafe", because: "thunder" });
    const { job: live } = await world.liveJobs.load(job);
    for (const way of Object.values(live.frozen.script.escapes))
      for (const { params } of way) expect(params).not.toHaveProperty("rallyPoint");
  });
  it("that a rehearsal of it has not either can still be rehearsed up to there", async () => {
    const sent = await form(`/jobs/${job}/rehearse`, { key: "rehearse-0001" });
    const { brief: practiced } = (await world.liveJobs.load(sent.headers.get("location")!.split(/[/?]/)[2]!)).job.frozen;
    expect([practiced.rehearsal, practiced.ticket]).toEqual([true, null]);
  });
});

it("a job of which all is known has nothing to fill in", async () => {
  const { job } = await open(brief());
  expect(await html(`/jobs/${job}/facts`)).toContain("All of it is known.");
});
