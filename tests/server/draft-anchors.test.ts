import { beforeEach, describe, expect, it } from "vitest";
import { testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";

type Typed = Readonly<Record<string, string>>;
const SHEET: Typed = { "sheet.document": "RC-1 A", "sheet.stakeKind": "steel pin", "sheet.stakeSize": "1 x 42" };
const ANCHORS: Typed = { "anchorage.gustMph": "60", "anchorage.soil": "clayPoor", "anchorage.pulls.0.lbf": "1,120", "anchorage.pulls.0.direction": "alongStrap", "anchorage.pulls.0.softestSpot": "yes" }; // biome-ignore format: one line reads best
const REST: readonly (readonly [string, Typed])[] = [
  ["site", { "site.address": "Gate 3", "site.rallyPoint": "gate 3", "site.stormShelter": "barn", "site.firstAid": "cab" }],
  ["ticket", { zone: "America/Chicago", go: "unknown" }],
  ["crew", { "crew.1.name": "Ines", "crew.1.role": "lead", "crew.2.name": "Tobias", "crew.2.role": "deputy" }],
];

let world: ReturnType<typeof testApp>;
let draft: string;
const send = (path: string, fields: Typed) =>
  world.app.request(path, {
    method: "POST",
    body: new URLSearchParams(fields),
    headers: { origin: "http://localhost", cookie: "device=phone-of-ines" },
  });
const html = async (path: string) => (await world.app.request(path)).text();
const type = async (step: string, typed: Typed) => send(`${draft}/${step}`, { ...filled(await html(`${draft}/${step}`)), ...typed });
const told = async () => filled(await html(`${draft}/anchors`))["anchorage.gustMph"];

beforeEach(async () => {
  world = testApp();
  const begun = await send("/drafts", { "tent.widthFt": "20", "tent.lengthFt": "20" });
  draft = `/drafts/${begun.headers.get("location")!.split(/[/?]/)[2]}`;
});

describe("the anchors of a draft", () => {
  it("are reached from its sheet, which keeps what was typed there", async () => {
    const to = (await type("sheet", { ...SHEET, go: "anchors" })).headers.get("location");
    expect([to, filled(await html(`${draft}/sheet`))["sheet.document"]]).toEqual([`${draft}/anchors`, "RC-1 A"]);
  });
  it("are kept as they were typed, and lead back to the sheet", async () => {
    expect((await send(`${draft}/anchors`, ANCHORS)).headers.get("location")).toBe(`${draft}/sheet`);
    expect(filled(await html(`${draft}/anchors`))).toMatchObject({ ...ANCHORS, "anchorage.pulls.0.lbf": "1120" });
  });
  it("are refused with the limit, and nothing of them is kept or lost", async () => {
    const answer = await send(`${draft}/anchors`, { ...ANCHORS, "anchorage.gustMph": "900" });
    const page = await answer.text();
    expect([answer.status, page.includes("900 mph is out of range. From 0 mph to 200 mph."), page.includes('value="1,120"')]).toEqual([422, true, true]); // biome-ignore format: one line reads best
    expect(await told()).toBe("");
  });
  it("go where all of them are emptied", async () => {
    await send(`${draft}/anchors`, ANCHORS);
    await send(`${draft}/anchors`, { "anchorage.gustMph": "" });
    expect(await told()).toBe("");
  });
  it.each([
    ["sheet", { "sheet.document": "RC-2 B" }],
    ["site", { "site.address": "Gate 9" }],
  ] as const)("go with another %s", async (step, other) => {
    for (const [at, typed] of [["sheet", SHEET], REST[0]!] as const) await type(at, typed);
    await send(`${draft}/anchors`, ANCHORS);
    await type(step, other);
    expect(await told()).toBe("");
  });
  it("are in the brief of the job that it becomes", async () => {
    await type("sheet", SHEET);
    await send(`${draft}/anchors`, ANCHORS);
    let answer = await type(...REST[0]!);
    for (const [step, typed] of REST.slice(1)) answer = await type(step, typed);
    const { brief } = (await world.liveJobs.load(answer.headers.get("location")!.split("/").at(-1)!)).job.frozen;
    expect(brief.anchorage).toMatchObject({
      gustMph: 60,
      soil: "clayPoor",
      pulls: [{ lbf: 1120, direction: "alongStrap", softestSpot: true }],
    });
  });
});
