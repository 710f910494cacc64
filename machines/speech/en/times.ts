import type { AmPm, Clock } from "../clock.ts";
import { isArticle, underHundred } from "./number-words.ts";
import { measures } from "./quantities.ts";
import { tokens } from "./tokens.ts";
import { unitNames } from "./units.ts";

/** Whether an hour is on the 24-hour clock. With a leading zero it is, unless am or pm follows: "07:30", but "07:30 pm". */
type TwentyFourHour = "no" | "zero" | "yes";
/** A time as said. `shift` is in minutes: positive for "past" the hour, negative for "to" the hour. */
type SpokenTime = { readonly hour: number; readonly minute: number; readonly is24: TwentyFourHour; readonly shift?: number };
type SpokenHour = { readonly hour: number; readonly next: number; readonly is24: TwentyFourHour };

/** Minutes in each unit of time. */
const TIME_UNITS = [
  unitNames("hour", "min", 60, 1, "hours | hour | hrs | hr"),
  unitNames("minute", "min", 1, 1, "minutes | minute | mins | min"),
  unitNames("second", "min", 1, 60, "seconds | second | secs | sec"),
];
/** Nobody gives a time more than a day ago without a date. */
const MAX_MINUTES_AGO = 24 * 60;
/** Phrases that tell am from pm, with the hours they are used for. */
const AM_PM_PHRASES: readonly (readonly [said: string, half: "am" | "pm", from: number, to: number])[] = [
  ["am", "am", 0, 12],
  ["a m", "am", 0, 12],
  ["pm", "pm", 1, 23],
  ["p m", "pm", 1, 23],
  ["in the morning", "am", 1, 11],
  ["in the afternoon", "pm", 1, 18],
  ["in the evening", "pm", 4, 23],
];
const NAMED_HOURS: Readonly<Record<string, number>> = { noon: 12, midday: 12, midnight: 0 };

/**
 * The time of day, or how long ago, in a whole text; `null` if it says none, more than one, or more than a time.
 *
 * @example readClock("quarter past two in the afternoon") // { hour: 14, minute: 15, half: "pm" }
 */
export function readClock(text: string): Clock | null {
  const t = tokens(text);
  if (!t || t.length === 0 || text.includes(",")) return null;
  if (/^(?:just |right )?now$/.test(t.join(" "))) return { minutesAgo: 0 };
  if (t.at(-1) === "ago") return ago(t.slice(0, -1));
  for (const [said, half, from, to] of AM_PM_PHRASES) {
    const words = said.split(" ");
    const rest = t.slice(0, -words.length);
    if (rest.length > 0 && words.every((w, k) => t[rest.length + k] === w)) return singleTime(readTimes(rest, true), half, from, to);
  }
  return singleTime(readTimes(t, false), null, 0, 23);
}

function ago(t: readonly string[]): Clock | null {
  const found = measures(t, 0, TIME_UNITS)
    .filter(({ unit, assumed }) => unit && !assumed)
    .flatMap((m) => {
      const minutes = (m.n * m.unit!.numerator) / m.unit!.denominator;
      if (m.next === t.length) return [minutes];
      if (m.kind !== "whole" || m.unit!.name !== "hour") return [];
      return measures(t, t[m.next] === "and" ? m.next + 1 : m.next, TIME_UNITS)
        .filter((rest) => rest.next === t.length && rest.unit?.name === "minute" && !rest.assumed)
        .map((rest) => minutes + rest.n);
    });
  const [minutesAgo, ...others] = [...new Set(found)];
  return minutesAgo !== undefined && others.length === 0 && minutesAgo <= MAX_MINUTES_AGO ? { minutesAgo } : null;
}

/** The time if all readings agree on it, with am or pm resolved as far as possible; otherwise null. */
function singleTime(found: readonly SpokenTime[], half: AmPm, from: number, to: number): Clock | null {
  const clocks = found.flatMap(({ hour, minute, is24, shift = 0 }) => {
    if (hour < from || hour > to) return [];
    const said12 = half !== null && hour <= 12 && is24 !== "yes";
    const told = said12 ? (hour % 12) + (half === "pm" ? 12 : 0) : hour;
    if (half !== null && amPmOf(told) !== half) return [];
    // In "ten to two pm", am or pm belongs to the hour named. A twelve-hour clock goes from 12 to 1.
    const day = (told * 60 + minute + shift + 1440) % 1440;
    const at = Math.floor(day / 60);
    const known = half !== null || is24 !== "no" || hour === 0 || hour > 12;
    const needed = at >= 1 && at <= 12;
    return [{ hour: known ? at : ((at + 11) % 12) + 1, minute: day % 60, half: known && (needed || half !== null) ? amPmOf(at) : null }];
  });
  const [first, ...others] = clocks;
  return first && others.every((o) => o.hour === first.hour && o.minute === first.minute && o.half === first.half) ? first : null;
}

const amPmOf = (hour: number): AmPm => (hour < 12 ? "am" : "pm");

