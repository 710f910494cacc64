import { EDGES, type EdgeName, type StationKind } from "../../tent/types.ts";
import { phrases } from "../phrases.ts";
import { plain } from "../plain.ts";
import { inUnit } from "../quantity.ts";
import { type Countable, FIXED_QUESTIONS, type FixedQuestion, type Question } from "../question.ts";
import { itemsCalled } from "./kit-counts.ts";
import { asLetters } from "./letters.ts";
import { readNumber } from "./numbers.ts";
import { ABOUT, ADDRESSED_QUESTIONS, BARE_QUESTIONS } from "./question-words.ts";
import { clausesOf, inFull, LEAD_WORDS } from "./talk.ts";

/** Any question why, whatever it is of: it is answered with why this call is made. */
const WHY = /^(?:why|how come)\b/;
/** Any question how something is done here. */
const HOW = /^how (?:do|would|should|does) (?:i|we|you|one)\b/;
/** More words than anybody uses to ask it. */
const MAX_WORDS = 9;
const said = (expansions: Readonly<Record<FixedQuestion, string>>) =>
  new Map(FIXED_QUESTIONS.flatMap((asks) => phrases(expansions[asks]).map((phrase) => [inFull(phrase), asks] as const)));
const [BARE, ADDRESSED] = [said(BARE_QUESTIONS), said(ADDRESSED_QUESTIONS)];

const RIGHT_ANGLE = /^(?:three,? four,? five|3[ ,-]*4[ ,-]*5|right angle|square corner)(?:,? (?:with|on|by) (?:an? )?(.+?)(?: tape)?)?$/is;
const HOW_MANY = /^how many .+$/is;
const WHERE = /^where\b.*$/is;
const WHICH_PIECE = /^(?:which|what) (?:piece|edge|seam)\b.*$/is;

/** The first pattern that matches decides what is counted. */
const COUNTABLES: readonly (readonly [RegExp, Countable])[] = [
  [/stake(?!\s?plate)/, "stakes"],
  [/plate/, "plates"],
  [/strap/, "straps"],
  [/ring/, "rings"],
  [/quarter/, "quarterPoles"],
  [/cent(?:re|er)/, "centerPoles"],
  [/pole/, "sidePoles"],
  [/station|mark|dot/, "stations"],
  [/piece/, "pieces"],
  [/seam(?! end)/, "seams"],
];
const KINDS: readonly (readonly [RegExp, StationKind])[] = [
  [/corner/, "corner"],
  [/seam end/, "seamEnd"],
  [/side/, "side"],
];

/**
 * Parses a question. `words` are normalized with `plain`; `said` are the original words. `null` if it is not a question that the
 * plan can answer.
 *
 * @example parseQuestion("what's left", "What's left") // { asks: "whatsLeft" }
 */
export function parseQuestion(words: string, heard: string): Question | null {
  const asks = fixed(heard);
  if (asks) return { asks };
  // What is said before it says nothing: "okay, how many stakes".
  const bare = heard.replace(/^(?:(?:okay|ok|uh|um|so|hey|and|sorry),? )+/i, "");
  const about = words.split(" ").length > MAX_WORDS ? undefined : ABOUT.find(([pattern]) => pattern.test(inFull(bare)))?.[1];
  if (about) return { asks: about };
  // What names nothing of the plan is talk: "how many beers", "where's Pia".
  if (HOW_MANY.test(bare)) return named(howMany(bare));
  if (WHERE.test(bare)) return named(where(bare));
  const square = RIGHT_ANGLE.exec(bare);
  if (square) return { asks: "rightAngle", ...tape(square[1]?.trim() ?? "") };
  if (WHICH_PIECE.test(bare)) return { asks: "whichPiece" };
  if (words.split(" ").length > MAX_WORDS) return null;
  if (WHY.test(inFull(bare))) return { asks: "why" };
  return HOW.test(inFull(bare)) ? { asks: "how" } : null;
}

/** A question that names something of the plan or of this call. */
function named(question: Question): Question | null {
  if (question.asks === "howMany") return question.what === null && question.edge === null && !question.here ? null : question;
  return question.asks === "where" && question.places.length === 0 && question.items.length === 0 ? null : question;
}

