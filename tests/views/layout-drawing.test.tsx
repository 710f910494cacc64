import { describe, expect, it } from "vitest";
import { planTent } from "../../machines/tent/plan.ts";
import type { Point, TentPlan } from "../../machines/tent/types.ts";
import { LayoutDrawing, type LayoutProps } from "../../views/drawing/layout.tsx";
import { spread } from "../../views/drawing/spread.ts";
import { en } from "../../views/text/en/en.ts";
import { all, type Element, ofClass, readXml, textOf } from "../support/xml.ts";
import { eighty, forty, hundred, planOf, sixty, twenty } from "../tent/tents.ts";

const draw = (plan: TentPlan, more: Omit<LayoutProps, "plan" | "words"> = {}) =>
  readXml((<LayoutDrawing plan={plan} words={en} {...more} />).toString());
const named = (svg: Element, attribute: string) => all(svg).flatMap((e) => e.attributes[attribute] ?? []);
const written = (svg: Element) =>
  all(svg)
    .filter((e) => e.name === "text")
    .map(textOf);
const apart = (a: Point, b: Point) => Math.hypot(a.xFt - b.xFt, a.yFt - b.yFt);
const at = (plan: TentPlan, id: string) => plan.stations.find((s) => s.id === id)!;

const shifted = planTent({ ...planOf(sixty).spec, shifted: { C: { xFt: 1, yFt: -0.5 }, A: { xFt: 0.25, yFt: 0 } }, rings: { AB: 18 } });
const long = { ...eighty, widthFt: 120, lengthFt: 400, midsFt: Array<number>(14).fill(20), quarterRings: 2, centerPoleFt: 34 };
const TENTS: [string, TentPlan][] = [
  ["20×20", planOf(twenty)],
  ["40×80", planOf(forty)],
  ["80×100", planOf(eighty)],
  ["100×200", planOf(hundred)],
  ["120×400", planOf(long)],
  [
    "80×100 with anchors by its sheet",
    planOf({ ...eighty, anchors: { corner: { plates: 4, stakes: 13 }, side: { plates: 2, stakes: 7 } } }),
  ],
  ["60×120 with a corner shifted and rings counted", shifted],
];

/** Every length that the plan has: from a corner along its edges, across both ways, the setback. Worked out here from the places. */
const lengthsOf = (plan: TentPlan): number[] => {
  const edges = ["AB", "BC", "CD", "DA"].flatMap((edge) =>
    [...plan.stations.filter((s) => s.edge === edge), at(plan, edge[1]!)].map((s) => apart(at(plan, edge[0]!), s)),
  );
  const diagonals = [apart(at(plan, "A"), at(plan, "C")), apart(at(plan, "B"), at(plan, "D"))];
  return [...edges, ...diagonals, plan.spec.setbackFt, plan.widthFt, plan.lengthFt];
};

/** Lengths in feet in a text written in feet and inches, and what is left of the text without them. */
function measuresIn(text: string): { ft: number[]; rest: string } {
  const ft: number[] = [];
  const rest = text.replace(/(\d+) ft(?: (\d+) (\d+)\/(\d+) in| (\d+)\/(\d+) in| (\d+) in)?|0 in/g, (_, f, w, n, d, n2, d2, w2) => {
    ft.push(Number(f ?? 0) + (Number(w ?? w2 ?? 0) + Number(n ?? n2 ?? 0) / Number(d ?? d2 ?? 1)) / 12);
    return "";
  });
  return { ft, rest };
}

/** A ratio at each station, of each kind in turn. */
const RATIOS = [
  { verdict: "short", ratio: 10.25, isAtLeast: false },
  { verdict: "notKnown", ratio: null, isAtLeast: true },
  { verdict: "notKnown", ratio: 0.83, isAtLeast: true },
  { verdict: "notShort", ratio: 0.61, isAtLeast: false },
] as const;
const ratiosOf = ({ stations }: TentPlan) => stations.map(({ id }, i) => ({ station: id, ...RATIOS[i % RATIOS.length]! }));

