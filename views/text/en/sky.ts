import type { WarningReading } from "../../../machines/install/commands.ts";
import { FLASH_TO_BANG_BOUNDS, type Sun } from "../../../machines/weather/air.ts";
import type { BeaufortName } from "../../../machines/weather/beaufort.ts";
import type { Cold } from "../../../machines/weather/cold.ts";
import type { Gustiness } from "../../../machines/weather/gust.ts";
import type { Heat, HeatBand } from "../../../machines/weather/heat.ts";
import type { LightningFacts } from "../../parts/lightning-facts.ts";
import { number } from "./names.ts";

/** The scale as crews say it. */
const LOOKS: Readonly<Record<BeaufortName, string>> = {
  calm: "calm",
  lightAir: "light air",
  lightBreeze: "light breeze",
  gentleBreeze: "gentle breeze",
  moderateBreeze: "moderate breeze",
  freshBreeze: "fresh breeze",
  strongBreeze: "strong breeze",
  nearGale: "near gale",
  gale: "gale",
  strongGale: "strong gale",
  storm: "storm",
  violentStorm: "violent storm",
  hurricane: "hurricane",
};
/** What is seen on land at each force: NASA's page of the scale, read. */
const SIGNS: Readonly<Record<BeaufortName, string>> = {
  calm: "smoke goes straight up",
  lightAir: "smoke drifts",
  lightBreeze: "felt on the face, leaves rustle",
  gentleBreeze: "leaves move, light flags stand out",
  moderateBreeze: "dust and loose paper fly",
  freshBreeze: "small trees sway",
  strongBreeze: "large branches move",
  nearGale: "whole trees move",
  gale: "twigs break off",
  strongGale: "shingles come off roofs",
  storm: "trees come down",
  violentStorm: "damage all around",
  hurricane: "destruction",
};
const BANDS: Readonly<Record<HeatBand, string>> = {
  none: "no heat band",
  caution: "caution",
  extremeCaution: "extreme caution",
  danger: "DANGER",
  extremeDanger: "EXTREME DANGER",
};
const SUNS: Readonly<Record<Sun, string>> = { full: "full sun", partly: "partly cloudy", none: "shade" };
const degrees = (f: number): string => `${Math.round(f)} °F`;

const restText = ({ rest }: Heat): string => {
  switch (rest.is) {
    case "asUsual":
      return "rest as usual";
    case "breaks":
      return `work ${rest.workMin} min, rest ${rest.restMin}`;
    case "caution":
      return "stop heavy work: the schedule allows none";
  }
};
const warmUpText = ({ warmUp }: Cold): string => {
  switch (warmUp.is) {
    case "asUsual":
      return "breaks as usual";
    case "breaks":
      return `work ${warmUp.workMin} min, then 10 warming up`;
    case "emergencyOnly":
      return "stop work: the schedule allows only emergencies";
  }
};

