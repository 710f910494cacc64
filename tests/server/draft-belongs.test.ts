import { beforeEach, describe, expect, it } from "vitest";
import type { WholeInput } from "../../server/demo.ts";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { eighty } from "../tent/tents.ts";

type Typed = Readonly<Record<string, string>>;
let world: ReturnType<typeof testApp>;
beforeEach(() => {
  world = testApp();
});

const SHEET: Typed = {
  "sheet.document": "RC-1 A",
  "sheet.stakeKind": "steel pin",
  "sheet.stakeSize": "1 x 42",
};
const SITE: Typed = {
  "site.address": "Gate 3",
  "site.rallyPoint": "gate 3",
  "site.stormShelter": "the school hall",
  "site.firstAid": "the office",
};
const TICKET: Typed = { "ticket.number": "LT-77", "ticket.validTo": "2026-06-20", "ticket.utilities.gas": "marked" };
const CREW: Typed = { "crew.1.name": "Ines", "crew.1.role": "lead", "crew.2.name": "Tobias", "crew.2.role": "deputy" };

const send = (path: string, fields: Typed) =>
  world.app.request(path, {
    method: "POST",
    body: new URLSearchParams(fields),
    headers: { origin: "http://localhost", cookie: "device=phone-of-ines" },
  });
const html = async (path: string) => (await (await world.app.request(path)).text()).replaceAll("&#39;", "'").replaceAll("&quot;", '"');
const toOf = (answer: Response) => answer.headers.get("location");
const draftOf = async (fields: Typed) => `/drafts/${toOf(await send("/drafts", fields))!.split(/[/?]/)[2]}`;
const bodyOf = async (draft: string) =>
  (await world.journal.drafts.draft(draft.split("/")[2]!))!.body as { fields: Record<string, string>; tent: object | null };
const fieldsOf = async (draft: string) => (await bodyOf(draft)).fields;
const jobOf = async (answer: Response) => (await world.liveJobs.load(toOf(answer)!.split("/").at(-1)!)).job.frozen.brief;
/** Sends a step as it stands on its page, with what is typed in it. */
const type = async (draft: string, step: string, typed: Typed = {}) =>
  send(`${draft}/${step}`, { ...filled(await html(`${draft}/${step}`)), ...typed });

/** A job that says every fact that no step of a draft shows. */
function knowing(): WholeInput {
  const told = brief();
  return {
    ...told,
    sheet: {
      ...told.sheet,
      soil: "dense clay",
      pullTestLbf: 500,
      squareInPer50Ft: 12,
      interiorTies: "afterAll",
      insideGustMph: 38,
      stopGustMph: 30,
      raiseGustMph: 25,
    },
    site: { ...told.site, soilKnown: true, overheadKv: [12], baselineBearingDeg: 90, street: { edge: "AB", name: "Tansy Lane" } },
    use: { occupants: 10, permit: "notRequired", fabricCertificate: "notRequired", walls: false, hungLoads: false },
  } as WholeInput;
}
const opened = async (of: object) => ((await (await world.post("/jobs", { key: "open-00001", brief: of })).json()) as { job: string }).job;
const FRESH_USE = { occupants: null, permit: "unknown", fabricCertificate: "unknown", walls: true, hungLoads: true };

