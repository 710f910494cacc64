import { amount } from "../figures/line.ts";
import type { Published } from "../figures/source.ts";
import type { WeatherFormula, WeatherLine } from "./lines.ts";

/** NWS heat index equation: simple form below 80 °F, else Rothfusz's regression with two adjustments. */
export const HEAT_INDEX: Published = {
  title: "US National Weather Service, heat index equation",
  section: "wpc.ncep.noaa.gov/html/heatindex_equation.shtml",
  seen: "read",
};
/** "Full sun can add up to 15 °F". */
const IN_SUN: Published = { title: "USGS manual 445-2-H", section: "appendix 45-B: full sun adds up to 15 °F", seen: "read" };
const SUN_ADDS_F = 15;

/**
 * The heat index as a line, °F, from the air's temperature in °F and its relative humidity in percent. For shade and a light wind; good to
 * about 1.3 °F. Below 80 °F it is the simple form, averaged with the temperature.
 */
export function heatIndexLine(airF: number, humidity: number): WeatherLine {
  const { formula, f } = heatIndex(airF, humidity);
  return {
    formula,
    inputs: [
      { name: "air", is: amount(airF, "degF"), source: "site" },
      { name: "humidity", is: amount(humidity, "percent"), source: "site" },
    ],
    result: amount(f, "degF"),
    source: HEAT_INDEX,
    leftOut: ["fitError", "shadeAndLightWind", "theUnused"],
  };
}

/** What the heat index may be in full sun, °F. */
export function inSunLine(index: WeatherLine): WeatherLine {
  return {
    formula: "heatInSun",
    inputs: [
      { name: "heatIndex", is: index.result, source: HEAT_INDEX },
      { name: "sun", is: amount(SUN_ADDS_F, "degF"), source: IN_SUN },
    ],
    result: amount(index.result.n + SUN_ADDS_F, "degF"),
    source: IN_SUN,
    leftOut: ["theUnused"],
  };
}

function heatIndex(t: number, r: number): { formula: WeatherFormula; f: number } {
  const simple = (0.5 * (t + 61 + (t - 68) * 1.2 + r * 0.094) + t) / 2;
  if (simple < 80) return { formula: "heatIndexSimple", f: simple };
  const f = regression(t, r);
  if (r < 13 && t >= 80 && t <= 112) return { formula: "heatIndexDry", f: f - ((13 - r) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17) };
  if (r > 85 && t >= 80 && t <= 87) return { formula: "heatIndexHumid", f: f + ((r - 85) / 10) * ((87 - t) / 5) };
  return { formula: "heatIndex", f };
}

/** Rothfusz 1990 (NWS SR 90-23), as the page above prints it, without the adjustments: the printed charts go by it alone. */
export const regression = (t: number, r: number): number =>
  -42.379 +
  2.04901523 * t +
  10.14333127 * r -
  0.22475541 * t * r -
  0.00683783 * t * t -
  0.05481717 * r * r +
  0.00122874 * t * t * r +
  0.00085282 * t * r * r -
  0.00000199 * t * t * r * r;
