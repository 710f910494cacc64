import { beforeEach, describe, expect, it } from "vitest";
import { EXAMPLES } from "../../machines/tent/examples.ts";
import { planTent } from "../../machines/tent/plan.ts";
import { kitFromForm } from "../../server/input/kit.ts";
import { readTentForm } from "../../server/input/tent.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { errors } from "../../views/text/en/errors.ts";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { eighty, specOf } from "../tent/tents.ts";

type Data = {
  id: string;
  name: string;
  version: number;
  spec: { spacingFt: number };
  problem: string;
  fields: Record<string, string>;
  stored: Data;
};
let world: ReturnType<typeof testApp>;
beforeEach(() => {
  world = testApp();
});

const blue = { name: "Old blue", spec: eighty };
const send = async (path: string, body: unknown) => {
  const r = await world.post(path, body);
  return { status: r.status, body: (await r.json()) as Data };
};
const add = async (body: object = blue) => (await send("/tents", body)).body.id;
const json = async (path: string) => (await (await world.app.request(path)).json()) as Data;
const html = async (path: string) => (await world.app.request(path)).text();
const form = (path: string, fields: Record<string, string>, headers: Record<string, string> = {}) =>
  world.app.request(path, { method: "POST", body: new URLSearchParams(fields), headers: { "sec-fetch-site": "same-origin", ...headers } });
describe("a tent brought in by a script", () => {
  it("is saved with its plan, listed by name before the examples, and given back as it can be brought in again", async () => {
    const { status, body } = await send("/tents", { ...blue, kit: { sidePole: { spare: 0.1, unitLb: 30 } } });
    expect(status).toBe(201);
    const { tents } = (await (await world.app.request("/tents.json")).json()) as { tents: { name: string; example: boolean }[] };
    expect(tents.map((t) => [t.name, t.example])[0]).toEqual(["Old blue", false]);
    expect(tents).toHaveLength(1 + EXAMPLES.length);
    const exported = await json(`/tents/${body.id}.json`);
    expect(exported).toMatchObject({ name: "Old blue", version: 1, spec: specOf(eighty), kit: { sidePole: { spare: 0.1, unitLb: 30 } } });
    expect((await send("/tents", { ...exported, name: "Old blue 2" })).status).toBe(201);
  });
  it("counts nothing that its plan did not", async () => {
    const { counts } = (await json(`/tents/${await add()}.json`)) as Data & { counts: Record<string, number> };
    expect(Object.entries(counts)).toEqual(planTent(specOf(eighty)).kit.map((k) => [k.item, k.count]));
  });
  it.each([
    ["no name", { spec: eighty }, { name: "The tent has no name. Give it one." }],
    ["a name of spaces", { ...blue, name: "  " }, { name: "The tent has no name. Give it one." }],
    ["a name that is a number", { ...blue, name: 7 }, { name: "7 is not a name. Give one line of text." }],
    ["a name of 81 letters", { ...blue, name: "ü".repeat(81) }, { name: "The name has 81 letters. Keep it to 80." }],
    ["no spec", { name: "x" }, { spec: errors.noTentGiven }],
    ["a list for a spec", { name: "x", spec: [] }, { spec: errors.noTentGiven }],
    [
      "a width of nothing",
      { name: "x", spec: { ...eighty, widthFt: "wide" } },
      { "spec.widthFt": '"wide" is not a number. Give a number of feet.' },
    ],
    [
      "a spacing below nothing and a mid too many",
      { name: "x", spec: { ...eighty, spacingFt: -1, midsFt: [20, 20] } },
      {
        "spec.spacingFt": "A pole spacing of -1 ft is not possible. Nearest that works: 1.",
        "spec.midsFt": /Mids of 20\+20 ft do not fill/,
      },
    ],
    [
      "a misspelled field",
      { ...blue, spec: { ...eighty, leaveout: ["C1"] } },
      { "spec.leaveout": '"leaveout" is not known; did you mean leaveOut?' },
    ],
    [
      "a kit that is unheard of",
      { ...blue, kit: { elephants: { unitLb: 1 } } },
      { "kit.elephants": /^"elephants" is not known\. Known here: perimeterStake/ },
    ],
    [
      "more spares than poles",
      { ...blue, kit: { sidePole: { spare: 1.5 } } },
      { "kit.sidePole.spare": "Spares of 150% are outside 0 to 100%." },
    ],
    ["a weight in words", { ...blue, kit: { sidePole: { unitLb: "heavy" } } }, { "kit.sidePole.unitLb": /"heavy" is not a weight/ }],
  ])("with %s is refused with the value and the reason, and not saved", async (_what, body, fields) => {
    const answer = await send("/tents", body);
    expect(answer.status).toBe(422);
    for (const [field, why] of Object.entries(fields) as [string, string | RegExp][])
      expect(answer.body.fields[field]).toEqual(why instanceof RegExp ? expect.stringMatching(why) : why);
    expect(await world.journal.catalog.tents()).toEqual([]);
  });
  it.each([
    ["a list", []],
    ["a word", "tent"],
    ["nothing", null],
  ])("that is %s is refused in a sentence", async (_what, body) => {
    expect(await send("/tents", body)).toMatchObject({ status: 422, body: { fields: { spec: errors.noTentGiven } } });
  });
  it("under a name that is taken, in another case too, or is an example's, is refused and says which", async () => {
    await add();
    expect((await send("/tents", { ...blue, name: "OLD  blue" })).body.fields).toEqual({
      name: 'Another tent in the list is called "Old blue". Give this one another name.',
    });
    expect((await send("/tents", { ...blue, name: "80 × 100 ft, Split Ends" })).body.fields.name).toMatch(/is the name of an example/);
  });
  it("twice with one key is saved once and answered twice; with another tent the key is refused", async () => {
    const [first, second] = [await send("/tents", { ...blue, key: "key-00001" }), await send("/tents", { ...blue, key: "key-00001" })];
    expect(second).toEqual(first);
    expect(await send("/tents", { ...blue, name: "Else", key: "key-00001" })).toMatchObject({ status: 409 });
    expect(await send("/tents", { ...blue, name: "Else", key: "x y" })).toMatchObject({
      status: 422,
      body: { fields: { key: errors.keyShape } },
    });
    expect(await world.journal.catalog.tents()).toHaveLength(1);
  });
});