/** Wind, lightning, heat, cold and warnings as they are read and shown. */
export const sky = {
  look: (name: BeaufortName): string => LOOKS[name],
  lookWith: (name: BeaufortName): string => `${LOOKS[name]}: ${SIGNS[name]}`,
  sun: (sun: Sun | null): string => (sun === null ? "sun not given, taken as full" : SUNS[sun]),
  title: "Heat, cold, warnings",
  toAir: "Heat and cold",
  toAlarms: "Tell everybody",
  unit: "Unit",
  units: { mph: "mph", knots: "knots", "m/s": "m/s", "km/h": "km/h" } as Readonly<Record<string, string>>,
  where: "Where read",
  height: "Height, ft",
  exposure: { open: "In the open", lee: "In a lee" },
  byLook: "No meter: by the look of it",
  lookLabel: "What the wind does",
  recordLook: "Record the look",
  gusty: ({ factor }: Gustiness): string =>
    `Gust is ${number(Math.round(factor * 10) / 10)} times the wind: gusty for open ground. Something near breaks it up, or it was read in a lee.`,
  rising: (limitMph: number, min: number): string =>
    min <= 1
      ? `Wind rising: at this rate gusts of ${number(limitMph)} any minute.`
      : `Wind rising: at this rate ${number(limitMph)} in ${minutes(min)}.`,

  /** "Thunder 4 min ago, 2.4 mi off." The numbers that count by themselves stand apart. */
  thunder: "Thunder",
  thunderElsewhere: (title: string, until: string): string => `Thunder at ${title}: hold until ${until}.`,
  minAgo: "min ago",
  minShort: "min",
  milesShort: (miles: number): string => `, ${number(Math.round(miles * 10) / 10)} mi`,
  off: ({ miles, stopMiles, withinStop }: Pick<LightningFacts, "miles" | "stopMiles" | "withinStop">): string =>
    miles === null
      ? "how far not counted"
      : `${number(Math.round(miles * 10) / 10)} mi off${withinStop ? `: inside ${number(stopMiles)} mi` : ""}`,
  quietAt: (clock: string): string => `quiet till ${clock}, left`,
  anyThunder: (stopMiles: number): string =>
    `Any thunder stops work, however far. Shelter by ${number(stopMiles)} mi, 30 s from flash to bang. 30 quiet minutes after the last one (US National Weather Service).`,
  count: "Flash seen: count",
  bang: "Bang: send it",
  seconds: "Seconds from flash to bang",
  thunderTold: "Thunder, with seconds",
  notSeconds: (given: string): string =>
    `"${given}" is no count of seconds: from ${FLASH_TO_BANG_BOUNDS.from} to ${FLASH_TO_BANG_BOUNDS.to}. The thunder counts.`,
  tooLongAgo: "No bang in five minutes. Count again at the next flash.",

  warning: ({ what, until, issuer }: Pick<WarningReading, "what" | "until" | "issuer">): string =>
    `${what === undefined ? "Weather warning out" : `Warning: ${what}`}${until === undefined ? "" : ` until ${until}`}${issuer === undefined ? "" : `, by ${issuer}`}`,
  warningWhat: "What it says",
  warningUntil: "Until when",
  warningIssuer: "Who put it out",
  tellWarning: "Tell the warning",

  heat: "Heat",
  cold: "Cold",
  air: "Air temperature",
  scale: { F: "°F", C: "°C" } as Readonly<Record<string, string>>,
  humidity: "Humidity, %",
  sunLabel: "Sun",
  sunNotTold: "Unknown",
  wind: "Wind",
  gust: "Gust",
  recordHeat: "Record the heat",
  recordCold: "Record the cold",
  read: (minAgo: number, stale: boolean): string => `Read ${minAgo} min ago.${stale ? " Too old: read it again." : ""}`,
  airTooOld: (minAgo: number): string => `Heat and cold: read ${minAgo} min ago. Read again.`,
  heatLine: (heat: Heat): string =>
    `Heat index ${degrees(heat.indexF)}${heat.feltF > heat.indexF ? `, up to ${degrees(heat.feltF)} in sun` : ""}: ${BANDS[heat.band]}. ${ended(restText(heat))}`,
  water: (qt: number): string => `Water: ${number(qt)} qt a person each hour.`,
  coldLine: (cold: Cold): string =>
    `Feels like ${degrees(cold.chillF)}${cold.frostbiteIn30Min ? ": frostbite in 30 min" : ""}. ${ended(warmUpText(cold))}${cold.gloves.needed ? " Gloves on." : ""}${cold.drinks.needed ? " Something warm to drink at each break." : ""}`,
  heatShort: (heat: Heat): string =>
    `${BANDS[heat.band] === "caution" ? "Heat" : `Heat: ${BANDS[heat.band]}`}, ${heat.rest.is === "caution" ? "stop heavy work" : restText(heat)}. Water ${number(heat.waterQtPerHour ?? 1)} qt an hour.`,
  coldShort: (cold: Cold): string =>
    `Cold, feels ${degrees(cold.chillF)}: ${warmUpText(cold)}.${cold.frostbiteIn30Min ? " Frostbite in 30 min." : ""}`,
  /** The same beside a number pad: one line of a phone, 31 letters at most. */
  risingBrief: (limitMph: number, min: number): string =>
    min <= 1 ? `Wind rising: ${number(limitMph)} any minute.` : `Wind rising: ${number(limitMph)} in ${min} min.`,
  heatBrief: ({ rest }: Heat): string =>
    rest.is === "breaks"
      ? `Heat: work ${rest.workMin}, rest ${rest.restMin}. Water.`
      : rest.is === "caution"
        ? "Heat: stop heavy work. Water."
        : "Heat danger. Water.",
  coldBrief: ({ warmUp, frostbiteIn30Min }: Cold): string =>
    warmUp.is === "emergencyOnly"
      ? "Cold: stop work. Get warm."
      : frostbiteIn30Min
        ? "Cold: frostbite in 30 min."
        : warmUp.is === "breaks"
          ? `Cold: work ${warmUp.workMin} min, then warm up.`
          : "Cold. Keep warm.",
  airTooOldBrief: "Heat and cold: read again.",
  source: (titles: readonly string[]): string =>
    `By: ${titles.join("; ")}. A screening, not a doctor: whoever is new to it, ill or in heavy clothes takes less.`,
  memory: "from memory",
} as const;

const minutes = (n: number): string => (n === 1 ? "1 minute" : `${WORDS[n] ?? n} minutes`);
const WORDS: Readonly<Record<number, string>> = {
  2: "two", 3: "three", 4: "four", 5: "five", 6: "six", 7: "seven", 8: "eight", 9: "nine", 10: "ten", 11: "eleven", 12: "twelve",
}; // biome-ignore format: a table
const ended = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
