import type { ColdAir, HotAir } from "../weather/air.ts";
import { cold } from "../weather/cold.ts";
import { heat } from "../weather/heat.ts";
import type { Reading } from "./commands.ts";
import type { Instant } from "./ids.ts";
import type { JobState } from "./state.ts";
import type { Work } from "./step.ts";

/** Heat or cold in which the published schedule gives no work any more: what was read, and what it comes to, in °F. */
export type NoWorkInAir =
  | ({ readonly why: "tooHot"; readonly indexF: number } & HotAir)
  | ({ readonly why: "tooCold"; readonly chillF: number } & ColdAir);

type AirState = Pick<JobState, "heat" | "cold">;

/** Told air is good for so long, ms: an hour. Common practice, no source. */
export const AIR_GOOD_FOR_MS = 60 * 60_000;

/** Only work: people let in sit, and a schedule for heavy work says nothing of them. */
const isHeavy = (work: Work): boolean => work !== "use";

/**
 * Why the air allows no work; `null` where it does, or where nobody told it. It does not age into the kinder: it holds until it is read
 * again. The schedules and their sources are those of `heat` and `cold`.
 */
export function noWorkInAir(state: AirState, work: Work): NoWorkInAir | null {
  if (!isHeavy(work)) return null;
  if (state.heat && stopsHot(state.heat)) {
    const { airF, humidity, sun } = state.heat;
    return { why: "tooHot", airF, humidity, sun, indexF: Math.round(heat(state.heat).indexF) };
  }
  if (state.cold && stopsCold(state.cold)) {
    const { airF, windMph } = state.cold;
    return { why: "tooCold", airF, windMph, chillF: Math.round(cold(state.cold).chillF) };
  }
  return null;
}

const stopsHot = (air: HotAir): boolean => heat(air).rest.is === "caution";
const stopsCold = (air: ColdAir): boolean => cold(air).warmUp.is === "emergencyOnly";

/** Whether a reading of the air can only stop work: taken from anybody, whatever its time says. */
export const airStops = (reading: Reading): boolean =>
  reading.kind === "heat" ? stopsHot(reading) : reading.kind === "cold" && stopsCold(reading);

/** Whether a reading would open what the air on record keeps shut: only those who may read the wind open with it. */
export const airOpens = (reading: Reading, state: AirState): boolean => {
  if (airStops(reading)) return false;
  return reading.kind === "heat"
    ? state.heat !== undefined && stopsHot(state.heat)
    : reading.kind === "cold" && state.cold !== undefined && stopsCold(state.cold);
};

/** Whether a reading that would open was taken before the one that stops, or longer ago than air is good for. */
export const airTooOld = (reading: Reading, state: AirState, at: Instant): boolean => {
  if (!airOpens(reading, state)) return false;
  const before = reading.kind === "heat" ? state.heat : state.cold;
  return before !== undefined && reading.takenAt < Math.max(before.takenAt, at - AIR_GOOD_FOR_MS);
};
