import { beforeAll, describe, expect, it } from "vitest";
import { verifyJob } from "../../machines/record/verify-job.ts";
import { brief, testApp } from "../support/app.ts";

/** What every plain object answers to without ever having been told: `__proto__`, `constructor`, `toString` and their like. */
const NAMES = Object.getOwnPropertyNames(Object.prototype);

type Told = {
  entry?: number;
  reply?: string;
  reasons?: { why: string; gate?: string }[];
  problem?: string;
  fields?: Record<string, string>;
};
const world = testApp();
let job: string;
let keys = 0;
const key = () => `inherited-${++keys}`;

async function open(input: object = brief()): Promise<string> {
  const told = await world.post("/jobs", { key: key(), brief: input });
  return ((await told.json()) as { job: string }).job;
}
/** One job is sent all of it, and still has to answer when all is done. */
beforeAll(async () => {
  job = await open({ ...brief(), crew: [...brief().crew, { name: "Wim", role: "watcher" }] });
});

/** The entry that a screen shows. */
const shown = async () => (await world.liveJobs.load(job)).entries.length;
const say = async (body: object) => {
  const told = await world.post(`/jobs/${job}/say`, { as: "Ines", key: key(), seen: await shown(), ...body });
  return { status: told.status, body: (await told.json()) as Told };
};
const get = async (path: string, headers: Record<string, string> = {}) => (await world.app.request(path, { headers })).status;
const form = async (path: string, fields: Record<string, string>) =>
  (
    await world.app.request(path, {
      method: "POST",
      headers: { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost" },
      body: new URLSearchParams({ as: "p1", key: key(), seen: String(await shown()), ...fields }),
    })
  ).status;

const PAGES = ["", ".json", "/more", "/plan", "/plan.json", "/layout", "/layout.svg", "/layout.dxf", "/layout.json", "/marks.csv"];
const MORE_PAGES = ["/record", "/record.json", "/record.csv", "/time", "/time.json", "/truck", "/truck.json", "/truck.csv", "/amend"];
describe.each(NAMES)("the name %s", (name) => {
  it("as a gate is refused by name", async () => {
    const value = { kind: "yesNo", yes: true };
    for (const as of ["Wim", "Ines"])
      for (const body of [
        { type: "answer", gate: name, value },
        { type: "waive", gate: name, because: "no need" },
      ]) {
        const told = await say({ as, ...body });
        expect([told.status, told.body.reasons?.[0]]).toMatchObject([200, { why: "noSuchGate", gate: name }]);
        expect(told.body.reply).toContain(`"${name}"`);
      }
    expect(await form(`/jobs/${job}/say`, { type: "answer", gate: name, kind: "yesNo", value: "yes" })).toBe(303);
    for (const path of ["", ".json", "/now"]) expect(await get(`/jobs/${job}${path}`)).toBe(200);
  });

  it.each([
    ["a length", { kind: "lengths", ft: { AB: 20, [name]: 20 } }, "value.ft."],
    ["a thing counted", { kind: "counts", n: { sidePole: 2, [name]: 2 } }, "value.n."],
    ["a field of an answer", { kind: "yesNo", yes: true, [name]: 1 }, "value."],
  ])("as %s is refused by name", async (_what, value, prefix) => {
    const told = await say({ type: "answer", gate: "kit.loaded", value });
    expect([told.status, Object.keys(told.body.fields ?? {})]).toEqual([422, [`${prefix}${name}`]]);
    expect(told.body.fields![`${prefix}${name}`]).toContain(`"${name}" is not known`);
  });

  it("as a field of what is said is refused by name", async () => {
    const told = await say({ type: "next", [name]: 1 });
    expect([told.status, Object.keys(told.body.fields ?? {})]).toEqual([422, [name]]);
  });

  it("as a kind, a unit, a type or a person is refused", async () => {
    const measure = { kind: "measure", n: 3, unit: name };
    for (const body of [
      { type: name },
      { as: name, type: "next" },
      { type: "reading", kind: name },
      { type: "answer", gate: "soil", value: measure },
    ])
      expect([body, (await say(body)).status]).toEqual([body, 422]);
    expect((await say({ type: "answer", gate: "soil", value: { kind: name } })).status).toBe(422);
    for (const heard of [name, `${name} feet`, `wind ${name}`, `where is ${name}`, `how many ${name}`])
      expect([heard, (await say({ heard })).status < 500]).toEqual([heard, true]);
  });

  it("as a key, a device or who holds the screen is a name like any other", async () => {
    expect((await say({ key: name, type: "hold" })).status).toBe(/^[\w.-]{8,80}$/.test(name) ? 200 : 422);
    const headers = { cookie: `device=${name}; as-${job}=${name}` };
    for (const path of ["", ".json", "/more", "/truck"]) expect(await get(`/jobs/${job}${path}`, headers)).toBe(200);
    const spoken = JSON.stringify({ as: "Ines", key: key(), seen: 2, alternatives: ["don't know"], talk: true });
    const post = { method: "POST", headers: { ...headers, "content-type": "application/json" }, body: spoken };
    expect((await world.app.request(`/jobs/${job}/say`, post)).status).toBe(200);
  });

  it("in an address is not found, or told to be wrong", async () => {
    for (const path of [
      `/jobs/${name}`,
      `/jobs/${name}.json`,
      `/jobs/${name}/record`,
      `/tents/${name}`,
      `/tents/${name}.json`,
      `/tents/${name}/edit`,
      `/drafts/${name}/tent`,
      `/jobs/${name}/facts`,
    ])
      expect([path, await get(path)]).toEqual([path, 404]);
    const asked = [
      "record?show=",
      "layout?units=",
      "layout?paper=",
      "layout?entry=",
      "time?people=",
      "truck?line=",
      "more?as=",
      "discrepancy?what=",
    ];
    const more = [
      "discrepancy?what=rings&edge=",
      "discrepancy?what=corner&corner=",
      "discrepancy?what=poleFewer&pole=",
      "amend?",
      "record?",
    ];
    for (const query of [...asked, ...more].map((q) => `/jobs/${job}/${q}${name}`))
      expect([query, (await get(query)) < 500]).toEqual([query, true]);
    for (const query of [
      `/tents/new?from=${name}`,
      `/jobs/${job}/facts?of=${name}`,
      `/drafts/new?tent=${name}`,
      `/jobs/new?tent=${name}`,
      `/jobs/new?${name}=1`,
      `/?${name}=1`,
    ])
      expect([query, (await get(query)) < 500]).toEqual([query, true]);
  });

  it("in a form's fields is refused, or not read at all", async () => {
    const answer = { type: "answer", gate: "kit.loaded" };
    const forms: [string, Record<string, string>][] = [
      ["say", { ...answer, kind: "counts", [`n.${name}`]: "3" }],
      ["say", { ...answer, kind: "lengths", [`ft.${name}`]: "3" }],
      ["say", { ...answer, kind: "lengths", length: name, value: "3" }],
      ["say", { ...answer, kind: "measure", unit: name, value: "3" }],
      ["say", { ...answer, kind: name, value: "3" }],
      ["say", { type: name, [name]: name }],
      ["truck", { item: name, gate: "kit.loaded", value: "3" }],
      ["truck", { item: "sidePole", gate: name, value: "3" }],
      ["discrepancy", { what: name, because: "counted" }],
      ["discrepancy", { what: "rings", edge: name, counted: "12", because: "counted" }],
      ["discrepancy", { what: "corner", corner: name, away: "3", toward: "3", because: "taped" }],
      ["discrepancy", { what: "poleFewer", pole: name, because: "gone" }],
      ["discrepancy", { what: "poleMore", kind: name, across: "3", along: "3", because: "more" }],
    ];
    for (const [path, fields] of forms)
      expect([fields, await form(`/jobs/${job}/${path}`, fields)]).toEqual([fields, expect.toBeOneOf([200, 303, 422])]);
    const tent = {
      "tent.widthFt": "20",
      [`tent.${name}`]: "1",
      [`tent.rings.${name}`]: "3",
      [`kit.${name}.spare`]: "5",
      "tent.ridge.kind": name,
    };
    const more = { name, title: name, "crew.1.name": name, "crew.1.role": name, "use.permit": name };
    for (const path of ["/jobs", "/tents", "/tents/preview", `/jobs/${job}/amend`])
      expect([path, await form(path, { ...tent, ...more })]).toEqual([path, expect.toBeOneOf([200, 303, 422])]);
  });

  it.each<[string, (b: ReturnType<typeof brief>) => object]>([
    ["itself", (b) => ({ ...b, [name]: 1 })],
    ["sheet", (b) => ({ ...b, sheet: { ...b.sheet, [name]: 1 } })],
    ["site", (b) => ({ ...b, site: { ...b.site, [name]: 1 } })],
    ["ticket", (b) => ({ ...b, ticket: { ...b.ticket, [name]: 1 } })],
    ["use", (b) => ({ ...b, use: { ...b.use, [name]: 1 } })],
    ["crew", (b) => ({ ...b, crew: b.crew.map((p) => ({ ...p, [name]: 1 })) })],
    ["tent", (b) => ({ ...b, tent: { ...b.tent, [name]: 1 } })],
    ["rings", (b) => ({ ...b, tent: { ...b.tent, rings: { [name]: 4 } } })],
    ["corner marks", (b) => ({ ...b, tent: { ...b.tent, shifted: { [name]: { xFt: 1, yFt: 0 } } } })],
    ["anchors", (b) => ({ ...b, tent: { ...b.tent, anchors: { [name]: { plates: 1, stakes: 1 } } } })],
    ["kit", (b) => ({ ...b, kit: { [name]: { spare: 0.05 } } })],
    ["notes on the kit", (b) => ({ ...b, kit: { sidePole: { [name]: 0.05 } } })],
  ])("as a field of a brief's %s is refused by name", async (_where, change) => {
    const told = await world.post("/jobs", { key: key(), brief: change(brief()) });
    const { fields } = (await told.json()) as Told;
    expect(told.status).toBe(422);
    const [field, sentence] = Object.entries(fields!)[0]!;
    expect(field).toMatch(new RegExp(`(^|\\.)${name}$`));
    expect(sentence).toContain(`"${name}" is not known`);
  });

  it.each<[string, (b: ReturnType<typeof brief>) => object]>([
    ["role", (b) => ({ ...b, crew: [...b.crew, { name: "Una", role: name }] })],
    ["utility", (b) => ({ ...b, ticket: { ...b.ticket, utilities: [{ kind: name, marked: true }] } })],
    ["order of poles", (b) => ({ ...b, sheet: { ...b.sheet, interiorOrder: name } })],
    ["street's edge", (b) => ({ ...b, site: { ...b.site, street: { edge: name, name: "Tansy Lane" } } })],
    ["pole left out", (b) => ({ ...b, tent: { ...b.tent, leaveOut: [name] } })],
    ["pole added", (b) => ({ ...b, tent: { ...b.tent, add: [{ kind: name, xFt: 12, yFt: 12 }] } })],
  ])("as a %s is refused", async (_what, change) => {
    expect((await world.post("/jobs", { key: key(), brief: change(brief()) })).status).toBe(422);
  });

  it("as the name of a person or of a tent is a name like any other", async () => {
    const crew = [...brief().crew, { name: "Wim", role: "watcher" }, { name, role: "crew" }];
    const proposed = await say({ type: "amend", because: name, brief: { ...brief(), title: name, crew } });
    expect((await say({ as: "Maren", type: "agree", target: proposed.body.entry })).status).toBe(200);
    expect((await say({ as: name, type: "hold" })).status).toBe(200);
    const { tent } = brief();
    const saved = await world.post("/tents", { key: key(), name, spec: tent });
    expect(saved.status).toBe(201);
    for (const body of [
      { name: "Blue", spec: tent, [name]: 1 },
      { name: "Blue", spec: { ...tent, [name]: 1 } },
      { name: "Blue", spec: tent, kit: { [name]: {} } },
    ])
      expect([body, (await world.post("/tents", { key: key(), ...body })).status]).toEqual([body, 422]);
  });
});

it("after all that, no page is broken, and the record of the job holds", async () => {
  const ask = { type: "answer", gate: "__proto__", value: { kind: "counts", n: { toString: 1 } } } as const;
  const from = { key: key(), seen: 1, as: "p1", device: "constructor", request: "0".repeat(64) } as const;
  await world.liveJobs.say(job, from, () => ({ intent: ask, source: "press", heard: null }));
  const paths = [...PAGES, ...MORE_PAGES, "/now", "/discrepancy"].map((page) => `/jobs/${job}${page}`);
  for (const path of [
    ...paths,
    "/",
    "/jobs.json",
    "/findings",
    "/findings.json",
    "/findings/jobs",
    "/findings/jobs.json",
    "/tents",
    "/tents.json",
  ])
    expect([path, await get(path)]).toEqual([path, 200]);
  expect(verifyJob(job, await world.journal.read(job)).mismatch).toBeNull();
});
