import fc from "fast-check";
import { expect } from "vitest";
import { DEFAULTS } from "../../machines/install/limits.ts";
import { clearanceRules } from "../../machines/install/site-rules.ts";
import { clearancesOf } from "../../machines/site/clearances.ts";
import { type BuriedLine, EMPTY_SITE, type OverheadLine, type SiteModel, type Thing } from "../../machines/site/model.ts";
import { findPlace } from "../../machines/site/placement.ts";
import type { ClearanceRules } from "../../machines/site/rules.ts";
import type { SearchLimits, Shift } from "../../machines/site/shifts.ts";
import type { Place } from "../../machines/site/stand.ts";
import type { Point, TentPlan } from "../../machines/tent/types.ts";
import { chance } from "./marks.ts";

export const at = (xFt: number, yFt: number): Point => ({ xFt, yFt });

/** A gas line from the ticket, marked without a width. */
export const buried = (points: readonly Point[], more: Partial<BuriedLine> = {}): BuriedLine => ({
  id: "gas 1",
  kind: "gas",
  told: "ticket",
  widthIn: null,
  toleranceIn: null,
  errorFt: 0,
  points,
  ...more,
});
export const wire = (points: readonly Point[], more: Partial<OverheadLine> = {}): OverheadLine => ({
  id: "wire 1",
  kv: 7.2,
  lowestFt: null,
  errorFt: 0,
  points,
  ...more,
});
export const thing = (kind: Thing["kind"], shape: Thing["shape"], id: string = kind): Thing => ({ id, kind, errorFt: 0, shape });
export const box = (x: number, y: number, wide: number, long: number): Point[] => [
  at(x, y),
  at(x, y + long),
  at(x + wide, y + long),
  at(x + wide, y),
];
export const site = (more: Partial<SiteModel>): SiteModel => ({ ...EMPTY_SITE, ...more });

/** The rules of a job without a sheet, for a site's own wires. */
export const rulesFor = ({ overhead }: SiteModel): ClearanceRules => clearanceRules(DEFAULTS, overhead);

const coordinate = (most: number) => fc.integer({ min: -most * 4, max: most * 4 }).map((quarters) => quarters / 4);
export const pointWithin = (most: number): fc.Arbitrary<Point> => fc.tuple(coordinate(most), coordinate(most)).map(([x, y]) => at(x, y));
const lines = (most: number, count: number) => fc.array(fc.array(pointWithin(most), { minLength: 2, maxLength: 4 }), { maxLength: count });

/** A site around a small tent, of which there may be anything: lines, wires, things, ground, the ticket's area. */
export const anySite: fc.Arbitrary<SiteModel> = fc
  .record({
    buried: lines(40, 4),
    overhead: fc.array(fc.tuple(pointWithin(60), pointWithin(60), fc.constantFrom(7.2, 69, null, 1200)), { maxLength: 1 }),
    things: fc.array(fc.tuple(pointWithin(60), fc.constantFrom<Thing["kind"]>("building", "tree", "lotLine"), fc.nat(12)), {
      maxLength: 2,
    }),
    widthIn: fc.constantFrom(null, 6, 24),
    groundFt: fc.option(fc.integer({ min: 20, max: 60 })),
    ticketFt: fc.option(fc.integer({ min: 15, max: 40 })),
  })
  .map((told) => ({
    ...EMPTY_SITE,
    buried: told.buried.map((points, i) => buried(points, { id: `line ${i}`, widthIn: told.widthIn })),
    overhead: told.overhead.map(([a, b, kv], i) => wire([a, b], { id: `wire ${i}`, kv })),
    things: told.things.map(([p, kind, ft], i) => thing(kind, shapeAt(p, kind, ft + 1), `thing ${i}`)),
    ground: told.groundFt === null ? null : { errorFt: 0, corners: around(told.groundFt) },
    ticketArea: told.ticketFt === null ? null : { errorFt: 0, corners: around(told.ticketFt) },
  }));

/** An L around the middle, so that a convex outline may cross it with all its corners inside. */
const around = (ft: number): Point[] => [at(-ft, -ft), at(-ft, ft), at(ft / 4, ft), at(ft / 4, ft / 2), at(ft, ft / 2), at(ft, -ft)];
function shapeAt(p: Point, kind: Thing["kind"], ft: number): Thing["shape"] {
  if (kind === "tree") return { is: "circle", middle: p, radiusFt: ft / 4 };
  return kind === "building"
    ? { is: "polygon", corners: box(p.xFt, p.yFt, ft, 2 * ft) }
    : { is: "path", points: [p, at(p.xFt + ft, p.yFt)] };
}

