import { describe, expect, it } from "vitest";
import { type WindSeries, windTrend } from "../../machines/weather/trend.ts";
import { chance } from "../support/marks.ts";

const MIN = 60_000;
const at = 100 * MIN;
/** Readings of the last minutes, oldest first: so many minutes ago, so many mph. */
const series = (readings: readonly (readonly [minutesAgo: number, mph: number])[], changes: Partial<WindSeries> = {}): WindSeries => ({
  readings: readings.map(([ago, mph]) => ({ takenAt: at - ago * MIN, mph })),
  at,
  limitMph: 20,
  goodForS: 1800,
  ...changes,
});

describe("a wind that rises", () => {
  it("a mph every three minutes from 16: 20 in twelve minutes", () => {
    const found = windTrend(series([[24, 8], [18, 10], [12, 12], [6, 14], [0, 16]])); // biome-ignore format: one line reads best
    expect(found).toMatchObject({ is: "rising", limitMph: 20, likelyMin: expect.closeTo(12, 6) });
    if (found.is !== "rising") throw new Error("silent");
    expect(found.soonestMin).toBeGreaterThan(9);
    expect(found.soonestMin).toBeLessThan(12);
    expect(found.latestMin).toBeGreaterThan(12);
    expect(found.line).toMatchObject({ formula: "windTrend", leftOut: ["fronts"] });
  });
  it("that is over the limit by the line, though not by its last reading, may be there now", () =>
    expect(windTrend(series([[30, 5], [20, 11], [10, 17], [5, 19]]))).toMatchObject({ is: "rising", likelyMin: expect.closeTo(0, 0), soonestMin: 0 })); // biome-ignore format: one line reads best
  it("whose last reading is at the limit has reached it", () => expect(windTrend(series([[10, 12], [5, 15], [0, 20]]))).toEqual({ is: "reached" })); // biome-ignore format: one line reads best
});

describe("silent, as the readings do not say", () => {
  it.each([
    ["nothing was read", [], "tooFew"],
    ["two readings are any line", [[10, 10], [0, 15]], "tooFew"],
    ["three at one moment are one", [[10, 10], [0, 14], [0, 15]], "tooFew"],
    ["it stays as it is", [[20, 12], [10, 12], [0, 12]], "notClear"],
    ["it falls", [[20, 16], [10, 14], [0, 12]], "notClear"],
    ["it goes up and down", [[20, 10], [15, 16], [10, 9], [5, 17], [0, 12]], "notClear"],
    ["three rough readings", [[20, 10], [10, 15], [0, 14]], "notClear"],
    ["the limit is farther off than the readings go back", [[9, 10], [6, 11], [3, 12], [0, 13]], "tooFarAhead"],
  ] as const)("%s", (_what, readings, why) => expect(windTrend(series(readings))).toEqual({ is: "silent", why })); // biome-ignore format: a table
  it("the last reading is old", () =>
    expect(windTrend(series([[50, 10], [45, 12], [40, 14], [31, 16]]))).toEqual({ is: "silent", why: "old" })); // biome-ignore format: one line reads best
  it("what is over an hour old, or not yet taken, is left out", () =>
    expect(windTrend(series([[70, 2], [65, 4], [10, 12], [0, 15], [-5, 18]]))).toEqual({ is: "silent", why: "tooFew" })); // biome-ignore format: one line reads best
});

describe("the spread", () => {
  it("holds the moment at which the true line crosses nine times in ten", () => {
    const normal = chance(7).normal;
    let [told, held] = [0, 0];
    for (let i = 0; i < 3000; i++) {
      // 1 mph in three minutes, readings every four minutes that scatter by 1 mph: 20 mph in 12 minutes.
      const found = windTrend(series(Array.from({ length: 8 }, (_, k) => [28 - 4 * k, 16 - (28 - 4 * k) / 3 + normal()] as const)));
      if (found.is !== "rising") continue;
      told++;
      if (found.soonestMin <= 12 && 12 <= found.latestMin) held++;
    }
    expect(told).toBeGreaterThan(2500);
    expect(held / told).toBeGreaterThan(0.88);
    expect(held / told).toBeLessThan(0.93);
  });
  it("a wind that only scatters is called rising at most once in twenty", () => {
    const normal = chance(11).normal;
    let told = 0;
    for (let i = 0; i < 3000; i++)
      if (
        windTrend(
          series(
            Array.from({ length: 6 }, (_, k) => [25 - 5 * k, 12 + normal()] as const),
            { limitMph: 90 },
          ),
        ).is === "rising"
      )
        told++;
    expect(told / 3000).toBeLessThan(0.05);
  });
});
