import { isWithin, WIND_BOUNDS } from "../../figures/bounds.ts";
import { AIR_BOUNDS, celsiusOf, FLASH_TO_BANG_BOUNDS, fahrenheitOf, HUMIDITY_BOUNDS, type Sun } from "../../weather/air.ts";
import { type BeaufortName, meanByLook } from "../../weather/beaufort.ts";
import { CHILL } from "../../weather/cold.ts";
import type { Meaning } from "../meanings.ts";
import { plain } from "../plain.ts";
import { numberInUnit } from "./number-in-unit.ts";

/** One number, within bounds; `null` where it is none. */
function numberWithin(text: string, bounds: { readonly from: number; readonly to: number }): number | null {
  const read = numberInUnit(text, "count");
  return "n" in read && typeof read.n === "number" && isWithin(read.n, bounds) ? read.n : null;
}

const FLASH_TO_BANG = /^flash to bang,? (?:was |is |about |in )?(.+?)(?: seconds?)?$/;
const SECONDS = /\b(?:thunder|lightning|flash|bang|boom)\b.*?[ ,]((?:[a-z-]+ )?[a-z\d-]+) seconds?\b/;

/**
 * Seconds from a flash to its thunder, as they are said; `null` where none are.
 *
 * @example secondsIn("thunder, twelve seconds") // 12
 */
export function secondsIn(heard: string): number | null {
  const words = plain(heard);
  const said = FLASH_TO_BANG.exec(words)?.[1] ?? SECONDS.exec(words)?.[1];
  if (said === undefined) return null;
  return numberWithin(said, FLASH_TO_BANG_BOUNDS) ?? numberWithin(said.split(" ").at(-1)!, FLASH_TO_BANG_BOUNDS);
}

/**
 * "Flash to bang ten": thunder, with its seconds. `null` where that is not what is said.
 *
 * @example parseFlashToBang("flash to bang ten") // { thunder: true, seconds: 10 }
 */
export function parseFlashToBang(heard: string): Meaning | null {
  if (heard.trim().endsWith("?") || !FLASH_TO_BANG.test(plain(heard))) return null;
  const seconds = secondsIn(heard);
  return seconds === null ? { thunder: true } : { thunder: true, seconds };
}

const LOOKS: Readonly<Record<string, BeaufortName>> = {
  "light air": "lightAir",
  "light breeze": "lightBreeze",
  "gentle breeze": "gentleBreeze",
  "moderate breeze": "moderateBreeze",
  "fresh breeze": "freshBreeze",
  "strong breeze": "strongBreeze",
  "near gale": "nearGale",
  gale: "gale",
  "strong gale": "strongGale",
  storm: "storm",
  "violent storm": "violentStorm",
  hurricane: "hurricane",
};
const BY_LOOK =
  /^(?:(?:the )?winds?(?:'s| is| are)?(?: (?:a|about|like))*|(?:it's |it is )?(?:blowing )?(?:a )?) ?((?:light|gentle|moderate|fresh|strong|near|violent) (?:air|breeze|gale|storm)|gale|storm|hurricane)$/;
/** The scale's own names of two words, and no word besides. */
const NAMED_WHOLE = /^(?:a )?(?:light|gentle|moderate|fresh|strong|near|violent) (?:air|breeze|gale|storm)$/;

/**
 * Whether a name of the scale is all that is said, and nobody calls it a wind: people say it of any breeze.
 *
 * @example isBareLook("a moderate breeze") // true
 */
export const isBareLook = (heard: string): boolean => NAMED_WHOLE.test(plain(heard).replaceAll(",", ""));

/**
 * A wind by a word of the scale, at the top of its band. Where none is asked for, only one that is called a wind, or is named whole.
 *
 * @example parseLook("wind fresh breeze", false) // { wind: { mph: 24, gustMph: null, fromDeg: null, taken: null, look: "freshBreeze" } }
 */
export function parseLook(heard: string, atWindGate: boolean): Meaning | null {
  const words = plain(heard).replaceAll(",", "");
  if (!atWindGate && !/^(?:the )?winds?\b/.test(words) && !isBareLook(heard)) return null;
  const said = BY_LOOK.exec(words)?.[1];
  const look = said === undefined ? undefined : LOOKS[said];
  return look ? { wind: { mph: meanByLook(look), gustMph: null, fromDeg: null, taken: null, look } } : null;
}