/** The largest are drawn by the same rule, and take longest. */
const NOT_LARGEST = TENTS.filter(([name]) => !/×[24]00/.test(name));

describe.each(NOT_LARGEST)("the ratios on the layout of a %s", (_, plan) => {
  const svg = draw(plan, { ratios: ratiosOf(plan) });
  const boxes = ofClass(svg, "drawn-running-edge").map((edge) => ofClass(edge, "drawn-ratio"));

  it("stand at each station, twice at a corner, with a mark that is not color alone", () => {
    expect(boxes.flat()).toHaveLength(plan.stations.length + 4);
    const marks = boxes.flat().map((box) => `${box.attributes.class} ${textOf(box)}`);
    expect(new Set(marks)).toEqual(
      new Set([
        "drawn-ratio is-short 10.25",
        "drawn-ratio is-not-known ?",
        "drawn-ratio is-not-known 0.83 or more",
        "drawn-ratio is-open 0.61",
      ]),
    );
  });
  it("don't touch each other", () => {
    for (const edge of boxes) {
      const rects = edge.map((box) => all(box).find((e) => e.name === "rect")!.attributes);
      const turned = edge[0]!.attributes.transform !== undefined;
      const along = (r: (typeof rects)[number]) => ({ x: Number(r.x), y: Number(r.y), w: Number(r.width), h: Number(r.height) });
      const places = rects.map(along);
      const level = places.every((p) => Math.abs(p.y - places[0]!.y) < 0.01);
      const [at, size] = level ? [places.map((p) => p.x), turned ? places[0]!.h : places[0]!.w] : [places.map((p) => p.y), places[0]!.h];
      const sorted = at.toSorted((a, b) => a - b);
      for (const [i, place] of sorted.entries()) if (i > 0) expect(place - sorted[i - 1]!).toBeGreaterThanOrEqual(size);
    }
  });
  it("leave the drawing as it is where none is known", () => {
    const none = plan.stations.map(({ id }) => ({ station: id, verdict: "notKnown", ratio: null, isAtLeast: true }) as const);
    expect((<LayoutDrawing plan={plan} words={en} ratios={none} />).toString()).toBe((<LayoutDrawing plan={plan} words={en} />).toString());
  });
});

