import { beforeEach, describe, expect, it } from "vitest";
import { UTILITIES } from "../../machines/install/utilities.ts";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { plainBrowser } from "../support/plain-forms.ts";
import { eighty } from "../tent/tents.ts";

type Typed = Readonly<Record<string, string>>;
let world: ReturnType<typeof testApp>;
beforeEach(() => {
  world = testApp();
});

/** What is typed in each step of a job that can be opened. */
const TOLD: Readonly<Record<string, Typed>> = {
  tent: { "tent.widthFt": "40", "tent.lengthFt": "60" },
  sheet: { "sheet.document": "RC-1 A", "sheet.stakeKind": "steel pin", "sheet.stakeDiameterIn": "1", "sheet.stakeLengthIn": "42" },
  site: {
    "site.address": "Gate 3, Tansy Lane",
    "site.rallyPoint": "gate 3",
    "site.stormShelter": "the brick barn",
    "site.firstAid": "truck cab",
  },
  ticket: {
    zone: "America/Chicago",
    "ticket.number": "LT-77",
    "ticket.validFrom": "2026-06-01",
    "ticket.validTo": "2026-06-20",
    "ticket.utilities.gas": "marked",
    "ticket.utilities.water": "clear",
  },
  crew: { "crew.1.name": "Ines", "crew.1.role": "lead", "crew.2.name": "Tobias", "crew.2.role": "deputy" },
};

/** A form sent by somebody's phone. */
const send = (path: string, fields: Typed, device = "phone-of-ines") =>
  world.app.request(path, {
    method: "POST",
    body: new URLSearchParams(fields),
    headers: { origin: "http://localhost", cookie: `device=${device}` },
  });
const html = async (path: string) => (await (await world.app.request(path)).text()).replaceAll("&#39;", "'").replaceAll("&quot;", '"');
const toOf = (answer: Response) => answer.headers.get("location");
/** A draft with these steps told, by its address. */
async function told(...steps: readonly string[]): Promise<string> {
  const draft = `/drafts/${toOf(await send("/drafts", {}))!.split("/")[2]}`;
  for (const step of steps) await send(`${draft}/${step}`, TOLD[step]!);
  return draft;
}
const ALL_BUT_LAST = ["tent", "sheet", "site", "ticket"];
const fieldsOf = async (draft: string) =>
  ((await world.journal.drafts.draft(draft.split("/")[2]!))!.body as { fields: Record<string, string> }).fields;
const jobOf = async (answer: Response) => (await world.liveJobs.load(toOf(answer)!.split("/").at(-1)!)).job.frozen.brief;

