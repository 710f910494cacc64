import { beforeEach, describe, expect, it } from "vitest";
import { brief } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

type Told = { problem?: string; fields: Record<string, string>; reply?: string; reasons?: { why: string }[] };
let job: Awaited<ReturnType<typeof openedJob>>;
beforeEach(async () => {
  job = await openedJob();
});

let keys = 0;
const say = async (ask: object) => {
  const around = { as: "Ines", key: `bounds-${String(++keys).padStart(4, "0")}`, seen: (await job.entries()).length };
  const told = await job.post(`/jobs/${job.job}/say`, { ...around, ...ask });
  return { status: told.status, body: (await told.json()) as Told };
};
const answer = (value: object) => say({ type: "answer", gate: "sheet.atHand", value });
const form = async (path: string, fields: Record<string, string>) => {
  const told = await job.app.request(path, {
    method: "POST",
    headers: { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost", accept: "application/json" },
    body: new URLSearchParams(fields),
  });
  return { status: told.status, text: await told.text() };
};

describe("a number that nobody can mean is refused with its bounds, and nothing is recorded", () => {
  it.each<[object, string, string]>([
    [{ kind: "measure", n: 1e308, unit: "ft" }, "value.n", "1e+308 is out of range. From 0 to 10000 ft."],
    [{ kind: "measure", n: -1, unit: "ft" }, "value.n", "-1 is out of range. From 0 to 10000 ft."],
    [{ kind: "measure", n: 120_001, unit: "in" }, "value.n", "120001 is out of range. From 0 to 120000 in."],
    [{ kind: "measure", n: 3_000_001, unit: "mm" }, "value.n", "3000001 is out of range. From 0 to 3000000 mm."],
    [{ kind: "measure", n: 3001, unit: "m" }, "value.n", "3001 is out of range. From 0 to 3000 m."],
    [{ kind: "measure", n: 91, unit: "deg" }, "value.n", "91 is out of range. From -90 to 90 degrees."],
    [{ kind: "measure", n: 1e6, unit: "lbf" }, "value.n", "1000000 is out of range. From 0 to 100000 lb."],
    [{ kind: "count", n: 100_001 }, "value.n", "100001 is out of range. From 0 to 100000."],
    [{ kind: "count", n: -1 }, "value.n", "-1 is out of range. From 0 to 100000."],
    [{ kind: "figures", unit: "count", n: { AB: 1e9 } }, "value.n.AB", "1000000000 is out of range. From 0 to 100000."],
    [{ kind: "figures", unit: "in", n: { shortest: -1 } }, "value.n.shortest", "-1 is out of range. From 0 to 120000 in."],
    [{ kind: "counts", n: { sidePole: 1e9 } }, "value.n.sidePole", "1000000000 is out of range. From 0 to 100000."],
    [{ kind: "lengths", ft: { AB: 1e308 } }, "value.ft.AB", "1e+308 is out of range. From 0.1 to 1000 ft."],
  ])("%j", async (value, field, sentence) => {
    const { status, body } = await answer(value);
    expect([status, body.fields, (await job.entries()).length]).toEqual([422, { [field]: sentence }, 1]);
  });
  it.each<[object, Told["fields"]]>([
    [{ mph: 201 }, { mph: "201 is out of range. From 0 to 200 mph." }],
    [{ mph: 8, gustMph: 1e308 }, { gustMph: "1e+308 is out of range. From 0 to 200 mph." }],
    [{ mph: 18, gustMph: 12 }, { gustMph: "A gust of 12 mph is under its mean wind of 18 mph. Read it again." }],
    [{ mph: 8, fromDeg: 361 }, { fromDeg: "361 is out of range. From 0 to 360 degrees." }],
    [{ mph: 8, fromDeg: -1 }, { fromDeg: "-1 is out of range. From 0 to 360 degrees." }],
    [{ mph: 8, takenAt: "2026-13-45T10:00:00Z" }, { takenAt: '"2026-13-45T10:00:00Z" is not a time. Write it like 2026-06-01T07:00:00Z.' }],
  ])("a wind reading of %j", async (reading, fields) => {
    const { status, body } = await say({ type: "reading", kind: "wind", ...reading });
    expect([status, body.fields, (await job.entries()).length]).toEqual([422, fields, 1]);
  });
  it("as a gust under its mean in a form", async () => {
    const fields = { as: "p1", key: "bounds-form1", seen: "1", type: "reading", reading: "wind", mph: "18", gustMph: "12" };
    const { status, text } = await form(`/jobs/${job.job}/say`, fields);
    expect([status, text]).toEqual([422, expect.stringContaining("A gust of 12 mph is under its mean wind of 18 mph.")]);
    expect(await job.entries()).toHaveLength(1);
  });
  it("a gust that is its mean is a reading", async () => {
    expect((await say({ type: "reading", kind: "wind", mph: 12, gustMph: 12 })).body.reasons).toEqual([]);
  });
  it("said aloud it is refused with its bounds too", async () => {
    await job.to((s) => s.gate?.check.kind === "measure");
    const { body } = await say({ alternatives: ["nine hundred thousand feet"], talk: true });
    expect([body.reply, body.reasons?.[0]?.why]).toEqual([
      expect.stringMatching(/is out of range\. From 0 to \d+ (?:in|ft)\.$/),
      "unbelievable",
    ]);
  });
});

describe("a number of a brief that nobody can mean is refused with its bounds", () => {
  const b = brief();
  it.each<[string, object]>([
    ["sheet.stakeLengthIn", { sheet: { ...b.sheet, stakeLengthIn: 1e308 } }],
    ["sheet.raiseGustMph", { sheet: { ...b.sheet, raiseGustMph: 1e308 } }],
    ["site.overheadKv.0", { site: { ...b.site, overheadKv: [1e308] } }],
    ["ticket.toleranceIn", { ticket: { ...b.ticket, toleranceIn: 1e308 } }],
    ["use.occupants", { use: { ...b.use, occupants: 1e308 } }],
    ["tent.widthFt", { tent: { ...b.tent, widthFt: 1e308 } }],
    ["tent.lengthFt", { tent: { ...b.tent, lengthFt: 1e308, midsFt: null } }],
    ["tent.midsFt[0]", { tent: { ...b.tent, midsFt: [1e308, 1e308] } }],
    ["tent.centerPoleFt", { tent: { ...b.tent, centerPoleFt: 1e308 } }],
    ["tent.quarterRings", { tent: { ...b.tent, quarterRings: 1e308 } }],
    ["tent.ridge.count", { tent: { ...b.tent, ridge: { kind: "evenly", count: 1e308 } } }],
    ["tent.rings.AB", { tent: { ...b.tent, rings: { AB: 1e308 } } }],
    ["tent.shifted.A.xFt", { tent: { ...b.tent, shifted: { A: { xFt: 1e308, yFt: 0 } } } }],
    ["tent.anchors.corner.plates", { tent: { ...b.tent, anchors: { corner: { plates: 1e308, stakes: 1e308 } } } }],
    ["kit.sidePole.unitLb", { kit: { sidePole: { unitLb: 1e308 } } }],
    ["kit.sidePole.spare", { kit: { sidePole: { spare: 1e308 } } }],
  ])("%s", async (field, change) => {
    const told = await job.post("/jobs", { brief: { ...b, ...change } });
    const { fields } = (await told.json()) as Told;
    const sentence = Object.entries(fields).find(([name]) => name === field || field.startsWith(name))?.[1];
    expect([told.status, fields, sentence]).toEqual([422, fields, expect.stringMatching(/\d/)]);
    expect(JSON.stringify(fields)).not.toMatch(/Infinity|NaN/);
  });
});

it("no page shows a number that is none, whatever was sent", async () => {
  const odd = ["1e308", "1e-308", "-1e308", "9".repeat(400), "0x10", "1e999"];
  for (const n of odd.map(Number)) {
    for (const unit of ["in", "ft", "mm", "m", "deg", "lbf", "turns"]) await answer({ kind: "measure", n, unit });
    for (const value of [
      { kind: "count", n },
      { kind: "lengths", ft: { AB: n } },
      { kind: "counts", n: { sidePole: n } },
      { kind: "figures", unit: "count", n: { AB: n } },
    ])
      await answer(value);
    await say({ type: "reading", kind: "wind", mph: n, gustMph: n });
    await say({ type: "agree", target: n });
  }
  const shown: string[] = [];
  for (const n of odd) {
    const tent = { "tent.widthFt": n, "tent.lengthFt": n, "tent.midsFt": `${n}, ${n}`, "tent.centerPoleFt": n, "tent.shifted.A.xFt": n };
    for (const path of ["/tents/preview", "/drafts/preview", "/drafts", "/tents", "/jobs", `/jobs/${job.job}/amend`])
      shown.push((await form(path, { ...tent, "sheet.stakeLengthIn": n, "ticket.toleranceIn": n, "use.occupants": n, show: "plan" })).text);
    await say({ heard: n });
    await say({ heard: `wind ${n} gusting ${n}` });
    shown.push(JSON.stringify((await say({ heard: `right angle with a ${n} feet tape` })).body));
    const { job: id } = job;
    for (const query of ["time?people=", "layout?entry=", "time.json?people=", "discrepancy?what=rings&edge=AB&counted="])
      shown.push(await (await job.app.request(`/jobs/${id}/${query}${n}`)).text());
    shown.push(await (await job.app.request(`/tents/new?width=${n}&length=${n}`)).text());
  }
  for (const page of ["", ".json", "/record", "/record.json", "/record.csv", "/truck", "/time", "/layout", "/plan"])
    shown.push(await (await job.app.request(`/jobs/${job.job}${page}`)).text());
  for (const text of shown) expect(text.match(/.{0,60}\b(?:Infinity|NaN)\b.{0,60}/)?.[0]).toBeUndefined();
});
