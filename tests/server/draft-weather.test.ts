import { beforeEach, describe, expect, it } from "vitest";
import { testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { WEATHER_PLAN } from "../support/weather-plan.ts";

type Typed = Readonly<Record<string, string>>;
const PLAN = Object.fromEntries(Object.entries(WEATHER_PLAN).map(([key, is]) => [`weatherPlan.${key}`, String(is)]));
const FORECAST: Typed = {
  "forecast.gustMph": "28",
  "forecast.from": "2026-06-06T14:00",
  "forecast.to": "2026-06-06T22:00",
  "forecast.issuedBy": "the weather service",
  "forecast.readAt": "2026-06-02T08:00",
};
const STEPS: readonly (readonly [string, Typed])[] = [
  ["sheet", { "sheet.document": "RC-1 A", "sheet.stakeKind": "steel pin", "sheet.stakeSize": "1 x 42", "sheet.stopGustMph": "27" }],
  ["site", { "site.address": "Gate 3" }],
  ["ticket", { zone: "America/Chicago", go: "unknown" }],
];

let world: ReturnType<typeof testApp>;
let draft: string;
const send = (path: string, fields: Typed) =>
  world.app.request(path, {
    method: "POST",
    body: new URLSearchParams(fields),
    headers: { origin: "http://localhost", cookie: "device=phone-of-ines" },
  });
const html = async (path: string) => (await (await world.app.request(path)).text()).replaceAll("&#39;", "'");
const type = async (step: string, typed: Typed) => send(`${draft}/${step}`, { ...filled(await html(`${draft}/${step}`)), ...typed });

beforeEach(async () => {
  world = testApp();
  const begun = await send("/drafts", { "tent.widthFt": "20", "tent.lengthFt": "20" });
  draft = `/drafts/${begun.headers.get("location")!.split(/[/?]/)[2]}`;
  for (const [step, typed] of STEPS) await type(step, typed);
});

describe("the weather plan and the forecast of a draft", () => {
  it("are reached from its last step, which keeps what was typed there", async () => {
    const to = (await type("crew", { "crew.1.name": "Ines", "crew.1.role": "lead", go: "weather" })).headers.get("location");
    expect([to, (await html(`${draft}/crew`)).includes("Ines is on it")]).toEqual([`${draft}/weather-plan`, true]);
  });
  it("are held against the sheet on its last look", async () => {
    await send(`${draft}/weather-plan`, { ...PLAN, ...FORECAST });
    expect(await html(`${draft}/crew`)).toContain("Over the limit of 27 mph: it has to be empty before that.");
  });
  it("are kept as they were typed", async () => {
    await send(`${draft}/weather-plan`, { ...PLAN, ...FORECAST });
    expect(filled(await html(`${draft}/weather-plan`))).toMatchObject({ ...PLAN, ...FORECAST });
  });
  it("are refused with the limit, and nothing of them is kept", async () => {
    const refused = await send(`${draft}/weather-plan`, { ...PLAN, ...FORECAST, "forecast.gustMph": "900" });
    const says = (await refused.text()).replaceAll("&#39;", "'").includes("A gust of 900 mph can't be right. From 0 to 250 mph.");
    expect([refused.status, says, (await html(`${draft}/crew`)).includes("Over the limit")]).toEqual([422, true, false]);
  });
  it("go with the address that they were told for", async () => {
    await send(`${draft}/weather-plan`, { ...PLAN, ...FORECAST });
    await type("site", { "site.address": "Gate 9" });
    expect(await html(`${draft}/crew`)).not.toContain("Over the limit");
  });
  it("are part of the job once it is opened, times local to its zone", async () => {
    await send(`${draft}/weather-plan`, { ...PLAN, ...FORECAST });
    const crew = { "crew.1.name": "Ines", "crew.1.role": "lead", "crew.2.name": "Tobias", "crew.2.role": "deputy" };
    const job = (await type("crew", crew)).headers.get("location")!.split("/").at(-1)!;
    const { weatherPlan, forecast } = (await world.liveJobs.load(job)).job.frozen.brief;
    expect([weatherPlan, forecast?.from]).toEqual([WEATHER_PLAN, Date.parse("2026-06-06T14:00-05:00")]);
  });
});
