import * as v from "valibot";
import { strict } from "../lookup/strict.ts";
import { UNSEEN } from "../lookup/unseen.ts";
import type { Point } from "../tent/types.ts";
import { BURIED_KINDS, HOW_TOLD, type Offset, pointAt, type SiteModel, THING_KINDS } from "./model.ts";
import { cross, sidesOf } from "./plane.ts";
import { SITE_LIMITS as MAX, MAX_PROBLEMS, type SiteProblem, type SiteProblemCode } from "./site-limits.ts";

/** A site, or everything that is wrong with how it was told: all of it, up to `MAX_PROBLEMS`, and then nothing of it is taken. */
export type ReadSite = { readonly site: SiteModel } | { readonly problems: readonly SiteProblem[] };

/**
 * Reads a site as crews measure it: points as `{ alongFt, offFt }` from the baseline. Accepts any value at all.
 * `minToleranceIn`: no zone may be entered narrower, in inches (`MIN_TOLERANCE_IN` of machines/install/limits.ts).
 *
 * @example readSite({ buried: [{ id: "gas 1", kind: "gas", told: "ticket", points: [{ alongFt: 12, offFt: 8 }] }] }, 18) // { problems: [{ path: "buried.0.points", code: "tooFewPoints", value: 1, limit: 2 }] }
 */
export function readSite(input: unknown, minToleranceIn: number): ReadSite {
  const tooMany = tooManyIn(input);
  if (tooMany) return { problems: [tooMany] };
  const read = v.safeParse(schemaOf(minToleranceIn), input, { abortPipeEarly: true });
  if (!read.success) return { problems: read.issues.slice(0, MAX_PROBLEMS).map(problemOf) };
  const twice = namesTwice(read.output);
  return twice.length > 0 ? { problems: twice } : { site: read.output };
}

/** A message is a code and, after a colon, its limit. */
const says = (code: SiteProblemCode, limit?: number): string => (limit === undefined ? code : `${code}:${limit}`);

const number = v.pipe(v.number(says("notANumber")), v.finite(says("notANumber")));
const range = (from: number, to: number) => v.pipe(number, v.minValue(from, says("tooSmall", from)), v.maxValue(to, says("tooLarge", to)));
const orNull = <S extends v.GenericSchema>(schema: S) => v.optional(v.nullable(schema), null);
const fields = <E extends v.ObjectEntries>(entries: E) => strict(() => says("unknownField"), entries);
const list = <S extends v.GenericSchema>(of: S) => v.array(of, says("notAList"));

const place = v.pipe(number, v.minValue(-MAX.maxFt, says("tooFar", MAX.maxFt)), v.maxValue(MAX.maxFt, says("tooFar", MAX.maxFt)));
const point = v.pipe(fields({ alongFt: place, offFt: place }), v.transform((offset: Offset): Point => pointAt(offset))); // biome-ignore format: one line reads best
const id = v.pipe(
  v.string(says("notText")),
  v.trim(),
  v.minLength(1, says("noName")),
  v.maxLength(MAX.maxNameLetters, says("nameTooLong", MAX.maxNameLetters)),
  // A name that turns the direction of text can read as another line's.
  v.check((name) => !UNSEEN.test(name), says("nameUnseen")),
);
const errorFt = v.optional(range(0, MAX.maxErrorFt), 0);

const path = v.pipe(
  list(point),
  v.minLength(MAX.minLinePoints, says("tooFewPoints", MAX.minLinePoints)),
  v.check((points) => points.some((p) => !same(p, points[0]!)), says("noLength")),
);
const corners = v.pipe(
  list(point),
  // Some close the ring, and some do not.
  v.transform((points) => (points.length > 1 && same(points[0]!, points.at(-1)!) ? points.slice(0, -1) : points)),
  v.minLength(MAX.minCorners, says("tooFewPoints", MAX.minCorners)),
  v.maxLength(MAX.maxCorners, says("tooManyCorners", MAX.maxCorners)),
  v.check((points) => Math.abs(areaSqFt(points)) > 0, says("noArea")),
  v.check((points) => !crossesItself(points), says("crossesItself")),
);
const shape = v.variant(
  "is",
  [
    fields({ is: v.literal("polygon"), corners }),
    fields({ is: v.literal("path"), points: path }),
    fields({ is: v.literal("circle"), middle: point, radiusFt: range(MAX.minRadiusFt, MAX.maxRadiusFt) }),
  ],
  says("notKnown"),
);

const area = fields({ errorFt, corners });
const overhead = fields({
  id,
  kv: orNull(range(0, MAX.maxKv)),
  lowestFt: orNull(range(0, MAX.maxLowestFt)),
  errorFt,
  points: path,
});
const thing = fields({ id, kind: v.picklist(THING_KINDS, says("notKnown")), errorFt, shape });
const heading = range(-MAX.maxHeadingDeg, MAX.maxHeadingDeg);

