import { SITE_LIMITS } from "../../site/site-limits.ts";
import type { Meaning, SpokenFound } from "../meanings.ts";
import { trimmed } from "../plain.ts";
import { readingsIn } from "./number-in-unit.ts";
import { readQuantity } from "./quantities.ts";

type Kind = SpokenFound["kind"];
const BURIED: readonly (readonly [Kind, string])[] = [
  ["electric", "electric(?:al|ity)?|power"],
  ["gas", "gas"],
  ["communication", "(?:phone|cable|fiber|internet|communications?)"],
  ["reclaimedWater", "reclaimed(?: water)?"],
  ["water", "water"],
  ["sewer", "sewer|drain"],
  ["survey", "(?:pink|unknown)(?: marks?)?"],
  ["excavation", "(?:dug ground|trench|excavation)"],
];
const THINGS: readonly (readonly [Kind, string])[] = [
  ["building", "building|house|barn|shed|wall"],
  ["vehicle", "vehicle|truck|car|trailer"],
  ["engine", "engine|generator"],
  ["exit", "exit|gate"],
  ["tree", "trees?"],
];
/** What of each kind is said, in front of where it runs. */
const SAID: readonly (readonly [Kind, RegExp])[] = [
  ...BURIED.map(([kind, words]) => [kind, new RegExp(`^(?:${words})(?: (?:line|main|pipe|cable|duct))?$`)] as const),
  ...THINGS.map(([kind, words]) => [kind, new RegExp(`^(?:${words})$`)] as const),
];
const LEAD_IN = /^(?:(?:we |i )?(?:found|there's|there is|we've got|we have)(?: another| one more| an?)?|another|one more|new|an?)[ ,:]+/;
const OVERHEAD = /^(?:overhead|wires?|power line overhead)(?: (?:line|lines|wire|wires))?,? (.+)$/;
const UNKNOWN_VOLTAGE = /^(?:voltage|volts?) (?:unknown|not known)$|^unknown voltage$/;
const KV = /^(.+?) ?(?:kv|k v|kilovolts?|thousand volts)$/;
const WHERE = /^(.+?),? (?:runs |running |goes )?from (.+)$/;
const ALONG_AND_OFF = /^(.+?) along(?:,? (?:and )?(.+?) (off left|off right|left|right|off)|,? (?:and )?on (?:it|the line))?$/;

/**
 * One more line, wire or thing, with where it runs: as many points as are told, each along the baseline and off it, to the right
 * unless left is said; a bare number is in feet. `null` where the words begin as none. What can be read in two ways is asked again.
 *
 * @example parseFound("gas, from 12 along and 8 off to 90 along and 15 left") // { found: { kind: "gas", kv: null, points: [{ alongFt: 12, offFt: 8 }, { alongFt: 90, offFt: -15 }] } }
 */
export function parseFound(heard: string): Meaning | null {
  if (heard.trim().endsWith("?")) return null;
  const words = trimmed(heard)
    .toLowerCase()
    .replace(LEAD_IN, "")
    .replaceAll(/\boff to the (left|right)\b/g, "off $1");
  const [, what = "", where] = WHERE.exec(words) ?? [];
  if (where === undefined || !/\balong\b/.test(where)) return null;
  const found = whatIn(what.replace(/[,\s]+$/, ""));
  if (found === null) return null;
  const points: { alongFt: number; offFt: number }[] = [];
  for (const part of where.split(/,? (?:then )?to /)) {
    const point = pointIn(part.trim().replace(/,$/, ""));
    if ("meant" in point) return point.meant;
    points.push(point);
  }
  return points.length < SITE_LIMITS.minLinePoints || areOne(points) ? { notUnderstood: true } : { found: { ...found, points } };
}

const areOne = (points: readonly { alongFt: number; offFt: number }[]) =>
  points.every(({ alongFt, offFt }) => alongFt === points[0]!.alongFt && offFt === points[0]!.offFt);

function whatIn(said: string): Pick<SpokenFound, "kind" | "kv"> | null {
  const overhead = OVERHEAD.exec(said)?.[1];
  if (overhead !== undefined) {
    const voltage = overhead.replace(/^(?:of |at )/, "");
    if (UNKNOWN_VOLTAGE.test(voltage)) return { kind: "overhead", kv: null };
    const kv = KV.exec(voltage)?.[1];
    const readings = kv === undefined ? [] : [...new Set(readQuantity(kv).flatMap(({ n, unit }) => (unit === null ? [n] : [])))];
    const [n] = readings;
    // A voltage that can be read in two ways is none.
    return n === undefined || readings.length > 1 || n <= 0 || n > SITE_LIMITS.maxKv ? null : { kind: "overhead", kv: n };
  }
  const kind = SAID.find(([, pattern]) => pattern.test(said))?.[0];
  return kind === undefined ? null : { kind, kv: null };
}

function pointIn(said: string): { alongFt: number; offFt: number } | { meant: Meaning } {
  const [, along, off, way] = ALONG_AND_OFF.exec(said) ?? [];
  if (along === undefined) return { meant: { notUnderstood: true } };
  const [alongFt, offFt] = [feetIn(along), off === undefined ? 0 : feetIn(off)];
  if (typeof alongFt !== "number") return { meant: alongFt };
  if (typeof offFt !== "number") return { meant: offFt };
  return { alongFt, offFt: way?.endsWith("left") && offFt !== 0 ? -offFt : offFt };
}

/** One length in feet, or why there is none. Less than nothing is said before the number, or by "left". */
function feetIn(said: string): number | Meaning {
  const [, minus, text = ""] = /^(minus |-)?(.+)$/.exec(said.trim()) ?? [];
  const { n: readings, gave } = readingsIn(text, "ft");
  const [n] = readings;
  if (n === undefined) return gave === undefined || gave === null ? { notUnderstood: true } : { wrongUnit: { gave, wants: "ft" } };
  if (readings.length > 1) return { ambiguous: { n: readings, unit: "ft" } };
  if (n > SITE_LIMITS.maxFt) return { notUnderstood: true };
  return minus === undefined || n === 0 ? n : -n;
}
