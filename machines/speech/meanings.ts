import type { BindingIntent, Intent } from "../install/commands.ts";
import type { Unit } from "../install/gates.ts";
import type { Clock } from "./clock.ts";
import type { Question } from "./question.ts";

/** What a reading said aloud gives; the server knows what time "five minutes ago" is. */
export type WindSaid = { readonly mph: number; readonly gustMph: number | null; readonly taken: Clock | null };

/**
 * What words mean: a command without what the server adds; a question, which is answered and not recorded; a reading; the
 * word on a read-back; or why it was none of these.
 */
export type Meaning =
  | { readonly intent: Exclude<Intent, { type: "amend" | "agree" | "disagree" | "reading" | "readBack" | "correct" | "wrong" }> }
  | { readonly wind: WindSaid }
  | { readonly thunder: true }
  | { readonly confirm: "correct" | "wrong" }
  | { readonly question: Question }
  /** A pole's lean, said where none is asked: kept as a note. */
  | { readonly remark: string }
  | { readonly wrongUnit: { readonly gave: string; readonly wants: string } }
  /** Under nothing, over any wind there is, or a gust under its mean. */
  | { readonly noSuchWind: true }
  /** A lean without its way, or with a minus besides. */
  | { readonly whichWay: true }
  /** Yes or no, to what waits for "correct" or "wrong". */
  | { readonly sayCorrect: true }
  /** One thing said that can be read as several numbers: it is asked again. */
  | { readonly ambiguous: { readonly n: readonly number[]; readonly unit: Unit | "mph" | "count" } }
  /** The answer names another place than the one that is asked. */
  | { readonly elsewhere: string }
  | { readonly notUnderstood: true };

const BINDING: ReadonlySet<string> = new Set<BindingIntent["type"]>(["answer", "waive", "standDown"]);

/** Whether it is read back and confirmed before it counts. Thunder is not: it only ever stops. */
export const isBinding = (meant: Meaning): boolean => "wind" in meant || ("intent" in meant && BINDING.has(meant.intent.type));
