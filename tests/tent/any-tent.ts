import fc from "fast-check";
import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import type { TentSpec } from "../../machines/tent/types.ts";

/** Lengths in feet to a thousandth. */
export const feet = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((ft) => Math.round(ft * 1000) / 1000);
export const usual = (...values: number[]) => fc.constantFrom(...values);

const size = fc
  .record({
    widthFt: fc.oneof(usual(20, 30, 40, 50, 60, 80, 100, 120), feet(20, 120)),
    mids: fc.array(fc.oneof(usual(10, 15, 20, 30, 40), feet(1, 40)), { maxLength: 8 }),
    onePiece: fc.boolean(),
    splitEnds: fc.boolean(),
  })
  .map(({ widthFt, mids, onePiece, splitEnds }): SpecInput => {
    const extra = mids.reduce((n, ft) => n + ft, 0);
    return onePiece ? { widthFt, lengthFt: Math.min(400, widthFt + extra), onePiece } : { widthFt, midsFt: mids, onePiece, splitEnds };
  });
/** Common tents and tents of odd dimensions, all of which can be built. */
export const buildable = fc
  .record({
    size,
    spacingFt: fc.oneof(usual(5, 8, 10, 12, 15, 20), feet(1, 20)),
    quarterRings: usual(0, 1, 2),
    evenly: fc.option(fc.integer({ min: 1, max: 8 })),
  })
  .map(
    ({ size, evenly, ...rest }): SpecInput => ({
      ...size,
      ...rest,
      centerPoleFt: 30,
      ridge: evenly === null ? null : { kind: "evenly", count: evenly },
    }),
  )
  .filter((input) => "spec" in checkSpec(input));

const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const anchor = fc
  .integer({ min: 1, max: 6 })
  .chain((plates) => fc.record({ plates: fc.constant(plates), stakes: fc.integer({ min: plates, max: plates * 6 }) }));
const shift = fc.record({ xFt: feet(-2, 2), yFt: feet(-2, 2) });
const keysOf = <T extends object>(record: T) =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Partial<T>;

/** Every kind of tent: poles omitted and added, anchors from a sheet, counted rings, shifted corners. */
export const anySpec: fc.Arbitrary<TentSpec> = fc
  .record({
    base: buildable,
    given: maybe(fc.uniqueArray(fc.integer({ min: 0, max: 200 }), { minLength: 1, maxLength: 5 })),
    leaveOut: fc.array(fc.nat(30), { maxLength: 3 }),
    add: fc.array(fc.record({ kind: fc.constantFrom("center" as const, "quarter" as const), xFt: feet(1, 119), yFt: feet(1, 200) }), {
      maxLength: 4,
    }),
    anchors: fc.record({ corner: maybe(anchor), seamEnd: maybe(anchor), side: maybe(anchor) }),
    rings: fc.record({ AB: maybe(fc.nat(3)), BC: maybe(fc.nat(3)), CD: maybe(fc.nat(3)), DA: maybe(fc.nat(3)) }),
    shifted: fc.record({ A: maybe(shift), B: maybe(shift), C: maybe(shift), D: maybe(shift) }),
    poles: fc.record({ centerPoleFt: feet(18, 60), sidePoleFt: feet(6, 16), setbackFt: feet(1, 20) }),
  })
  .map(({ base, given, leaveOut, add, anchors, rings, shifted, poles }) => {
    const plain = checkSpec({ ...base, ...poles });
    if ("problems" in plain) return plain;
    const plan = planTent(plain.spec);
    const ids = plan.poles.map((p) => p.id);
    const counted = Object.entries(keysOf(rings)).map(([edge, more]) => [edge, plan.edges.find((e) => e.name === edge)!.rings + more!]);
    return checkSpec({
      ...plain.spec,
      ...(given ? { ridge: { kind: "given", fromNearEndFt: given.map((ft) => ft + 0.25) } } : {}),
      leaveOut: leaveOut.flatMap((n) => ids[n] ?? []),
      add,
      anchors: keysOf(anchors),
      rings: Object.fromEntries(counted),
      shifted: keysOf(shifted),
    });
  })
  .filter((checked) => "spec" in checked)
  .map((checked) => (checked as { spec: TentSpec }).spec);
