import { beforeAll, describe, expect, it } from "vitest";
import { brief, MORNING, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { WEATHER_PLAN } from "../support/weather-plan.ts";

const forecast = { gustMph: 34, from: "2026-06-06T14:00", to: "2026-06-06T22:00", issuedBy: "the weather service", readAt: "2026-06-02" };
let world: ReturnType<typeof testApp>;
beforeAll(() => {
  world = testApp();
});
const refusedOver = async (more: object) => {
  const answered = await world.post("/jobs", { key: "open-00001", brief: { ...brief(), ...more } });
  return [answered.status, JSON.stringify(((await answered.json()) as { fields: object }).fields)] as const;
};

describe("a brief with a weather plan or a forecast that cannot be right is refused with the limit", () => {
  it.each([
    [{ weatherPlan: { ...WEATHER_PLAN, clearMin: -5 } }, "-5 min is out of range. From 1 to 120 min."],
    [{ weatherPlan: { ...WEATHER_PLAN, readWindyMin: 15, readEveryMin: 10 } }, "Every 15 min is no shorter than every 10 min."],
    [{ weatherPlan: { ...WEATHER_PLAN, watchedBy: "nobody" } }, "is not one of: watcher, lead"],
    [{ weatherPlan: { ...WEATHER_PLAN, lowerMin: undefined } }, "Nothing is given here"],
    [{ forecast: { ...forecast, gustMph: 900 } }, "A gust of 900 mph can't be right. From 0 to 250 mph."],
    [{ forecast: { ...forecast, to: "2026-06-06T10:00" } }, "before it begins Sat 6 Jun 14:00"],
    [{ forecast: { ...forecast, to: "2026-07-06" } }, "Longer than 14 days"],
    [{ forecast: { ...forecast, clearBy: "2026-06-06T15:00" } }, "is after the wind begins"],
    [{ forecast: { ...forecast, from: "saturday" } }, "is not a date"],
  ])("%j", async (more, says) => {
    const [status, fields] = await refusedOver(more);
    expect([status, fields]).toEqual([422, expect.stringContaining(says)]);
  });
});

describe("the weather plan of a job", () => {
  let job: OpenedJob;
  const as = (person: string, more = {}) => ({
    origin: "http://localhost",
    cookie: `device=phone-of-${person}; as-${job.job}=${person}`,
    ...more,
  });
  const shown = async (person = "p1") => (await world.app.request(`/jobs/${job.job}/weather-plan`, { headers: as(person) })).text();
  const sent = async (fields: Record<string, string>) =>
    world.app.request(`/jobs/${job.job}/weather-plan`, {
      method: "POST",
      headers: as("p1", { "content-type": "application/x-www-form-urlencoded" }),
      body: new URLSearchParams({ key: "plan-00001", ...fields }).toString(),
    });
  const fields = Object.fromEntries(Object.entries(WEATHER_PLAN).map(([key, is]) => [`weatherPlan.${key}`, String(is)]));
  beforeAll(async () => {
    job = await openedJob(brief(), world);
  });

  it("is chosen in so few letters that none is cut on a phone", async () => {
    const options = [...(await shown()).matchAll(/<option value="\w+"[^>]*>([^<]+)</g)].map(([, text]) => text!.replaceAll("&#39;", "'"));
    expect(options.filter((text) => text.length > 26)).toEqual([]);
    expect(options.length).toBeGreaterThan(15);
  });
  it("says that there is none, and asks for it", async () => expect(await shown()).toContain("There is no weather plan yet."));
  it("is not put forward with nothing filled in", async () => {
    const answered = await sent({});
    expect([answered.status, (await answered.text()).includes("Nothing is filled in.")]).toEqual([422, true]);
  });
  it("names the field that is wrong, with its limit, and keeps what was typed", async () => {
    const html = await (await sent({ ...fields, "weatherPlan.clearMin": "-5" })).text();
    expect([html.includes("-5 min is out of range. From 1 to 120 min."), html.includes('value="60"')]).toEqual([true, true]);
    expect(html).toContain("Look beside the fields.");
  });
  it("is put forward, agreed to by a second person, and shown with its gusts", async () => {
    await sent({
      ...fields,
      "forecast.gustMph": "34",
      ...Object.fromEntries(Object.entries(forecast).map(([k, is]) => [`forecast.${k}`, String(is)])),
    });
    const target = (await job.entries()).at(-1)!.entry.no;
    await job.say({ type: "agree", target }, "p2");
    const html = await shown("p2");
    const says = ["15 mph", "20 mph", "25 mph", "Clearing takes 15 min, lowering 60 min.", "Over the limit of 25 mph", "the brick barn"];
    expect(says.filter((text) => !html.includes(text))).toEqual([]);
  });
  it("stays where another change says nothing of it", async () => {
    const { brief } = (await world.liveJobs.load(job.job)).job.frozen;
    expect([brief.weatherPlan, brief.forecast?.from]).toEqual([WEATHER_PLAN, MORNING + 4 * 24 * 3_600_000 + 7 * 3_600_000]);
  });
});

describe("the guide of a tent that stands by a plan", () => {
  it("shows the gusts with what is done at each, and when the wind is to be read again", async () => {
    const job = await openedJob({ ...brief(), weatherPlan: WEATHER_PLAN }, testApp());
    await job.to((s) => s.step === "watch");
    const { watch } = await job.read();
    expect(watch!.levels.map(({ does }) => does)).toEqual([
      "Read more often. Tell the customer's person.",
      "Music down, say where to go, exits clear.",
      "Everybody out. Nobody near the tent.",
    ]);
    job.clock.pass(45 * 60);
    expect((await job.read()).watch!.due!.is).toBe("loud");
  });
  it("shows the newer wind of who watches beside the old one of the crew, each with its own age", async () => {
    const crew = [...brief().crew, { name: "Ulla", role: "watcher" }];
    const job = await openedJob({ ...brief(), crew, weatherPlan: WEATHER_PLAN }, testApp());
    await job.to((s) => s.step === "watch");
    const before = (await job.read()).weather;
    job.clock.pass(66 * 60);
    await job.say({ type: "reading", reading: { kind: "wind", mph: 3, gustMph: 5, fromDeg: null, takenAt: job.now(), place: null } }, "p8");
    job.clock.pass(2 * 60);
    const { reading, watched } = (await job.read()).weather;
    expect([before.watched, reading, watched]).toEqual([
      null,
      "6 gust 9, too old",
      { short: "Watch: 3 gust 5, 2 min", words: "The watch read 3 gusting 5 mph, 2 min ago" },
    ]);
    for (const [page, says] of [
      ["", "Watch: 3 gust 5, 2 min"],
      ["/wind", "The watch read 3 gusting 5 mph, 2 min ago."],
    ] as const)
      expect(await (await job.app.request(`/jobs/${job.job}${page}`)).text()).toContain(says);
  });
  it("shows the hour agreed for clearing it, until the wind that it is for is over, with a plan or without", async () => {
    const job = await openedJob({ ...brief(), forecast: { ...forecast, to: "2026-06-06T16:00", clearBy: "2026-06-06T13:00" } }, testApp());
    await job.to((s) => s.step === "watch");
    const { watch } = await job.read();
    job.clock.pass(Math.ceil((Date.UTC(2026, 5, 6, 18, 30) - job.now()) / 1000));
    const come = (await job.read()).watch;
    job.clock.pass(5 * 24 * 3600);
    expect([watch, come, (await job.read()).watch]).toEqual([
      { due: null, levels: [], clearBy: "Agreed: everybody out by Sat 6 Jun 13:00." },
      { due: null, levels: [], clearBy: "Everybody out now, nobody in: agreed for Sat 6 Jun 13:00." },
      null,
    ]);
  });
});
