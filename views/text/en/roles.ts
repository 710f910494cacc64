import type { Role } from "../../../machines/install/brief.ts";
import type { Wind } from "../../../machines/install/state.ts";
import type { Weather } from "../../../machines/install/weather.ts";
import { own } from "../../../machines/lookup/own.ts";

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

const WEATHER: Readonly<Record<Weather, string>> = {
  unknown: "Wind not known",
  workable: "Wind workable",
  caution: "Too much wind to raise",
  stop: "STOP: weather",
};
/** What the weather allows, with the reading it rests on; `thunderAt` while work stays stopped for it. */
export function weatherWords(is: Weather, wind: Wind | null, thunderAt: number | null, at: number): string {
  const minutes = (since: number) => Math.max(0, Math.floor((at - since) / 60_000));
  if (is === "stop" && thunderAt !== null) return `${WEATHER.stop}, thunder ${minutes(thunderAt)} min ago`;
  if (!wind) return WEATHER[is];
  return `${WEATHER[is]}, ${wind.mph}${wind.gustMph === null ? "" : ` gusting ${wind.gustMph}`} mph, ${minutes(wind.takenAt)} min ago`;
}