/**
 * The best place as anybody would look for it: every shift and turn on the grid in no order, each with all its distances. The
 * order is written anew: cost, then the turn, clockwise first, then the bearing of the shift.
 */
export function searchedByHand(plan: TentPlan, ground: SiteModel, { place, limits }: { place: Place; limits: SearchLimits }) {
  const rules = rulesFor(ground);
  const found: { shift: Shift; inZones: number; rest: boolean }[] = [];
  const most = Math.floor(limits.maxShiftFt);
  for (let turnDeg = -Math.floor(limits.maxTurnDeg); turnDeg <= limits.maxTurnDeg; turnDeg++)
    for (let alongFt = -most; alongFt <= most; alongFt++)
      for (let offFt = -most; offFt <= most; offFt++) {
        if (Math.sqrt(alongFt ** 2 + offFt ** 2) > limits.maxShiftFt) continue;
        const middle = at(place.middle.xFt + offFt, place.middle.yFt + alongFt);
        const here = { place: { middle, headingDeg: place.headingDeg + turnDeg }, rules };
        const { neighbors } = clearancesOf(plan, ground, here);
        const short = neighbors.flatMap((n) => n.short);
        const inZones = new Set(short.filter((c) => c.from.is === "buried").map((c) => JSON.stringify(c.of))).size;
        found.push({ shift: { alongFt, offFt, turnDeg }, inZones, rest: short.every((c) => c.from.is === "buried") });
      }
  const key = ({ alongFt, offFt, turnDeg }: Shift): number[] => [
    Math.sqrt(alongFt ** 2 + offFt ** 2) + limits.turnCostFtPerDeg * Math.abs(turnDeg),
    Math.abs(turnDeg),
    -turnDeg,
    (Math.atan2(offFt, alongFt) + 2 * Math.PI) % (2 * Math.PI),
  ];
  const best = (all: typeof found, more: (one: (typeof found)[0]) => number[] = () => []) =>
    all.map((one) => ({ one, key: [...more(one), ...key(one.shift)] })).sort((a, b) => compare(a.key, b.key))[0]?.one ?? null;
  const free = best(found.filter((one) => one.rest && one.inZones === 0));
  return { free, leastBad: best(found.filter((one) => one.rest), (one) => [one.inZones]) }; // biome-ignore format: one line reads best
}
const compare = (a: readonly number[], b: readonly number[]): number => a.map((n, i) => n - b[i]!).find((off) => off !== 0) ?? 0;

/** That `findPlace` finds what is found by hand, whatever the site and however the tent is wanted. */
export const sameAsByHand = (plan: TentPlan, limits: SearchLimits) =>
  fc.property(anySite, fc.integer({ min: -180, max: 180 }), (ground, headingDeg) => {
    const place = { middle: at(0, 0), headingDeg };
    const found = findPlace(plan, ground, { place, rules: rulesFor(ground), limits });
    const { free, leastBad } = searchedByHand(plan, ground, { place, limits });
    if (free) expect(found).toMatchObject({ is: expect.stringMatching(/asWanted|moved/), shift: free.shift });
    else if (leastBad) expect(found).toMatchObject({ is: "leastBad", shift: leastBad.shift });
    else expect(found).toEqual({ is: "nowhere" });
  });

/** A lawn with pipes and cables that wander over it, each in so many stretches: from a seed, the same every time. */
export function wanderingLines(
  seed: number,
  { lines: count, stretches, stepFt, spreadFt }: Record<"lines" | "stretches" | "stepFt" | "spreadFt", number>,
): SiteModel {
  const { even } = chance(seed);
  const all = Array.from({ length: count }, (_, i) => {
    let [x, y] = [(even() - 0.5) * 2 * spreadFt, (even() - 0.5) * 2 * spreadFt];
    let angle = even() * 2 * Math.PI;
    const points = [at(x, y)];
    for (let n = 0; n < stretches; n++) {
      angle += (even() - 0.5) * 0.6;
      [x, y] = [x + stepFt * Math.cos(angle), y + stepFt * Math.sin(angle)];
      points.push(at(x, y));
    }
    return buried(points, { id: `line ${i}` });
  });
  return site({ buried: all });
}
