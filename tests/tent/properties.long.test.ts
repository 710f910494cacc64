import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import type { Piece, Point, TentPlan } from "../../machines/tent/types.ts";
import { buildable, feet, usual } from "./any-tent.ts";
import { looks } from "./places.ts";
import { kitCount } from "./tents.ts";

const TINY = 2e-6;
const forEveryTent = (holds: (plan: TentPlan) => void) =>
  fc.assert(
    fc.property(buildable, (input) => {
      const checked = checkSpec(input);
      if ("spec" in checked) holds(planTent(checked.spec));
    }),
    { numRuns: 150 },
  );

const area = ({ at }: Piece) => at.widthFt * at.lengthFt;
const mirrored = (poles: readonly Point[], flip: (p: Point) => Point) =>
  poles.every((p) => poles.some((q) => Math.abs(flip(p).xFt - q.xFt) < TINY && Math.abs(flip(p).yFt - q.yFt) < TINY));

describe("every tent that can be built", () => {
  test("joins one lace edge with one eyelet edge at every half of every seam", () => {
    forEveryTent((plan) => {
      const pieces = new Map(plan.pieces.map((p) => [p.id, p]));
      for (const { kind, halves } of plan.seams) {
        for (const half of halves) {
          const [lace, eyelet] = [pieces.get(half.lacePiece)!, pieces.get(half.eyeletPiece)!];
          const sides = kind === "ridge" ? (["left", "right"] as const) : (["near", "far"] as const);
          const [low, high] = sides;
          const laceFirst = kind === "ridge" ? lace.at.xFt < eyelet.at.xFt : lace.at.yFt < eyelet.at.yFt;
          expect(lace.edges[laceFirst ? high : low]).toBe("lace");
          expect(eyelet.edges[laceFirst ? low : high]).toBe("eyelet");
        }
      }
      const joinedEdges = plan.pieces.reduce((n, p) => n + Object.keys(p.edges).length, 0);
      const kinds = plan.pieces.flatMap((p) => Object.values(p.edges));
      if (!plan.spec.splitEnds) expect(kinds.filter((k) => k === "lace")).toHaveLength(joinedEdges / 2);
    });
  });

  test("has pieces that cover it without overlap", () => {
    forEveryTent((plan) => {
      const wholeSqFt = plan.widthFt * plan.lengthFt;
      expect(Math.abs(plan.pieces.reduce((n, p) => n + area(p), 0) - wholeSqFt)).toBeLessThan(1e-3);
      plan.pieces.forEach((a, i) => {
        expect(a.at.xFt + a.at.widthFt).toBeLessThanOrEqual(plan.widthFt + TINY);
        expect(a.at.yFt + a.at.lengthFt).toBeLessThanOrEqual(plan.lengthFt + TINY);
        for (const b of plan.pieces.slice(i + 1)) {
          const wide = Math.min(a.at.xFt + a.at.widthFt, b.at.xFt + b.at.widthFt) - Math.max(a.at.xFt, b.at.xFt);
          const long = Math.min(a.at.yFt + a.at.lengthFt, b.at.yFt + b.at.lengthFt) - Math.max(a.at.yFt, b.at.yFt);
          expect(Math.min(wide, long)).toBeLessThan(TINY);
        }
      });
    });
  });

  test("has uniquely named stations on the perimeter, no farther apart than the spacing", () => {
    forEveryTent(({ stations, spec, widthFt, lengthFt }) => {
      expect(new Set(stations.map((s) => s.id)).size).toBe(stations.length);
      stations.forEach((s, i) => {
        const onSide = s.xFt === 0 || s.xFt === widthFt;
        const onEnd = s.yFt === 0 || s.yFt === lengthFt;
        expect(s.kind === "corner" ? onSide && onEnd : onSide !== onEnd).toBe(true);
        const next = stations[(i + 1) % stations.length]!;
        const apartFt = Math.abs(s.xFt - next.xFt) + Math.abs(s.yFt - next.yFt);
        expect(apartFt).toBeGreaterThan(0);
        expect(apartFt).toBeLessThanOrEqual(spec.spacingFt * (1 + 1e-6) + TINY);
      });
    });
  });

  test("has a station at both ends of every seam", () => {
    forEveryTent(({ seams, stations }) => {
      const ends = seams.flatMap((s) => (s.kind === "cross" ? [s.from, s.to] : [s.to]));
      const at = stations.filter((s) => s.kind === "seamEnd");
      expect(at).toHaveLength(ends.length);
      for (const end of ends) expect(at.some((s) => Math.abs(s.xFt - end.xFt) + Math.abs(s.yFt - end.yFt) < TINY)).toBe(true);
    });
  });

  test("has distinct interior poles inside, symmetric about the ridge", () => {
    forEveryTent(({ poles, widthFt, lengthFt }) => {
      for (const p of poles) {
        expect(p.xFt > 0 && p.xFt < widthFt && p.yFt > 0 && p.yFt < lengthFt).toBe(true);
      }
      expect(new Set(poles.map((p) => `${p.xFt} ${p.yFt}`)).size).toBe(poles.length);
      expect(mirrored(poles, (p) => ({ xFt: widthFt - p.xFt, yFt: p.yFt }))).toBe(true);
    });
  });

  test("is symmetric from end to end if its mids are", () => {
    forEveryTent(({ poles, spec, lengthFt }) => {
      const even = spec.ridge.kind === "evenly" || spec.midsFt.join() === [...spec.midsFt].reverse().join();
      if (even) expect(mirrored(poles, (p) => ({ xFt: p.xFt, yFt: lengthFt - p.yFt }))).toBe(true);
    });
  });

  test("has 2R quarter poles on each cross line and (R+1)² − 1 on each hip end", () => {
    forEveryTent(({ rows, poles, spec }) => {
      const rings = spec.quarterRings;
      const lines = rows.filter((r) => r.kind === "cross");
      for (const line of lines) expect([line.quarters.length, line.centers.length]).toEqual([2 * rings, 1]);
      const hips = poles.filter((p) => p.row.startsWith("hip")).length;
      expect(hips).toBe(2 * ((rings + 1) ** 2 - 1));
    });
  });

  test("has consistent counts by kind, by edge, and in the kit", () => {
    forEveryTent((plan) => {
      const { stations, edges, poles, rows, plates, spec } = plan;
      const of = (kind: string) => stations.filter((s) => s.kind === kind).length;
      const total = (what: "plates" | "stakes") => stations.reduce((n, s) => n + s[what], 0);
      expect(of("corner")).toBe(4);
      expect(edges.reduce((n, e) => n + e.rings, 0)).toBe(stations.length + 4);
      expect(edges.reduce((n, e) => n + e.seamEnds, 0)).toBe(of("seamEnd"));
      expect(edges.reduce((n, e) => n + e.sides, 0)).toBe(of("side"));
      for (const e of edges) {
        expect(e.baysFt).toHaveLength(e.rings - 1);
        expect(Math.abs(e.baysFt.reduce((n, ft) => n + ft, 0) - e.lengthFt)).toBeLessThan(1e-3);
      }
      expect(rows.flatMap((r) => [...r.quarters, ...r.centers]).sort()).toEqual(poles.map((p) => p.id).sort());
      expect(kitCount(plan, "sidePole") + kitCount(plan, "cornerPole")).toBe(stations.length);
      expect(kitCount(plan, "perimeterStake")).toBe(6 * 4 + 4 * of("seamEnd") + 2 * of("side"));
      expect(kitCount(plan, "perimeterStake")).toBe(total("stakes"));
      expect(kitCount(plan, "stakePlate")).toBe(total("plates"));
      expect(kitCount(plan, "perimeterStrap")).toBe(plates.length);
      expect(kitCount(plan, "centerPole") + kitCount(plan, "quarterPole")).toBe(kitCount(plan, "interiorStake"));
      expect(kitCount(plan, "wholeTop")).toBe(spec.onePiece ? 1 : 0);
    });
  });

  test("has its stake plates on the stake line", () => {
    forEveryTent(({ plates, spec, widthFt, lengthFt }) => {
      for (const p of plates) {
        const outFt = Math.max(-p.xFt, p.xFt - widthFt, -p.yFt, p.yFt - lengthFt);
        expect(Math.abs(outFt - spec.setbackFt)).toBeLessThan(TINY);
      }
    });
  });

  test("with split ends has four distinguishable end pieces", () => {
    forEveryTent(({ pieces, spec }) => {
      if (spec.splitEnds) expect(new Set(pieces.filter((p) => p.kind === "splitEnd").map(looks)).size).toBe(4);
    });
  });

  test("has no floating-point noise in its dimensions", () => {
    forEveryTent((plan) => {
      const noisy: unknown[] = [];
      JSON.stringify(plan, (_, value) => {
        if (typeof value === "number" && value !== Math.round(value * 1e6) / 1e6) noisy.push(value);
        return value;
      });
      expect(noisy).toEqual([]);
    });
  });
});