describe("a copy of a job that knew what no step shows", () => {
  let draft: string;
  beforeEach(async () => {
    draft = await draftOf({ copy: await opened(knowing()) });
  });
  const open = async () => {
    await type(draft, "ticket", TICKET);
    return jobOf(await send(`${draft}/crew`, {}));
  };

  it("keeps it of the same sheet and the same site, and asks again what it is used for", async () => {
    for (const step of ["tent", "sheet", "site"]) await type(draft, step);
    const { sheet, site, use } = await open();
    expect(sheet).toMatchObject({ soil: "dense clay", pullTestLbf: 500, squareInPer50Ft: 12, insideGustMph: 38, stopGustMph: 30 });
    expect(site).toMatchObject({ soilKnown: true, overheadKv: [12], baselineBearingDeg: 90 });
    expect(use).toEqual(FRESH_USE);
  });
  it("keeps none of it under another sheet at another address: all of that is as in a job told from the beginning", async () => {
    await type(draft, "sheet", { "sheet.document": "OTHER 9" });
    await type(draft, "site", { ...SITE, "site.address": "Somewhere else", "site.rallyPoint": "the flagpole" });
    const { sheet, site, use } = await open();
    const fresh = await draftOf({ "tent.widthFt": "80", "tent.lengthFt": "100", ends: "whole" });
    const { stakeKind, stakeDiameterIn, stakeLengthIn, embedmentIn, raiseGustMph, stopGustMph } = sheet!;
    const stakeSize = `${stakeDiameterIn} x ${stakeLengthIn}`;
    const figures = { stakeKind, stakeSize, embedmentIn: embedmentIn ?? "", raiseGustMph, stopGustMph };
    const shown = Object.fromEntries(Object.entries(figures).map(([name, is]) => [`sheet.${name}`, String(is)]));
    await type(fresh, "sheet", { ...shown, "sheet.document": "OTHER 9" });
    await type(fresh, "site", { ...SITE, "site.address": "Somewhere else", "site.rallyPoint": "the flagpole" });
    await type(fresh, "ticket", TICKET);
    const told = await jobOf(await send(`${fresh}/crew`, {}));
    expect({ sheet, site, use }).toEqual({ sheet: told.sheet, site: told.site, use: told.use });
  });
  it("another address takes its places and its ground with it, and whoever left them is shown the step again", async () => {
    const answer = await type(draft, "site", { "site.address": "Somewhere else" });
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain("belonged to the other address");
    expect(await fieldsOf(draft)).not.toHaveProperty("site.rallyPoint");
    expect(toOf(await type(draft, "site"))).toBe(`${draft}/ticket`);
    const { site, sheet } = await open();
    expect(site).toEqual({
      address: "Somewhere else",
      rallyPoint: null,
      stormShelter: null,
      firstAid: null,
      soilKnown: false,
      overheadKv: [],
    });
    expect(sheet).toMatchObject({ soil: "dense clay", pullTestLbf: 500 });
  });
  it("places that hold at another address too are said so by one press, and only those that were not typed otherwise", async () => {
    const answer = await type(draft, "site", { "site.address": "Somewhere else" });
    const form = filled((await answer.text()).replaceAll("&#39;", "'"));
    expect(form).toMatchObject({ "site.rallyPoint": "", "left.site.rallyPoint": "gate 3, by the road" });
    expect(toOf(await send(`${draft}/site`, { ...form, "site.stormShelter": "the school", go: "same" }))).toBe(`${draft}/ticket`);
    const { site } = await open();
    expect(site).toMatchObject({ rallyPoint: "gate 3, by the road", stormShelter: "the school", firstAid: "green box, truck cab" });
    expect(site).toMatchObject({ soilKnown: false, overheadKv: [] });
  });
  it("another address asks for its zone again, and takes no narrower tolerance than the usual from the old one", async () => {
    const near = { ...knowing(), ticket: { ...knowing().ticket, toleranceIn: 18 }, zone: "America/Denver" };
    const { job } = (await (await world.post("/jobs", { key: "open-00002", brief: near })).json()) as { job: string };
    const copy = await draftOf({ copy: job });
    expect(await fieldsOf(copy)).toMatchObject({ zone: "America/Denver", "ticket.toleranceIn": "18" });
    await type(copy, "site", { "site.address": "Somewhere else" });
    expect(await html(`${copy}/ticket`)).toMatch(/name="ticket.toleranceIn"[^>]*value="24"/);
    expect(await fieldsOf(copy)).not.toHaveProperty("zone");
  });
  it("keeps the figures that the sheet's page shows, as they were seen under the new document", async () => {
    await type(draft, "sheet", { "sheet.document": "OTHER 9" });
    const fields = await fieldsOf(draft);
    expect(
      Object.keys(fields)
        .filter((name) => name.startsWith("sheet."))
        .sort(),
    ).toEqual(
      ["document", "embedmentIn", "raiseGustMph", "stakeDiameterIn", "stakeKind", "stakeLengthIn", "stopGustMph"]
        .map((f) => `sheet.${f}`)
        .filter((f) => f in fields),
    );
    for (const name of ["sheet.soil", "sheet.pullTestLbf", "sheet.interiorTies", "site.soilKnown"])
      expect(fields).not.toHaveProperty([name]);
  });
});

