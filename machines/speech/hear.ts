import { expected } from "../install/checks/any-check.ts";
import type { Spoken } from "../install/commands.ts";
import type { Attention } from "../install/job.ts";
import type { Step } from "../install/step.ts";
import type { Language } from "./language.ts";
import { answerable, type Listening, NOTHING_ASKED } from "./listening.ts";
import { isBinding, type Meaning, onlyStops } from "./meanings.ts";
import { plain } from "./plain.ts";

/** What the guide is waiting for when somebody speaks. */
export type ListeningContext = {
  readonly listening: Listening;
  readonly attention: Attention;
  /** Whether a read-back on this device is waiting for "correct". */
  readonly waiting: boolean;
  /** The word people say first to address the guide through an open microphone. */
  readonly wakeWord: string;
  /** The gust that stops the job's work: a reading of as much is taken at once, from anybody. */
  readonly stopGustMph: number;
  readonly language: Language;
};

/** One utterance: the recognizer's alternatives, best first, and whether the talk button was held. */
export type Utterance = { readonly alternatives: readonly string[]; readonly talk: boolean };

/** What an utterance means, how it was spoken, and whether it must be read back first; or why it was ignored. */
export type Heard =
  | { readonly words: string; readonly source: Spoken; readonly meant: Meaning; readonly readBack: boolean }
  | { readonly words: string; readonly leftAlone: "chatter" | "wakeWord" };

/** Calls that keep both hands on the lacing. If they have no gate, "next" and "back" need no wake word or button. */
const LACING: ReadonlySet<string> = new Set(["lace.first", "lace.ring", "lace.out"]);
const isLacing = (step: Step | null) => step !== null && step.gate === null && LACING.has(step.wordsKey);

/** One of the recognizer's alternatives and its meaning at this call. */
type Alternative = { readonly words: string; readonly meant: Meaning };

/**
 * Interprets one utterance. How strict it is depends on what a mistake costs: hold words, and alarms that can only stop work, are
 * accepted from anybody at once; light words are accepted as a whole utterance; binding words need the talk button or the wake
 * word, and are read back. All else is chatter.
 */
export function hear({ alternatives, talk }: Utterance, context: ListeningContext): Heard {
  const { language, listening, wakeWord, waiting } = context;
  const said = alternatives.map((a) => a.trim()).filter((a) => a !== "");
  const [best = ""] = said;
  const afterWake = said.flatMap((a) => afterWakeWord(a, wakeWord) ?? []);
  const woken = afterWakeWord(best, wakeWord) !== null;
  const source: Spoken = talk ? "talk" : woken ? "wake" : "open";
  const hold = [...said, ...afterWake].find(language.isHold);
  if (hold !== undefined) return { words: hold, source, meant: { intent: { type: "hold" } }, readBack: false };
  const overheard = !woken && !talk && !asksWind(listening);
  const guesses = (woken ? afterWake : said).map((words): Alternative => {
    const meant = overheard && language.isBareLook(words) ? { notUnderstood: true as const } : language.understand(words, listening);
    return { words, meant };
  });
  const [first = NOTHING] = guesses;
  const heard = (meant: Meaning): Heard => ({ words: best, source, meant, readBack: false });
  const alarm = alarmIn(guesses, context);
  if (alarm) return { ...alarm, source, readBack: false };
  // A hold word inside another sentence, or in any alternative if none was understood, pauses work. A note may mention one, and so may a question to the guide.
  const waits =
    "notUnderstood" in first.meant
      ? said.some(language.holdsInside)
      : language.holdsInside(first.words) && !mayMentionIt(first.meant, source);
  if (waits) return heard({ intent: { type: "pause" } });
  if (woken || talk) return addressedToGuide(guesses, source, context);
  if (isLight(first, context)) return heard(first.meant);
  if (waiting && language.isNo(plain(best))) return heard({ confirm: "wrong" });
  return { words: best, leftAlone: guesses.some(({ meant }) => !("notUnderstood" in meant)) ? "wakeWord" : "chatter" };
}

/**
 * The alternative that raises an alarm: the best one, or any if the best means nothing. A wind has to be called one: a bare number
 * is a wind only where that is asked, and then it is an answer.
 */
function alarmIn(guesses: readonly Alternative[], { language, stopGustMph }: ListeningContext): Alternative | null {
  const [first = NOTHING] = guesses;
  const raises = ({ words, meant }: Alternative) =>
    onlyStops(meant, stopGustMph) && (!("wind" in meant) || "wind" in language.understand(words, NOTHING_ASKED));
  return ("notUnderstood" in first.meant ? guesses : [first]).find(raises) ?? null;
}

