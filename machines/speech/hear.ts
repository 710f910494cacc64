import type { Spoken } from "../install/commands.ts";
import type { Attention } from "../install/job.ts";
import type { Step } from "../install/step.ts";
import { holdsInside, isHold } from "./en/holds.ts";
import { plain } from "./en/plain.ts";
import { understand } from "./en/understand.ts";
import { isBinding, type Meaning } from "./meanings.ts";

/** What the guide is waiting for when somebody speaks. */
export type ListeningContext = {
  readonly step: Step | null;
  readonly attention: Attention;
  /** Whether something that was read back on this device waits for "correct". */
  readonly waiting: boolean;
  /** The word said first by those who speak into an open microphone and mean the guide. */
  readonly wakeWord: string;
};

/** What was said into a device: a recognizer's alternatives, best first, and whether the talk button was held. */
export type Utterance = { readonly alternatives: readonly string[]; readonly talk: boolean };

/** What is taken from it, by which way of speaking, and whether it is read back first; or that it was left alone, and why. */
export type Heard =
  | { readonly words: string; readonly source: Spoken; readonly meant: Meaning; readonly readBack: boolean }
  | { readonly words: string; readonly leftAlone: "chatter" | "wakeWord" };

/** Calls with both hands in the lacing and nothing asked: there "next" and "back" may be said bare. */
const LACING: ReadonlySet<string> = new Set(["lace.start", "lace.ring", "lace.valance", "lace.back"]);
const isLacing = (step: Step | null) => step !== null && step.gate === null && LACING.has(step.wordsKey);

/**
 * One utterance at one moment. The strictness is by what a mistake costs: hold words are taken from anybody at once;
 * light words bare, as a whole utterance; what binds only with the talk button held or after the wake word, and then
 * it is read back. All else is chatter.
 */
export function hear({ alternatives, talk }: Utterance, ears: ListeningContext): Heard {
  const said = alternatives.map((a) => a.trim()).filter((a) => a !== "");
  const [best = ""] = said;
  const woken = afterWakeWord(best, ears.wakeWord) === null ? [] : said.flatMap((a) => afterWakeWord(a, ears.wakeWord) ?? []);
  const source: Spoken = talk ? "talk" : woken.length > 0 ? "wake" : "open";
  const hold = [...said, ...said.flatMap((a) => afterWakeWord(a, ears.wakeWord) ?? [])].find(isHold);
  if (hold !== undefined) return { words: hold, source, meant: { intent: { type: "hold" } }, readBack: false };
  const deliberate = woken.length > 0 ? woken : talk ? said : null;
  const [first = ""] = deliberate ?? said;
  const meant = understand(first, ears.step);
  // A hold word in what was understood otherwise, or in a guess at what was not: work waits. A note may tell of one.
  const waits = "notUnderstood" in meant ? said.some(holdsInside) : holdsInside(first) && !isNote(meant);
  if (waits) return { words: best, source, meant: { intent: { type: "pause" } }, readBack: false };
  if (deliberate) return meantFor(deliberate, source, ears);
  if (isLight(meant, ears)) return { words: best, source, meant, readBack: false };
  if (ears.waiting && NEGATIVE.test(plain(best))) return { words: best, source, meant: { confirm: "wrong" }, readBack: false };
  const bound = said.some((words) => !("notUnderstood" in understand(words, ears.step)));
  return { words: best, leftAlone: bound ? "wakeWord" : "chatter" };
}

const isNote = (meant: Meaning): boolean =>
  "intent" in meant && meant.intent.type === "note" && !/^[a-d]{1,2}\d*(?:'s| is) leaning/i.test(meant.intent.text);
/** Said to what was read back: never an answer of its own, or "no" turns into a recorded yes at the next "yes". */
const AFFIRMATIVE = /^(?:yes|yeah|yep|yup|aye|right|that's right|ok|okay|affirmative)$/;
const NEGATIVE = /^(?:no|nope|not yet|negative)$/;
const BEGINS_WITH_NO = /^(?:no|nope|not|wrong|negative)\b/;

/** What was said to the guide on purpose. Where the alternatives say different things it is asked again. */
function meantFor(said: readonly string[], source: Spoken, ears: ListeningContext): Heard {
  const [best = ""] = said;
  const heard = (meant: Meaning): Heard => ({ words: best, source, meant, readBack: false });
  if (ears.waiting && AFFIRMATIVE.test(plain(best))) return heard({ sayCorrect: true });
  if (ears.waiting && BEGINS_WITH_NO.test(plain(best))) return heard({ confirm: "wrong" });
  const guesses = said.map((words) => ({ words, meant: understand(words, ears.step) }));
  const understood = guesses.filter(({ meant }) => !("notUnderstood" in meant));
  const one = agreed(understood);
  if (!one) return heard(several(understood));
  // What is done at once must be the recognizer's best guess. What is read back may be another one, but never a shorter
  // one than a better guess that was not understood: "not tied off" is no "tied off".
  const length = (words: string) => plain(words).split(" ").length;
  const cut = guesses.slice(0, guesses.indexOf(one)).some((g) => length(g.words) > length(one.words));
  if (cut || (!isBinding(one.meant) && one.words !== best)) return heard({ notUnderstood: true });
  return { ...one, source, readBack: isBinding(one.meant) };
}

type Guess = { readonly words: string; readonly meant: Meaning };

function agreed(guesses: readonly Guess[]): Guess | null {
  const [first] = guesses;
  return first && guesses.every((g) => JSON.stringify(g.meant) === JSON.stringify(first.meant)) ? first : null;
}

/** Several numbers heard in one go are named when it is asked again; anything else was just not caught. */
function several(guesses: readonly Guess[]): Meaning {
  const values = guesses.map(({ meant }) => ("intent" in meant && meant.intent.type === "answer" ? meant.intent.value : null));
  const numbers = values.flatMap((v) => (v?.kind === "count" || v?.kind === "measure" ? [v] : []));
  const [first] = numbers;
  if (!first || numbers.length < guesses.length) return { notUnderstood: true };
  return { ambiguous: { n: [...new Set(numbers.map((v) => v.n))], unit: first.kind === "measure" ? first.unit : "count" } };
}

function isLight(meant: Meaning, { step, attention, waiting }: ListeningContext): boolean {
  if ("question" in meant || "thunder" in meant) return true;
  if ("confirm" in meant) return waiting && meant.confirm === "wrong";
  if (!("intent" in meant)) return false;
  switch (meant.intent.type) {
    case "note":
      return true;
    case "next":
    case "back":
      return isLacing(step) && attention === "working";
    case "carryOn":
      return attention === "paused";
    default:
      return false;
  }
}

/** The words after the wake word; null where it was not said first. The wake word alone is nothing. */
function afterWakeWord(said: string, wakeWord: string): string | null {
  const words = said.replace(/^[^\p{L}\p{N}]+/u, "");
  if (!plain(words).startsWith(`${wakeWord.toLowerCase()} `)) return null;
  return words.slice(wakeWord.length).replace(/^[\s,.:!-]+/, "");
}