describe("a sheet is that of its tent", () => {
  const tent = { name: "Old blue", spec: eighty };
  const add = async () => (await (await world.post("/tents", tent)).json()) as { id: string; version: number };
  /** A job opened with the tent, so that the firm keeps its sheet. */
  async function kept(): Promise<{ id: string; version: number }> {
    const added = await add();
    const draft = await draftOf({ tent: added.id });
    for (const [step, typed] of Object.entries({ sheet: SHEET, site: SITE, ticket: TICKET, crew: CREW }))
      await send(`${draft}/${step}`, typed);
    return added;
  }
  const sheetOf = async (draft: string) =>
    Object.entries(await fieldsOf(draft)).filter(([name, is]) => name.startsWith("sheet.") && is !== "").length;

  it("goes where an earlier job was copied and another size is typed", async () => {
    const draft = await draftOf({ copy: await opened(knowing()) });
    expect(await sheetOf(draft)).toBeGreaterThan(0);
    await type(draft, "tent", { "tent.widthFt": "100", "tent.lengthFt": "200", ends: "split" });
    expect(await sheetOf(draft)).toBe(0);
    expect(await fieldsOf(draft)).not.toHaveProperty(["site.soilKnown"]);
    expect(toOf(await send(`${draft}/crew`, {}))).toBe(`${draft}/sheet?wrong=yes`);
  });
  it("goes where an earlier job was copied and a tent of the list is taken that has none", async () => {
    const draft = await draftOf({ copy: await opened(knowing()) });
    await send(`${draft}/tent`, { tent: "example-40x80-whole" });
    expect(await sheetOf(draft)).toBe(0);
  });
  it("goes where a tent of the list has another size typed, or other rings", async () => {
    const { id } = await kept();
    for (const [name, value] of [
      ["tent.widthFt", "60"],
      ["tent.quarterRings", "2"],
    ] as const) {
      const draft = await draftOf({ tent: id });
      expect(await sheetOf(draft)).toBeGreaterThan(0);
      await send(`${draft}/tent`, { [name]: value });
      expect([name, await sheetOf(draft)]).toEqual([name, 0]);
    }
  });
  it("stays where the size is left as it was, however it is sent", async () => {
    const { id } = await kept();
    const draft = await draftOf({ tent: id });
    await send(`${draft}/tent`, { "tent.widthFt": "80", "tent.lengthFt": "100", title: "Mill" });
    expect(await fieldsOf(draft)).toMatchObject({ "sheet.document": "RC-1 A", title: "Mill" });
  });
  it("stays where rings that nobody had said yet are said", async () => {
    const draft = await draftOf({ "tent.widthFt": "50", "tent.lengthFt": "100" });
    await send(`${draft}/sheet`, SHEET);
    await send(`${draft}/tent`, { "was.tent.quarterRings": "", "tent.quarterRings": "1" });
    expect(await fieldsOf(draft)).toMatchObject({ "sheet.document": "RC-1 A" });
  });
  it("is kept for the tent as it was: changed under its id, it has none", async () => {
    const { id, version } = await kept();
    expect(await sheetOf(await draftOf({ tent: id }))).toBeGreaterThan(0);
    await world.post(`/tents/${id}`, { ...tent, spec: { ...eighty, spacingFt: 5 }, version });
    expect(await sheetOf(await draftOf({ tent: id }))).toBe(0);
  });
  it("is kept for the tent, whatever its spares and weights are by now", async () => {
    const { id, version } = await kept();
    const draft = await draftOf({ tent: id });
    await world.post(`/tents/${id}`, { ...tent, kit: { perimeterStake: { spare: 0.2 } }, version });
    expect(await sheetOf(await draftOf({ tent: id }))).toBeGreaterThan(0);
    await send(`${draft}/sheet`, { "sheet.stakeKind": "double-head" });
    expect((await send(`${draft}/tent`, {})).status).toBe(409);
    await send(`${draft}/tent`, { tent: id });
    expect(await fieldsOf(draft)).toMatchObject({ "sheet.stakeKind": "double-head", "kit.perimeterStake.spare": "20" });
  });
  it("goes where the tent on a draft is taken as it is now, after somebody changed it", async () => {
    const { id, version } = await add();
    const draft = await draftOf({ tent: id });
    await send(`${draft}/sheet`, SHEET);
    await world.post(`/tents/${id}`, { ...tent, spec: { ...eighty, spacingFt: 5 }, version });
    await send(`${draft}/tent`, { tent: id });
    expect(await sheetOf(draft)).toBe(0);
  });
});