/** Where a wind is asked, a name of the scale is one however it is heard. */
const asksWind = (listening: Listening): boolean => answerable(listening).some(({ gate }) => expected(gate.check).expects === "wind");

const NOTHING: Alternative = { words: "", meant: { notUnderstood: true } };
/** A note, and a question to the guide, may be about a hold: "what gust do we stop at". */
const mayMentionIt = (meant: Meaning, source: Spoken): boolean =>
  ("intent" in meant && meant.intent.type === "note") || ("question" in meant && source !== "open");

/**
 * The meaning of an utterance addressed to the guide. If the alternatives disagree, the guide asks again. While a read-back is
 * waiting, "yes" is never an answer itself: a read-back of "no" would become a recorded yes.
 */
function addressedToGuide(guesses: readonly Alternative[], source: Spoken, context: ListeningContext): Heard {
  const { language, waiting, stopGustMph } = context;
  const [{ words: best } = NOTHING] = guesses;
  const heard = (meant: Meaning): Heard => ({ words: best, source, meant, readBack: false });
  if (waiting && language.isYes(plain(best))) return heard({ sayCorrect: true });
  if (waiting && language.beginsWithNo(plain(best))) return heard({ confirm: "wrong" });
  const restated = waiting ? restatedIn(best, context) : null;
  if (restated) return heard(restated);
  const understood = guesses.filter(({ meant }) => !("notUnderstood" in meant));
  const one = unanimous(understood);
  if (!one) return heard(ambiguousMeaning(understood));
  // Anything that takes effect at once must be the best alternative. Anything that is read back may be a later one, but not if
  // a better alternative that was not understood is longer: "not tied off" is not "tied off".
  const length = (words: string) => plain(words).split(" ").length;
  const cut = guesses.slice(0, guesses.indexOf(one)).some((g) => length(g.words) > length(one.words));
  const binding = isBinding(one.meant) && !onlyStops(one.meant, stopGustMph);
  if (cut || (!binding && one.words !== best)) return heard({ notUnderstood: true });
  return { ...one, source, readBack: binding };
}

/** A yes to a read-back and what was read back once more, or how it is. `null` where it is neither. */
function restatedIn(best: string, { language, listening }: ListeningContext): Meaning | null {
  const rest = language.afterYes(best);
  if (rest === null || "confirm" in language.understand(best, listening)) return null;
  const meant = language.understand(rest, listening);
  if ("intent" in meant && meant.intent.type === "answer") return { restated: meant.intent };
  return "wind" in meant || "ambiguous" in meant ? { sayCorrect: true } : null;
}

function unanimous(guesses: readonly Alternative[]): Alternative | null {
  const [first] = guesses;
  return first && guesses.every((g) => JSON.stringify(g.meant) === JSON.stringify(first.meant)) ? first : null;
}

/** If the alternatives are different numbers, the guide names them when it asks again; otherwise it was not understood. */
function ambiguousMeaning(guesses: readonly Alternative[]): Meaning {
  const values = guesses.map(({ meant }) => ("intent" in meant && meant.intent.type === "answer" ? meant.intent.value : null));
  const numbers = values.flatMap((v) => (v?.kind === "count" || v?.kind === "measure" ? [v] : []));
  const [first] = numbers;
  if (!first || numbers.length < guesses.length) return { notUnderstood: true };
  return { ambiguous: { n: [...new Set(numbers.map((v) => v.n))], unit: first.kind === "measure" ? first.unit : "count" } };
}

function isLight({ words, meant }: Alternative, { listening, attention, waiting, language }: ListeningContext): boolean {
  if ("question" in meant) return language.isBare(words);
  if ("rain" in meant || "remark" in meant) return true;
  if ("confirm" in meant) return waiting && meant.confirm === "wrong";
  if (!("intent" in meant)) return false;
  switch (meant.intent.type) {
    case "note":
      return true;
    case "next":
    case "back":
      return isLacing(listening.step) && attention === "working" && language.isBare(words);
    case "carryOn":
      return attention === "paused" && language.isBare(words);
    default:
      return false;
  }
}

/** The words after the wake word; null if it does not come first or nothing follows it. */
function afterWakeWord(said: string, wakeWord: string): string | null {
  const words = said.replace(/^[^\p{L}\p{N}]+/u, "");
  if (!plain(words).startsWith(`${wakeWord.toLowerCase()} `)) return null;
  return words.slice(wakeWord.length).replace(/^[\s,.:!-]+/, "");
}