const stake = v.variant(
  "is",
  [
    fields({ is: v.literal("plate"), station: id, plate: v.pipe(range(1, MAX.maxFixes), v.integer(says("notANumber"))) }),
    fields({ is: v.literal("tie"), pole: id }),
  ],
  says("notKnown"),
);
const fix = v.variant(
  "is",
  [
    fields({ is: v.literal("slide"), station: id, byFt: range(-MAX.maxSlideFt, MAX.maxSlideFt), stakes: v.optional(list(stake), []) }),
    fields({
      is: v.literal("engineeredAnchor"),
      stake,
      expose: v.pipe(list(id), v.minLength(1, says("missing")), v.maxLength(MAX.maxExposed, says("tooLarge", MAX.maxExposed))),
    }),
  ],
  says("notKnown"),
);

const schemaOf = (minToleranceIn: number) =>
  fields({
    buried: v.optional(
      list(
        fields({
          id,
          kind: v.picklist(BURIED_KINDS, says("notKnown")),
          told: v.picklist(HOW_TOLD, says("notKnown")),
          widthIn: orNull(range(0, MAX.maxWidthIn)),
          toleranceIn: orNull(range(minToleranceIn, MAX.maxToleranceIn)),
          errorFt,
          points: path,
        }),
      ),
      [],
    ),
    overhead: v.optional(list(overhead), []),
    things: v.optional(list(thing), []),
    ground: orNull(area),
    ticketArea: orNull(area),
    slope: orNull(fields({ percent: range(0, MAX.maxSlopePercent), downhillDeg: heading })),
    wanted: orNull(fields({ cornerA: point, headingDeg: heading })),
    fixes: v.exactOptional(v.pipe(list(fix), v.maxLength(MAX.maxFixes, says("tooLarge", MAX.maxFixes)))),
  });

/** What the library says of objects by itself, as no message can be given to it there. */
const OF_OBJECTS: Readonly<Record<string, SiteProblemCode>> = { "Invalid type": "notAnObject", "Invalid key": "missing" };

function problemOf(issue: v.BaseIssue<unknown>): SiteProblem {
  const [code, limit] = (OF_OBJECTS[issue.message.split(":")[0]!] ?? issue.message).split(":") as [SiteProblemCode, string | undefined];
  const path = (issue.path ?? []).map(({ key }) => String(key)).join(".");
  return { path: path.slice(0, 200), code, value: shown(issue.input), limit: limit === undefined ? null : Number(limit) };
}

/** A value as it can be stored and shown; of a list, how long it is. JSON has no infinity. */
function shown(value: unknown): string | number {
  if (typeof value === "number") return Number.isFinite(value) ? value : String(value);
  if (Array.isArray(value)) return value.length;
  return typeof value === "string" ? value.slice(0, 80) : value === undefined || value === null ? "" : typeof value;
}

function namesTwice({ buried, overhead, things }: SiteModel): SiteProblem[] {
  const seen = new Set<string>();
  const lists = Object.entries({ buried, overhead, things });
  return lists.flatMap(([list, all]) =>
    all.flatMap(({ id: name }, i): SiteProblem[] => {
      if (!seen.has(name)) return seen.add(name) && [];
      return [{ path: `${list}.${i}.id`, code: "nameTwice", value: name, limit: null }];
    }),
  );
}

/** What is wrong with a site that has more lines and things, or more stretches, than may be told; `null` where it has not. */
export function tooManyIn(input: unknown): SiteProblem | null {
  const lists = listsOf(input);
  const neighbors = lists.reduce((sum, list) => sum + list.length, 0);
  if (neighbors > MAX.maxNeighbors) return { path: "", code: "tooManyNeighbors", value: neighbors, limit: MAX.maxNeighbors };
  const segments = lists.reduce((sum, list) => list.reduce((n: number, one) => n + sizeOf(one), sum), 0);
  return segments > MAX.maxSegments ? { path: "", code: "tooManySegments", value: segments, limit: MAX.maxSegments } : null;
}

/** The lines, wires and things of a site before anything of it is looked at. */
function listsOf(input: unknown): (readonly unknown[])[] {
  const { buried, overhead, things } = (typeof input === "object" && input !== null ? input : {}) as Record<string, unknown>;
  return [buried, overhead, things].filter((list): list is readonly unknown[] => Array.isArray(list));
}
/** How many stretches one of them has: its points count, whatever they are. */
function sizeOf(one: unknown): number {
  const { points, shape } = (typeof one === "object" && one !== null ? one : {}) as Record<string, unknown>;
  const inside = (typeof shape === "object" && shape !== null ? shape : {}) as Record<string, unknown>;
  const long = [points, inside.points, inside.corners].map((list) => (Array.isArray(list) ? list.length : 0));
  return Math.max(1, ...long.map((n, i) => (i === 2 ? n : n - 1)));
}

const same = (a: Point, b: Point): boolean => a.xFt === b.xFt && a.yFt === b.yFt;
const areaSqFt = (points: readonly Point[]): number =>
  sidesOf(points).reduce((sum, { from, to }) => sum + (from.xFt * to.yFt - to.xFt * from.yFt) / 2, 0);
function crossesItself(points: readonly Point[]): boolean {
  const sides = sidesOf(points);
  return sides.some((a, i) => sides.some((b, j) => j > i && cross(a, b)));
}
