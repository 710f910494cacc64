import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { shownDigest } from "../../machines/digest/short-digest.ts";
import { roundOf } from "../../machines/rehearsal/round.ts";
import { createHouse } from "../../server/house.ts";
import { readBrief } from "../../server/input/brief.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import type { FindingsState } from "../../views/pages/findings/state.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { en } from "../../views/text/en/en.ts";
import { brief, MORNING, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { scriptTexts, textsOf } from "../support/page-text.ts";
import { PICTURES, photoForm } from "../support/photos.ts";
import { outsideMarks, pseudoLanguage } from "../support/pseudo-language.ts";
import { readCsv } from "../support/read-csv.ts";
import type { Stand } from "../support/stand.ts";
import { WEATHER_PLAN } from "../support/weather-plan.ts";

const { words: pseudo, carried } = pseudoLanguage();
/** What people say in these tests stays as they said it. */
const SAID = ["as heard", "eight showing", "five showing", "eight feet", "la la la"];
const ASKED = [
  "what's left",
  "where is A",
  "where next",
  "how many stakes",
  "how many rings on AB",
  "why",
  "which piece",
  "three four five",
];
/** What is the same in every language: places of the tent by their ids (AB4.1, C2, S1, R-DA, A–C), hashes, and digests of them. */
const IDS =
  /(?<![\p{L}\d])(?:[2-9A-Z]{3}(?:-[2-9A-Z]{3}){4}|[A-D]{1,2}\d*(?:\.\d+)?|[QS]\d+|R-[A-D]{2}|[A-D]–[A-D]|[\da-f]{64})(?![\p{L}\d])/gu;
const isSaid = (text: string) => !/\p{L}/u.test(outsideMarks(text).replaceAll(IDS, ""));
const unsaid = (texts: readonly string[]) => texts.filter((text) => !isSaid(text));

/** A brief in which nobody typed a letter where a page shows it, so that every letter shown is ours. */
function letterless(tent?: object) {
  const told = brief();
  return {
    ...told,
    title: "№ 7",
    zone: "UTC",
    tent: { ...told.tent, ...tent },
    sheet: { ...told.sheet, document: "80-100", stakeKind: "№ 10", soil: "№ 11" },
    site: { ...told.site, address: "№ 3", rallyPoint: "№ 4", stormShelter: "№ 5", firstAid: "№ 6" },
    crew: told.crew.map((person, i) => ({ ...person, name: `${71 + i}` })),
  };
}
const SMALL = { widthFt: 20, lengthFt: 20, midsFt: [], onePiece: true, splitEnds: false, quarterRings: 0, centerPoleFt: 13 };

const opened = async (tent?: object) => openedJob(letterless(tent), testApp(sqliteJournal(":memory:"), MORNING, [en, pseudo]));
type Sent = { fields?: Record<string, string>; as?: string; swap?: boolean; status?: number; device?: string };

/** A page as somebody gets it who reads the pseudo-language; checked before it is handed on. */
async function read({ app, job }: OpenedJob, path: string, { fields, as, swap, status = 200, device = "pseudo-phone" }: Sent = {}) {
  const headers = {
    "accept-language": "qps",
    origin: "http://localhost",
    cookie: [`device=${device}`, ...(as ? [`as-${job}=${as}`] : [])].join("; "),
    ...(swap ? { "hx-request-type": "partial" } : {}),
  };
  const form = fields && { method: "POST", body: new URLSearchParams(fields) };
  const answer = await app.request(path, { ...form, headers });
  const html = await answer.text();
  expect(answer.status, path).toBe(status);
  expect(unsaid([...textsOf(html), ...scriptTexts(html)]), path).toEqual([]);
  return html;
}
/** The same of a post that sends on to another page. */
async function readOn(crew: OpenedJob, path: string, fields: Record<string, string>, as?: string) {
  const headers = { "accept-language": "qps", origin: "http://localhost", ...(as ? { cookie: `as-${crew.job}=${as}` } : {}) };
  const answer = await crew.app.request(path, { method: "POST", body: new URLSearchParams(fields), headers });
  expect(answer.status, path).toBe(303);
  return read(crew, answer.headers.get("location")!, { as });
}

afterAll(() => {
  const known = [...SAID, ...ASKED];
  expect([...carried].filter((phrase) => !known.some((said) => said.includes(phrase)))).toEqual([]);
});

it("a sentence past its words is found", () => {
  const page = '<p title="⟦A⟧">⟦B ⟦C⟧⟧ 12 AB4 <b aria-label="Next">⟦D⟧ and</b></p>';
  expect(unsaid(textsOf(page))).toEqual(["⟦D⟧ and", "Next"]);
  const other = pseudoLanguage();
  other.words.guide.refused(other.words.guide.given("AB4", "not good"));
  expect([...other.carried]).toEqual(["not good"]);
});

describe("every sentence comes through the words of its screen", () => {
  let crew: OpenedJob;
  const at = (path: string) => `/jobs/${crew.job}${path}`;

  describe("on a job that was just opened", () => {
    beforeAll(async () => {
      crew = await opened();
    });
    it("says which language the page is in, and remembers one that was asked for", async () => {
      expect(await read(crew, "/")).toContain('<html lang="qps">');
      const asked = await crew.app.request("/?lang=qps");
      expect(asked.headers.get("set-cookie")).toContain("language=qps");
      expect(await (await crew.app.request("/", { headers: { cookie: "language=qps" } })).text()).toContain('<html lang="qps">');
      expect(await (await crew.app.request("/?lang=tlh")).text()).toContain('<html lang="en">');
    });
    it("home, with a rehearsal beside it", async () => {
      await readOn(crew, at("/rehearse"), { key: "rehearse-0001" });
      await read(crew, "/");
    });
    it("the form of a job: looked at, refused", async () => {
      const usual = filled(await read(crew, "/tents/new?width=40&length=60"));
      await read(crew, "/jobs", { fields: { ...usual, show: "plan" } });
      await read(crew, "/jobs", { fields: { ...usual, "tent.widthFt": "wide", "tent.rings.AB": "900", show: "plan" } });
      await read(crew, "/jobs", { fields: { ...usual, title: "", zone: "Mars", "ticket.validFrom": "someday" }, status: 422 });
      await read(crew, "/jobs", { fields: { title: "x".repeat(99), "crew.1.name": "№ 1" }, status: 422 });
    });
    it("a job told step by step: no tent yet, a size, a tent of the list, what is wrong at each step, changed meanwhile, opened already", async () => {
      const draft = async (path: string, fields: Record<string, string>, status = 422) => read(crew, path, { fields, status });
      await read(crew, "/drafts/new");
      const shown = filled(await read(crew, "/drafts/new?tent=example-40x80-whole"));
      expect(shown).toBeDefined();
      await read(crew, "/drafts/preview", { fields: { "tent.widthFt": "40", "tent.lengthFt": "30" } });
      await read(crew, "/drafts/preview", { fields: { "tent.widthFt": "40", "tent.lengthFt": "60" } });
      await readOn(crew, "/drafts", { copy: crew.job });
      await readOn(crew, "/drafts", { "tent.widthFt": "4", "tent.lengthFt": "60" });
      const spec = { ...letterless().tent, spacingFt: 10 };
      const tent = (await (await crew.post("/tents", { name: "№ 8", spec })).json()) as { id: string; version: number };
      const begun = await crew.app.request("/drafts", {
        method: "POST",
        body: new URLSearchParams({ tent: tent.id }),
        headers: { origin: "http://localhost" },
      });
      const at = (step: string) => `/drafts/${begun.headers.get("location")!.split("/")[2]}/${step}`;
      for (const step of ["tent", "sheet", "site", "ticket", "crew"]) await read(crew, at(step));
      await draft(at("tent"), { "tent.widthFt": "900" });
      await readOn(crew, at("tent"), { tent: tent.id });
      await readOn(crew, "/drafts", { "tent.widthFt": "60", "tent.lengthFt": "120" });
      await draft(at("sheet"), { "sheet.document": "", "sheet.stakeSize": "long", "sheet.raiseGustMph": "90" });
      await draft(at("site"), { "site.address": "", "site.stormShelter": "", "sheet.soil": "№ 2" });
      await read(crew, at("site"));
      await read(crew, at("anchors"));
      await draft(at("anchors"), { "anchorage.gustMph": "900" });
      await draft(at("ticket"), { zone: "Mars", "ticket.validTo": "someday", "ticket.toleranceIn": "1" });
      await draft(at("crew"), { "crew.1.name": "№", "crew.1.role": "lead" });
      const blows = { "forecast.from": "2026-06-06T14:00", "forecast.to": "2026-06-06T22:00", "forecast.issuedBy": "\u2116" };
      const forecast = { ...blows, "forecast.gustMph": "34", "forecast.readAt": "2026-06-02" };
      await draft(at("weather-plan"), { ...forecast, "forecast.gustMph": "900" });
      await draft(at("weather-plan"), forecast, 303);
      await read(crew, at("weather-plan"));
      await read(crew, at("crew"));
      await draft(at("nowhere"), {}, 404);
      await read(crew, "/drafts/none/tent", { status: 404 });
      await crew.post(`/tents/${tent.id}`, { name: "№ 8", spec: { ...spec, spacingFt: 5 }, version: tent.version });
      await read(crew, at("tent"));
      await read(crew, at("site"));
      await draft(at("tent"), {}, 409);
      await read(crew, "/");
      const body = { fields: { title: "№ 9" }, tent: null, opened: { job: crew.job, device: "another", at: MORNING } };
      await crew.journal.drafts.save("d-9", 0, { body, at: MORNING, opened: true });
      await read(crew, "/drafts/d-9/crew");
      await read(crew, "/drafts");
      const away = at("throw-away");
      await read(crew, away);
      await draft(away, { version: "1" }, 409);
      await crew.app.request("/firm/people", {
        method: "POST",
        body: new URLSearchParams({ name: "71" }),
        headers: { origin: "http://localhost" },
      });
      await read(crew, `/firm/people?draft=${away.split("/")[2]}`);
    });
    it("a job of which neither sheet, ticket nor places are known: its calls, the page to fill them in, somebody hurt", async () => {
      const { site, ...told } = letterless(SMALL);
      const bare = { ...told, sheet: null, ticket: null, site: { ...site, rallyPoint: null, stormShelter: null, firstAid: null } };
      const there = await openedJob(bare, crew);
      const path = (page: string) => `/jobs/${there.job}${page}`;
      await read(there, path(""), { as: "p1" });
      await read(there, path("/answers"), { as: "p1" });
      await read(there, path("/facts"), { as: "p1" });
      await read(there, path("/facts"), {
        fields: { key: "facts-0001", "sheet.document": "№", "site.firstAid": "№ 1" },
        as: "p1",
        status: 422,
      });
      await there.say({ type: "next" }, "p1");
      await read(there, path(""), { as: "p1" });
      const known = { ...bare, site: { ...bare.site, firstAid: "№ 6" } };
      await there.say({ type: "amend", because: "1", to: readBrief(known).frozen }, "p1");
      await there.say({ type: "amend", because: "1", to: readBrief({ ...known, sheet: told.sheet }).frozen }, "p1");
      await read(there, path(""), { as: "p1" });
      await there.say({ type: "hurt", words: "as heard" }, "p4");
      await read(there, path(""), { as: "p2" });
      await read(crew, at("/facts"), { as: "p1" });
    });
    it("a job with a weather plan and a forecast: the page that tells them, refused, over each limit, and while it stands", async () => {
      const times = { from: "2026-06-06T14:00", to: "2026-06-06T22:00", issuedBy: "№", readAt: "2026-06-02", clearBy: "2026-06-06T13:00" };
      const told = { ...letterless(SMALL), weatherPlan: WEATHER_PLAN, forecast: { gustMph: 34, ...times } };
      const there = await openedJob(told, crew);
      const path = (page: string) => `/jobs/${there.job}${page}`;
      const form = filled(await read(there, path("/weather-plan"), { as: "p1" }));
      const wrong = { ...form, "weatherPlan.clearMin": "-5", "forecast.to": "2026-06-01T01:00", "forecast.gustMph": "900" };
      await read(there, path("/weather-plan"), { fields: { ...wrong, key: "plan-0001" }, as: "p1", status: 422 });
      await read(crew, at("/weather-plan"), { as: "p1" });
      const calm = await openedJob({ ...told, forecast: { ...told.forecast, gustMph: 22, clearBy: null } }, crew);
      await read(calm, `/jobs/${calm.job}/weather-plan`, { as: "p4" });
      await there.to((s) => s.step === "watch");
      await read(there, path(""), { as: "p1" });
    });
    it("a job whose anchors are screened: the page that tells them, what it would change, refused, and before anything is told", async () => {
      const there = await openedJob({ ...letterless(SMALL), anchorage: { gustMph: 60, exposure: "C" } }, crew);
      const path = `/jobs/${there.job}/anchors`;
      const form = { ...filled(await read(there, path, { as: "p1" })), "anchorage.pulls.0.lbf": "640" };
      await read(there, path, { fields: { ...form, key: "anchors-01" }, as: "p1", status: 422 });
      const told = { ...form, "anchorage.pulls.0.direction": "alongStrap", "anchorage.pulls.0.softestSpot": "yes", key: "anchors-02" };
      await read(there, path, { fields: { ...told, show: "changes" }, as: "p1" });
      await read(crew, at("/anchors"), { as: "p1" });
    });
    it("the form that changes it: as it is, what it would change, refused", async () => {
      const form = filled(await read(crew, at("/amend"), { as: "p1" }));
      const changed = { ...form, "tent.lengthFt": "120", "tent.midsFt": "20, 20", "kit.stakePlate.spare": "12", because: "1" };
      await read(crew, at("/amend"), { fields: { ...changed, show: "changes" }, as: "p1" });
      await read(crew, at("/amend"), { fields: { ...changed, show: "plan" }, as: "p1" });
      await read(crew, at("/amend"), {
        fields: { ...changed, "sheet.embedmentIn": "90", "ticket.validTo": "2020-01-01" },
        as: "p1",
        status: 422,
      });
    });
    it("who holds the screen, the call, and More", async () => {
      await read(crew, at(""));
      await read(crew, at(""), { as: "p1" });
      await read(crew, at("/more"), { as: "p1" });
      await read(crew, at("/now"), { as: "p1" });
    });
    it("photos: none yet, whose screen, who only looks, what is refused, one that was kept, and the record of it", async () => {
      await read(crew, at("/photos"));
      await read(crew, at("/photos"), { as: "p6" });
      let keys = 0;
      const send = async (photo: Uint8Array<ArrayBuffer> | null, status: number, text = "1") => {
        const body = photoForm(photo, { as: "p1", key: `photo-000${++keys}`, seen: "1", gate: "sheet.atHand", text });
        const headers = { "accept-language": "qps", origin: "http://localhost", cookie: `as-${crew.job}=p1` };
        const answer = await crew.app.request(at("/photo"), { method: "POST", body, headers });
        expect(answer.status).toBe(status);
        const html = await answer.text();
        expect(unsaid([...textsOf(html), ...scriptTexts(html)])).toEqual([]);
      };
      await send(null, 422);
      await send(new TextEncoder().encode("%PDF-1.7"), 422);
      await send(PICTURES["image/webp"].slice(0, 90), 422);
      await send(PICTURES["image/png"], 422, "1".repeat(300));
      await send(new Uint8Array(1_500_001), 413);
      await send(new Uint8Array(1_900_000), 413);
      await send(PICTURES["image/png"], 303);
      const { no } = (await crew.entries()).at(-1)!.entry;
      await read(crew, at("/photos"), { as: "p1" });
      await read(crew, at(`/photos?entry=${no}`), { as: "p1" });
      await read(crew, at("/photos?entry=1"), { status: 404 });
      await read(crew, at(`/photos/${"0".repeat(64)}`), { status: 404 });
      await read(crew, at(""), { as: "p1" });
      await read(crew, at("/record"));
    });
    it("the plan and the layout sheet, in feet and in millimeters, with a street and the north", async () => {
      await read(crew, at("/plan"));
      await read(crew, at("/layout"));
      const site = { ...letterless().site, baselineBearingDeg: 40, street: { edge: "BC" as const, name: "№ 9" } };
      const there = await openedJob({ ...letterless(), site }, crew);
      await read(there, `/jobs/${there.job}/layout?units=mm&paper=letter`);
      await read(there, `/jobs/${there.job}/layout.svg`);
      await read(crew, at("/layout?units=yd"), { status: 400 });
      await read(crew, at("/layout?entry=9"), { status: 404 });
    });
    it("a site: what is worked out, its forms, a file that is read or refused, a place, and the layout with what lies around", async () => {
      const point = (alongFt: number, offFt: number) => ({ alongFt, offFt });
      const corners = [point(-90, -90), point(-90, 190), point(190, 190), point(190, -90)];
      const buried = [{ id: "№1", kind: "gas", told: "ticket", points: [point(-20, -14), point(130, 20)] }];
      const overhead = [{ id: "№2", kv: 1200, points: [point(150, -40), point(150, 120)] }];
      const things = [{ id: "№3", kind: "tree", shape: { is: "circle", middle: point(30, -30), radiusFt: 2 } }];
      const slope = { percent: 2, downhillDeg: 90 };
      const told = { buried, overhead, things, ground: { corners }, ticketArea: { corners: corners.slice(1) }, slope };
      const there = await openedJob({ ...letterless(), siteModel: told }, crew);
      const path = (page: string) => `/jobs/${there.job}/${page}`;
      for (const page of ["site", "site/lines", "site/import", "site/place", "layout", "picture", "tent"])
        await read(there, path(page), { as: "p1" });
      for (const of of ["buried&id=№1", "overhead&id=№2", "thing&id=№3", "ground", "ticketArea", "slope", "wanted"])
        await read(there, path(`site/lines?of=${of}`), { as: "p1" });
      await read(there, path("site/lines"), { fields: { of: "buried", go: "on", "p.1.along": "1" }, as: "p1", status: 422 });
      await read(there, path("site/lines?of=none"), { as: "p1", status: 404 });
      await read(there, path("site/place"), { fields: { go: "find" }, as: "p1" });
      await read(there, path("site/place"), { fields: { go: "take", by: "none" }, as: "p1", status: 409 });
      const baseline = { lon: "-105", lat: "40", bearing: "0", as: "gas" };
      const line = '{"type":"LineString","coordinates":[[-105.00001,40],[-105.00001,40.0003]]}';
      const file = await read(there, path("site/import"), { fields: { ...baseline, text: line }, as: "p1" });
      expect(file).toContain("drawn-site-plan");
      await read(there, path("site/import"), { fields: { ...baseline, lat: "95", lon: "" }, as: "p1", status: 422 });
      await read(there, path("site/import"), { fields: { ...baseline, text: "{}" }, as: "p1", status: 422 });
      await read(crew, at("/site"), { as: "p4" });
    });
    it("the drawing for other programs, and the marks as a table", async () => {
      const dxf = await (await crew.app.request(at("/layout.dxf"), { headers: { "accept-language": "qps" } })).text();
      const written = [...dxf.matchAll(/^ *1\n(.*)$/gm)].map((m) => m[1]!);
      expect(written.length).toBeGreaterThan(20);
      expect(unsaid(written.filter((text) => !/^AC\d{4}$/.test(text)))).toEqual([]);
      const csv = await (await crew.app.request(at("/marks.csv"), { headers: { "accept-language": "qps" } })).text();
      expect(unsaid(readCsv(csv).flat())).toEqual([]);
    });
    it("crew and time, with another crew, and with none that can be", async () => {
      await read(crew, at("/time"));
      await read(crew, at("/time?people=2"));
      await read(crew, at("/time?people=40"));
      await read(crew, at("/time?people=many"), { status: 422 });
    });
    it("how to trust the site's network, on a server that is not on it", async () => {
      await read(crew, "/trust");
      await read(crew, "/trust/ridgecall-site-authority.crt", { status: 404 });
    });
    it("the drawings of the hand work", async () => {
      await read(crew, "/hand-work");
      await read(crew, `/hand-work?job=${crew.job}`);
    });
    it("learning: nobody yet, a round with each kind of question asked and told, how far somebody is, what is refused", async () => {
      const { learning } = crew.journal;
      await read(crew, at("/learn"));
      await read(crew, "/learning");
      const { id: learner } = await learning.learner("76", "l-76");
      const now = crew.now();
      const items = ["place.station", "order.struck", "before.raise", "who.hold", "seam.edges", "next.half", "age.warning", "limit.turns", "size.stakes"]; // biome-ignore format: one line reads best
      await learning.saveRound({ id: "r-76", learner, job: crew.job, at: now, version: 1, body: roundOf(items, 7, now, "day") }, null);
      const page = at("/learn/questions");
      for (let no = 0; no < items.length; no++) {
        const html = await read(crew, `${page}?round=r-76`, { as: "p6" });
        if (no === 1) await read(crew, `${page}?round=r-76&so=2`, { as: "p6" });
        const [, shown = ""] = /name="shown" value="(\w+)"/.exec(
          no === 1 ? await read(crew, `${page}?round=r-76&so=2,1`, { as: "p6" }) : html,
        )!;
        await readOn(crew, page, { round: "r-76", no: String(no), given: no === 1 ? "2,1,3,4" : "1", shown }, "p6");
      }
      await read(crew, at("/learn"), { as: "p6" });
      await read(crew, "/learning");
      const rehearsal = { from: crew.job, learner, way: "lead", trouble: "several", seed: 1, at: now } as const;
      await learning.startRehearsal({ ...rehearsal, job: crew.job, over: null });
      await learning.startRehearsal({ ...rehearsal, job: "gone", over: { at: now, moments: 3, unsafe: 1, whole: true } });
      await read(crew, at("/learn"), { as: "p6" });
      await read(crew, at("/learn"), { fields: {}, status: 422 });
      await read(crew, page, { fields: { round: "none", no: "0" }, as: "p6", status: 404 });
      await read(crew, page, { fields: { round: "r-76", no: "0" }, as: "p4", status: 403 });
      await read(crew, page, { fields: { round: "r-76", no: "x" }, as: "p6", status: 422 });
      await read(crew, at("/learn/aside"), { fields: { id: "none" }, as: "p6", status: 409 });
      crew.clock.pass(400);
      await read(crew, page, { fields: { round: "r-76", no: "9", given: "1" }, as: "p6", status: 409 });
    });
    it("getting on a job, its codes and its names", async () => {
      await read(crew, "/join");
      await read(crew, "/join?code=AAAAAA", { status: 403 });
      await read(crew, at("/codes"));
      const [, code = ""] = /<p class="code">⟦?([^<⟧]+)⟧?<\/p>/.exec(await (await crew.app.request(at("/codes"))).text())!;
      await read(crew, `/join?code=${code}`);
      await read(crew, at("/names"));
      await read(crew, at("/names"), { fields: { person: "p1" }, status: 409 });
      await read(crew, at("/people?as=p2"));
    });
    it("the office, its tokens and its log", async () => {
      await read(crew, "/office/in?to=/findings");
      await read(crew, "/office/in", { fields: { passphrase: "1", to: "/" }, status: 403 });
      await read(crew, "/office/first?key=1", { status: 403 });
      await read(crew, "/office/tokens", { fields: { name: "" }, status: 422 });
      await read(crew, "/office/tokens", { fields: { name: "7" } });
      await read(crew, "/office/passphrase", { fields: { now: "1", next: "2" }, status: 403 });
      await read(crew, "/office");
    });
    it("its report, what proves it, and digests typed off paper, before there is a house stream and after", async () => {
      const wrong = ["", "23A", "OIL", "22222-22222-22222"];
      const pages = ["/report?paper=letter", "/proof", "/check", ...wrong.map((typed) => `/check?digest=${typed}`)];
      for (const path of pages) await read(crew, at(path));
      await createHouse({ journal: crew.journal, clock: () => ({ wall: crew.now(), elapsedMs: 0 }) }, () => {}).daily();
      const tip = (await crew.liveJobs.load(crew.job)).entries.at(-1)!.hash;
      const digests = [tip, (await crew.journal.house.lines()).at(-1)!.hash].map(shownDigest);
      for (const typed of [...digests, digests[0]!.replace(/^./, (letter) => (letter === "2" ? "3" : "2"))])
        await read(crew, at(`/check?digest=${typed}`));
      for (const path of [at("/report"), at("/proof"), "/office"]) await read(crew, path);
      await read(crew, at("/report?paper=a3"), { status: 400 });
    });
    it("what is wrong with a request", async () => {
      await read(crew, "/nowhere", { status: 404 });
      await read(crew, "/jobs/none", { status: 404 });
      await read(crew, at("/say"), { fields: { as: "p1" }, status: 422 });
      await read(crew, at("/say"), { fields: { as: "p1", key: "typed-00001", seen: "1", heard: "gibberish" }, status: 422, swap: true });
      await read(crew, at("/say"), { fields: { as: "№ 99", key: "typed-00002", seen: "1", type: "next" }, status: 422 });
      await read(crew, at("/say"), { fields: { as: "p1", key: "typed-00003", seen: "1", type: "dance" }, status: 422 });
      const fields = { as: "p1", key: "typed-00004", seen: "1", type: "note" };
      await readOn(crew, at("/say"), { ...fields, text: "1" }, "p1");
      await read(crew, at("/say"), { fields: { ...fields, text: "2" }, status: 409 });
    });
    it("what a script sent wrongly, as data", async () => {
      const headers = { "accept-language": "qps", "content-type": "application/json" };
      const texts = async (path: string, body: unknown) => {
        const answer = await crew.app.request(path, { method: "POST", headers, body: JSON.stringify(body) });
        const { problem, fields } = (await answer.json()) as { problem: string; fields: Record<string, string> };
        return [problem, ...Object.values(fields)];
      };
      const value = { kind: "count", n: "six", more: 1 };
      expect(unsaid(await texts(at("/say"), { as: 7, key: "k", seen: -1, type: "answer", gate: "", value }))).toEqual([]);
      expect(unsaid(await texts(at("/say"), { alternatives: [], talk: "loud", heard: "" }))).toEqual([]);
      expect(unsaid(await texts("/jobs", { brief: { title: 7, crew: [{}], kit: { sails: {} }, use: { occupants: 1.5 } } }))).toEqual([]);
      expect(unsaid(await texts("/tents", { spec: { sails: 1 }, kit: { stakePlate: { spare: 7, unitLb: "heavy" } } }))).toEqual([]);
    });
  });

  describe("on a job that is driven", () => {
    beforeAll(async () => {
      crew = await opened(SMALL);
    });
    it("every call of a raise and a strike and all that is asked there, asked and refused, up to its end", async () => {
      const seen = new Set<string>();
      const kinds = new Set<string>();
      const here = ({ step, gate }: Stand) => `${step}: ${gate?.id ?? "none"}`;
      for (let state = await crew.read(); !state.closed; state = await crew.to((s) => !seen.has(here(s)))) {
        seen.add(here(state));
        kinds.add(state.gate?.check.kind ?? "none");
        await crew.say({ type: "next" }, "p6");
        await read(crew, at(""), { as: "p1" });
      }
      expect([...kinds].sort()).toEqual([
        "count",
        "counts",
        "document",
        "each",
        "figures",
        "lengths",
        "measure",
        "none",
        "sameCount",
        "wind",
        "yesNo",
      ]);
      expect(seen.size).toBeGreaterThan(40);
      await read(crew, at(""), { as: "p1" });
    });
    it("its record: the whole, some of it, a mark that is none, as a table; its time; all jobs together", async () => {
      await read(crew, at("/record"));
      await read(crew, at("/record?show=refused"));
      await read(crew, at("/record?show=songs"));
      await read(crew, at("/report"));
      await read(crew, at("/time"));
      await read(crew, "/findings");
      await read(crew, "/findings/jobs");
      const csv = await (await crew.app.request(at("/record.csv"), { headers: { "accept-language": "qps" } })).text();
      const [head = [], ...rows] = readCsv(csv);
      const data = ["zone", "UTC", "heard"].map((name) => head.indexOf(`⟦${name}⟧`));
      expect(unsaid([head, ...rows.map((row) => row.filter((_, i) => !data.includes(i)))].flat())).toEqual([]);
    });
  });

  describe("where something is in the way", () => {
    beforeAll(async () => {
      crew = await opened(SMALL);
    });
    it("held, paused, carried on", async () => {
      await crew.say({ type: "hold" }, "p4");
      await read(crew, at(""), { as: "p1" });
      await crew.say({ type: "next" }, "p1");
      await crew.say({ type: "carryOn", became: null }, "p1");
      await crew.say({ type: "pause" }, "p4", { source: "talk" });
      await read(crew, at(""), { as: "p1" });
      await crew.say({ type: "carryOn", became: null }, "p1");
      await read(crew, at(""), { as: "p1" });
    });
    it("a loading list: to be read, to be ticked, one line of it, a count that is none, a tick, a table", async () => {
      await read(crew, at("/truck"), { as: "p1" });
      await crew.to((s) => s.gate?.check.kind === "counts");
      await read(crew, at(""), { as: "p1" });
      await read(crew, at("/truck"));
      await read(crew, at("/truck"), { as: "p1" });
      await read(crew, at("/truck?line=sail"), { as: "p1" });
      const form = filled(await read(crew, at("/truck?line=stakePlate"), { as: "p1" }));
      await read(crew, at("/truck"), { fields: { ...form, value: "few" }, as: "p1", status: 422 });
      await read(crew, at("/truck"), { fields: { ...form, value: "" }, as: "p1", status: 422, swap: true });
      await read(crew, at("/truck"), { fields: { ...form, value: "3" }, as: "p1", swap: true });
      const csv = await (await crew.app.request(at("/truck.csv"), { headers: { "accept-language": "qps" } })).text();
      expect(unsaid(readCsv(csv).flat())).toEqual([]);
    });
    it("out of its limit: what to do, and where the plan is changed; the page for it, and what it would change", async () => {
      const { gate } = await crew.to((s) => s.step === "marked");
      await crew.say({ type: "answer", gate: gate!.id, value: { kind: "figures", unit: "count", n: { ...gate!.want, AB: 9 } } }, "p1");
      await read(crew, at(""), { as: "p1" });
      await read(crew, at(`/${(await crew.read()).gate!.cure!.to}`), { as: "p1" });
      const found = { what: "rings", edge: "AB", counted: "4", because: "1" };
      const shown = await read(crew, at("/discrepancy"), { fields: found, as: "p1" });
      await read(crew, at("/discrepancy"), { fields: { ...found, counted: "900", because: "" }, as: "p1", status: 422 });
      await read(crew, at("/discrepancy"), { fields: { what: "weather" }, as: "p1", status: 422 });
      await readOn(crew, at("/discrepancy"), { ...filled(shown), put: "yes" }, "p1");
      await read(crew, at(""), { as: "p2" });
      await read(crew, at("/more"), { as: "p2" });
      const { proposed } = await crew.read();
      await read(crew, at(`/layout?entry=${proposed!.entry}`));
      await crew.say({ type: "disagree", target: proposed!.entry }, "p2");
    });
    it("heard: read back, not understood, left alone, a question answered", async () => {
      const { revision } = await crew.to((s) => s.step === "drive.AB" && s.gate?.id === "drive.AB");
      const spoken = (heard: string, n: number) => ({ as: "p1", key: `heard-0000${n}`, seen: String(revision), alternatives: heard });
      const say = (heard: string, n: number, talk = "yes") =>
        read(crew, at("/say"), { fields: { ...spoken(heard, n), talk }, as: "p1", swap: true });
      const caption = await say("eight showing", 1);
      expect(caption).toContain('class="read-back"');
      await read(crew, at(""), { as: "p1" });
      for (const [i, heard] of ["wrong", "eight feet", "la la la", ...ASKED].entries()) await say(heard, i + 2);
      await say("eight showing", 20, "no");
      await say("five showing", 21);
      const waits = (await (await crew.app.request(at(".json"), { headers: { cookie: "device=pseudo-phone" } })).json()) as GuideState;
      await crew.say({ type: "correct", target: waits.readBack!.entry }, "p1", { device: "pseudo-phone" });
      await read(crew, at(""), { as: "p1" });
    });
    it("thunder, a warning, a blow, rain: told, refused with why and until when", async () => {
      const takenAt = crew.now();
      for (const reading of [
        { kind: "thunder", takenAt },
        { kind: "warning", takenAt },
        { kind: "rain", takenAt },
        { kind: "wind", mph: 40, gustMph: 60, fromDeg: 270, takenAt, place: null },
      ] as const) {
        await crew.say({ type: "reading", reading }, "p6");
        await crew.say({ type: "next" }, "p1");
        await read(crew, at(""), { as: "p1" });
      }
    });
    it("the sky: a lee, the look of it, thunder counted and not counted, a warning read out, heat, cold", async () => {
      const takenAt = crew.now();
      for (const reading of [
        { kind: "wind", mph: 5, gustMph: 6, fromDeg: null, takenAt, place: null, exposure: "lee", heightFt: 6 },
        { kind: "wind", mph: 7, gustMph: 15, fromDeg: null, takenAt, place: null, look: "lightBreeze", exposure: "open" },
        { kind: "thunder", takenAt, seconds: 12 },
        { kind: "thunder", takenAt, notSeconds: "-1" },
        { kind: "warning", takenAt, what: "1", until: "2", issuer: "3" },
        { kind: "heat", takenAt, airF: 98, humidity: 60, sun: null },
        { kind: "cold", takenAt, airF: -20, windMph: 20 },
      ] as const) {
        await crew.say({ type: "reading", reading }, "p1");
        await read(crew, at(""), { as: "p1" });
      }
      for (const path of ["/wind", "/weather", "/air"]) await read(crew, at(path), { as: "p1" });
    });
    it("somebody hurt: what to do, a second one, carried on without a word and with one", async () => {
      await crew.say({ type: "hurt", words: "1" }, "p6");
      await read(crew, at(""), { as: "p1" });
      await crew.say({ type: "hurt", words: "2" }, "p7");
      await crew.say({ type: "carryOn", became: null }, "p1");
      await read(crew, at(""), { as: "p1" });
      await crew.say({ type: "carryOn", became: "3" }, "p1");
      await read(crew, at(""), { as: "p1" });
    });
    it("making safe; a plan put forward and agreed to; all of it in the record", async () => {
      await crew.say({ type: "makeSafe", because: "1" }, "p1");
      await read(crew, at(""), { as: "p1" });
      const { frozen } = (await crew.liveJobs.load(crew.job)).job;
      const to = { ...frozen, brief: { ...frozen.brief, use: { ...frozen.brief.use, walls: !frozen.brief.use.walls } } };
      const { no } = await crew.say({ type: "amend", because: "1", to }, "p1");
      await read(crew, at(""), { as: "p2" });
      await crew.say({ type: "agree", target: no }, "p2");
      await read(crew, at("/record"));
    });
    it("a record that somebody spoiled: read only, everywhere it shows", async () => {
      const journal = sqliteJournal(":memory:");
      const spoiled = await openedJob(letterless(SMALL), testApp(journal, MORNING, [en, pseudo]));
      for (let n = 0; n < 4; n++) await spoiled.say({ type: "note", text: "1" }, "p1");
      const bent = {
        ...journal,
        read: async (id: string) => (await journal.read(id)).map((l) => (l.no === 3 ? { ...l, bytes: new Uint8Array() } : l)),
      };
      const later = { ...spoiled, ...testApp(bent, MORNING, [en, pseudo]) };
      for (const page of ["", "/record", "/report", "/proof", "/check?digest=23A", "/time", "/truck"])
        await read(later, `/jobs/${spoiled.job}${page}`, { as: "p1" });
      await read(spoiled, `/jobs/${spoiled.job}`, { as: "p1" });
    });
    it("a clock that was set back, ahead, and back while the guide was off; its record, and the findings", async () => {
      const set = await opened(SMALL);
      for (const seconds of [-3540, 90_000]) {
        set.clock.setWall(seconds);
        expect((await read(set, `/jobs/${set.job}`, { as: "p1" })).match(/class="warning"/g)).toHaveLength(1);
        await set.say({ type: "note", text: "1" }, "p1");
      }
      const later = { ...set, ...set.restart(-3600) };
      expect((await read(later, `/jobs/${set.job}`, { as: "p1" })).match(/class="warning"/g)).toHaveLength(1);
      await read(set, `/jobs/${set.job}/record?show=clockJumped`);
      await read(set, "/findings");
      await read(set, "/findings/jobs");
    });
    it("what there is to look at: each kind that there is, what was said of it, what cannot be looked for or said", async () => {
      const { kinds } = (await (await crew.app.request("/findings.json")).json()) as FindingsState;
      expect(kinds.length).toBeGreaterThan(4);
      for (const { kind } of kinds) await read(crew, `/findings?kind=${kind}`);
      const html = await read(crew, `/findings?kind=${kinds[0]!.kind}`);
      const form = { ...filled(html.slice(0, html.lastIndexOf("</article>"))), text: "№ 9", is: "followedUp", who: "" };
      await readOn(crew, "/findings/followups", form);
      await read(crew, "/findings/followups", { fields: { ...form, text: "", key: "said-0002" }, status: 422 });
      await read(crew, "/findings/followups", { fields: { ...form, entry: "9999", key: "said-0003" }, status: 404 });
      await read(crew, "/findings?lead=9&from=2026-01-01&kind=takenBack");
      await read(crew, "/findings?from=9&to=8&kind=7&before=6", { status: 422 });
    });
    it("a rehearsal, with what goes wrong and how it is done well", async () => {
      const page = await readOn(crew, at("/rehearse"), { key: "rehearse-0002" });
      expect(page).toContain('class="lesson"');
    });
    it("a rehearsal that answers back: how it is chosen, its site, time that goes by, what is refused, and how it is gone over", async () => {
      await read(crew, at("/rehearse"));
      await read(crew, at("/rehearse"), { fields: { key: "rehearse-0003", seed: "0" }, status: 422 });
      const how = { way: "walk", trouble: "several", seed: "4", from: "interiorRaised" };
      const answer = await crew.app.request(at("/rehearse"), {
        method: "POST",
        body: new URLSearchParams({ key: "rehearse-0004", ...how }),
        headers: { "accept-language": "qps", origin: "http://localhost" },
      });
      const practice = { ...crew, job: answer.headers.get("location")!.split(/[/?]/)[2]! };
      const on = (path: string) => `/jobs/${practice.job}${path}`;
      const said = async (fields: Record<string, string>) => {
        const { revision } = (await crew.liveJobs.load(practice.job)).job.snapshot.context;
        return read(practice, on("/say"), {
          fields: { as: "p1", seen: String(revision), key: crypto.randomUUID(), ...fields },
          as: "p1",
          swap: true,
        });
      };
      await said({ type: "answer", gate: "poles.pinned", kind: "count", value: "11" });
      await said({ type: "next" });
      for (const minutes of ["30", "90"]) {
        await said({ type: "reading", reading: "thunder" });
        await read(practice, on("/wait"), { fields: { as: "p1", seen: "1", key: `wait-000${minutes}`, minutes }, as: "p1", status: 303 });
      }
      await read(practice, on("/wait"), { fields: { as: "p1", minutes: "900" }, status: 422 });
      await read(practice, on("/look-back"));
      await readOn(practice, on("/look-back"), {});
      const over = await read(practice, on("/say"), {
        fields: { as: "p1", seen: "1", key: "over-0001", type: "next" },
        as: "p1",
        status: 409,
      });
      expect(over).toContain("⟦");
    });
  });

  describe("on the list of tents", () => {
    beforeAll(async () => {
      crew = await opened(SMALL);
    });
    it("the list, an example, the forms: new, from a size, from an example, looked at, refused, saved", async () => {
      const example = /class="button job" href="\/tents\/([\w-]+)"/.exec(await read(crew, "/tents"))![1]!;
      await read(crew, "/tents/none", { status: 404 });
      await read(crew, `/tents/${example}`);
      await read(crew, "/tents/new");
      const form = filled(await read(crew, "/tents/new?width=40&length=60"));
      await read(crew, "/tents/preview", { fields: form, swap: true });
      await read(crew, "/tents/preview", { fields: { ...form, "tent.spacingFt": "wide" }, swap: true });
      await read(crew, "/tents", { fields: { ...form, show: "plan" } });
      await read(crew, "/tents", { fields: { ...form, name: "" }, status: 422 });
      await read(crew, "/tents", { fields: { json: "{", name: "" }, status: 422 });
      await read(crew, "/tents", { fields: { json: '{"name":"","spec":{"widthFt":1}}', name: "" }, status: 422 });
      await readOn(crew, "/tents", { ...form, name: "№ 3", "kit.stakePlate.unitLb": "12" });
      await read(crew, "/tents", { fields: { ...form, key: "another-key-1", name: "№ 3" }, status: 422 });
      await read(crew, `/tents/new?from=${example}`);
      await read(crew, "/tents");
    });
    it("one of ours: its page, its form, changed by somebody else meanwhile, and taken out", async () => {
      const list = (await (await crew.app.request("/tents.json")).json()) as { tents: { id: string; name: string }[] };
      const { id } = list.tents.find(({ name }) => name === "№ 3")!;
      await read(crew, `/tents/${id}`);
      const form = filled(await read(crew, `/tents/${id}/edit`));
      await readOn(crew, `/tents/${id}`, { ...form, "tent.onePiece": "no", "tent.sidePoleFt": "9" });
      await read(crew, `/tents/${id}`, { fields: { ...form, key: "another-key-2", "tent.sidePoleFt": "7" }, status: 409 });
      const remove = filled(await read(crew, `/tents/${id}/remove`));
      await read(crew, `/tents/${id}/remove`, { fields: { ...remove, version: "9", key: "another-key-3" }, status: 409 });
      await readOn(crew, `/tents/${id}/remove`, remove);
    });
  });
});
