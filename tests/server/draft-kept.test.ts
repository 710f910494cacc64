import { beforeEach, describe, expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { formsOf, toOf } from "../support/forms.ts";
import { eighty } from "../tent/tents.ts";

type Typed = Readonly<Record<string, string>>;
let world: ReturnType<typeof testApp>;
beforeEach(() => {
  world = testApp();
});

const STEPS: readonly (readonly [string, Typed])[] = [
  ["tent", { "tent.widthFt": "40", "tent.lengthFt": "60", title: "Wedding at the mill" }],
  ["sheet", { "sheet.document": "RC-1 A", "sheet.stakeKind": "steel pin", "sheet.stakeSize": "1 x 42" }],
  ["site", { "site.address": "Gate 3, Tansy Lane", "site.rallyPoint": "gate 3" }],
  ["ticket", { "ticket.number": "LT-77", "ticket.validTo": "2026-12-20", "ticket.utilities.gas": "marked" }],
  ["crew", { "crew.1.name": "Ines", "crew.1.role": "lead", "crew.2.name": "Tobias", "crew.2.role": "deputy" }],
];
const { send, html } = formsOf(() => world);
const idOf = (answer: Response) => toOf(answer)!.split(/[/?]/)[2]!;
const begin = async (fields: Typed = {}) => idOf(await send("/drafts", fields));
const drafts = () => world.journal.drafts.unopened(99);
const bodyOf = async (id: string) => (await world.journal.drafts.draft(id))!.body as { fields: Typed; opened: object | null };
const DAY_S = 24 * 3600;

async function opened(): Promise<{ id: string; job: string }> {
  const id = await begin();
  let last: Response | null = null;
  for (const [step, typed] of STEPS) last = await send(`/drafts/${id}/${step}`, { ...typed, ends: "whole" });
  return { id, job: toOf(last!)! };
}

describe("a draft that has become a job", () => {
  it("says no name and no address any more: those are with the job, where they can be erased", async () => {
    const { id, job } = await opened();
    const left = JSON.stringify((await world.journal.drafts.draft(id))!.body);
    for (const told of ["Ines", "Tobias", "Tansy", "mill", "gate 3", "RC-1"]) expect(left).not.toContain(told);
    const page = await html(`/drafts/${id}/tent`);
    for (const told of ["Ines leads it", "Wedding at the mill", `href="${job}"`]) expect(page).toContain(told);
  });
  it("is not thrown away, and is no longer begun with its key", async () => {
    const { id, job } = await opened();
    expect(toOf(await send(`/drafts/${id}/throw-away`, { version: "9" }))).toBe(`/drafts/${id}/tent`);
    expect(await world.journal.drafts.draft(id)).not.toBeNull();
    expect(toOf(await send("/drafts", { key: id }))).toBe(job);
    expect((await bodyOf(id)).fields).toEqual({});
  });
});

it("a form sent again long after its draft opened a job begins another draft, and that opens another job", async () => {
  const { id, job } = await opened();
  world.clock.pass(31 * DAY_S);
  await begin();
  const again = await begin({ key: id });
  expect(again).not.toBe(id);
  let last: Response | null = null;
  for (const [step, typed] of STEPS) last = await send(`/drafts/${again}/${step}`, { ...typed, ends: "whole" });
  expect(toOf(last!)).toMatch(/^\/jobs\/id-/);
  expect(toOf(last!)).not.toBe(job);
});

describe("a form that begins a draft", () => {
  const size = { "tent.widthFt": "40", "tent.lengthFt": "60" };
  it("makes one, however often and however fast it is sent", async () => {
    const form = { ...filled(await html("/drafts/new")), ...size };
    const sent = await Promise.all([send("/drafts", form), send("/drafts", form)]);
    sent.push(await send("/drafts", form));
    expect(new Set(sent.map(idOf)).size).toBe(1);
    expect(await drafts()).toHaveLength(1);
  });
  it("that copies a job makes one, and each copy is its own", async () => {
    for (const n of [1, 2]) await world.post("/jobs", { key: `open-0000${n}`, brief: { ...brief(), title: `Job ${n}` } });
    const page = await html("/drafts/new");
    const forms = [...page.matchAll(/name="copy" value="([^"]+)".*?name="key" value="([^"]+)"/gs)].map(([, copy, key]) => ({
      copy: copy!,
      key: key!,
    }));
    expect(new Set(forms.map(({ key }) => key)).size).toBe(2);
    const ids = await Promise.all([...forms, ...forms].map((form) => begin(form)));
    expect(new Set(ids).size).toBe(2);
  });
  it("takes no key that could not be an address", async () => {
    for (const key of ["", "../../x", "__proto__/tent", "a"]) expect(await begin({ key, ...size })).toMatch(/^id-/);
  });
  it("writes nothing where one goes back and has typed nothing, also with a tent of the list looked at", async () => {
    const looked = filled((await html("/drafts/new?tent=example-40x80-whole")).split('class="lines"')[0]!);
    const forms: readonly Typed[] = [{ go: "back" }, { "tent.widthFt": " ", title: "", go: "back" }, { ...looked, go: "back" }];
    for (const form of forms) expect(toOf(await send("/drafts", form))).toBe("/");
    expect(await drafts()).toEqual([]);
    await send("/drafts", { title: "Mill", go: "back" });
    expect(await drafts()).toHaveLength(1);
  });
});

describe("what was typed beside a tent that changed while it was looked at", () => {
  it.each(["on a draft", "on a new one"])("is kept %s, and nothing of the tent", async (where) => {
    const tent = (await (await world.post("/tents", { name: "Old blue", spec: eighty })).json()) as { id: string };
    const path = where === "on a draft" ? `/drafts/${await begin()}/tent` : "/drafts";
    const answer = await send(path, { tent: tent.id, digest: "as-it-was", "was.tent.widthFt": "80", "tent.widthFt": "60", title: "Mill" });
    const id = where === "on a draft" ? path.split("/")[2]! : idOf(answer);
    if (where === "on a draft") expect([answer.status, (await answer.text()).includes('value="Mill"')]).toEqual([409, true]);
    expect((await bodyOf(id)).fields).toEqual({ title: "Mill" });
  });
});

describe("drafts that are not opened yet", () => {
  it("can all be reached, with the way to throw each away", async () => {
    const ids: string[] = [];
    for (const n of [1, 2, 3, 4, 5]) ids.push(await begin({ title: `Job ${n}` }));
    const home = await html("/");
    expect(home).toContain('href="/drafts"');
    const list = await html("/drafts");
    for (const id of ids) for (const path of [`/drafts/${id}`, `/drafts/${id}/throw-away`]) expect(list).toContain(`href="${path}"`);
    expect(list).toContain("last typed Tue 2 Jun");
  });
  it("are thrown away once somebody was asked, and are not found then", async () => {
    const id = await begin({ title: "Mill" });
    const asked = await html(`/drafts/${id}/throw-away`);
    expect(asked).toContain('Throw "Mill" away?');
    expect(await drafts()).toHaveLength(1);
    expect(toOf(await send(`/drafts/${id}/throw-away`, filled(asked)))).toBe("/drafts");
    expect(await drafts()).toEqual([]);
    for (const path of ["tent", "throw-away"]) expect((await world.app.request(`/drafts/${id}/${path}`)).status).toBe(404);
  });
  it("are asked for again where somebody typed meanwhile", async () => {
    const id = await begin({ title: "Mill" });
    const asked = filled(await html(`/drafts/${id}/throw-away`));
    await send(`/drafts/${id}/tent`, { title: "Barn" }, "phone-of-maren");
    const answer = await send(`/drafts/${id}/throw-away`, asked);
    expect([answer.status, (await answer.text()).includes("Somebody typed in it meanwhile")]).toEqual([409, true]);
    expect((await bodyOf(id)).fields.title).toBe("Barn");
  });
  it("go by themselves thirty days after the last thing typed in them", async () => {
    const [old, kept] = [await begin({ title: "Old" }), await begin({ title: "Kept" })];
    world.clock.pass(20 * DAY_S);
    await send(`/drafts/${kept}/tent`, { title: "Kept on" });
    world.clock.pass(11 * DAY_S);
    await begin({ title: "New" });
    expect([await world.journal.drafts.draft(old), (await drafts()).length]).toEqual([null, 2]);
  });
});

describe("the people whom a firm knows", () => {
  const keep = (names: readonly string[], at = 1) =>
    world.journal.firm.keep({ people: names.map((name) => ({ name, role: "crew" })), sheet: null, at: Date.UTC(2026, 5, 1) + at });
  const many = (n: number, from: number) => Array.from({ length: n }, (_, i) => `Person ${String(from + i).padStart(3, "0")}`);

  it("are taken off by one press: off the list, and off each draft on which they are not ticked", async () => {
    await keep(["Odd"]);
    await keep(["Ines", "Tobias"], 2);
    const id = await begin();
    const asked = await send(`/drafts/${id}/crew`, { go: "people", "was.crew.1.role": "crew", "crew.1.role": "lead" });
    expect(toOf(asked)).toBe(`/firm/people?draft=${id}`);
    expect(await html(toOf(asked)!)).toMatch(/Odd.*value="Tobias"/s);
    for (const name of ["odd", "Tobias"]) expect(toOf(await send("/firm/people", { name, draft: id }))).toBe(`/firm/people?draft=${id}`);
    expect((await world.journal.firm.people()).map(({ name }) => name)).toEqual(["Ines"]);
    const { fields } = await bodyOf(id);
    expect(fields).toMatchObject({ "crew.1.name": "Ines", "crew.1.role": "lead", "crew.2.name": "Tobias", "crew.2.on": "yes" });
    expect(Object.values(fields)).not.toContain("Odd");
  });
  it("are forgotten two years after their last job", async () => {
    await keep(["Ines"]);
    world.clock.pass(731 * DAY_S);
    await begin();
    expect(await world.journal.firm.people()).toEqual([]);
  });
  it("may be more than a hundred, and a new one still has a row", async () => {
    for (const from of [1, 41, 81]) await keep(many(40, from));
    const id = await begin();
    const row = /name="crew\.(\d+)\.name" value=""/.exec(await html(`/drafts/${id}/crew`))![1]!;
    expect(row).toBe("121");
    await send(`/drafts/${id}/crew`, {
      [`was.crew.${row}.name`]: "",
      [`crew.${row}.name`]: "Newcomer",
      [`crew.${row}.role`]: "lead",
      go: "more",
    });
    expect((await bodyOf(id)).fields).toMatchObject({ "crew.121.name": "Newcomer", "crew.121.on": "yes", "crew.120.name": "Person 080" });
  });
});

describe("Enter in a field", () => {
  /** What a browser sends for it: the first press of the form. */
  const first = (page: string, action: string) => /name="go" value="(\w+)"/.exec(page.slice(page.indexOf(`action="${action}"`)))![1]!;

  it.each(STEPS)("of the %s keeps what was typed, and goes nowhere", async (step, typed) => {
    const id = await begin();
    for (const [told, fields] of STEPS.slice(0, 4)) await send(`/drafts/${id}/${told}`, fields);
    const path = `/drafts/${id}/${step}`;
    const page = await html(path);
    const answer = await send(path, { ...typed, go: first(page, path) });
    expect(toOf(answer)!.split("?")[0]).toBe(path);
    expect({ ...filled(await html(path)), ...(await bodyOf(id)).fields }).toMatchObject(typed);
    expect(await world.journal.jobs()).toEqual([]);
  });
  it("of a tent that changed since takes nothing of it", async () => {
    const tent = (await (await world.post("/tents", { name: "Old blue", spec: eighty })).json()) as { id: string; version: number };
    const id = await begin({ tent: tent.id });
    await world.post(`/tents/${tent.id}`, { name: "Old blue", spec: { ...eighty, spacingFt: 5 }, version: tent.version });
    const path = `/drafts/${id}/tent`;
    const page = await html(path);
    const form = filled(page.slice(0, page.indexOf('class="lines"')));
    await send(path, { ...form, title: "Mill", go: first(page, path) });
    expect((await bodyOf(id)).fields).toMatchObject({ title: "Mill", "tent.spacingFt": "10" });
  });
});