/** Every reading of all the tokens as a time; a bare hour counts only if am or pm was said. */
function readTimes(t: readonly string[], halfSaid: boolean): SpokenTime[] {
  if (t.at(-1) === "hours") return clockTimes(t.slice(0, -1), true).map((time) => ({ ...time, is24: "yes" }));
  const name = t[0] === "twelve" && t.length === 2 ? t[1] : t.length === 1 ? t[0] : undefined;
  if (name !== undefined && Object.hasOwn(NAMED_HOURS, name)) return halfSaid ? [] : [{ hour: NAMED_HOURS[name]!, minute: 0, is24: "yes" }];
  return [
    ...clockTimes(t, false),
    ...relativeTimes(t),
    ...hoursAt(t, 0, true)
      .filter((h) => isEndOfTime(t, h.next, halfSaid))
      .map(onTheHour),
  ];
}

const onTheHour = ({ hour, is24 }: SpokenHour): SpokenTime => ({ hour, minute: 0, is24 });
const isEndOfTime = (t: readonly string[], i: number, bare: boolean): boolean => {
  const rest = t.slice(i).join(" ");
  return rest === "o'clock" || rest === "oclock" || rest === "o clock" || (bare && rest === "");
};

/** "14:15", "2.15", "1415", "two fifteen", "oh seven thirty", "fourteen hundred", "two oh five". */
function clockTimes(t: readonly string[], hoursSaid: boolean): SpokenTime[] {
  const written = t.length === 1 ? /^(\d{1,2})[:.]?(\d{2})$/.exec(t[0]!) : null;
  if (written)
    return validTimes([{ hour: Number(written[1]), minute: Number(written[2]), is24: written[1]!.startsWith("0") ? "zero" : "no" }]);
  return validTimes(
    hoursAt(t, 0, false).flatMap((h): SpokenTime[] => {
      if (t[h.next] === "hundred" && h.next + 1 === t.length)
        return h.is24 !== "no" || h.hour >= 10 || hoursSaid ? [{ ...onTheHour(h), is24: "yes" }] : [];
      return minutesAt(t, h.next).map((minute) => ({ hour: h.hour, minute, is24: h.is24 }));
    }),
  );
}

const validTimes = (found: readonly SpokenTime[]): SpokenTime[] => found.filter(({ hour, minute }) => hour < 24 && minute < 60);
const isZero = (word: string | undefined) => word === "oh" || word === "o" || word === "zero" || word === "0";

/** Every hour that starts at token `i`. A leading zero means the 24-hour clock. "Noon" counts only with `named`. */
function hoursAt(t: readonly string[], i: number, named: boolean): SpokenHour[] {
  const word = t[i] ?? "";
  if (/^0\d$/.test(word)) return [{ hour: Number(word), next: i + 1, is24: "zero" }];
  if (isZero(word)) {
    const digits = underHundred(t, i + 1).filter(({ n }) => n < 10);
    const none = isZero(t[i + 1]) ? i + 2 : i + 1;
    return [...digits.map(({ n, next }) => ({ hour: n, next, is24: "zero" as const })), { hour: 0, next: none, is24: "zero" }];
  }
  if (named && Object.hasOwn(NAMED_HOURS, word)) return [{ hour: NAMED_HOURS[word]!, next: i + 1, is24: "yes" }];
  return underHundred(t, i).flatMap(({ n, next }) => (n < 24 ? [{ hour: n, next, is24: "no" }] : []));
}

/** The remaining tokens as minutes: two digits, "oh five", or a number from ten up. */
function minutesAt(t: readonly string[], i: number): number[] {
  if (i + 1 === t.length && /^\d\d$/.test(t[i]!)) return [Number(t[i])];
  if (isZero(t[i]) && i + 2 === t.length) {
    if (isZero(t[i + 1])) return [0];
    return underHundred(t, i + 1).flatMap(({ n, next }) => (n < 10 && next === t.length ? [n] : []));
  }
  return underHundred(t, i).flatMap(({ n, next }) => (n >= 10 && next === t.length ? [n] : []));
}

/** "quarter past two", "half past ten", "twenty-five minutes to four", "ten to noon". */
function relativeTimes(t: readonly string[]): SpokenTime[] {
  const from = isArticle(t[0]) && t[1] === "quarter" ? 1 : 0;
  const word = t[from] ?? "";
  const parts = [
    ...(word === "quarter" || word === "1/4" ? [{ n: 15, next: from + 1 }] : []),
    ...(word === "half" || word === "1/2" ? [{ n: 30, next: from + 1 }] : []),
    ...underHundred(t, 0).filter(({ n }) => n < 60),
  ];
  return parts.flatMap(({ n, next }) => {
    const at = /^(?:minutes?|mins?)$/.test(t[next] ?? "") && n !== 30 ? next + 1 : next;
    const after = /^(?:past|after)$/.test(t[at] ?? "");
    const before = n !== 30 && /^(?:to|till|til|before|of)$/.test(t[at] ?? "");
    if (!after && !before) return [];
    const hours = hoursAt(t, at + 1, true).filter((h) => isEndOfTime(t, h.next, true));
    return hours.map((h) => ({ ...onTheHour(h), shift: after ? n : -n }));
  });
}
