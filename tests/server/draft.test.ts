import { beforeEach, describe, expect, it } from "vitest";
import { UTILITIES } from "../../machines/install/utilities.ts";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { formsOf, toOf } from "../support/forms.ts";
import { plainBrowser } from "../support/plain-forms.ts";
import { eighty } from "../tent/tents.ts";

type Typed = Readonly<Record<string, string>>;
let world: ReturnType<typeof testApp>;
beforeEach(() => {
  world = testApp();
});

/** What is typed in each step of a job that can be opened. */
const TOLD: Readonly<Record<string, Typed>> = {
  tent: { "tent.widthFt": "40", "tent.lengthFt": "60", ends: "whole" },
  sheet: { "sheet.document": "RC-1 A", "sheet.stakeKind": "steel pin", "sheet.stakeSize": "1 x 42" },
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

const { send, html } = formsOf(() => world);
/** A draft with these steps told, by its address. */
async function told(...steps: readonly string[]): Promise<string> {
  const draft = `/drafts/${toOf(await send("/drafts", {}))!.split("/")[2]}`;
  for (const step of steps) await send(`${draft}/${step}`, TOLD[step]!);
  return draft;
}
/** What a field of a page shows, as typed or as chosen. */
const kept = (page: string, name: string) => new RegExp(`name="was\\.${name.replaceAll(".", "\\.")}" value="([^>]*)"`).exec(page)?.[1];
const ALL_BUT_LAST = ["tent", "sheet", "site", "ticket"];
const fieldsOf = async (draft: string) =>
  ((await world.journal.drafts.draft(draft.split("/")[2]!))!.body as { fields: Record<string, string> }).fields;
const jobOf = async (answer: Response) => (await world.liveJobs.load(toOf(answer)!.split("/").at(-1)!)).job.frozen.brief;

describe("a job told in five steps", () => {
  it("goes from each to the next, and the last opens it and leads to its guide", async () => {
    const draft = await told();
    const went: (string | null)[] = [];
    for (const step of [...ALL_BUT_LAST, "crew"]) went.push(toOf(await send(`${draft}/${step}`, TOLD[step]!)));
    expect(went.slice(0, 4)).toEqual([`${draft}/tent`, `${draft}/site`, `${draft}/ticket`, `${draft}/crew`]);
    expect(went[4]).toMatch(/^\/jobs\/id-/);
    expect(await html(went[4]!)).toContain("40 × 60 ft, Gate 3, Tansy Lane");
  });
  it("takes the stricter value of what it does not ask", async () => {
    const draft = await told(...ALL_BUT_LAST);
    const { use, site, sheet } = await jobOf(await send(`${draft}/crew`, TOLD.crew!));
    expect(use).toEqual({ occupants: null, permit: "unknown", fabricCertificate: "unknown", walls: true, hungLoads: true });
    expect(site).toMatchObject({ soilKnown: false, overheadKv: [] });
    expect(sheet).toMatchObject({ embedmentIn: null, raiseGustMph: null, stopGustMph: null, soil: null });
  });
  it.each([
    [{ "sheet.raiseGustMph": "20" }, [20, 25]],
    [{ "sheet.raiseGustMph": "15" }, [15, 25]],
    [{ "sheet.raiseGustMph": "15", "sheet.stopGustMph": "18" }, [15, 18]],
    [{ "sheet.stopGustMph": "22" }, [20, 22]],
    [{}, [20, 25]],
  ] as const)("takes each gust of %j for what it says, and the guide's own where the sheet gives none", async (typed, gusts) => {
    const draft = await told(...ALL_BUT_LAST);
    await send(`${draft}/sheet`, typed);
    const job = toOf(await send(`${draft}/crew`, TOLD.crew!))!
      .split("/")
      .at(-1)!;
    const { raiseGustMph, stopGustMph } = (await world.liveJobs.load(job)).job.frozen.limits;
    expect([raiseGustMph.is, stopGustMph.is]).toEqual(gusts);
  });
  it("takes a ground that was said to be the sheet's soil for known", async () => {
    const draft = await told(...ALL_BUT_LAST);
    await send(`${draft}/site`, { "sheet.soil": "firm loam", "site.soilKnown": "yes" });
    const { site, sheet } = await jobOf(await send(`${draft}/crew`, TOLD.crew!));
    expect([sheet?.soil, site.soilKnown]).toEqual(["firm loam", true]);
  });
  it.each([
    ["1 x 42", 1, 42],
    ["1 1/8 x 42", 1.125, 42],
    ['1 1/4" × 48"', 1.25, 48],
    ["42 by 1", 1, 42],
    ["7/8X36 in", 0.875, 36],
  ])("takes a stake of %s in one field", async (size, across, long) => {
    const draft = await told(...ALL_BUT_LAST);
    await send(`${draft}/sheet`, { "sheet.stakeSize": size });
    const { sheet } = await jobOf(await send(`${draft}/crew`, TOLD.crew!));
    expect([sheet?.stakeDiameterIn, sheet?.stakeLengthIn]).toEqual([across, long]);
  });
  it("asks at most six fields in a step", async () => {
    const draft = await told();
    for (const step of ["sheet", "site"]) {
      const fields = Object.keys(filled(await html(`${draft}/${step}`))).filter((name) => /^(?:sheet|site)\./.test(name));
      expect(fields).toHaveLength(6);
    }
  });
  it("says of the crew who has to be on it", async () => {
    expect(await html(`${await told()}/crew`)).toContain("Everybody on site today. All get counted.");
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
    expect(toOf(await send(`${draft}/sheet`, { "sheet.document": "half", "sheet.stakeSize": "long", go: "back" }))).toBe(`${draft}/tent`);
    expect(await html(`${draft}/sheet`)).toMatch(/value="half".*value="long"/s);
    expect(toOf(await send(`${draft}/tent`, { go: "back" }))).toBe("/");
  });
  it.each([
    ["tent", { "tent.widthFt": "15", "tent.lengthFt": "60" }, "15 ft wide is outside 20 to 120 ft."],
    ["tent", { "tent.widthFt": "50", "tent.lengthFt": "100" }, "The sheet says 0, 1 or 2. Look it up."],
    ["tent", { title: "x".repeat(99) }, "Too long. Keep it under 80 characters."],
    [
      "sheet",
      { "sheet.stakeSize": "long" },
      '"long" is not a stake size. Give how thick and how long in inches, like 1 x 42 or 1 1/8 x 42.',
    ],
    ["sheet", { "sheet.stakeSize": "42" }, '"42" is not a stake size. Give how thick and how long in inches, like 1 x 42 or 1 1/8 x 42.'],
    ["sheet", { "sheet.stakeSize": "" }, "Empty. Fill it in."],
    ["sheet", { "sheet.stakeSize": "1 x 142" }, "142 is out of range. From 12 to 96."],
    [
      "sheet",
      { "sheet.raiseGustMph": "22", "sheet.stopGustMph": "18" },
      "Raising stops at 22 mph, which is over the 18 mph where everything stops. Enter 18 or less.",
    ],
    [
      "sheet",
      { "sheet.stopGustMph": "18" },
      "Left empty, raising stops at 20 mph: over the 18 mph where everything stops. Enter 18 or less.",
    ],
    ["sheet", { "sheet.stopGustMph": "40" }, "40 mph is over the guide's own cap of 30, whatever the sheet allows. Enter 30."],
    ["sheet", { "sheet.embedmentIn": "60" }, "60 in of embedment is more than the 42 in stake."],
    ["sheet", { "sheet.raiseGustMph": "30" }, "30 mph is over the guide's own cap of 25, whatever the sheet allows. Enter 25."],
    ["site", { "site.stormShelter": "the big oak" }, "the big oak is no storm shelter."],
    ["ticket", { zone: "Mars" }, '"Mars" is not a time zone. Write it like America/Chicago.'],
    ["ticket", { "ticket.toleranceIn": "12" }, "12 in is under the guide's own least of 18, whatever the law allows. Enter 18."],
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
    expect((await answer.text()).replaceAll("&quot;", '"').replaceAll("&#39;", "'")).toContain(sentence);
    const shown = await html(`${draft}/${step}`);
    for (const [name, text] of Object.entries(typed as Typed))
      expect((await fieldsOf(draft))[name] ?? kept(shown, name)).toBe(text.slice(0, 400));
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

describe("a tent that is told by its size", () => {
  const SIXTY = { "tent.widthFt": "60", "tent.lengthFt": "120" };
  const begun = async (fields: Typed) => toOf(await send("/drafts", fields))!;
  const formOf = (page: string) => filled(page.slice(0, page.indexOf('class="lines"')));

  it("is drawn before one goes on, with what was assumed, and asks for its ends by two presses", async () => {
    const at = await begun(SIXTY);
    expect(at).toMatch(/\/tent$/);
    const page = await html(at);
    expect(page).toContain('class="drawn-tent"');
    expect(page).toContain("Drawn: 60 × 120 ft, split ends.");
    expect(page).toContain("6 pieces, one ring of quarter poles");
    expect(page).toMatch(/name="ends" value="split"><b>Split ends<\/b><small>6 pieces<\/small>/);
    expect(page).toMatch(/name="ends" value="whole"><b>Whole ends<\/b><small>4 pieces<\/small>/);
    expect(page).not.toContain('name="go" value="on"');
  });
  it.each([
    ["whole", 4],
    ["split", 6],
  ])("goes on with %s ends once they are said, and has %i pieces", async (ends, pieces) => {
    const draft = (await begun(SIXTY)).replace(/\/tent$/, "");
    expect(toOf(await send(`${draft}/tent`, { ...formOf(await html(`${draft}/tent`)), ends }))).toBe(`${draft}/sheet`);
    expect(await html(`${draft}/tent`)).not.toContain('name="ends"');
    for (const step of ["sheet", "site", "ticket"]) await send(`${draft}/${step}`, TOLD[step]!);
    const job = toOf(await send(`${draft}/crew`, TOLD.crew!))!
      .split("/")
      .at(-1)!;
    expect((await world.liveJobs.load(job)).job.frozen.plan.pieces).toHaveLength(pieces);
  });
  it("goes on by one press where it was drawn as it was typed, and its ends pressed beside that", async () => {
    const preview = await (await send("/drafts/preview", SIXTY)).text();
    const drawn = /name="drawn" value="([^"]+)"/.exec(preview)![1]!;
    expect(preview).toContain('name="ends" value="whole"');
    expect(await begun({ ...SIXTY, drawn, ends: "whole" })).toMatch(/\/sheet$/);
    expect(await begun({ ...SIXTY, drawn })).toMatch(/\/tent$/);
    expect(await begun({ ...SIXTY, "tent.lengthFt": "100", drawn, ends: "whole" })).toMatch(/\/tent$/);
  });
  it("in one piece is drawn first too, and has no ends to ask for", async () => {
    const at = await begun({ "tent.widthFt": "30", "tent.lengthFt": "30" });
    const page = await html(at);
    expect([at.endsWith("/tent"), page.includes("one piece"), page.includes('name="ends"')]).toEqual([true, true, false]);
    expect(toOf(await send(at, { ...formOf(page), go: "on" }))).toBe(at.replace(/tent$/, "sheet"));
  });
  it("opens no job before its ends are said, however one comes to the last step", async () => {
    const draft = (await begun(SIXTY)).replace(/\/tent$/, "");
    for (const step of ["sheet", "site", "ticket"]) await send(`${draft}/${step}`, TOLD[step]!);
    expect(toOf(await send(`${draft}/crew`, TOLD.crew!))).toBe(`${draft}/tent?wrong=yes`);
    expect(await html(`${draft}/tent?wrong=yes`)).toContain("Split or whole ends?");
  });
  it("of another size by now is asked for its ends again", async () => {
    const draft = (await begun(SIXTY)).replace(/\/tent$/, "");
    await send(`${draft}/tent`, { ends: "whole" });
    expect(toOf(await send(`${draft}/tent`, { "was.tent.lengthFt": "120", "tent.lengthFt": "140" }))).toBe(`${draft}/tent`);
    expect(await html(`${draft}/tent`)).toContain("Split or whole ends?");
  });
  it("stands under the tents of the list while there is none, and over them once there is", async () => {
    const tent = { name: "Old blue", spec: eighty };
    await world.post("/tents", tent);
    const places = (page: string) => ["Old blue", 'name="tent.widthFt"', 'value="back"'].map((text) => page.indexOf(text));
    const [list, size, back] = places(await html("/drafts/new"));
    expect(list).toBeGreaterThan(0);
    expect([list! < size!, size! < back!]).toEqual([true, true]);
    const [after, before] = places(await html(await begun(SIXTY)));
    expect(before).toBeLessThan(after!);
  });
});

describe("two phones on one draft", () => {
  it("take nothing from each other but the field that both typed in, and there the last counts", async () => {
    const draft = await told("tent");
    const seen = filled(await html(`${draft}/sheet`));
    await send(`${draft}/sheet`, { ...seen, "sheet.document": "RC-1 A", "sheet.stakeKind": "pin" }, "phone-1");
    await send(`${draft}/sheet`, { ...seen, "sheet.stakeKind": "steel pin", "sheet.stakeSize": "1 x 42" }, "phone-2");
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
  it("takes a gust that is typed over a kept one, and leaves the other as it was kept", async () => {
    const { id } = await add();
    const first = await pick(id);
    await send(`${first}/sheet`, { ...TOLD.sheet, "sheet.raiseGustMph": "15", "sheet.stopGustMph": "22" });
    for (const step of ["site", "ticket", "crew"]) await send(`${first}/${step}`, TOLD[step]!);
    const next = await pick(id);
    await send(`${next}/sheet`, { "was.sheet.raiseGustMph": "15", "sheet.raiseGustMph": "18" });
    for (const step of ["site", "ticket"]) await send(`${next}/${step}`, TOLD[step]!);
    expect((await jobOf(await send(`${next}/crew`, {}))).sheet).toMatchObject({ raiseGustMph: 18, stopGustMph: 22 });
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
  await browser.send(form(), { "tent.widthFt": "40", "tent.lengthFt": "60", go: "look" });
  expect(browser.text("drawn-tent")).toContain("Tent of 40 by 60 ft");
  await browser.send(form(), { ends: "whole" });
  for (const step of ["sheet", "site", "ticket"]) await browser.send(form(), TOLD[step]!);
  await browser.send(form(), { ...TOLD.crew });
  expect(browser.text("call")).toContain("Need RC-1 A.");
});
