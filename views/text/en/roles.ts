import type { Role } from "../../../machines/install/brief.ts";
import type { Wind } from "../../../machines/install/state.ts";
import type { Weather } from "../../../machines/install/weather.ts";
import { own } from "../../../machines/lookup/own.ts";
import type { EdgeName } from "../../../machines/tent/types.ts";
import type { WeatherFacts } from "../../pages/guide/weather.ts";
import type { WeatherListed } from "../../pages/home/state.ts";
import { wholeMinute } from "../whole-minute.ts";
import { number } from "./names.ts";
import { compassPoint } from "./said.ts";
import { when } from "./when.ts";

const ROLES: Readonly<Record<Role, string>> = {
  lead: "lead",
  deputy: "deputy",
  competent: "competent person",
  crew: "crew",
  trainee: "trainee",
  manager: "manager",
  watcher: "watcher",
  siteOwner: "site owner",
};
export const roleName = (role: Role): string => ROLES[role];

const PHASES: Readonly<Record<string, string>> = {
  utilitiesMarked: "Utilities marked",
  anchorsSet: "Anchors set",
  sectionsJoined: "Sections joined",
  perimeterRaised: "Perimeter raised",
  interiorRaised: "Interior raised",
  tensioned: "Tensioned",
  inspected: "Inspected",
  standing: "Standing",
  struck: "Struck",
  ground: "Making safe",
  up: "Making safe",
  closed: "Closed",
};
/** The milestone that a phase works toward. */
export const phaseName = (phase: string): string => own(PHASES, phase) ?? phase;

const WEATHER: Readonly<Record<Exclude<Weather, "stop">, string>> = {
  unknown: "No wind reading",
  workable: "Wind OK",
  caution: "Too much wind to raise",
};

/** What the weather allows; where it stops work, every reason with what ends it. */
export function weatherWords({ is, zone, wind, windMinAgo, windward, stops }: WeatherFacts): string {
  const reading = wind && `${windText(wind, windward)}, ${windMinAgo} min ago`;
  if (is === "unknown" && reading !== null) return `Wind reading too old: ${reading}`;
  if (is !== "stop") return reading === null ? WEATHER[is] : `${WEATHER[is]}, ${reading}`;
  const why = [
    stops.lightningUntil === null ? [] : `lightning, not before ${when.clock(zone, wholeMinute(stops.lightningUntil))}`,
    stops.warning ? "weather warning, till it's called off" : [],
    stops.windFromMph === null ? [] : `wind ${reading}, till it reads under ${number(stops.windFromMph)} mph`,
  ].flat();
  return `STOP: ${why.join("; ")}`;
}

/** The same as a strip has room for: what shuts work, else the reading and its age. */
export function weatherShort({ is, wind, windMinAgo, stops }: WeatherFacts): string {
  if (is === "stop") return stops.lightningUntil !== null ? "STOP lightning" : stops.warning ? "STOP warning" : "STOP wind";
  if (wind === null) return "No wind";
  const { mph, gustMph, fromDeg } = wind;
  const reading = `${mph}${gustMph === null ? "" : ` gust ${gustMph}`}${fromDeg === null ? "" : ` ${compassPoint(fromDeg)}`}`;
  return `${reading}, ${is === "unknown" ? "too old" : `${windMinAgo} min`}`;
}

/** What the weather allowed when it was read, for a list that is looked at later: nothing in it grows older. */
export function weatherListed({ is, zone, wind, stops }: WeatherListed): string {
  if (is === "unknown") return wind === null ? WEATHER.unknown : "Wind reading too old";
  if (is !== "stop") return is === "workable" ? "Wind OK when read" : WEATHER[is];
  if (stops.lightningUntil !== null) return `STOP: lightning, not before ${when.clock(zone, wholeMinute(stops.lightningUntil))}`;
  return stops.warning ? "STOP: weather warning" : "STOP: wind";
}

/** A reading with its time on the site's clock: "09:42: 8 gusting 11 mph from SW". */
export const readingListed = (clock: string, wind: Pick<Wind, "mph" | "gustMph" | "fromDeg">): string => `${clock}: ${windText(wind, [])}`;

/** "20 gusting 26 mph from SW, AB side". */
export function windText({ mph, gustMph, fromDeg }: Pick<Wind, "mph" | "gustMph" | "fromDeg">, windward: readonly EdgeName[]): string {
  const from = fromDeg === null ? "" : ` from ${compassPoint(fromDeg)}`;
  const side = windward.length === 0 ? "" : `, ${windward.join(" and ")} ${windward.length === 1 ? "side" : "sides"}`;
  return `${mph}${gustMph === null ? "" : ` gusting ${gustMph}`} mph${from}${side}`;
}
