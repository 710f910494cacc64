import type { Meaning } from "../meanings.ts";
import { phrases } from "../phrases.ts";
import { clausesOf, DOUBTS, inFull, LEAD_PHRASES, LEAD_WORDS, NEGATIONS, wordsOf } from "./talk.ts";

/** The commands, and the replies to a read-back, by their names. */
const MEANT = {
  next: { intent: { type: "next" } },
  back: { intent: { type: "back" } },
  carryOn: { intent: { type: "carryOn", became: null } },
  correct: { confirm: "correct" },
  wrong: { confirm: "wrong" },
} as const satisfies Readonly<Record<string, Meaning>>;
type Command = keyof typeof MEANT;

const MISSED =
  "(i | we) [have] (missed | skipped | dropped) (a | an | one | the | two) (loop | hook | ring | hole | knot | loops | hooks | rings | holes | knots)";
/** What counts as it stands, through an open microphone too; each as an expansion (see `phrases`). */
export const BARE: Readonly<Record<Command, string>> = {
  next: "[done] next | next call",
  back: `[go] back [one] [${MISSED}]`,
  carryOn: "carry on",
  correct: "[that's | that is] correct",
  wrong: "[no] wrong | (that's | that is) wrong | not correct | incorrect",
};
/** What counts besides, once the guide is addressed. */
export const ADDRESSED: Readonly<Record<Command, string>> = {
  next: "next (one | step | please | one please | call please) | go on | move on | keep going | (ready for | go ahead to | go to | give me | on to) [the] next [one | call | step]",
  back: "[go] back [one] please | back up one | back up a step | go back (a step | to the last one)",
  carryOn: "carry on (everybody | everyone | guys)",
  correct: "correct correct | (yes | yeah | yep | yup) correct | [yes | yeah | yep | yup] (that's | that is) (correct | right | it)",
  wrong: "no (that's | that is) wrong | [no] (that's | that is) (not right | not it | not what i said)",
};
/** The same as next where nothing is asked: elsewhere it may answer. */
export const DONE =
  "done | all done | (that's | that one's | we're | we are | i'm) done [here | with that | with this one] | (that's | that one's) done next";
const NAMES = Object.keys(MEANT) as Command[];
const named = (said: (name: Command) => string) =>
  new Map(NAMES.flatMap((name) => phrases(said(name)).map((phrase) => [inFull(phrase), name] as const)));
const AS_IT_STANDS = named((name) => BARE[name]);
const SAID = named((name) => `${BARE[name]} | ${ADDRESSED[name]}`);
const SAID_DONE = new Set(phrases(DONE).map(inFull));
/** Those that may come after how things stand: "corner's up, next". */
const AFTER_A_REPORT: ReadonlySet<Command> = new Set<Command>(["next", "carryOn"]);
/** A report that asks, or that may say the opposite. */
const ASKS = /^(?:what|which|who|where|why|how|when|is|are|do|does|did|can|should|say|tell|if)\b/;
const MAX_REPORT = 10;

/** A command, and what was said before it, which may answer what is asked. */
export type Commanded = { readonly meant: Meaning; readonly report: string };

/**
 * The command in what was said: as a whole, after words that say nothing, or after how things stand. `null` if it is none.
 *
 * @example parseCommand("corner's up, next", false)?.report // "corner is up"
 */
export function parseCommand(said: string, isAsked: boolean): Commanded | null {
  const nameOf = (full: string): Command | undefined => SAID.get(full) ?? (!isAsked && SAID_DONE.has(full) ? "next" : undefined);
  const whole = nameOf(inFull(said));
  if (whole) return { meant: MEANT[whole], report: "" };
  const clauses = clausesOf(said);
  const command = nameOf(withoutLead(clauses.pop() ?? ""));
  if (!command) return null;
  const before = clauses.map(withoutLead).filter((clause) => clause !== "");
  const isReport = (clause: string) =>
    !ASKS.test(clause) && wordsOf(clause).length <= MAX_REPORT && !wordsOf(clause).some((word) => NEGATIONS.has(word) || DOUBTS.has(word));
  const counts = AFTER_A_REPORT.has(command) ? before.every(isReport) : before.length === 0 && !/\bgot it\b/.test(inFull(said));
  return counts ? { meant: MEANT[command], report: before.join(", ") } : null;
}

/**
 * Whether words are a command and nothing else, as it is taken from an open microphone.
 *
 * @example isBareCommand("okay, next") // false
 */
export const isBareCommand = (said: string): boolean => AS_IT_STANDS.has(inFull(said));

/** Without the words that say nothing: "okay", "all right", "got it". */
function withoutLead(clause: string): string {
  const phrase = LEAD_PHRASES.find((lead) => clause === lead || clause.startsWith(`${lead} `));
  if (phrase !== undefined) return withoutLead(clause.slice(phrase.length).trim());
  const [first = "", ...rest] = clause.split(" ");
  return LEAD_WORDS.has(first) ? withoutLead(rest.join(" ")) : clause;
}
