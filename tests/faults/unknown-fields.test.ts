import { describe, expect, it } from "vitest";
import { nearestName } from "../../machines/lookup/nearest.ts";
import { brief, testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

type Told = { fields: Record<string, string> };
const world = testApp();
const b = brief();

describe("a field of a brief that is not known is refused by name, with the nearest one", () => {
  it.each<[string, string, object, string]>([
    ["sheet.embedmentin", "embedmentIn", { sheet: { ...b.sheet, embedmentin: 36 } }, "embedmentin"],
    ["sheet.raiseGustMpH", "raiseGustMph", { sheet: { ...b.sheet, raiseGustMpH: 15 } }, "raiseGustMpH"],
    ["ticket.tolerance", "toleranceIn", { ticket: { ...b.ticket, tolerance: 36 } }, "tolerance"],
    ["site.overheadKV", "overheadKv", { site: { ...b.site, overheadKV: [12] } }, "overheadKV"],
    ["use.occupant", "occupants", { use: { ...b.use, occupant: 900 } }, "occupant"],
    ["crew.0.rol", "role", { crew: b.crew.map((p, i) => (i === 0 ? { ...p, rol: "crew" } : p)) }, "rol"],
    ["rehersal", "rehearsal", { rehersal: true }, "rehersal"],
    ["tent.leaveout", "leaveOut", { tent: { ...b.tent, leaveout: ["C2"] } }, "leaveout"],
    ["tent.shifted.A.xft", "xFt", { tent: { ...b.tent, shifted: { A: { xft: 1, yFt: 0 } } } }, "xft"],
    ["tent.anchors.corner.stake", "stakes", { tent: { ...b.tent, anchors: { corner: { plates: 2, stakes: 6, stake: 8 } } } }, "stake"],
    ["tent.add[0].xft", "xFt", { tent: { ...b.tent, add: [{ kind: "quarter", xFt: 12, yFt: 50, xft: 3 }] } }, "xft"],
    ["kit.sidePole.spares", "spare", { kit: { sidePole: { spares: 0.1 } } }, "spares"],
    ["kit.sidepole", "sidePole", { kit: { sidepole: { spare: 0.1 } } }, "sidepole"],
  ])("%s: did you mean %s?", async (field, nearest, change, name) => {
    const told = await world.post("/jobs", { key: "unknown-0001", brief: { ...b, ...change } });
    expect(told.status).toBe(422);
    expect(((await told.json()) as Told).fields).toEqual({ [field]: `"${name}" is not known; did you mean ${nearest}?` });
    expect(await world.journal.folds()).toEqual([]);
  });
  it("with none near, it names those that are known", async () => {
    const told = await world.post("/jobs", { brief: { ...b, use: { ...b.use, weather: "fine" } } });
    const known = "occupants, permit, fabricCertificate, walls, hungLoads";
    expect(((await told.json()) as Told).fields).toEqual({ "use.weather": `"weather" is not known. Known here: ${known}.` });
  });
  it("beside the brief as well", async () => {
    const told = await world.post("/jobs", { keys: "unknown-0001", brief: b });
    expect([told.status, ((await told.json()) as Told).fields]).toEqual([422, { keys: '"keys" is not known; did you mean key?' }]);
  });
});

describe("a field of what is said that is not known is refused by name", () => {
  it.each<[string, object, Told["fields"]]>([
    ["a gust", { type: "reading", kind: "wind", mph: 9, gustMpH: 30 }, { gustMpH: '"gustMpH" is not known; did you mean gustMph?' }],
    [
      "an answer",
      { type: "answer", gate: "soil", value: { kind: "yesNo", yes: true, by: "x" } },
      { "value.by": '"by" is not known. Known here: kind, yes.' },
    ],
    ["a word", { type: "next", sene: 3 }, { sene: '"sene" is not known; did you mean seen?' }],
    ["words", { heard: "next", tallk: true }, { tallk: '"tallk" is not known. Known here: heard, as, key, seen.' }],
    ["speech", { alternatives: ["next"], tallk: true }, { tallk: '"tallk" is not known; did you mean talk?' }],
  ])("%s", async (_what, ask, fields) => {
    const job = await openedJob();
    const told = await job.post(`/jobs/${job.job}/say`, { as: "Ines", key: "unknown-0001", seen: 1, ...ask });
    expect([told.status, ((await told.json()) as Told).fields, (await job.entries()).length]).toEqual([422, fields, 1]);
  });
  it("an amendment's brief as well", async () => {
    const job = await openedJob();
    const changed = { ...b, sheet: { ...b.sheet, embedmentin: 12 } };
    const told = await job.post(`/jobs/${job.job}/say`, {
      as: "Ines",
      key: "unknown-0001",
      seen: 1,
      type: "amend",
      because: "why not",
      brief: changed,
    });
    expect([told.status, Object.keys(((await told.json()) as Told).fields)]).toEqual([422, ["sheet.embedmentin"]]);
  });
});

it("a tent's body takes what the list gives, and no other field", async () => {
  const saved = await world.post("/tents", { key: "tent-00001", name: "Blue", spec: b.tent });
  const given = (await saved.json()) as { id: string };
  const again = await world.post("/tents", { ...given, name: "Green" });
  expect(again.status).toBe(201);
  const wrong = await world.post("/tents", { name: "Red", spec: b.tent, kti: {} });
  expect([wrong.status, ((await wrong.json()) as Told).fields]).toEqual([422, { kti: '"kti" is not known; did you mean kit?' }]);
});

describe("the nearest name", () => {
  it.each([
    ["embedmentin", ["soil", "embedmentIn"], "embedmentIn"],
    ["tol", ["toleranceIn", "utilities"], null],
    ["x", ["y"], null],
    ["raiseGust", ["raiseGustMph", "stopGustMph"], "raiseGustMph"],
    ["", ["a"], null],
  ])("of %j among %j is %j", (name, known, nearest) => expect(nearestName(name, known)).toBe(nearest));
});