it("half a letter in a tent or a brief is taken as what stands for one, in a name of a field the text is no JSON", async () => {
  const raw = (path: string, text: string) => world.post(path, text, true);
  const r = await raw("/tents", JSON.stringify(blue).replace("Old blue", "Old \\ud800 blue"));
  expect([r.status, ((await r.json()) as Data).name]).toEqual([201, "Old \ufffd blue"]);
  expect((await raw("/jobs", JSON.stringify({ brief: brief() }).replace("harvest", "\\udc00"))).status).toBe(201);
  expect((await raw("/tents", '{"\\ud800":1}')).status).toBe(400);
});

describe("a change by a script", () => {
  it("of the version that was read is saved", async () => {
    const id = await add();
    const answer = await send(`/tents/${id}`, { ...blue, version: 1, spec: { ...eighty, spacingFt: 8 } });
    expect(answer).toMatchObject({ status: 200, body: { version: 2, spec: { spacingFt: 8 } } });
  });
  it("of an older version is refused, with what is stored now", async () => {
    const id = await add();
    await send(`/tents/${id}`, { ...blue, version: 1, spec: { ...eighty, spacingFt: 8 } });
    const late = await send(`/tents/${id}`, { ...blue, version: 1, spec: { ...eighty, spacingFt: 12 } });
    expect(late).toMatchObject({ status: 409, body: { problem: errors.tentChanged, stored: { version: 2, spec: { spacingFt: 8 } } } });
    expect((await json(`/tents/${id}.json`)).spec.spacingFt).toBe(8);
  });
  it("that is sent again after another one is answered and not done again", async () => {
    const id = await add();
    const first = { ...blue, key: "key-00001", version: 1, spec: { ...eighty, spacingFt: 8 } };
    await send(`/tents/${id}`, first);
    await send(`/tents/${id}`, { ...blue, version: 2, spec: { ...eighty, spacingFt: 12 } });
    expect((await send(`/tents/${id}`, first)).status).toBe(200);
    expect((await json(`/tents/${id}.json`)).spec.spacingFt).toBe(12);
  });
  it("without the version, of an example, or of a tent that is not there, is refused", async () => {
    const id = await add();
    expect((await send(`/tents/${id}`, blue)).body.fields).toEqual({ version: errors.versionShape });
    expect(await send(`/tents/${EXAMPLES[0]!.id}`, { ...blue, version: 1 })).toMatchObject({
      status: 409,
      body: { problem: errors.exampleStays },
    });
    expect((await send("/tents/no-such", { ...blue, version: 1 })).status).toBe(404);
    expect((await world.app.request("/tents/no-such.json")).status).toBe(404);
  });
});

