import { beforeEach, describe, expect, it } from "vitest";
import { NOTHING_TOLD } from "../../machines/install/anchorage.ts";
import { brief, testApp } from "../support/app.ts";

const TOLD = { ...NOTHING_TOLD, gustMph: 60, exposure: "C", underRoof: "clear" };
const PULLED = {
  "anchorage.pulls.0.lbf": "1,120",
  "anchorage.pulls.0.direction": "alongStrap",
  "anchorage.pulls.0.softestSpot": "no",
  "anchorage.pulls.2.lbf": "640",
  "anchorage.pulls.2.softestSpot": "yes",
};
let world: ReturnType<typeof testApp>;
let job: string;
const opened = async (more: object) => {
  world = testApp();
  const answer = await world.post("/jobs", { key: "open-00001", brief: { ...brief(), use: { ...brief().use, walls: false }, ...more } });
  job = ((await answer.json()) as { job: string }).job;
};
const as = (person: string) => ({
  cookie: `device=phone-of-${person}; as-${job}=${person}`,
  origin: "http://localhost",
  accept: "text/html",
});
const page = async (person = "p1") => await (await world.app.request(`/jobs/${job}/anchors`, { headers: as(person) })).text();
const post = async (fields: Record<string, string>) => {
  const body = new URLSearchParams({ key: "anchors-01", ...fields });
  const answer = await world.app.request(`/jobs/${job}/anchors`, { method: "POST", body, headers: as("p1") });
  return { status: answer.status, html: await answer.text() };
};
const proposed = async () => {
  const { entry } = (await world.liveJobs.load(job)).entries.at(-1)!;
  return entry.kind === "command" && entry.command.type === "amend" ? entry.command.to.brief.anchorage : null;
};
beforeEach(() => opened({ anchorage: TOLD }));

describe("ratios on the drawing", () => {
  const SHORT = { anchorage: { ...TOLD, pulls: [1120, 980, 640].map((lbf, i) => ({ lbf, direction: "alongStrap", softestSpot: i === 2 })), rainSincePulls: false } }; // biome-ignore format: one line reads best
  const shown = async (path: string) => (await world.app.request(`/jobs/${job}/${path}`, { headers: as("p1") })).text();
  it("stand on the page of the anchors, on the layout and in its file, with what they are", async () => {
    await opened(SHORT);
    for (const html of [await page(), await shown("layout"), await shown("layout.svg")])
      for (const text of ["drawn-ratio is-short", "Over 1 is short.", "A screening. It passes no anchor"]) expect(html).toContain(text);
  });
  it("say 'or more' where the ground is not known, and never stand alone", async () => {
    const notTold = { ...SHORT.anchorage, pulls: SHORT.anchorage.pulls.map((pull) => ({ ...pull, lbf: 5000 })), rainSincePulls: null };
    await opened({ anchorage: notTold });
    const [anchors, layout, file] = [await page(), await shown("layout"), await shown("layout.svg")];
    for (const html of [anchors, layout, file]) {
      const ratios = [...html.matchAll(/<g class="drawn-ratio is-not-known".*?<text[^>]*>([^<]*)<\/text>/gs)].map((m) => m[1]!);
      expect(ratios.length).toBeGreaterThan(4);
      for (const ratio of ratios) expect(ratio).toMatch(/^0\.\d\d or more$/);
    }
    expect(anchors).toMatch(/Worst: \w+\. Load over what a stake may be counted for: 0\.\d\d or more\./);
    expect(anchors).toMatch(/<li><b>AB1<\/b> 0\.\d\d or more <span>Not known<\/span>/);
  });
  it("are none where no ratio is known, or nobody told anything of the anchors", async () => {
    expect(await shown("layout")).not.toContain("drawn-ratio");
    await opened({});
    expect(await shown("layout")).not.toContain("drawn-ratio");
  });
});

describe("ways to the page of the anchors", () => {
  const to = () => `href="/jobs/${job}/anchors"`;
  const linked = async (path: string) =>
    (await (await world.app.request(`/jobs/${job}${path}`, { headers: as("p1") })).text()).includes(to());
  it("lead there from the tent's page, the layout and this site", async () => {
    expect(await Promise.all(["/tent", "/layout", "/site"].map(linked))).toEqual([true, true, true]);
  });
  it("is none on a layout whose anchors nobody told anything of", async () => {
    await opened({});
    expect(await linked("/layout")).toBe(false);
  });
});

describe("the page of the anchors", () => {
  it("says what isn't known and what to do, and both pressures", async () => {
    const html = await page();
    for (const text of ["Not known", "Tell what is missing, below.", "By EN 13782: 12.54 psf", "A figure from memory may shut a gate."])
      expect(html).toContain(text);
  });
  it("says that nothing is screened where nobody told anything", async () => {
    await opened({});
    expect(await page()).toContain("They are not screened.");
  });
  it("has no form for who may not change the plan", async () => {
    expect(await page("p4")).not.toContain("Put it to a second person");
  });
  it("puts pulls forward for a second person, with rows closed up and thousands read", async () => {
    expect((await post({ ...PULLED, "anchorage.pulls.2.direction": "alongStrap", "anchorage.gustMph": "60" })).status).toBe(303);
    expect((await proposed())?.pulls).toEqual([
      { lbf: 1120, direction: "alongStrap", softestSpot: false },
      { lbf: 640, direction: "alongStrap", softestSpot: true },
    ]);
  });
  it("takes the anchors away where all fields are emptied", async () => {
    await post({ "anchorage.gustMph": "" });
    expect(await proposed()).toBeUndefined();
  });
  it("shows what a change would do before it is put forward", async () => {
    expect(
      (await post({ show: "changes", "anchorage.gustMph": "40", "anchorage.exposure": "C", "anchorage.underRoof": "clear" })).html,
    ).toContain("LOOSER ON ANCHORS. Design gust, mph: 40; was 60.");
    expect(await proposed()).toBeNull();
  });
  it("refuses a pull without a direction and gusts of 900 and −5 with the limits, and loses nothing that was typed", async () => {
    const { status, html } = await post({ ...PULLED, "anchorage.gustMph": "900", "anchorage.elevationFt": "high" });
    expect(status).toBe(422);
    for (const text of [
      "900 mph is out of range. From 0 mph to 200 mph.",
      "This pull has no direction.",
      "&quot;high&quot; is not a number",
      'value="640"',
    ])
      expect(html).toContain(text);
    expect((await post({ "anchorage.gustMph": "-5" })).html).toContain("-5 mph is out of range. From 0 mph to 200 mph.");
    expect(await proposed()).toBeNull();
  });
  it("refuses more pulls than anybody makes", async () => {
    const many = Array.from({ length: 201 }, (_, i) => [`anchorage.pulls.${i}.lbf`, "640"]);
    expect((await post(Object.fromEntries(many))).html).toContain("201 are too many. At most 200.");
  });
});