describe("a job told in five steps", () => {
  it("goes from each to the next, and the last opens it and leads to its guide", async () => {
    const draft = await told();
    const went: (string | null)[] = [];
    for (const step of [...ALL_BUT_LAST, "crew"]) went.push(toOf(await send(`${draft}/${step}`, TOLD[step]!)));
    expect(went.slice(0, 4)).toEqual([`${draft}/sheet`, `${draft}/site`, `${draft}/ticket`, `${draft}/crew`]);
    expect(went[4]).toMatch(/^\/jobs\/id-/);
    expect(await html(went[4]!)).toContain("40 × 60 ft, Gate 3, Tansy Lane");
  });
  it("takes the stricter value of what it does not ask", async () => {
    const draft = await told(...ALL_BUT_LAST);
    const { use, site, sheet } = await jobOf(await send(`${draft}/crew`, TOLD.crew!));
    expect(use).toEqual({ occupants: null, permit: "unknown", fabricCertificate: "unknown", walls: true, hungLoads: true });
    expect(site).toMatchObject({ soilKnown: false, overheadKv: [] });
    expect(sheet).toMatchObject({ embedmentIn: null, raiseGustMph: null, stopGustMph: null, soil: "not named" });
  });
  it("takes the sheet's lowest gust for all lifting and lowering, and a ground that was said to be its soil for known", async () => {
    const draft = await told(...ALL_BUT_LAST);
    await send(`${draft}/sheet`, { "sheet.raiseGustMph": "15" });
    await send(`${draft}/site`, { "sheet.soil": "firm loam", "site.soilKnown": "yes" });
    const { site, sheet } = await jobOf(await send(`${draft}/crew`, TOLD.crew!));
    expect(sheet).toMatchObject({ raiseGustMph: 15, stopGustMph: 15, soil: "firm loam" });
    expect(site.soilKnown).toBe(true);
  });
  it("has a utility that nobody said anything of for one that has not answered: never for one that is not there", async () => {
    const draft = await told("tent", "sheet", "site");
    const page = filled((await html(`${draft}/ticket`)).split("</form>")[0]!);
    await send(`${draft}/ticket`, { ...page, ...TOLD.ticket!, "ticket.utilities.sewer": "notOnTicket" });
    const { ticket } = await jobOf(await send(`${draft}/crew`, TOLD.crew!));
    expect(ticket!.utilities.map(({ kind, marked }) => [kind, marked])).toEqual([
      ["electric", "unanswered"],
      ["gas", true],
      ["communication", "unanswered"],
      ["water", false],
      ["reclaimedWater", "unanswered"],
    ]);
  });
  it("keeps all that was typed when one goes back, wrong or half", async () => {
    const draft = await told("tent");
    expect(toOf(await send(`${draft}/sheet`, { "sheet.document": "half", "sheet.stakeLengthIn": "long", go: "back" }))).toBe(
      `${draft}/tent`,
    );
    expect(await html(`${draft}/sheet`)).toMatch(/value="half".*value="long"/s);
    expect(toOf(await send(`${draft}/tent`, { go: "back" }))).toBe("/");
  });
  it.each([
    ["tent", { "tent.widthFt": "15", "tent.lengthFt": "60" }, "15 ft wide is outside 20 to 120 ft."],
    ["tent", { "tent.widthFt": "50", "tent.lengthFt": "100" }, "The sheet says 0, 1 or 2. Look it up."],
    ["tent", { title: "x".repeat(99) }, "Too long. Keep it under 80 characters."],
    ["sheet", { "sheet.stakeLengthIn": "long" }, '"long" is not a number. Give one, like 8 or 5 1/2.'],
    ["sheet", { "sheet.embedmentIn": "60" }, "60 in of embedment is more than the 42 in stake."],
    ["sheet", { "sheet.raiseGustMph": "40" }, "40 is out of range. From 1 to 25."],
    ["site", { "site.stormShelter": "the big oak" }, "the big oak is no storm shelter."],
    ["ticket", { zone: "Mars" }, "Not a time zone."],
    ["site", { "site.address": "x".repeat(5000) }, "Too long. Keep it under 200 characters."],
    ["ticket", { "ticket.validTo": "someday" }, '"someday" is not a date.'],
    ["ticket", { "ticket.validTo": "2026-05-01" }, "The ticket ends before it starts."],
    ["ticket", Object.fromEntries(UTILITIES.map((kind) => [`ticket.utilities.${kind}`, "notOnTicket"])), "No utility on the ticket."],
    ["crew", { "crew.2.name": "p7" }, '"p7" is how the record numbers people.'],
    ["crew", { "crew.2.role": "crew" }, "Only one person may answer for wind, anchors and who is under."],
    ["crew", { "crew.1.role": "deputy" }, "Nobody is the lead. Name one."],
  ])("says beside the field of the %s what is wrong with %j, and keeps it", async (step, typed, sentence) => {
    const draft = await told(...ALL_BUT_LAST);
    const answer = await send(`${draft}/${step}`, { ...(step === "tent" ? {} : TOLD[step]), ...(typed as Typed) });
    expect(answer.status).toBe(422);
    expect((await answer.text()).replaceAll("&quot;", '"')).toContain(sentence);
    for (const [name, text] of Object.entries(typed as Typed)) expect((await fieldsOf(draft))[name]).toBe(text.slice(0, 400));
    expect(await world.journal.jobs()).toEqual([]);
  });
  it("opens nothing while an earlier step is wrong, and leads there", async () => {
    const draft = await told("tent", "sheet", "ticket");
    expect(toOf(await send(`${draft}/crew`, TOLD.crew!))).toBe(`${draft}/site?wrong=yes`);
    expect(await html(`${draft}/site?wrong=yes`)).toContain("Empty. Fill it in.");
  });
  it("has no other step, and is not found under another name", async () => {
    const draft = await told();
    for (const path of [`${draft}/roof`, `${draft}/__proto__`, "/drafts/none/tent", "/drafts/__proto__/tent"])
      expect([path, (await world.app.request(path)).status]).toEqual([path, 404]);
  });
  it("takes no field that a step does not ask, whatever it is called", async () => {
    const draft = await told("tent");
    const before = await fieldsOf(draft);
    for (const name of ["__proto__", "constructor", "tent.__proto__", "crew.1.__proto__", "site.address", "use.walls"])
      await send(`${draft}/sheet`, { [name]: "x", [`was.${name}`]: "" });
    expect(await fieldsOf(draft)).toEqual(before);
  });
  it("is offered on the list of jobs until it is one", async () => {
    const draft = await told(...ALL_BUT_LAST);
    expect(await html("/")).toContain(`href="${draft}"`);
    await send(`${draft}/crew`, TOLD.crew!);
    expect(await html("/")).not.toContain(draft);
  });
});

