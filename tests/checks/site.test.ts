import fc from "fast-check";
import geographiclib from "geographiclib-geodesic";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { describe, expect, it } from "vitest";
import { clearancesOf } from "../../machines/site/clearances.ts";
import { PROJECTION_ERROR_FT, roundingErrorFt, toOffset } from "../../machines/site/geo-frame.ts";
import { hullOf, isInside, segmentOf, toSegmentSq } from "../../machines/site/plane.ts";
import { apartFt, outlineOf, type Shape } from "../../machines/site/shape.ts";
import { standingAt, standingOf } from "../../machines/site/stand.ts";
import { zoneGrid } from "../../machines/site/zone-grid.ts";
import type { Point } from "../../machines/tent/types.ts";
import { anySite, at, pointWithin, rulesFor } from "../support/sites.ts";
import { forty, planOf } from "../tent/tents.ts";

const make = new GeometryFactory();
const coordinates = (points: readonly Point[]) => points.map(({ xFt, yFt }) => new Coordinate(xFt, yFt));
const geometry = {
  point: (p: Point) => make.createPoint(new Coordinate(p.xFt, p.yFt)),
  path: (points: readonly Point[]) => make.createLineString(coordinates(points)),
  polygon: (points: readonly Point[]) => make.createPolygon(coordinates([...points, points[0]!])),
};
const distance = (a: unknown, b: unknown): number => DistanceOp.distance(a, b);
const any = pointWithin(30);
/** Coordinates of many digits; of numbers next to nothing the other library makes infinity. */
const fineFt = fc.double({ min: -30, max: 30, noNaN: true }).map((ft) => Math.round(ft * 1e9) / 1e9);
const fine = fc.tuple(fineFt, fineFt).map(([x, y]) => at(x, y));
const convex = fc
  .array(any, { minLength: 3, maxLength: 8 })
  .map(hullOf)
  .filter((hull) => hull.length > 2);

