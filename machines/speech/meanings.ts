import type { BindingIntent, Exposure, Intent, WarningReading } from "../install/commands.ts";
import type { Unit } from "../install/gates.ts";
import { worstMph } from "../install/weather.ts";
import type { BuriedKind, Offset, Thing } from "../site/model.ts";
import type { LoadItem } from "../tent/load.ts";
import type { ColdAir, HotAir } from "../weather/air.ts";
import type { BeaufortName } from "../weather/beaufort.ts";
import type { Clock } from "./clock.ts";
import type { Question } from "./question.ts";

/** A spoken wind reading. `fromDeg` is where it blows from. The server works out what time "five minutes ago" is. */
export type SpokenWind = {
  readonly mph: number;
  readonly gustMph: number | null;
  readonly fromDeg: number | null;
  readonly taken: Clock | null;
  /** Told by the look of things; absent where a meter read it. */
  readonly look?: BeaufortName;
  /** Absent where nobody said where it was read. */
  readonly exposure?: Exposure;
};

/** A piece by its id, or so many of what goes by one name: which of them is meant, and how many where nobody said, depends on the job. */
export type NamedItems = { readonly items: readonly LoadItem[]; readonly n: number | null };
export type NamedThing = { readonly piece: string } | NamedItems;

type ThingKind = Thing["kind"];
/** One more line, wire or thing, as it was said: what it is, its voltage where it hangs (`null`: not known), and where it runs. */
export type SpokenFound = {
  readonly kind: BuriedKind | ThingKind | "overhead";
  readonly kv: number | null;
  readonly points: readonly Offset[];
};

/** Intents that no words stand for by themselves. */
type NotSpoken =
  | "amend"
  | "agree"
  | "disagree"
  | "reading"
  | "readBack"
  | "correct"
  | "wrong"
  | "hurt"
  | "outOfUse"
  | "backInUse"
  | "found";

/** What a warning says, until when, and who put it out, as it was read out; each absent where nobody said it. */
export type SpokenWarning = Pick<WarningReading, "what" | "until" | "issuer">;

/**
 * The meaning of words: a command, without the fields that the server adds; a question, which is answered but not recorded; a
 * reading; the reply to a read-back; or why it is none of these.
 */
export type Meaning =
  | { readonly intent: Exclude<Intent, { type: NotSpoken }> }
  | { readonly wind: SpokenWind }
  /** With the seconds from flash to bang, where they were said. */
  | { readonly thunder: true; readonly seconds?: number }
  | { readonly heat: HotAir }
  | { readonly cold: ColdAir }
  /** A weather warning was put out, with what was read out of it. */
  | ({ readonly warning: true } & SpokenWarning)
  | { readonly rain: true }
  /** What was taken for thunder was none, and what it was. */
  | { readonly noThunder: string }
  /** Everybody is told to leave the tent, in these words. */
  | { readonly everybodyOut: string }
  /** Somebody is hurt, in these words. */
  | { readonly hurt: string }
  | { readonly outOfUse: NamedThing; readonly because: string }
  | { readonly backInUse: NamedThing; readonly because: string }
  | { readonly found: SpokenFound }
  /** The lead is handed over to somebody, as they were called. */
  | { readonly handOver: string }
  | { readonly confirm: "correct" | "wrong" }
  | { readonly question: Question }
  /** A pole's lean at a call that does not ask for one; kept as a note. */
  | { readonly remark: string }
  | { readonly wrongUnit: { readonly gave: string; readonly wants: string } }
  /** A negative wind, one above the largest possible, a gust below its mean, or one from no point of the compass. */
  | { readonly noSuchWind: true }
  /** Air hotter or colder than any, or more or less humid. */
  | { readonly noSuchAir: true }
  /** "Yes" to a read-back, which needs "correct" or "wrong". */
  | { readonly sayCorrect: true }
  /** "Yes, six" to a read-back: it confirms where that is what was read back, and else it is said again. */
  | { readonly restated: Exclude<Intent, { type: NotSpoken }> }
  /** Words that can be read as several numbers; the guide asks again. */
  | { readonly ambiguous: { readonly n: readonly number[]; readonly unit: Unit | "mph" | "count" } }
  /** An answer that names another place than the gate asks about. */
  | { readonly elsewhere: string }
  | { readonly notUnderstood: true };

const BINDING: ReadonlySet<string> = new Set<BindingIntent["type"]>(["answer", "waive", "standDown"]);

/**
 * Whether a meaning can do nothing but stop work. It is taken from anybody, however it was spoken. A wind counts where its gust
 * is at the stop limit, or may be: see `worstMph`.
 *
 * @example onlyStops({ wind: { mph: 25, gustMph: null, fromDeg: null, taken: null } }, 38) // true
 */
export function onlyStops(meant: Meaning, stopGustMph: number): boolean {
  if ("wind" in meant) return worstMph(meant.wind) >= stopGustMph;
  return "thunder" in meant || "warning" in meant || "everybodyOut" in meant || "hurt" in meant;
}

/**
 * Whether a meaning is read back and confirmed before it counts. Thunder is not, because it can only stop work.
 *
 * @example isBinding({ thunder: true }) // false
 */
export const isBinding = (meant: Meaning): boolean =>
  "wind" in meant ||
  "heat" in meant ||
  "cold" in meant ||
  "noThunder" in meant ||
  "outOfUse" in meant ||
  "backInUse" in meant ||
  "found" in meant ||
  ("intent" in meant && BINDING.has(meant.intent.type));
