import { isWithin, WIND_BOUNDS } from "../../install/bounds.ts";
import type { Clock } from "../clock.ts";
import type { Meaning, SpokenWind } from "../meanings.ts";
import { trimmed } from "../plain.ts";
import { numberInUnit } from "./number-in-unit.ts";
import { readClock } from "./times.ts";

const SPEED =
  /\b(?:knots?|kts?|kn|kph|km\/h|kmh|kilomet(?:re|er)s (?:an|per) hour|m\/s|met(?:re|er)s (?:a|per) second|mph|miles (?:an|per) hour)$/i;
const GUSTING = /^(?:wind (?:is )?)?(.+?),? (?:gusting|gusts of|gust)(?: up)?(?: to| of)? (.+)$/i;
const MEAN_ONLY = /^wind (?:is )?(.+)$/i;

/**
 * Parses a wind reading: "fourteen gusting nineteen", "wind 12 knots, five minutes ago". Speeds are rounded up to a tenth of a mph.
 * `null` if it is not a reading. A bare number counts only at a wind gate.
 *
 * @example parseWind("wind 14 gusting 19", false) // { wind: { mph: 14, gustMph: 19, taken: null } }
 */
export function parseWind(heard: string, atWindGate: boolean): Meaning | null {
  const { words, taken } = splitTaken(trimmed(heard));
  if (/\b(?:none|nothing|nil|no)\b/i.test(words)) return null;
  const found = GUSTING.exec(words) ?? MEAN_ONLY.exec(words) ?? (atWindGate ? /^(.+)$/.exec(words) : null);
  if (!found) return null;
  const [, mean = "", gust] = found;
  // A unit said once, at the end, applies to both figures.
  const unit = gust === undefined ? undefined : SPEED.exec(gust)?.[0];
  const speeds = [
    numberInUnit(unit && !SPEED.test(mean) ? `${mean} ${unit}` : mean, "mph"),
    gust === undefined ? null : numberInUnit(gust, "mph"),
  ];
  const trouble = speeds.find((s) => s !== null && !("n" in s));
  if (trouble) return GUSTING.test(words) || MEAN_ONLY.test(words) || !("notUnderstood" in trouble) ? (trouble as Meaning) : null;
  const [mph, gustMph] = speeds.map((s) => (s === null ? null : Math.ceil((s as { n: number }).n * 10 - 1e-6) / 10));
  if (!isWithin(mph!, WIND_BOUNDS) || (gustMph ?? mph!) < mph! || !isWithin(gustMph ?? mph!, WIND_BOUNDS)) return { noSuchWind: true };
  return { wind: { mph: mph!, gustMph: gustMph ?? null, taken } satisfies SpokenWind };
}

/**
 * Splits off the time of a reading: "… at ten past two", "… five minutes ago".
 *
 * @example splitTaken("wind 14, five minutes ago") // { words: "wind 14", taken: { minutesAgo: 5 } }
 */
export function splitTaken(words: string): { readonly words: string; readonly taken: Clock | null } {
  const at = /^(.*?),? (?:taken )?at (.+)$/i.exec(words);
  const ago = /^(.*?),? ((?:an? |half an? |[\w-]+ )(?:minutes?|hours?) ago|just now)$/i.exec(words);
  for (const found of [at, ago]) {
    const taken = found ? readClock(found[2]!) : null;
    if (found && taken) return { words: found[1]!, taken };
  }
  return { words, taken: null };
}
