import { beforeAll, describe, expect, it } from "vitest";
import { screenedOf } from "../../machines/install/anchor-screening.ts";
import { NOTHING_TOLD } from "../../machines/install/anchorage.ts";
import { siteClearances } from "../../machines/install/site-clearances.ts";
import type { LoadLine } from "../../machines/loads/lines.ts";
import type { Screening } from "../../machines/loads/screening.ts";
import type { SiteClearances } from "../../machines/site/clearances.ts";
import { en } from "../../views/text/en/en.ts";
import { pulls } from "../support/anchorages.ts";
import { brief, testApp } from "../support/app.ts";

const { loads, thisSite } = en;
const told = (alongFt: number, offFt: number) => ({ alongFt, offFt });
const SITE = {
  buried: [
    { id: "gas 1", kind: "gas", told: "ticket", points: [told(-20, -9), told(130, -3)] },
    { id: "water 1", kind: "water", told: "private", widthIn: 6, points: [told(40, -60), told(60, 140)] },
  ],
  overhead: [{ id: "wire 1", kv: 7.2, points: [told(-40, -30), told(-38, 120)] }],
  things: [{ id: "barn", kind: "building", shape: { is: "polygon", corners: [told(20, 110), told(60, 110), told(60, 140)] } }],
};
const ANCHORAGE = {
  ...NOTHING_TOLD,
  gustMph: 60,
  exposure: "C",
  underRoof: "clear",
  pulls: pulls(4500, 4000, 3000),
  rainSincePulls: false,
};

let html: string;
let text: string;
let screening: Screening;
let clearances: SiteClearances;
/** The rows of the table of stations, by what stands in their first column. */
let rows: readonly (readonly string[])[];

const textOf = (part: string) =>
  part
    .replace(/<script[\s\S]*?<\/script>|<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ")
    .trim();
const times = (sentence: string) => text.split(textOf(sentence)).length - 1;
const rowOf = (station: string, plate: number, of: number) =>
  rows.find(([first]) =>
    first!.split("; ").some((name) => {
      const [id, , ...numbers] = name.split(/[ ,]+/);
      return id === station && (numbers.length === 0 || of === 1 || numbers.map(Number).includes(plate));
    }),
  );

beforeAll(async () => {
  const world = testApp();
  const asked = { ...brief(), use: { ...brief().use, walls: false }, siteModel: SITE, anchorage: ANCHORAGE };
  const { job } = (await (await world.post("/jobs", { key: "open-00001", brief: asked })).json()) as { job: string };
  const cookie = `device=phone-of-p1; as-${job}=p1`;
  html = await (await world.app.request(`/jobs/${job}/site`, { headers: { origin: "http://localhost", cookie } })).text();
  text = textOf(html);
  const { frozen } = (await world.liveJobs.load(job)).job;
  screening = screenedOf(frozen.brief, frozen.plan)!.screening;
  clearances = siteClearances(frozen.plan, frozen.brief.siteModel!, frozen.limits);
  const table = /<table class="station-figures">.*<\/table>/s.exec(html)![0];
  rows = [...table.matchAll(/<tr.*?<\/tr>/gs)].map(([row]) => [...row.matchAll(/<t[hd].*?<\/t[hd]>/gs)].map(([cell]) => textOf(cell)));
});

const everyLine = (): readonly LoadLine[] => [
  ...screening.lines,
  ...screening.capacity.lines,
  ...screening.stations.flatMap((station) => [...station.lines, ...station.plates.flatMap(({ lines }) => lines)]),
];

describe("the page of a site loses nothing of a screening", () => {
  it("has a row with the load, every other figure, the ratio and the verdict of every plate of every station", () => {
    for (const { station, lines, plates } of screening.stations)
      for (const plate of plates) {
        const row = rowOf(station, plate.plate, plates.length);
        for (const { result } of [...lines, ...plate.lines]) expect(row, `${station} ${plate.plate}`).toContain(loads.figure(result));
        expect(row![1]).toBe(`${loads.ratio(plate.ratio, plate.isAtLeast)} ${loads.verdict(plate.verdict)}`);
        expect(plate.demandLbf).not.toBeNull();
      }
  });
  it("has every figure that goes into a station's lines, in its row or where its formula is told", () => {
    for (const { station, lines, plates } of screening.stations)
      for (const plate of plates)
        for (const { name, is } of [...lines, ...plate.lines].flatMap(({ inputs }) => inputs)) {
          const row = rowOf(station, plate.plate, plates.length)!;
          const isThere = row.includes(loads.figure(is)) || text.includes(`${loads.input(name)}: ${loads.amount(is)} (`);
          expect(isThere, `${station} ${name} ${loads.amount(is)}`).toBe(true);
        }
  });
  it("tells what a stake may be counted for, and that the ratio is over that", () => {
    const limit = loads.amount({ n: screening.capacity.safeLbf!, unit: "lbf" });
    expect(text).toContain(textOf(loads.ratioHow(limit, false)));
    expect(text).toContain(`${loads.formula("capacityFromPulls").name}: ${limit}`);
  });
  it("tells each formula once, with where it and all that goes into it is from", () => {
    for (const { formula, source, inputs } of everyLine()) {
      expect(
        times(`${loads.formula(formula).name} ${loads.formula(formula).how}`) + times(loads.formula(formula).how),
        formula,
      ).toBeGreaterThan(0);
      expect(text).toContain(loads.sourceIs(loads.source(source)));
      for (const input of inputs) expect(text).toContain(`(${loads.source(input.source)})`);
    }
    expect(times(loads.formula("stationUplift").how)).toBe(1);
  });
  it("tells everything that is left out once, and each line by number which of it it leaves out", () => {
    for (const what of screening.leftOut) expect(times(loads.leftOut(what)), what).toBe(1);
    const lists = new Set(everyLine().flatMap(({ leftOut }) => (leftOut.length > 0 ? [leftOut.map((what) => screening.leftOut.indexOf(what) + 1)] : []))); // biome-ignore format: one line reads best
    for (const list of lists) for (const number of list) expect(text).toMatch(new RegExp(`leaves out (?:\\d+, )*${number}\\b`));
  });
  it("has the worst of them first", () =>
    expect(rows[1]![1]).toBe(`${loads.ratio(screening.ratio, screening.isAtLeast)} ${loads.verdict(screening.verdict)}`));
});

describe("the page of a site loses nothing of its clearances", () => {
  it("has each distance that is short or nearest with its verdict, what is needed as a sum, and where each figure of that is from", () => {
    for (const { from, nearest, short } of clearances.neighbors) {
      expect(text).toContain(textOf(thisSite.name(from)));
      for (const one of [...nearest, ...short]) {
        expect(text).toContain(textOf(thisSite.one(one)));
        expect(text).toContain(textOf(thisSite.wanted(one)));
        for (const term of one.terms.filter(({ ft }) => ft !== 0)) expect(text).toContain(textOf(thisSite.term(term)));
      }
    }
    for (const what of clearances.leftOut) expect(times(thisSite.leftOut(what)), what).toBe(1);
  });
  it("says first what is too near and that the anchors are short, and has the rest behind what can be opened", () => {
    const first = textOf(html.slice(html.indexOf("<h1"), html.indexOf("<svg", html.indexOf("<h1"))));
    expect(first).toContain(textOf(thisSite.one(clearances.neighbors[0]!.short[0]!)));
    expect(first).toContain(`${thisSite.anchorsAre(screening.verdict)}.`);
    expect(html.match(/<details/g)).toHaveLength(2);
  });
});