describe("two phones on one draft", () => {
  it("take nothing from each other but the field that both typed in, and there the last counts", async () => {
    const draft = await told("tent");
    const seen = filled(await html(`${draft}/sheet`));
    await send(`${draft}/sheet`, { ...seen, "sheet.document": "RC-1 A", "sheet.stakeKind": "pin" }, "phone-1");
    await send(`${draft}/sheet`, { ...seen, "sheet.stakeKind": "steel pin", "sheet.stakeLengthIn": "42" }, "phone-2");
    expect(await fieldsOf(draft)).toMatchObject({
      "sheet.document": "RC-1 A",
      "sheet.stakeKind": "steel pin",
      "sheet.stakeLengthIn": "42",
    });
  });
  it("lose nobody when both name somebody in the same empty row", async () => {
    const draft = await told();
    const seen = { "was.crew.1.name": "", "was.crew.1.role": "lead", "crew.1.role": "lead" };
    await Promise.all(["Ines", "Maren"].map((name) => send(`${draft}/crew`, { ...seen, "crew.1.name": name, go: "more" })));
    const names = Object.entries(await fieldsOf(draft)).flatMap(([name, value]) => (/^crew\.\d+\.name$/.test(name) ? [value] : []));
    expect(names.sort()).toEqual(["Ines", "Maren"]);
  });
  it("open one job: the phone that opened it is led on, the other is told who leads it and since when", async () => {
    const draft = await told(...ALL_BUT_LAST);
    const [first, second] = await Promise.all([
      send(`${draft}/crew`, TOLD.crew!, "phone-of-ines"),
      send(`${draft}/crew`, TOLD.crew!, "phone-of-maren"),
    ]);
    expect(await world.journal.jobs()).toHaveLength(1);
    expect(second.status).toBe(409);
    const page = await second.text();
    expect(page).toContain("This job was opened already, Tue 2 Jun 07:00. Ines leads it.");
    expect(page).toContain(`href="${toOf(first)}"`);
    expect(toOf(await send(`${draft}/crew`, TOLD.crew!, "phone-of-ines"))).toBe(toOf(first));
    expect(await html(`${draft}/tent`)).toContain("opened already");
    expect(await world.journal.jobs()).toHaveLength(1);
  });
});

