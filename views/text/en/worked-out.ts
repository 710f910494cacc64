import type { Shortfall } from "../../../machines/install/checks/computed.ts";
import { own } from "../../../machines/lookup/own.ts";
import type { Offset } from "../../../machines/site/model.ts";
import { feetInches, utilityName } from "./names.ts";
import { THING_NAMES } from "./thing-names.ts";

const NEIGHBORS: Readonly<Record<string, string>> = {
  communication: "cable",
  reclaimedWater: "reclaimed",
  survey: "pink-marked",
  excavation: "dug",
  overhead: "overhead line",
  ...THING_NAMES,
  ground: "edge of the ground",
  ticketArea: "ticket's area",
};
/** A line, a thing or an edge by its kind, as it stands inside a sentence. */
export const neighborName = (kind: string | number | undefined): string => own(NEIGHBORS, String(kind)) ?? utilityName(kind);

/**
 * A point off the site's baseline, as a crew tapes it.
 *
 * @example offsetText(12, -8) // "12 ft along, 8 ft left"
 */
export function offsetText(alongFt: number, offFt: number): string {
  const along = `${feetInches(Math.abs(alongFt))} ${alongFt < 0 ? "back" : "along"}`;
  return offFt === 0 ? along : `${along}, ${feetInches(Math.abs(offFt))} ${offFt < 0 ? "left" : "right"}`;
}

/**
 * Stations and poles by their codes: `A.2` is the second plate at A. Those that there is no room for by their number.
 *
 * @example placesText("AB3 AB4 AB5", 2) // "AB3 and 2 more"
 */
export function placesText(of: readonly string[], room: number): string {
  const names = of.map((code) => code.replace(/\.(\d+)$/, " plate $1"));
  if (names.length > room) return `${names.slice(0, Math.max(1, room - 1)).join(", ")} and ${names.length - Math.max(1, room - 1)} more`;
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

/** What is wanted where something stands too near, as it stands behind "Need": with what it is instead. */
export function shortfallText({ kind, id, of, distance, wanted, unit }: Shortfall): string {
  const what = of.length === 0 ? "ropes and cloth" : placesText(of, 6);
  if (kind === "ticketArea") return `the ticket for the ground at ${what}`;
  const near = kind === "ground" ? "the edge of the ground" : (id ?? neighborName(kind));
  return `${wanted ?? "?"} ${unit} from ${near} to ${what}, not ${distance ?? "?"}`;
}

const wholeInches = (ft: number): number => Math.round(ft * 12) / 12;
const toTheInch = ({ alongFt, offFt }: Offset): string => offsetText(wholeInches(alongFt), wholeInches(offFt));

/** What was worked out from the site as it was entered. */
export const workedOut = {
  /** Where a tent is laid out that does not begin at its site's baseline: to the inch, as its calls say it. */
  corners: ([a, b]: readonly [A: Offset, B: Offset]) => `Off the site's baseline: corner A ${toTheInch(a)}; corner B ${toTheInch(b)}.`,
  move: "Move the tent",
  look: "Look at the site",
} as const;