describe("distances, held against JSTS, a port of the JTS Topology Suite", () => {
  it("from a point to a stretch", () => {
    fc.assert(
      fc.property(fine, fine, fine, (p, a, b) => {
        const ours = Math.sqrt(toSegmentSq(p.xFt, p.yFt, segmentOf(a, b)));
        expect(ours).toBeCloseTo(distance(geometry.point(p), geometry.path([a, b])), 8);
      }),
    );
  });
  it("from an outline to paths and polygons, outside, across and inside", () => {
    fc.assert(
      fc.property(convex, convex, fc.boolean(), (outline, other, closed) => {
        const shape: Shape = closed ? { is: "polygon", corners: other } : { is: "path", points: other };
        const theirs = distance(geometry.polygon(outline), closed ? geometry.polygon(other) : geometry.path(other));
        expect(apartFt(outlineOf(outline), shape)).toBeCloseTo(theirs, 8);
      }),
      { numRuns: 300 },
    );
  });
  // JSTS's own hull is left out: of three points such as (22, 30), (22.5, 13.75), (0, 0) it makes a line.
  it("the hull of points has its corners among them, turns one way, and has all of them in it", () => {
    fc.assert(
      fc.property(fc.array(any, { minLength: 3, maxLength: 20 }), (points) => {
        const hull = hullOf(points);
        fc.pre(hull.length > 2);
        expect(hull.every((corner) => points.includes(corner))).toBe(true);
        const polygon = geometry.polygon(hull);
        expect(Math.max(...points.map((p) => distance(polygon, geometry.point(p))))).toBeLessThan(1e-9);
        const turns = hull.map((c, i) => {
          const [n, m] = [hull[(i + 1) % hull.length]!, hull[(i + 2) % hull.length]!];
          return (n.xFt - c.xFt) * (m.yFt - n.yFt) - (n.yFt - c.yFt) * (m.xFt - n.xFt);
        });
        expect(turns.every((turn) => turn > 0)).toBe(true);
      }),
    );
  });
  it("and whether a point is inside a polygon", () => {
    const notched = [at(-20, -20), at(-20, 20), at(0, 3), at(20, 20), at(20, -20)];
    fc.assert(
      fc.property(fine, (p) => {
        const theirs = distance(geometry.polygon(notched), geometry.point(p)) === 0;
        expect(isInside(p, notched)).toBe(theirs);
      }),
    );
  });

  it("of a whole tent, turned and moved, from stakes to lines and from poles to wires", () => {
    const plan = planOf(forty);
    fc.assert(
      fc.property(anySite, any, fc.double({ min: -180, max: 180, noNaN: true }), (ground, middle, headingDeg) => {
        const place = { middle, headingDeg };
        const { neighbors } = clearancesOf(plan, ground, { place, rules: rulesFor(ground) });
        const tent = standingAt(standingOf(plan), place);
        for (const { from, nearest } of neighbors) {
          if (from.is !== "buried" && from.is !== "overhead") continue;
          const parts = from.is === "buried" ? tent.stakes : tent.poles;
          const line = geometry.path(from.line.points);
          for (const { of, distanceFt } of nearest) {
            const part = parts.find(({ name }) => JSON.stringify(name) === JSON.stringify(of))!;
            expect(distanceFt).toBeCloseTo(distance(geometry.point(part.at), line), 8);
          }
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe("the grid over zones", () => {
  it("answers as all zones one by one do", () => {
    const zone = fc.tuple(pointWithin(60), pointWithin(60), fc.double({ min: 0, max: 12, noNaN: true }));
    fc.assert(
      fc.property(
        fc.array(zone, { maxLength: 12 }),
        fc.array(fine, { minLength: 20, maxLength: 20 }),
        fc.integer({ min: 0, max: 9 }),
        (told, points, reachFt) => {
          const zones = told.map(([a, b, radiusFt]) => ({ segment: segmentOf(a, b), radiusFt }));
          const grid = zoneGrid(zones, { middle: at(0, 0), halfFt: 31 }, 9);
          for (const { xFt, yFt } of points) {
            const byHand = zones.some(({ segment, radiusFt }) => Math.sqrt(toSegmentSq(xFt, yFt, segment)) < radiusFt + reachFt - 1e-6);
            expect(grid.isIn(xFt, yFt, reachFt)).toBe(byHand);
          }
        },
      ),
    );
  });
});

/** WGS 84: semi-major axis in meters and flattening. Source: NIMA TR8350.2, 3rd ed., table 3.1; from memory. */
const AXIS_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;

describe("degrees laid flat", () => {
  const frames = fc.record({
    lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    latDeg: fc.double({ min: -70, max: 70, noNaN: true }),
    baselineBearingDeg: fc.double({ min: 0, max: 360, noNaN: true }),
  });
  it("near the baseline agree with the radii of curvature of the ellipsoid: closed forms, any textbook on geodesy", () => {
    fc.assert(
      fc.property(
        frames,
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (frame, east, north) => {
          const e2 = FLATTENING * (2 - FLATTENING);
          const lat = (frame.latDeg * Math.PI) / 180;
          const across = AXIS_M / Math.sqrt(1 - e2 * Math.sin(lat) ** 2);
          const along = (across * (1 - e2)) / (1 - e2 * Math.sin(lat) ** 2);
          // A hundred feet each way at the most.
          const [dEast, dNorth] = [east * 30.48, north * 30.48];
          const degrees: [number, number] = [
            frame.lonDeg + ((dEast / (across * Math.cos(lat))) * 180) / Math.PI,
            frame.latDeg + ((dNorth / along) * 180) / Math.PI,
          ];
          const { alongFt, offFt } = toOffset({ ...frame, baselineBearingDeg: 0 }, degrees);
          expect(alongFt).toBeCloseTo(dNorth / 0.3048, 2);
          expect(offFt).toBeCloseTo(dEast / 0.3048, 2);
        },
      ),
    );
  });
  it("keep every distance on a site of a mile each way to the stated error", () => {
    const away = fc.tuple(fc.double({ min: 0, max: 360, noNaN: true }), fc.double({ min: 0, max: 7467 * 0.3048, noNaN: true }));
    const { WGS84 } = geographiclib.Geodesic;
    fc.assert(
      fc.property(frames, away, away, (frame, one, other) => {
        const placed = ([azimuth, meters]: readonly [number, number]): [number, number] => {
          const { lon2, lat2 } = WGS84.Direct(frame.latDeg, frame.lonDeg, azimuth, meters);
          return [lon2!, lat2!];
        };
        const [p, q] = [placed(one), placed(other)];
        const [a, b] = [toOffset(frame, p), toOffset(frame, q)];
        const flatFt = Math.sqrt((a.alongFt - b.alongFt) ** 2 + (a.offFt - b.offFt) ** 2);
        const trueFt = WGS84.Inverse(p[1], p[0], q[1], q[0]).s12! / 0.3048;
        expect(Math.abs(flatFt - trueFt)).toBeLessThan(PROJECTION_ERROR_FT);
      }),
    );
  });
  it("are off by no more than half their last digit each way", () => {
    const degreeFt = (AXIS_M * Math.PI) / 180 / 0.3048;
    expect(roundingErrorFt(6)).toBeCloseTo(Math.SQRT2 * degreeFt * 0.5e-6, 4);
    expect(roundingErrorFt(6)).toBeGreaterThanOrEqual(Math.SQRT2 * degreeFt * 0.5e-6);
  });
  it("begin where the baseline does", () => {
    expect(toOffset({ lonDeg: 179.9999, latDeg: 10, baselineBearingDeg: 30 }, [179.9999, 10])).toEqual({ alongFt: 0, offFt: 0 });
    // Over the date line it is a few feet, not around the world.
    expect(toOffset({ lonDeg: 179.9999, latDeg: 0, baselineBearingDeg: 0 }, [-179.9999, 0]).offFt).toBeCloseTo(2e-4 * (AXIS_M * Math.PI) / 180 / 0.3048, 3); // biome-ignore format: one line reads best
  });
});