describe("the soil that a sheet names, and the ground", () => {
  const tent = { name: "Old blue", spec: eighty };
  let id: string;
  const begin = () => draftOf({ tent: id });
  const finish = async (draft: string) => {
    await type(draft, "ticket", TICKET);
    return jobOf(await send(`${draft}/crew`, CREW));
  };
  const first = async (typed: Typed) => {
    const draft = await begin();
    await type(draft, "sheet", SHEET);
    await type(draft, "site", { ...SITE, ...typed });
    return finish(draft);
  };
  const soilsOf = ({ sheet, site }: Awaited<ReturnType<typeof jobOf>>) => [sheet?.soil, site.soilKnown];
  beforeEach(async () => {
    id = ((await (await world.post("/tents", tent)).json()) as { id: string }).id;
  });

  it("are two facts: the sheet's is typed where nobody named it, the ground is said to be that or not", async () => {
    expect(soilsOf(await first({ "sheet.soil": "dense clay" }))).toEqual(["dense clay", false]);
    const next = await begin();
    const page = await html(`${next}/site`);
    expect(page).toContain("Is the ground dense clay?");
    expect(page).not.toContain('name="sheet.soil"');
    await type(next, "site", { ...SITE, "site.soilKnown": "yes" });
    expect(soilsOf(await finish(next))).toEqual(["dense clay", true]);
  });
  it("a ground that is another soil leaves the sheet's as it is, in the job and with the firm", async () => {
    await first({ "sheet.soil": "dense clay", "site.soilKnown": "yes" });
    const next = await begin();
    await type(next, "site", { ...SITE, "site.soilKnown": "no", "site.soil": "loose sand" });
    expect(soilsOf(await finish(next))).toEqual(["dense clay", false]);
    expect(await fieldsOf(await begin())).toMatchObject({ "sheet.soil": "dense clay" });
  });
  it("a ground that was known is asked for again on the next job", async () => {
    await first({ "sheet.soil": "dense clay", "site.soilKnown": "yes" });
    expect(await fieldsOf(await begin())).not.toHaveProperty(["site.soilKnown"]);
  });
  it("a soil that nobody named is no ground that is known", async () => {
    const draft = await begin();
    await type(draft, "sheet", SHEET);
    for (const soil of ["", "  "]) {
      const answer = await type(draft, "site", { ...SITE, "sheet.soil": soil, "site.soilKnown": "yes" });
      expect(answer.status).toBe(422);
      expect(await answer.text()).toMatch(/id="wrong-sheet-soil">Empty/);
    }
    await type(draft, "site", { "site.soilKnown": "no" });
    expect(soilsOf(await finish(draft))).toEqual([null, false]);
    expect(await html(`${await begin()}/site`)).toContain('name="sheet.soil"');
  });
  it("another soil that the sheet names is typed after one press, and the ground is asked for again", async () => {
    await first({ "sheet.soil": "dense clay", "site.soilKnown": "yes" });
    const next = await begin();
    await type(next, "site", { ...SITE, "site.soilKnown": "yes" });
    expect(toOf(await type(next, "site", { go: "soil" }))).toBe(`${next}/site`);
    expect(await fieldsOf(next)).toMatchObject({ "sheet.soil": "", "site.soilKnown": "" });
    await type(next, "site", { "sheet.soil": "stiff loam" });
    expect(soilsOf(await finish(next))).toEqual(["stiff loam", false]);
  });
  it("a yes to a soil that is another by now is no yes", async () => {
    await first({ "sheet.soil": "dense clay" });
    const next = await begin();
    const seen = filled(await html(`${next}/site`));
    await send(`${next}/sheet`, { "was.sheet.document": "RC-1 A", "sheet.document": "OTHER 9" });
    await send(`${next}/site`, { ...SITE, "sheet.soil": "loose sand" });
    const answer = await send(`${next}/site`, { ...seen, ...SITE, "site.soilKnown": "yes" });
    expect(answer.status).toBe(422);
    expect((await fieldsOf(next))["site.soilKnown"] || "no").toBe("no");
  });
  it("nothing of either is asked where nobody has the sheet yet", async () => {
    const draft = await begin();
    await send(`${draft}/sheet`, { go: "unknown" });
    const page = await html(`${draft}/site`);
    expect([page.includes("sheet.soil"), page.includes("site.soilKnown")]).toEqual([false, false]);
  });
});