describe("a tent of the list on a draft", () => {
  const tent = { name: "Old blue", spec: eighty };
  const add = async () => (await (await world.post("/tents", tent)).json()) as { id: string; version: number };
  const pick = async (id: string) => `/drafts/${toOf(await send("/drafts", { tent: id }))!.split("/")[2]}`;

  it("is drawn at once, and taken by one press", async () => {
    const { id } = await add();
    const page = await html(`/drafts/new?tent=${id}`);
    expect(page).toContain('class="drawn-tent"');
    const form = filled(page.slice(0, page.indexOf('class="lines"')));
    expect(toOf(await send("/drafts", { ...form, go: "on" }))).toMatch(/\/sheet$/);
  });
  it("that has changed since is drawn again with the figures that differ, opens no job, and is taken as it is now by one press", async () => {
    const { id, version } = await add();
    const draft = await pick(id);
    for (const step of ["sheet", "site", "ticket"]) await send(`${draft}/${step}`, TOLD[step]!);
    await world.post(`/tents/${id}`, { ...tent, spec: { ...eighty, spacingFt: 5 }, version });
    expect(toOf(await send(`${draft}/crew`, TOLD.crew!))).toBe(`${draft}/tent?wrong=yes`);
    const page = await html(`${draft}/tent?wrong=yes`);
    expect(page).toContain('Somebody changed "Old blue" in the list since you took it.');
    expect(page).toMatch(/Stations: 36, now \d+\./);
    const form = filled(page.slice(0, page.indexOf('class="lines"')));
    expect(toOf(await send(`${draft}/tent`, { ...form, go: "on" }))).toBe(`${draft}/sheet`);
    expect(toOf(await send(`${draft}/crew`, {}))).toBe(`${draft}/sheet?wrong=yes`);
    await send(`${draft}/sheet`, TOLD.sheet!);
    expect((await jobOf(await send(`${draft}/crew`, {}))).tent.spacingFt).toBe(5);
  });
  it("that was taken out since can be kept as it was drawn", async () => {
    const { id, version } = await add();
    const draft = await pick(id);
    await send(`/tents/${id}/remove`, { key: "remove-0001", version: String(version) });
    expect((await send(`${draft}/tent`, {})).status).toBe(409);
    expect(await html(`${draft}/tent`)).toContain('Somebody took "Old blue" out of the list');
    expect(toOf(await send(`${draft}/tent`, { go: "keep" }))).toBe(`${draft}/sheet`);
    expect((await fieldsOf(draft))["tent.widthFt"]).toBe("80");
  });
  it("with another size typed is no longer that one, but the usual tent of the size", async () => {
    const draft = await pick((await add()).id);
    await send(`${draft}/tent`, { "was.tent.widthFt": "80", "tent.widthFt": "60", "was.tent.lengthFt": "100", "tent.lengthFt": "100" });
    const { body } = (await world.journal.drafts.draft(draft.split("/")[2]!))!;
    expect(body).toMatchObject({ tent: null, fields: { "tent.widthFt": "60", "tent.midsFt": "20, 20" } });
  });
  it("keeps its sheet for the next job, and the firm its people with their roles", async () => {
    const { id } = await add();
    const first = await pick(id);
    for (const step of ["sheet", "site", "ticket", "crew"]) await send(`${first}/${step}`, TOLD[step]!);
    const next = await pick(id);
    expect(await fieldsOf(next)).toMatchObject({
      "sheet.document": "RC-1 A",
      "sheet.stakeLengthIn": "42",
      "crew.1.name": "Ines",
      "crew.1.role": "lead",
      "crew.1.on": "yes",
      "crew.2.name": "Tobias",
    });
    expect((await fieldsOf(next))["ticket.number"]).toBeUndefined();
  });
  it("takes a gust that is typed over a kept one for both, up or down", async () => {
    const { id } = await add();
    const first = await pick(id);
    await send(`${first}/sheet`, { ...TOLD.sheet, "sheet.raiseGustMph": "15" });
    for (const step of ["site", "ticket", "crew"]) await send(`${first}/${step}`, TOLD[step]!);
    const next = await pick(id);
    await send(`${next}/sheet`, { "was.sheet.raiseGustMph": "15", "sheet.raiseGustMph": "18" });
    for (const step of ["site", "ticket"]) await send(`${next}/${step}`, TOLD[step]!);
    expect((await jobOf(await send(`${next}/crew`, {}))).sheet).toMatchObject({ raiseGustMph: 18, stopGustMph: 18 });
  });
  it("leaves somebody out who is not ticked", async () => {
    const draft = await told(...ALL_BUT_LAST);
    await send(`${draft}/crew`, { ...TOLD.crew, "crew.3.name": "Odd", "crew.3.role": "crew", go: "more" });
    const job = await jobOf(await send(`${draft}/crew`, { "was.crew.3.on": "yes" }));
    expect(job.crew.map(({ role }) => role)).toEqual(["lead", "deputy"]);
    expect((await world.journal.firm.people()).map(({ name }) => name)).toEqual(["Ines", "Tobias"]);
  });
});

