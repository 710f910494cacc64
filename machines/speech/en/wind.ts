import { isWithin, WIND_BOUNDS } from "../../install/bounds.ts";
import type { Exposure } from "../../install/commands.ts";
import type { Clock } from "../clock.ts";
import type { Meaning } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import { compassDeg } from "./compass.ts";
import { withoutLeadIn } from "./lead-in.ts";
import { numberInUnit } from "./number-in-unit.ts";
import { readClock } from "./times.ts";

const SPEED =
  /\b(?:knots?|kts?|kn|kph|km\/h|kmh|kilomet(?:re|er)s (?:an|per) hour|m\/s|met(?:re|er)s (?:a|per) second|mph|miles (?:an|per) hour)$/i;
const GUSTING =
  /^(?:wind )?(.+?),? (?:and )?(?:gusting|with (?:an? )?gusts? (?:of|to|up to|at)|(?:with )?(?:the )?gust(?:s)?(?: is| are|'s) (?:at )?|gusts of|gusts|gust)(?: up)?(?: to| of)? (.+)$/i;
/** A gust and no mean. The mean is taken to be as high: it can't be higher. */
const GUST_ONLY =
  /^(?:(?:it's|it is|there's|we've got|we have|we had|just had|that was) )?(?:a |the )?(?:wind )?(?:gusting|gusts?|gusted)(?: up)?(?: to| of| at)? (.+)$|^wind up to (.+)$/i;
const BLOWING = /^(?:(?:it's|it is|wind) )?blowing (.+)$/i;
/** Nobody felt a gust: the mean is all there is. "Steady" says so only of a wind. */
const NO_GUSTS = /^(?:wind )?(.+?),? (?:with )?(?:no gusts?|not gusting|no gusting)$/i;
const STEADY = /^wind (?:a )?(?:steady (?:at )?(.+)|(.+?),? steady)$/i;
const MEAN_ONLY = /^wind (.+)$/i;
/** How people come to a wind: "the wind's at", "winds". */
const WIND_IS = /^(?:the )?winds?(?:'s| is| are)?(?: (?:at|now|about))* /i;
/** "ten from the west", and "wind from the west, ten". */
const FROM_LAST = /^(.+?),? (?:(?:coming|blowing) )?(?:from|out of) (?:the )?(.+)$/i;
const FROM_FIRST = /^(?:wind )?(?:(?:from|out of) (?:the )?)?((?:(?:north|south|east|west)[\s-]*)+)(?:at|,)? *(.+)$/i;

/** No wind at all, where one is asked for. */
const CALM = /^(?:(?:it's|it is|we're|we are) )?(?:dead |flat |completely )?calm$|^(?:there's )?no wind(?: at all)?$/;
/** What somebody thinks of it: "that's no good". */
const REMARK = /,\s+(?:that's|that is|it's|it is|we're|too)\b[^\d]*$/i;
const withoutRemark = (said: string): string => {
  const remark = REMARK.exec(said)?.[0] ?? "";
  return readsNumber(remark) ? said : said.slice(0, said.length - remark.length);
};
const readsNumber = (text: string): boolean =>
  /\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty|from|gust\w*)\b/i.test(text);

/** A wind as it was said, without its time and direction. `gust` is undefined if none was named, and the mean if there was none. */
type Said = { readonly mean: string; readonly gust: string | undefined; readonly certain: boolean };

/**
 * Parses a wind reading: "fourteen gusting nineteen from the west", "wind 12 knots, five minutes ago". Speeds are rounded up to a
 * tenth of a mph. `null` if it is not a reading. A bare number counts only at a wind gate.
 *
 * @example parseWind("wind 14 gusting 19", false) // { wind: { mph: 14, gustMph: 19, fromDeg: null, taken: null } }
 */
export function parseWind(heard: string, atWindGate: boolean): Meaning | null {
  const where = WHERE_READ.find(([pattern]) => pattern.test(heard));
  const meant = windIn(where ? heard.replace(where[0], "") : heard, atWindGate);
  return where && meant && "wind" in meant ? { wind: { ...meant.wind, exposure: where[1] } } : meant;
}

/** In a lee, or in the open. */
const WHERE_READ: readonly (readonly [RegExp, Exposure])[] = [
  [/,? (?:(?:taken|read) )?in (?:a|the) lee(?: of (?:(?:the|a) )?\w+)?(?=[\s,.!]|$)/i, "lee"],
  [/,? (?:(?:taken|read) )?(?:out )?in the open(?=[\s,.!]|$)/i, "open"],
];

function windIn(heard: string, atWindGate: boolean): Meaning | null {
  if (atWindGate && CALM.test(plain(heard))) return { wind: { mph: 0, gustMph: null, fromDeg: null, taken: null } };
  const { words, taken } = splitTaken(withoutRemark(trimmed(heard)));
  const timed = readingIn(words, taken, atWindGate);
  // "Wind from the west at ten" is no time of day.
  if (timed !== null && (taken === null || !("notUnderstood" in timed))) return timed;
  return taken === null || "minutesAgo" in taken ? timed : (readingIn(trimmed(heard).replace(/ at /i, " "), null, atWindGate) ?? timed);
}

function readingIn(words: string, taken: Clock | null, atWindGate: boolean): Meaning | null {
  const { rest, from } = splitFrom(withoutLeadIn(words).replace(WIND_IS, "wind "));
  // The time may stand before the direction.
  const late = taken === null ? splitTaken(rest) : { words: rest, taken };
  const said = saidIn(late.words, atWindGate);
  if (!said) return null;
  const { mean, gust, certain } = said;
  const speeds = [numberInUnit(inUnitOf(mean, gust), "mph"), gust === undefined ? null : numberInUnit(inUnitOf(gust, mean), "mph")];
  const trouble = speeds.find((s) => s !== null && !("n" in s));
  if (trouble) return certain || !("notUnderstood" in trouble) ? (trouble as Meaning) : null;
  const [mph, gustMph] = speeds.map((s) => (s === null ? null : Math.ceil((s as { n: number }).n * 10 - 1e-6) / 10));
  const fromDeg = from === null ? null : compassDeg(from);
  if (from !== null && fromDeg === null) return { noSuchWind: true };
  if (!isWithin(mph!, WIND_BOUNDS) || (gustMph ?? mph!) < mph! || !isWithin(gustMph ?? mph!, WIND_BOUNDS)) return { noSuchWind: true };
  return { wind: { mph: mph!, gustMph: gustMph ?? null, fromDeg, taken: late.taken } };
}

/** A unit said once, with either figure, goes for both. */
function inUnitOf(figure: string, other: string | undefined): string {
  const unit = other && !SPEED.test(figure) ? SPEED.exec(other)?.[0] : undefined;
  return unit ? `${figure} ${unit}` : figure;
}

function saidIn(words: string, atWindGate: boolean): Said | null {
  const steady = STEADY.exec(atWindGate ? words.replace(/^(?!wind\b)/i, "wind ") : words);
  const mean = NO_GUSTS.exec(words)?.[1] ?? steady?.[1] ?? steady?.[2];
  if (mean !== undefined) return { mean, gust: mean, certain: true };
  if (/\b(?:none|nothing|nil|no)\b/i.test(words)) return null;
  const only = GUST_ONLY.exec(words);
  const gust = only?.[1] ?? only?.[2];
  if (gust !== undefined) return { mean: gust, gust, certain: false };
  const blowing = GUSTING.test(words) ? undefined : BLOWING.exec(words)?.[1];
  if (blowing !== undefined) return { mean: blowing, gust: undefined, certain: false };
  const found = GUSTING.exec(words) ?? MEAN_ONLY.exec(words);
  if (found) return { mean: found[1]!, gust: found[2], certain: true };
  return atWindGate ? { mean: words, gust: undefined, certain: false } : null;
}

/** Splits off where the wind blows from. `from` is what was said, even if it is no point of the compass. */
function splitFrom(words: string): { readonly rest: string; readonly from: string | null } {
  const first = FROM_FIRST.exec(words);
  if (first) return { rest: `wind ${first[2]}`, from: first[1]! };
  const last = FROM_LAST.exec(words);
  return last ? { rest: last[1]!, from: last[2]! } : { rest: words, from: null };
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
