import { amount } from "../figures/line.ts";
import type { Published } from "../figures/source.ts";
import type { HotAir } from "./air.ts";
import { heatIndexLine, inSunLine } from "./heat-index.ts";
import type { WeatherLine } from "./lines.ts";

/** Bands of the heat index. An older chart has 105 and 130 in place of 103 and 125: the stricter are used. */
const BANDS: Published = { title: "US National Weather Service, heat index chart", section: "80, 90, 103, 125 °F", seen: "read" };
/** Proposed is not law; a state may have a rule of its own. */
const OSHA: Published = {
  title: "OSHA, proposed rule on heat, 2024",
  section: "initial trigger 80 °F, high trigger 90 °F: 15 min of rest every 2 h; 1 qt of water a person each hour",
  seen: "read",
};
const NIOSH: Published = {
  title: "NIOSH, Heat Stress: Work/Rest Schedules",
  section: "heavy work in normal clothes (cdc.gov/niosh/mining/content/heatstressworkrest.html)",
  seen: "read",
};
/** What the same schedule adds to the air's temperature. What it takes off for dry air is left out: memory never makes it kinder. */
const NIOSH_ADDS: Published = { title: "NIOSH 2016-106", section: "additions to the schedule for sun and humidity", seen: "memory" };
const SUN_ADDS_F = { full: 13, partly: 7, none: 0 } as const;
const HUMID_ADDS_F = [[60, 9], [50, 6], [40, 3]] as const; // biome-ignore format: a table

/** Minutes of work and of rest in each hour of heavy work, by the temperature in °F up to which they hold; beyond, none are given. */
const WORK_REST: readonly (readonly [upToF: number, workMin: number, restMin: number])[] = [
  [96, 45, 15],
  [97, 40, 20],
  [99, 35, 25],
  [101, 30, 30],
  [102, 25, 35],
  [104, 20, 40],
  [105, 15, 45],
];
const NORMAL_UP_TO_F = 94;

export type HeatBand = "none" | "caution" | "extremeCaution" | "danger" | "extremeDanger";
export type HeatTrigger = "none" | "initial" | "high";
/** Rest in heavy work. `caution`: the schedule gives no work any more, only its word of caution. */
export type HeatRest =
  | { readonly is: "asUsual" }
  | { readonly is: "breaks"; readonly workMin: number; readonly restMin: number; readonly source: Published }
  | { readonly is: "caution"; readonly source: Published };

export type Heat = {
  readonly indexF: number;
  /** What it may be where they work: in the shade the index, in sun up to 15 °F more. */
  readonly feltF: number;
  readonly band: HeatBand;
  readonly bandSource: Published;
  readonly trigger: HeatTrigger;
  readonly rest: HeatRest;
  /** A person's, each hour; `null` where no rule asks for it. */
  readonly waterQtPerHour: number | null;
  readonly triggerSource: Published;
  readonly lines: readonly WeatherLine[];
};

/**
 * Heat index, work, rest and water for a crew at heavy work. The air must be without problems (`problemsOfHeat`). Sun that is not known is
 * full sun. Of two rules the one with more rest is used. The triggers are judged by the index as it is, unrounded.
 *
 * @example heat({ airF: 90, humidity: 50, sun: "none" }).trigger // "high"
 */
export function heat({ airF, humidity, sun }: HotAir): Heat {
  const index = heatIndexLine(airF, humidity);
  const felt = sun === "none" ? index : inSunLine(index);
  const schedule = scheduleLine({ airF, humidity, sun });
  const trigger = index.result.n >= 90 ? "high" : index.result.n >= 80 ? "initial" : "none";
  return {
    indexF: index.result.n,
    feltF: felt.result.n,
    band: bandOf(felt.result.n),
    bandSource: BANDS,
    trigger,
    rest: restAt(schedule.result.n, trigger),
    waterQtPerHour: trigger === "none" ? null : 1,
    triggerSource: OSHA,
    lines: [index, ...(felt === index ? [] : [felt]), schedule],
  };
}

const bandOf = (f: number): HeatBand =>
  f >= 125 ? "extremeDanger" : f >= 103 ? "danger" : f >= 90 ? "extremeCaution" : f >= 80 ? "caution" : "none";

function restAt(scheduleF: number, trigger: HeatTrigger): HeatRest {
  if (scheduleF <= NORMAL_UP_TO_F)
    return trigger === "high" ? { is: "breaks", workMin: 105, restMin: 15, source: OSHA } : { is: "asUsual" };
  const row = WORK_REST.find(([upToF]) => scheduleF <= upToF);
  return row ? { is: "breaks", workMin: row[1], restMin: row[2], source: NIOSH } : { is: "caution", source: NIOSH };
}

/** The temperature that the schedule is entered with, °F. */
function scheduleLine({ airF, humidity, sun }: HotAir): WeatherLine {
  const sunF = SUN_ADDS_F[sun ?? "full"];
  const humidF = HUMID_ADDS_F.find(([from]) => humidity >= from)?.[1] ?? (humidity > 30 ? 3 : 0);
  return {
    formula: "heatForWorkRest",
    inputs: [
      { name: "air", is: amount(airF, "degF"), source: "site" },
      { name: "sun", is: amount(sunF, "degF"), source: NIOSH_ADDS },
      { name: "humid", is: amount(humidF, "degF"), source: NIOSH_ADDS },
    ],
    result: amount(airF + sunF + humidF, "degF"),
    source: NIOSH,
    leftOut: ["theUnused"],
  };
}
