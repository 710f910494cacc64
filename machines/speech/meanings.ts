import type { BindingIntent, Intent } from "../install/commands.ts";
import type { Unit } from "../install/gates.ts";
import type { Clock } from "./clock.ts";
import type { Question } from "./question.ts";

/** A spoken wind reading. The server works out what time "five minutes ago" is. */
export type SpokenWind = { readonly mph: number; readonly gustMph: number | null; readonly taken: Clock | null };

/**
 * The meaning of words: a command, without the fields that the server adds; a question, which is answered but not recorded; a
 * reading; the reply to a read-back; or why it is none of these.
 */
export type Meaning =
  | { readonly intent: Exclude<Intent, { type: "amend" | "agree" | "disagree" | "reading" | "readBack" | "correct" | "wrong" }> }
  | { readonly wind: SpokenWind }
  | { readonly thunder: true }
  | { readonly confirm: "correct" | "wrong" }
  | { readonly question: Question }
  /** A pole's lean at a call that does not ask for one; kept as a note. */
  | { readonly remark: string }
  | { readonly wrongUnit: { readonly gave: string; readonly wants: string } }
  /** A negative wind, one above the largest possible, or a gust below its mean. */
  | { readonly noSuchWind: true }
  /** A lean without a direction, or with a minus sign. */
  | { readonly whichWay: true }
  /** "Yes" to a read-back, which needs "correct" or "wrong". */
  | { readonly sayCorrect: true }
  /** Words that can be read as several numbers; the guide asks again. */
  | { readonly ambiguous: { readonly n: readonly number[]; readonly unit: Unit | "mph" | "count" } }
  /** An answer that names another place than the gate asks about. */
  | { readonly elsewhere: string }
  | { readonly notUnderstood: true };

const BINDING: ReadonlySet<string> = new Set<BindingIntent["type"]>(["answer", "waive", "standDown"]);

/**
 * Whether a meaning is read back and confirmed before it counts. Thunder is not, because it can only stop work.
 *
 * @example isBinding({ thunder: true }) // false
 */
export const isBinding = (meant: Meaning): boolean => "wind" in meant || ("intent" in meant && BINDING.has(meant.intent.type));