it("who was on a job that a script opened is known to the next draft; who was on a rehearsal is not", async () => {
  const crew = (name: string) => [
    { name, role: "lead" as const },
    { name: "Tobias", role: "deputy" as const },
  ];
  await world.post("/jobs", { key: "open-00001", brief: { ...brief(), crew: crew("Ines") } });
  await world.post("/jobs", { key: "open-00002", brief: { ...brief(), crew: crew("Trainee"), rehearsal: true } });
  expect(await fieldsOf(await told())).toMatchObject({ "crew.1.name": "Ines", "crew.1.on": "yes", "crew.2.name": "Tobias" });
});

describe("a copy of an earlier job", () => {
  it("takes its tent, sheet, site and crew, and asks for the ticket and what it is used for again", async () => {
    const earlier = brief();
    const { job } = (await (await world.post("/jobs", { key: "open-00001", brief: earlier })).json()) as { job: string };
    expect(await html("/drafts/new")).toContain(`name="copy" value="${job}"`);
    const draft = toOf(await send("/drafts", { copy: job }))!.replace(/\/tent$/, "");
    const fields = await fieldsOf(draft);
    expect(Object.keys(fields).filter((name) => name.startsWith("ticket."))).toEqual(["ticket.toleranceIn"]);
    await send(`${draft}/ticket`, TOLD.ticket!);
    const { tent, sheet, site, use, crew, title } = await jobOf(await send(`${draft}/crew`, {}));
    const before = (await world.liveJobs.load(job)).job.frozen.brief;
    expect({ tent, sheet, site, crew }).toEqual({ tent: before.tent, sheet: before.sheet, site: before.site, crew: before.crew });
    expect(use).toEqual({ occupants: null, permit: "unknown", fabricCertificate: "unknown", walls: true, hungLoads: true });
    expect(title).toBe("80 × 100 ft, Lower meadow, gate 3, Tansy Lane");
  });
  it("does not take soil for known that was not", async () => {
    const { job } = (await (
      await world.post("/jobs", { key: "open-00001", brief: { ...brief(), site: { ...brief().site, soilKnown: false } } })
    ).json()) as { job: string };
    const draft = toOf(await send("/drafts", { copy: job }))!.replace(/\/tent$/, "");
    await send(`${draft}/ticket`, TOLD.ticket!);
    expect((await jobOf(await send(`${draft}/crew`, {}))).site.soilKnown).toBe(false);
  });
});

it("a draft is there after a restart", async () => {
  const draft = await told("tent", "sheet");
  const after = world.restart(60);
  expect(await (await after.app.request(`${draft}/sheet`)).text()).toContain('value="RC-1 A"');
});

it("a draft that cannot be read is told so, and hides no job", async () => {
  await world.journal.drafts.save("d-1", 0, { body: { fields: 7 }, at: 1, opened: false });
  expect(await html("/drafts/d-1/tent")).toContain("This draft cannot be read any more. Begin again.");
  expect((await world.app.request("/")).status).toBe(200);
});

it("with scripts off a job is told and opened by plain forms", async () => {
  const browser = plainBrowser(world.app);
  const form = () => browser.forms("draft")[0]!;
  await browser.open("/drafts/new");
  await browser.send(form(), { ...TOLD.tent, go: "look" });
  expect(browser.text("drawn-tent")).toContain("Tent of 40 by 60 ft");
  await browser.send(form(), { go: "on" });
  for (const step of ["sheet", "site", "ticket"]) await browser.send(form(), TOLD[step]!);
  await browser.send(form(), { ...TOLD.crew });
  expect(browser.text("call")).toContain("Need RC-1 A.");
});