describe("the pages of the list", () => {
  it("an example becomes the form of a tent, the form is saved, and the saved tent is the example's tent", async () => {
    const { id, spec } = EXAMPLES.find((e) => e.id === "example-80x100-split")!;
    const fields = filled(await html(`/tents/new?from=${id}`));
    const saved = await form("/tents", { ...fields, name: "Ours" });
    expect(saved.status).toBe(303);
    const tent = await json(`${saved.headers.get("location")}.json`);
    expect(tent).toMatchObject({ name: "Ours", spec });
  });
  it("a saved tent goes through its edit form without a change that nobody typed", async () => {
    const spec = specOf({
      ...eighty,
      leaveOut: ["Q2"],
      add: [{ kind: "quarter", xFt: 31, yFt: 43 }],
      rings: { AB: 12 },
      shifted: { C: { xFt: 0.25, yFt: 0 } },
    });
    const id = await add({ name: "Odd one", spec, kit: { polePlate: { unitLb: 8.5 } } });
    await form(`/tents/${id}`, filled(await html(`/tents/${id}/edit`)));
    expect(await json(`/tents/${id}.json`)).toMatchObject({ version: 2, name: "Odd one", spec, kit: { polePlate: { unitLb: 8.5 } } });
  });
  it("a copy takes everything but the name", async () => {
    const id = await add();
    expect(filled(await html(`/tents/new?from=${id}`))).toMatchObject({ name: "Copy of Old blue", "tent.widthFt": "80" });
  });
  it("a form with something wrong comes back with all that was typed, the reason beside the field, and no drawing", async () => {
    const fields = { ...filled(await html(`/tents/new?from=${EXAMPLES[0]!.id}`)), name: "Mine", "tent.spacingFt": "ten feet and a bit" };
    const r = await form("/tents", fields);
    const page = await r.text();
    expect(r.status).toBe(422);
    expect(filled(page)).toMatchObject({ name: "Mine", "tent.spacingFt": "ten feet and a bit" });
    expect(page).toMatch(/id="wrong-tent-spacingFt">&quot;ten feet and a bit&quot; is not a number/);
    expect(page).not.toContain("<svg");
    expect(await world.journal.catalog.tents()).toEqual([]);
  });
  it("somebody else's change meanwhile: nothing is saved, both are shown, and the same press again saves", async () => {
    const id = await add();
    const mine = { ...filled(await html(`/tents/${id}/edit`)), "tent.spacingFt": "8" };
    await send(`/tents/${id}`, { ...blue, version: 1, spec: { ...eighty, spacingFt: 12 } });
    const late = await form(`/tents/${id}`, mine);
    const page = await late.text();
    expect(late.status).toBe(409);
    expect(page).toContain(errors.tentChanged);
    expect(page).toMatch(/Pole spacing, ft<\/th><td>12<\/td><td>8<\/td>/);
    expect(filled(page)).toMatchObject({ "tent.spacingFt": "8", version: "2" });
    expect((await json(`/tents/${id}.json`)).spec.spacingFt).toBe(12);
    expect((await form(`/tents/${id}`, filled(page))).status).toBe(303);
    expect(await json(`/tents/${id}.json`)).toMatchObject({ version: 3, spec: { spacingFt: 8 } });
  });
  it("taken out meanwhile: what was typed can be added again", async () => {
    const id = await add();
    const mine = filled(await html(`/tents/${id}/edit`));
    expect((await form(`/tents/${id}/remove`, { key: "key-00001", version: "1" })).status).toBe(303);
    const page = await (await form(`/tents/${id}`, mine)).text();
    expect(page).toContain(errors.tentGone);
    expect((await form("/tents", filled(page))).status).toBe(303);
  });
  it("is taken out only after a page that asks, and only as it was seen", async () => {
    const id = await add();
    expect(await html(`/tents/${id}/remove`)).toContain("Take Old blue out of the list?");
    expect(await world.journal.catalog.tents()).toHaveLength(1);
    await send(`/tents/${id}`, { ...blue, version: 1, name: "Renamed" });
    expect((await form(`/tents/${id}/remove`, { key: "key-00001", version: "1" })).status).toBe(409);
    expect((await form(`/tents/${id}/remove`, { key: "key-00002", version: "2" })).status).toBe(303);
    expect((await form(`/tents/${id}/remove`, { key: "key-00002", version: "2" })).status).toBe(303);
    expect(await world.journal.catalog.tents()).toEqual([]);
  });
  it("an example cannot be edited or taken out", async () => {
    const { id } = EXAMPLES[0]!;
    for (const path of ["edit", "remove"]) expect((await world.app.request(`/tents/${id}/${path}`)).status).toBe(409);
    expect((await form(`/tents/${id}/remove`, { key: "key-00001", version: "1" })).status).toBe(409);
    expect(await html(`/tents/${id}`)).toContain("Example, not your tent&#39;s sheet");
  });
  it("what was exported is pasted in, under another name where one is given", async () => {
    const exported = await (await world.app.request(`/tents/${EXAMPLES[3]!.id}.json`)).text();
    const r = await form("/tents", { json: exported, name: "Pasted" });
    expect(r.status).toBe(303);
    expect(await json(`${r.headers.get("location")}.json`)).toMatchObject({ name: "Pasted", spec: EXAMPLES[3]!.spec });
  });
  it.each([
    ["", "Nothing was pasted in."],
    ['{"name": "x", "spe', "is not the beginning of whole JSON"],
    [
      '{"name":"x","spec":{"widthFt":9,"lengthFt":100,"spacingFt":10,"quarterRings":0,"centerPoleFt":20}}',
      "9 ft wide is outside 20 to 120 ft",
    ],
  ])("pasting in %j is refused with a reason, and the text is still there", async (text, why) => {
    const r = await form("/tents", { json: text, name: "" });
    const page = await r.text();
    expect([r.status, page.includes(why)]).toEqual([422, true]);
    expect(page).toContain(text.replaceAll('"', "&quot;"));
  });
  it("a tent spoiled in the file is said to be unreadable, and can be taken out", async () => {
    const { catalog } = world.journal;
    await catalog.add("t-9", { name: "Spoiled", spec: { widthFt: "?" }, kit: null, at: 1 }, { key: "key-00001", request: "r" });
    expect(await html("/tents")).toContain("cannot be read");
    expect(await html("/tents/t-9")).toContain("This tent cannot be read any more");
    expect((await world.app.request("/drafts/new?tent=t-9")).status).toBe(409);
    expect((await form("/tents/t-9/remove", { key: "key-00002", version: "1" })).status).toBe(303);
  });
});