describe("any input", () => {
  const anything = fc.oneof(fc.anything(), fc.double(), fc.integer({ min: -5, max: 400 }), fc.array(fc.anything()));
  const wild = fc.record(
    {
      widthFt: fc.oneof({ weight: 4, arbitrary: feet(20, 120) }, anything),
      lengthFt: fc.oneof({ weight: 4, arbitrary: feet(20, 400) }, anything),
      midsFt: fc.oneof(fc.array(feet(-1, 60)), anything),
      onePiece: fc.oneof(fc.boolean(), anything),
      splitEnds: fc.oneof(fc.boolean(), anything),
      spacingFt: fc.oneof({ weight: 4, arbitrary: feet(1, 20) }, anything),
      quarterRings: fc.oneof({ weight: 4, arbitrary: usual(0, 1, 2) }, anything),
      ridge: fc.oneof(
        fc.record({ kind: fc.constantFrom("atSeams", "evenly", "given"), count: anything, fromNearEndFt: fc.array(feet(0, 400)) }),
        anything,
      ),
      leaveOut: fc.oneof(fc.array(fc.constantFrom("C1", "C2", "Q1", "Q7", "", "Q")), anything),
      add: fc.oneof(
        fc.array(fc.record({ kind: fc.constantFrom("center", "quarter"), xFt: feet(-5, 125), yFt: feet(-5, 405) }), { maxLength: 4 }),
        anything,
      ),
      centerPoleFt: fc.oneof({ weight: 4, arbitrary: feet(18, 60) }, anything),
      sidePoleFt: fc.oneof(feet(5, 17), anything),
      setbackFt: fc.oneof(feet(0, 21), anything),
      anchors: fc.oneof(fc.record({ corner: fc.record({ plates: fc.integer(), stakes: fc.integer() }) }), anything),
    },
    { requiredKeys: [] },
  );
  /** A tent that can be built, with one to three fields changed or made invalid. */
  const altered = fc.tuple(buildable, wild, fc.uniqueArray(fc.nat(14), { minLength: 1, maxLength: 3 })).map(([input, changes, picks]) => {
    const names = Object.keys(changes).filter((_, i) => picks.includes(i));
    return { ...input, ...Object.fromEntries(names.map((name) => [name, changes[name as keyof typeof changes]])) };
  });

  test("checkSpec returns a spec that planTent accepts, or problems that can be stored as JSON", () => {
    let built = 0;
    fc.assert(
      fc.property(fc.oneof({ weight: 4, arbitrary: altered }, wild, fc.anything()), (input) => {
        const checked = checkSpec(input as SpecInput);
        if ("spec" in checked) {
          built++;
          expect(planTent(checked.spec).stations.length).toBeGreaterThanOrEqual(4);
          expect(checkSpec(checked.spec)).toEqual(checked);
        } else {
          expect(checked.problems.length).toBeGreaterThan(0);
          expect(JSON.parse(JSON.stringify(checked.problems))).toEqual(checked.problems);
        }
      }),
      { numRuns: 3000 },
    );
    expect(built).toBeGreaterThan(300);
  });
});