describe.each(TENTS)("the layout of a %s", (_, plan) => {
  const svg = draw(plan);

  it("has every station, plate, pole, piece and seam once", () => {
    expect(named(svg, "data-station")).toEqual(plan.stations.map((s) => s.id));
    expect(named(svg, "data-pole")).toEqual(plan.poles.map((p) => p.id));
    expect(named(svg, "data-seam")).toEqual(plan.seams.map((s) => s.id));
    expect(named(svg, "data-piece")).toEqual(plan.pieces.map((p) => p.id));
    const plates = named(svg, "data-plate");
    expect(plates.map((p) => p.split(".")[0])).toEqual(plan.plates.map((p) => p.station));
    expect(new Set(plates).size).toBe(plan.plates.length);
  });
  it("has a hole for each stake", () => {
    const stakes = ofClass(ofClass(svg, "drawn-plates")[0]!, "drawn-stake").length;
    expect(stakes).toBe(plan.plates.reduce((n, p) => n + p.stakes, 0));
  });
  it("writes the whole name of every station, twice for a corner, with its reading", () => {
    const labels = ofClass(svg, "drawn-running-edge").flatMap((e) => written(e));
    const all = labels.join(" | ").split(/[ |]+/);
    for (const { id, kind } of plan.stations) expect(all.filter((w) => w === id)).toHaveLength(kind === "corner" ? 2 : 1);
  });
  it("shows no number that the plan has not", () => {
    const lengths = lengthsOf(plan);
    const names = new Set([...plan.stations, ...plan.poles, ...plan.seams].map((x) => x.id));
    const pieces = new Set(plan.pieces.map((p) => p.id.replace("-", " ")));
    const orders = new Set(plan.pieces.map((p) => String(p.order)));
    const scale = new Set(ofClass(svg, "drawn-scale").flatMap((e) => all(e)));
    const ring = new Set(ofClass(svg, "drawn-order").flatMap((e) => all(e)));
    const texts = all(svg).filter((e) => (e.name === "text" || e.name === "title") && !scale.has(e));
    let numbers = 0;
    for (const text of texts) {
      const words = textOf(text);
      if (ring.has(text)) expect(words === "" || orders.has(words)).toBe(true);
      else if (!pieces.has(words)) {
        const { ft, rest } = measuresIn(words);
        numbers += ft.length;
        for (const n of ft) expect(Math.min(...lengths.map((l) => Math.abs(l - n))) * 12, words).toBeLessThanOrEqual(1 / 16 + 1e-4);
        for (const word of rest.split(/\s+/).filter((w) => /\d/.test(w))) expect(names, words).toContain(word);
      }
    }
    expect(numbers).toBeGreaterThanOrEqual(plan.stations.length + 4 + 2 + 2 + 1);
  });
  it("shows the same in millimeters", () => {
    const lengths = lengthsOf(plan);
    for (const text of ofClass(draw(plan, { units: "mm" }), "drawn-running-edge").flatMap(written))
      for (const [mm] of text.matchAll(/(?<![A-Z\d])\d+/g))
        expect(Math.min(...lengths.map((l) => Math.abs(l * 304.8 - Number(mm)))), text).toBeLessThanOrEqual(0.51);
  });
  it("draws the scale bar as long as it says, in feet and in meters", () => {
    for (const units of ["ft", "mm"] as const) {
      const bar = ofClass(draw(plan, { units }), "drawn-scale")[0]!;
      const rects = all(bar).filter((e) => e.name === "rect");
      const long = rects.reduce((sum, r) => sum + Number(r.attributes.width), 0);
      const says = Number(written(bar).at(-1)!.split(" ")[0]);
      expect(Math.abs(long * (units === "mm" ? 0.3048 : 1) - says)).toBeLessThan(0.03);
    }
  });
  it("is to scale, and its corners are the plan's stations", () => {
    const [footprint] = ofClass(svg, "drawn-footprint");
    const spots = footprint!.attributes.points!.split(" ").map((p) => p.split(",").map(Number));
    for (const [i, id] of ["A", "B", "C", "D"].entries()) {
      const [dx, dy] = [spots[i]![0]! - spots[0]![0]!, spots[0]![1]! - spots[i]![1]!];
      expect(dx).toBeCloseTo(at(plan, id).xFt - at(plan, "A").xFt, 1);
      expect(dy).toBeCloseTo(at(plan, id).yFt - at(plan, "A").yFt, 1);
    }
  });
  it("lays the pieces between the corner marks, so that every seam ends at its station", () => {
    const [footprint] = ofClass(svg, "drawn-footprint");
    const [ax, ay] = footprint!.attributes.points!.split(" ")[0]!.split(",").map(Number) as [number, number];
    const corners = ofClass(svg, "drawn-piece").flatMap((e) => {
      const spots = all(e)
        .find((x) => x.name === "polygon")!
        .attributes.points!.split(" ");
      return spots.map((p) => p.split(",").map(Number) as [number, number]);
    });
    for (const s of plan.stations.filter((x) => x.kind !== "side")) {
      const [x, y] = [ax + s.xFt - at(plan, "A").xFt, ay - s.yFt + at(plan, "A").yFt];
      expect(Math.min(...corners.map(([px, py]) => Math.hypot(px - x, py - y))), s.id).toBeLessThan(0.05);
    }
  });
  it("keeps all in its frame and every number a number", () => {
    const [, , wide, high] = svg.attributes.viewBox!.split(" ").map(Number);
    for (const e of all(svg)) {
      for (const key of ["x", "x1", "x2", "cx"]) inside(e.attributes[key], wide!);
      for (const key of ["y", "y1", "y2", "cy"]) inside(e.attributes[key], high!);
      for (const value of Object.values(e.attributes)) expect(value).not.toMatch(/NaN|undefined|Infinity/);
    }
    function inside(value: string | undefined, most: number) {
      if (value === undefined) return;
      expect(Number(value)).toBeGreaterThanOrEqual(0);
      expect(Number(value)).toBeLessThanOrEqual(most);
    }
  });
  it("writes no two readings of an edge over each other", () => {
    for (const edge of ofClass(svg, "drawn-running-edge")) {
      const upright = edge.attributes["data-edge"] === "AB" || edge.attributes["data-edge"] === "CD";
      const texts = all(edge).filter((e) => e.name === "text");
      const turned = texts.some((t) => t.attributes.transform);
      if (!upright && !turned) continue;
      const places = texts.map((t) => Number(t.attributes[upright ? "y" : "x"])).sort((a, b) => a - b);
      const size = Number(texts[0]!.attributes["font-size"]);
      for (const [i, p] of places.entries()) if (i > 0) expect(p - places[i - 1]!).toBeGreaterThan(size);
    }
  });
  it("keeps to what a strict content policy allows", () => {
    for (const e of all(svg)) {
      expect(["style", "script"]).not.toContain(e.name);
      expect(Object.keys(e.attributes).filter((k) => k === "style" || k.startsWith("on"))).toEqual([]);
    }
  });
});