const SUNS: readonly (readonly [RegExp, Sun])[] = [
  [/\b(?:full sun|sunny|in the sun)\b/, "full"],
  [/\b(?:partly|part sun|some clouds?)\b/, "partly"],
  [/\b(?:shade|overcast|cloudy|no sun)\b/, "none"],
];
/** Sun or shade at the end. */
const IN_SUN =
  /,? (?:and )?(?:(?:in|the|it's) )*(?:full sun|sunny|sun|partly(?: sunny| cloudy)?|part sun|some clouds?|shade|overcast|cloudy|no sun)$/;
const ANY_NUMBER = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
const HEAT =
  /^(?:(?:it's|it is|heat|air|temperature)(?: is)?,? )?(.+?) degrees?(?: (fahrenheit|celsius|centigrade))?,? (?:and )?(.+?) percent(?: humidity)?\b/;

/** The same with the humidity named before its number; degrees may be left out where the number says the scale. */
const HUMIDITY_NAMED =
  /^(?:(?:it's|it is|heat|air|temperature)(?: is)?,? )?(.+?)( degrees?)?(?: (fahrenheit|celsius|centigrade))?,? (?:and |with )?(?:the |an? )?humidity(?:'s| is| of| at)* (.+?)(?: percent)?$/;

/**
 * Under so many, a number without degrees and scale may be a hot day in °C, and nobody is in the heat at as many °F: it is not guessed. The
 * hottest air on record is under 60 °C. From memory; it only leaves a reading out, which is then told again.
 */
const MIN_PLAINLY_F = 60;

/** Air as it was said, in °F; `null` where there is no such air. */
function airFIn(said: string, scale: string | undefined): number | null {
  if (scale === undefined || scale === "fahrenheit") return numberWithin(said, AIR_BOUNDS);
  const celsius = numberWithin(said, { from: celsiusOf(AIR_BOUNDS.from), to: celsiusOf(AIR_BOUNDS.to) });
  return celsius === null ? null : Math.round(fahrenheitOf(celsius) * 10) / 10;
}

/** Whole, air, scale and humidity, where the humidity is named; `null` also where the scale is anybody's guess. */
function humidityNamed(words: string): readonly (string | undefined)[] | null {
  const [whole, air = "", degrees, scale, humid] = HUMIDITY_NAMED.exec(words) ?? [];
  const guessed = degrees === undefined && scale === undefined && (numberWithin(air, ANY_NUMBER) ?? MIN_PLAINLY_F) < MIN_PLAINLY_F;
  return whole === undefined || guessed ? null : [whole, air, scale, humid];
}

/**
 * The heat as it is read off: "ninety two degrees, sixty percent, full sun". `null` where it is none, or no number.
 *
 * @example parseHeat("ninety two degrees, sixty percent, full sun") // { heat: { airF: 92, humidity: 60, sun: "full" } }
 */
export function parseHeat(heard: string): Meaning | null {
  const words = plain(heard);
  const sun = SUNS.find(([pattern]) => pattern.test(words));
  const [, air, scale, humid] = HEAT.exec(words) ?? humidityNamed(sun ? words.replace(IN_SUN, "") : words) ?? [];
  if (air === undefined || humid === undefined) return null;
  const [airF, humidity] = [airFIn(air, scale), numberWithin(humid, HUMIDITY_BOUNDS)];
  if (airF !== null && humidity !== null) return { heat: { airF, humidity, sun: sun?.[1] ?? null } };
  return [air, humid].every((text) => numberWithin(text, ANY_NUMBER) !== null) ? { noSuchAir: true } : null;
}

const COLD =
  /^(?:(?:it's|it is|cold|air|temperature)(?: is)?,? )?(.+?) degrees?(?: (fahrenheit|celsius|centigrade))?( below(?: zero)?)?(?: (fahrenheit|celsius|centigrade))?,? (?:and |with )?(?:the |an? )?winds?(?:'s| is| are)?(?: (?:at|of|about))* (.+)$/;

/**
 * The cold as it is read off: "twenty five degrees, wind fifteen". `null` where it is none: above 50 °F a wind chills nobody, and
 * degrees may be where a wind comes from.
 *
 * @example parseCold("twenty five degrees, wind fifteen") // { cold: { airF: 25, windMph: 15 } }
 */
export function parseCold(heard: string): Meaning | null {
  const [, air, first, below, last, wind] = COLD.exec(plain(heard)) ?? [];
  if (air === undefined || wind === undefined) return null;
  const airF = airFIn(below === undefined ? air : `minus ${air}`, first ?? last);
  const read = numberInUnit(wind, "mph");
  if (airF === null || airF > CHILL.maxAirF || !("n" in read) || typeof read.n !== "number") return null;
  const windMph = Math.ceil(read.n * 10 - 1e-6) / 10;
  return isWithin(windMph, WIND_BOUNDS) ? { cold: { airF, windMph } } : null;
}