describe("the plan while one types", () => {
  const preview = async (fields: Record<string, string>) =>
    (await form("/tents/preview", fields, { "hx-request": "true", "hx-request-type": "partial" })).text();
  const part = (page: string, id: string) => new RegExp(`<hx-partial hx-target="#${id}"[^>]*>(.*?)</hx-partial>`, "s").exec(page)?.[1];
  const good = async () => filled(await html("/tents/new?from=example-60x120-split"));

  it("comes with the drawing, its counts, and nothing beside the fields", async () => {
    const page = await preview(await good());
    expect(part(page, "tent-plan")).toContain('viewBox="0 0');
    expect(part(page, "tent-status")).toMatch(/^Drawn: 60 × 120 ft, split ends\. 36 stations, 104 stakes/);
    expect(part(page, "wrong-tent-spacingFt")).toBe("");
  });
  it("is none while a value is wrong: the sentence stands beside its field and where the drawing was", async () => {
    const page = await preview({ ...(await good()), "tent.spacingFt": "25" });
    expect(part(page, "tent-plan")).not.toContain("<svg");
    expect(part(page, "tent-plan")).toContain("A pole spacing of 25 ft is too wide");
    expect(part(page, "wrong-tent-spacingFt")).toContain("A pole spacing of 25 ft is too wide");
  });
  it("asks for what is still empty without calling it wrong", async () => {
    const page = await preview({ "tent.widthFt": "80" });
    expect(part(page, "tent-plan")).toContain("Still wanted: Length, ft");
    expect(part(page, "wrong-tent-lengthFt")).toBe("");
  });
  it("says what is wrong with the notes on the kit, and draws the tent all the same", async () => {
    const page = await preview({ ...(await good()), "kit.sidePole.spare": "lots" });
    expect(part(page, "wrong-kit-sidePole-spare")).toContain("&quot;lots&quot; is not a number");
    expect(part(page, "tent-plan")).toContain("<svg");
  });
  it("without scripts comes as a whole page, with all that was typed, and saves nothing", async () => {
    const fields = { ...(await good()), name: "Not yet", show: "plan" };
    const page = await (await form("/tents", fields)).text();
    expect(page).toContain('viewBox="0 0');
    expect(filled(page)).toMatchObject({ name: "Not yet", "tent.widthFt": "60" });
    expect(await (await form("/tents", { ...fields, "tent.spacingFt": "25" })).text()).not.toContain("<svg");
    expect(await world.journal.catalog.tents()).toEqual([]);
  });
});

