import { amount } from "../figures/line.ts";
import type { WeatherLine } from "./lines.ts";
import { studentT95 } from "./student-t.ts";

/** One reading of a series: all gusts, or all means. */
export type WindAt = { readonly takenAt: number; readonly mph: number };
export type WindSeries = {
  /** In any order. What is later than `at` is left out. */
  readonly readings: readonly WindAt[];
  /** Now, ms. */
  readonly at: number;
  readonly limitMph: number;
  /** How long a reading is good for, s: the job's own limit. */
  readonly goodForS: number;
};

export type WindTrend =
  /** "At this rate `limitMph` in `likelyMin`": between the soonest and the latest nine times out of ten, if it goes on as it did. */
  | {
      readonly is: "rising";
      readonly limitMph: number;
      readonly likelyMin: number;
      readonly soonestMin: number;
      readonly latestMin: number;
      readonly line: WeatherLine;
    }
  /** The last reading is at the limit already: no trend is needed. */
  | { readonly is: "reached" }
  /** The readings do not say. It does not mean that the wind is not rising. */
  | { readonly is: "silent"; readonly why: "tooFew" | "old" | "notClear" | "tooFarAhead" };

/** Three readings are a line and one to hold against it. */
const MIN_READINGS = 3;
/** A reading is a whole mph: what rounding alone scatters it by. A series that happens to lie on a line is no surer than that. */
const ROUNDING_SD_MPH = 1 / Math.sqrt(12);
/** What is older than this belongs to another weather, ms. Common practice, no source. */
const MAX_AGE_MS = 60 * 60_000;

/**
 * When a rising wind will be at a limit: a straight line through the readings of the last hour by least squares, and the time at which it
 * crosses the limit, with the spread of that time (Fieller's interval, 90 %). Silent where the slope is not clearly up, where the crossing
 * lies farther ahead than the readings reach back, or where they are too few or too old. It warns; it never says that there is time.
 */
export function windTrend({ readings, at, limitMph, goodForS }: WindSeries): WindTrend {
  const series = readings.filter((r) => r.takenAt <= at && at - r.takenAt <= MAX_AGE_MS).sort((a, b) => a.takenAt - b.takenAt);
  const last = series.at(-1);
  if (!last) return { is: "silent", why: "tooFew" };
  if (last.mph >= limitMph) return { is: "reached" };
  if (new Set(series.map((r) => r.takenAt)).size < MIN_READINGS) return { is: "silent", why: "tooFew" };
  if (at - last.takenAt > goodForS * 1000) return { is: "silent", why: "old" };
  const points = series.map((r) => ({ min: (r.takenAt - at) / 60_000, mph: r.mph }));
  const crossing = crossingOf(points, limitMph);
  if (!crossing) return { is: "silent", why: "notClear" };
  const { likelyMin, soonestMin, latestMin, slope } = crossing;
  if (likelyMin > -points[0]!.min) return { is: "silent", why: "tooFarAhead" };
  const fromNow = (min: number) => amount(Math.max(0, min), "min").n;
  return {
    is: "rising",
    limitMph,
    likelyMin: fromNow(likelyMin),
    soonestMin: fromNow(soonestMin),
    latestMin: fromNow(latestMin),
    line: {
      formula: "windTrend",
      inputs: [
        { name: "readings", is: amount(series.length, "number"), source: "site" },
        { name: "rise", is: amount(slope, "mphPerMin"), source: "statistics" },
        { name: "limit", is: amount(limitMph, "mph"), source: "sheet" },
      ],
      result: amount(Math.max(0, likelyMin), "min"),
      source: "statistics",
      leftOut: ["fronts"],
    },
  };
}

type Point = { readonly min: number; readonly mph: number };
type Crossing = { readonly likelyMin: number; readonly soonestMin: number; readonly latestMin: number; readonly slope: number };

/** Where a straight line through the points crosses a limit, and Fieller's interval of it; `null` where the slope may be none. */
function crossingOf(points: readonly Point[], limitMph: number): Crossing | null {
  const n = points.length;
  const mean = (of: (p: Point) => number) => points.reduce((sum, p) => sum + of(p), 0) / n;
  const [minutes, mph] = [mean((p) => p.min), mean((p) => p.mph)];
  const sxx = n * mean((p) => (p.min - minutes) ** 2);
  const slope = (n * mean((p) => (p.min - minutes) * (p.mph - mph))) / sxx;
  const left = n * mean((p) => (p.mph - mph - slope * (p.min - minutes)) ** 2);
  const sd = Math.max(Math.sqrt(left / (n - 2)), ROUNDING_SD_MPH);
  const reach = studentT95(n - 2) * sd;
  // The slope is clearly up, one chance in twenty: then the interval has two ends.
  const firm = slope ** 2 - reach ** 2 / sxx;
  if (slope <= 0 || firm <= 0) return null;
  const over = limitMph - mph;
  const halfWidth = (reach * Math.sqrt(over ** 2 / sxx + firm / n)) / firm;
  const middle = (slope * over) / firm;
  return { likelyMin: minutes + over / slope, soonestMin: minutes + middle - halfWidth, latestMin: minutes + middle + halfWidth, slope };
}