describe("north and the street", () => {
  const plan = planOf(eighty);
  const turnOf = (svg: Element) =>
    /rotate\((-?[\d.]+)/.exec(all(ofClass(svg, "drawn-north")[0]!).find((e) => e.attributes.transform)!.attributes.transform!)![1];
  it("are not drawn where nobody gave them", () => {
    expect(ofClass(draw(plan), "drawn-north")).toEqual([]);
    expect(ofClass(draw(plan), "drawn-street")).toEqual([]);
  });
  it.each([
    [0, 0],
    [90, -90],
    [200, -200],
  ])("A to B bears %i°: the arrow is turned by %i°", (bearing, turn) => {
    expect(Number(turnOf(draw(plan, { north: bearing })))).toBe(turn);
  });
  it("north takes into account that a shifted baseline is not drawn upright", () => {
    const leaning = planTent({ ...plan.spec, shifted: { B: { xFt: 1, yFt: 0 } } });
    expect(Number(turnOf(draw(leaning, { north: 10 })))).toBeCloseTo((Math.atan2(1, 100) * 180) / Math.PI - 10, 1);
  });
  it.each(["AB", "BC", "CD", "DA"] as const)(
    "the street along %s stands outside the tent on that side, in words that cannot break out",
    (edge) => {
      const svg = draw(plan, { street: { edge, name: '<b>5 & "Sixth"' } });
      const [street] = ofClass(svg, "drawn-street");
      expect(written(street!)).toEqual(['Street: <b>5 & "Sixth"']);
      const label = all(street!).find((e) => e.name === "text")!.attributes;
      const [wide, high] = svg.attributes.viewBox!.split(" ").slice(2).map(Number);
      const [x, y] = [Number(label.x) / wide!, Number(label.y) / high!];
      expect({ AB: x < 0.1, BC: y < 0.1, CD: x > 0.9, DA: y > 0.7 }[edge]).toBe(true);
    },
  );
});

describe("marks that are too close for their labels", () => {
  it("are spread, each as little as can be, in order", () => {
    expect(spread([0, 1, 10], 3)).toEqual([-1, 2, 10]);
    expect(spread([0, 5, 10], 3)).toEqual([0, 5, 10]);
    expect(spread([5, 5, 5], 2)).toEqual([3, 5, 7]);
  });
  it("keep their places in the drawing: only the label moves", () => {
    const close = planOf({ ...hundred, spacingFt: 3 });
    const svg = draw(close);
    expect(named(svg, "data-station")).toHaveLength(close.stations.length);
    expect(Number(svg.attributes.height)).toBeGreaterThan(Number(draw(planOf(hundred)).attributes.height));
  });
});