describe("a job with a tent of the list", () => {
  it("is told with it: its spec and its notes on the kit", async () => {
    const id = await add({ ...blue, kit: { sidePole: { spare: 0.1 } } });
    const told = await form("/drafts", { tent: id });
    const { fields } = (await world.journal.drafts.draft(told.headers.get("location")!.split("/")[2]!))!.body as {
      fields: Record<string, string>;
    };
    expect(readTentForm(fields)).toStrictEqual({ spec: specOf(eighty) });
    expect(kitFromForm(fields)).toEqual({ sidePole: { spare: 0.1 } });
  });
  it("an amendment's form shows its plan too, and changes nothing until it is sent", async () => {
    const { job } = (await send("/jobs", { key: "open-0001", brief: brief() })).body as unknown as { job: string };
    const page = await html(`/jobs/${job}/amend`);
    expect(page).toContain("Drawn: 80 × 100 ft, split ends.");
    await form(`/jobs/${job}/amend`, { ...filled(page), show: "plan", "tent.spacingFt": "5" });
    expect(await world.journal.read(job)).toHaveLength(1);
  });
});

it("the list outlives the server", async () => {
  const journal = sqliteJournal(":memory:");
  world = testApp(journal);
  const id = await add();
  world = testApp(journal);
  expect(await json(`/tents/${id}.json`)).toMatchObject({ name: "Old blue" });
});
