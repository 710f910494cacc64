import { beforeAll, describe, expect, it } from "vitest";
import type { Role } from "../../machines/install/brief.ts";
import { ROLES } from "../../machines/install/roles.ts";
import { DOORS, doorName } from "../../server/access/doors.ts";
import { testApp } from "../support/app.ts";
import { brief } from "../support/briefs.ts";
import { type Guarded, guardedApp } from "../support/guarded.ts";

const PEOPLE: Readonly<Record<Role, string>> = {
  lead: "p1",
  deputy: "p2",
  competent: "p3",
  crew: "p4",
  trainee: "p5",
  manager: "p6",
  watcher: "p7",
  siteOwner: "p8",
};
const crew = ROLES.map((role) => ({ name: `${role} here`, role }));

/** What each may open, by hand: not from the table that is tested. */
const EVERYBODY = "/ /phone /phone/clock.json /phone/sayable.json /join /office/in /trust /hand-work /manifest.webmanifest".split(" ");
const ON_THE_JOB =
  "more words settings phone people wind weather air call picture answers weather-plan anchors site site/lines site/drawing.svg now drawing photos photos.json sayable.json".split(
    " ",
  );
const OF_THE_SITE =
  "tent trouble stand-down change plan plan.json layout layout.svg layout.dxf layout.json marks.csv truck truck.json truck.csv time time.json learn rehearse record record.json record.csv".split(
    " ",
  );
const FOR_THE_OFFICE =
  "/findings /office /learning /drafts /drafts/new /firm/people /tents /tents.json /tents/new /jobs.json /findings.json".split(" ");

let site: Guarded;
let job: string;
let codes: { crew: string; leads: string };
beforeAll(async () => {
  site = await guardedApp();
  ({ job, codes } = await site.openJob({ ...brief(), crew }));
});

const status = async (phone: { get: (path: string) => Promise<Response> }, path: string) => (await phone.get(path)).status;
/** Turned away: refused, or led to where one gets in. */
const isShut = (code: number) => code === 403 || code === 303;

it("every way into the program stands in the table of doors, and nothing else does", () => {
  const { app } = testApp();
  const ways = new Set(app.routes.filter(({ method }) => method !== "ALL").map(({ method, path }) => doorName(method, path)));
  expect([...ways].filter((way) => !(way in DOORS))).toEqual([]);
  expect(Object.keys(DOORS).filter((way) => !ways.has(way))).toEqual([]);
});

describe("a phone that never joined", () => {
  it.each(EVERYBODY)("opens %s", async (path) => expect(await status(site.browser(), path)).toBe(200));
  it.each(FOR_THE_OFFICE)("is turned away at %s", async (path) => expect(isShut(await status(site.browser(), path))).toBe(true));
  it.each(["", ...ON_THE_JOB.map((page) => `/${page}`), ...OF_THE_SITE.map((page) => `/${page}`), ".json", "/codes", "/amend"])(
    "is turned away at a job's %s",
    async (page) => expect(isShut(await status(site.browser(), `/jobs/${job}${page}`))).toBe(true),
  );
  it("hears of no job at home, and is led from a job to where its code is asked for", async () => {
    const phone = site.browser();
    expect(await phone.text("/")).not.toContain("harvest supper");
    const led = await phone.get(`/jobs/${job}`);
    expect([led.status, led.headers.get("location")]).toEqual([303, `/join?job=${job}`]);
  });
});

describe.each(ROLES)("a %s on the job", (role) => {
  let phone: ReturnType<Guarded["browser"]>;
  beforeAll(async () => {
    phone = await site.joined(job, codes.leads, PEOPLE[role]);
  });
  const onSite = role !== "watcher" && role !== "siteOwner";

  it.each(ON_THE_JOB)("sees the guide's %s from the start, or once the tent stands", async (page) =>
    expect(await status(phone, `/jobs/${job}/${page}`)).toBe(onSite ? 200 : 403),
  );
  it.each(OF_THE_SITE)("sees the site's %s, or watches only", async (page) =>
    expect(await status(phone, `/jobs/${job}/${page}`)).toBe(onSite ? 200 : 403),
  );
  it.each(["amend", "facts", "discrepancy", "site/import", "site/place"])(
    "sees what is changed at %s, or leaves it to those who lead",
    async (page) =>
      expect(await status(phone, `/jobs/${job}/${page}`)).toBe(["lead", "deputy", "competent", "manager"].includes(role) ? 200 : 403),
  );
  it("learns on the job, or only watches", async () => {
    for (const [path, done] of [
      ["learn", 303],
      ["learn/questions", 404],
      ["learn/aside", 409],
    ] as const) {
      const { status: code } = await phone.post(`/jobs/${job}/${path}`, { round: "none", no: "0", id: "none" });
      expect(code, path).toBe(onSite ? done : 403);
    }
    expect(await status(phone, `/jobs/${job}/learn/questions?round=none`)).toBe(onSite ? 404 : 403);
  });
  it("hands out codes, or leaves it to those who lead", async () =>
    expect(await status(phone, `/jobs/${job}/codes`)).toBe(["lead", "deputy", "manager"].includes(role) ? 200 : 403));
  it.each(FOR_THE_OFFICE)("is turned away at the office's %s", async (path) => expect(isShut(await status(phone, path))).toBe(true));
});

describe("the office", () => {
  let office: ReturnType<Guarded["browser"]>;
  beforeAll(async () => {
    office = site.browser();
    await office.signIn();
  });
  it.each([...FOR_THE_OFFICE, ...EVERYBODY])("opens %s", async (path) => expect(await status(office, path)).toBe(200));
  it.each(["", ...OF_THE_SITE.map((page) => `/${page}`), "/amend", "/codes"])("opens a job's %s", async (page) =>
    expect(await status(office, `/jobs/${job}${page}`)).toBe(200),
  );
  it("is out again once it signs out", async () => {
    const desk = site.browser();
    await desk.signIn();
    await desk.post("/office/out", {});
    expect(isShut(await status(desk, "/findings"))).toBe(true);
  });
});
