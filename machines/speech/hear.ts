import type { Spoken } from "../install/commands.ts";
import type { Attention } from "../install/job.ts";
import type { Step } from "../install/step.ts";
import type { Language } from "./language.ts";
import { isBinding, type Meaning } from "./meanings.ts";
import { plain } from "./plain.ts";

/** What the guide is waiting for when somebody speaks. */
export type ListeningContext = {
  readonly step: Step | null;
  readonly attention: Attention;
  /** Whether something that was read back on this device waits for "correct". */
  readonly waiting: boolean;
  /** The word said first by those who speak into an open microphone and mean the guide. */
  readonly wakeWord: string;
  readonly language: Language;
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

/** One of the recognizer's alternatives, and what it means at this call. */
type Guess = { readonly words: string; readonly meant: Meaning };

/**
 * One utterance at one moment. The strictness is by what a mistake costs: hold words are taken from anybody at once;
 * light words bare, as a whole utterance; what binds only with the talk button held or after the wake word, and then
 * it is read back. All else is chatter. Each alternative is understood once.
 */
export function hear({ alternatives, talk }: Utterance, context: ListeningContext): Heard {
  const { language, step, wakeWord, waiting } = context;
  const said = alternatives.map((a) => a.trim()).filter((a) => a !== "");
  const [best = ""] = said;
  const afterWake = said.flatMap((a) => afterWakeWord(a, wakeWord) ?? []);
  const woken = afterWakeWord(best, wakeWord) !== null;
  const source: Spoken = talk ? "talk" : woken ? "wake" : "open";
  const hold = [...said, ...afterWake].find(language.isHold);
  if (hold !== undefined) return { words: hold, source, meant: { intent: { type: "hold" } }, readBack: false };
  const guesses = (woken ? afterWake : said).map((words): Guess => ({ words, meant: language.understand(words, step) }));
  const [first = NOTHING] = guesses;
  const heard = (meant: Meaning): Heard => ({ words: best, source, meant, readBack: false });
  // A hold word in what was understood otherwise, or in a guess at what was not: work waits. A note may tell of one.
  const waits =
    "notUnderstood" in first.meant ? said.some(language.holdsInside) : language.holdsInside(first.words) && !isNote(first.meant);
  if (waits) return heard({ intent: { type: "pause" } });
  if (woken || talk) return meantFor(guesses, source, context);
  if (isLight(first.meant, context)) return heard(first.meant);
  if (waiting && language.isNo(plain(best))) return heard({ confirm: "wrong" });
  return { words: best, leftAlone: guesses.some(({ meant }) => !("notUnderstood" in meant)) ? "wakeWord" : "chatter" };
}

const NOTHING: Guess = { words: "", meant: { notUnderstood: true } };
const isNote = (meant: Meaning): boolean => "intent" in meant && meant.intent.type === "note";

/**
 * What was said to the guide on purpose. Where the alternatives say different things it is asked again. To what was read
 * back, "yes" is never an answer of its own: a read-back of "no" would turn into a recorded yes.
 */
function meantFor(guesses: readonly Guess[], source: Spoken, { language, waiting }: ListeningContext): Heard {
  const [{ words: best } = NOTHING] = guesses;
  const heard = (meant: Meaning): Heard => ({ words: best, source, meant, readBack: false });
  if (waiting && language.isYes(plain(best))) return heard({ sayCorrect: true });
  if (waiting && language.beginsWithNo(plain(best))) return heard({ confirm: "wrong" });
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
  if ("question" in meant || "thunder" in meant || "remark" in meant) return true;
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