/** The question that is asked in so many words, alone or after words that say nothing. */
function fixed(heard: string): FixedQuestion | null {
  const clauses = [inFull(heard), ...clausesOf(heard).slice(-1)];
  for (const clause of clauses.flatMap((one) => [one, withoutLead(one)])) {
    const found = BARE.get(clause) ?? ADDRESSED.get(clause);
    if (found) return found;
  }
  return null;
}
const withoutLead = (clause: string): string => {
  const [first = "", ...rest] = clause.split(" ");
  return LEAD_WORDS.has(first) ? withoutLead(rest.join(" ")) : clause;
};

/**
 * Whether words are a question as it is taken from an open microphone: one that is asked in so many words, or that names something of
 * the plan. "How many beers" is talk.
 *
 * @example isBareQuestion("what's left") // true
 */
export function isBareQuestion(heard: string): boolean {
  if (BARE.has(inFull(heard))) return true;
  const question = parseQuestion(plain(heard), heard);
  if (question?.asks === "howMany") return question.what !== null;
  if (question?.asks === "where") return question.places.length > 0;
  return question?.asks === "rightAngle" || (question?.asks === "whichPiece" && WHICH_PIECE.test(heard));
}

function howMany(words: string): Question {
  const about = asLetters(words).toLowerCase();
  if (/\bto the (?:next )?ring\b/.test(about)) return { asks: "howFarToTheRing" };
  const here = /\b(?:here|at this|am i looking for|are we looking for)\b/.test(about);
  const edge = EDGES.find((name) => edgeNamed(name).test(about)) ?? null;
  // "The AB side" is an edge, and no side pole.
  const kinds = edge ? about.replace(new RegExp(`${edgeNamed(edge).source} side`, "i"), "") : about;
  return {
    asks: "howMany",
    // How many on an edge, and nothing named: its marks.
    what: COUNTABLES.find(([pattern]) => pattern.test(about))?.[1] ?? (edge === null ? null : "stations"),
    edge,
    kind: KINDS.find(([pattern]) => pattern.test(kinds))?.[1] ?? null,
    here,
    words,
  };
}

const edgeNamed = (edge: EdgeName): RegExp => new RegExp(`\\b${edge[0]}[ -]?${edge[1]}\\b`, "i");

function where(words: string): Question {
  if (/\bnext\b/i.test(words)) return { asks: "whereNext" };
  const thing = inFull(words)
    .replace(/^where (?:is|are|do|does) (?:the |our |a )?/, "")
    .replace(/ (?:go|belong|at)$/, "");
  return { asks: "where", places: placesIn(words), items: itemsCalled(thing), words };
}

/** A station, an edge, a corner, a pole. */
const PLACE = /^(?:[A-D]{1,2}\d*|[CQ]\d+|S\d+)$/;
/** Words that may be places of the plan: "BC3", and as it is said, "B C 3" and "Bravo Charlie twenty-one". */
function placesIn(words: string): readonly string[] {
  const joined = asLetters(words)
    // "A ladder" is no corner.
    .replaceAll(/\ba (?=[a-z]{2})/g, "")
    .replaceAll(/\b([a-d])[ -]([a-d])\b/gi, "$1$2")
    .replaceAll(/\b([a-d]{1,2}|q)[ -](\d+|[a-z]+)([ -][a-z]+)?\b/gi, (whole, at: string, number: string, more = "") => {
      const both = readNumber(`${number}${more}`)?.n;
      const n = both ?? readNumber(number)?.n;
      return n === undefined ? whole : `${at}${n}${both === undefined ? more : ""}`;
    });
  return (joined.toUpperCase().match(/[A-Z]+-?\d*/g) ?? []).filter((name) => PLACE.test(name));
}

function tape(words: string): { tapeFt: number | "unknown" | null; words: string } {
  if (words === "") return { tapeFt: null, words };
  const said = readNumber(words);
  return { tapeFt: (said && inUnit(said, "ft")) ?? "unknown", words };
}
