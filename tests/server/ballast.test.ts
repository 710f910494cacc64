import { describe, expect, it } from "vitest";
import { NOTHING_TOLD } from "../../machines/install/anchorage.ts";
import type { TruckState } from "../../views/pages/truck/state.ts";
import { brief } from "../support/app.ts";
import { openedJob } from "../support/job.ts";
import { readCsv } from "../support/read-csv.ts";

const SLICK = { friction: { coefficient: 0.4, by: "dragTest" } } as const;
const WINDY = { ...NOTHING_TOLD, gustMph: 60, exposure: "C", underRoof: "clear" } as const;
const TWENTY = { widthFt: 20, lengthFt: 20, onePiece: true, spacingFt: 10, quarterRings: 0, centerPoleFt: 13 };
const weighted = (anchorage: object, walls = false) => ({
  ...brief(),
  tent: TWENTY,
  use: { ...brief().use, walls },
  anchorage: { ...WINDY, ...anchorage },
});
const text = (html: string) =>
  html
    .replaceAll(/<script[\s\S]*?<\/script>|<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll(/\s+/g, " ")
    .replaceAll(/ ([.,;:])/g, "$1");
async function opened(input: object) {
  const { app, job } = await openedJob(input);
  const got = async (path: string) => await app.request(`/jobs/${job}/${path}`);
  const page = async (path: string) => text(await (await got(path)).text());
  const state = async () => (await (await got("truck.json")).json()) as TruckState;
  return { got, page, state };
}
const LINE = "(side pull ÷ friction + pull up) × factor of safety";

describe("weights at the straps of a 20 × 20 at 60 mph with a friction of 0.4", () => {
  it("are counted in pounds on the truck's data, and in its total", async () => {
    const { state } = await opened(weighted(SLICK));
    const { lines, weight } = await state();
    const line = lines.find(({ item }) => item === "ballastWeight")!;
    expect(line).toMatchObject({ weighed: true, workedOut: true, count: 16, unitLb: 3378, lb: 54_048 });
    expect(weight.lb).toBe(54_048);
    expect(weight.unknown).not.toContain("ballastWeight");
  });
  it("stand on the truck's page and its paper with the total, and are said to be worked out", async () => {
    const { got, page } = await opened(weighted(SLICK));
    const shown = await page("truck");
    expect(shown).toContain("3,378 lb each, 54,048 lb: worked out.");
    expect(shown).toContain("The tent and its weights: at least 54,048 lb;");
    expect(shown).toContain("16 weights, one at each strap: 3,378 lb each at least, 54,048 lb together.");
    expect(shown).toContain("A screening figure: the tent's sheet or a licensed engineer governs it.");
    const paper = text((await (await got("truck")).text()).split('class="paper"')[1]!);
    for (const told of ["ballast weights (lb worked out)", "A screening figure: the tent's sheet", "3,378 54,048", "54,048 lb together."])
      expect(paper).toContain(told);
  });
  it("stand in the table with their pounds", async () => {
    const { got } = await opened(weighted(SLICK));
    const row = readCsv(await (await got("truck.csv")).text()).find(([, name]) => name!.startsWith("ballast weights"))!;
    expect(row[1]).toContain("worked out");
    expect(row.slice(4, 7)).toEqual(["16", "3378", "54048"]);
  });
  it.each(["anchors", "site"])("are worked out line by line on the page %s, with what is left out", async (path) => {
    const shown = await (await opened(weighted(SLICK))).page(path);
    for (const told of [
      LINE,
      "Weight at each strap: 3,378 lb",
      "friction: 0.4 (entered or measured on site)",
      "factor of safety: 1.5",
      "uplift:",
      "Source: statics",
      "Weights that tip, sink, or stand in water.",
      "Wet ground, mud or ice under the weights.",
      "Worked out for the strap with the most to hold:",
    ])
      expect(shown).toContain(told);
  });
  it("do not get lighter where more stakes are planned, as a weight holds its whole strap", async () => {
    const { state } = await opened({ ...weighted(SLICK), tent: { ...TWENTY, anchors: { side: { plates: 1, stakes: 4 } } } });
    expect((await state()).lines.find(({ item }) => item === "ballastWeight")!.unitLb).toBe(3378);
  });
  it("are nowhere where no friction was told", async () => {
    const { page, state } = await opened(weighted({}));
    expect(await state()).toMatchObject({ ballast: null });
    for (const path of ["truck", "anchors", "site"]) expect(await page(path)).not.toContain("Weights: not known.");
  });
});

describe("weights that nobody can work out", () => {
  it.each([
    ["gust", weighted({ ...SLICK, gustMph: null }), "Nobody gave the design gust.", "Enter what is missing on the Anchors page."],
    [
      "load of a walled tent",
      weighted(SLICK, true),
      "A tent with walls is another case.",
      "Get the weight in writing from a licensed engineer.",
    ],
  ])("for want of the %s are said to be not known, with why and what to do", async (_, input, why, todo) => {
    const { page, state } = await opened(input);
    expect((await state()).lines.map(({ item }) => item)).not.toContain("ballastWeight");
    for (const path of ["truck", "anchors", "site"]) {
      const shown = await page(path);
      for (const told of ["Weights: not known. None are on the truck list.", why, todo]) expect(shown, path).toContain(told);
    }
  });
});
