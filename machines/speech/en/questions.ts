import { EDGES, type EdgeName, type StationKind } from "../../tent/types.ts";
import { inUnit } from "../quantity.ts";
import type { Countable, Question } from "../question.ts";
import { asLetters } from "./letters.ts";
import { readNumber } from "./numbers.ts";

const FIXED_QUESTIONS: readonly (readonly [RegExp, Question])[] = [
  [/^(?:again|say again|say it again|say that again|where am i|where are we)$/, { asks: "again" }],
  [/^(?:why|why is that|what for)$/, { asks: "why" }],
  [
    /^(?:how|how to|show me how|how (?:do|would|should) (?:i|we|you) do (?:it|that|this)|how(?:'?s| is) (?:it|that|this) done)$/,
    { asks: "how" },
  ],
  [/^(?:what'?s|what is) left$/, { asks: "whatsLeft" }],
];
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
  [/pole|station/, "sidePoles"],
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
export function parseQuestion(words: string, said: string): Question | null {
  const whole = FIXED_QUESTIONS.find(([pattern]) => pattern.test(words));
  if (whole) return whole[1];
  if (HOW_MANY.test(said)) return howMany(said);
  if (WHERE.test(said)) return where(said);
  const square = RIGHT_ANGLE.exec(said);
  if (square) return { asks: "rightAngle", ...tape(square[1]?.trim() ?? "") };
  return WHICH_PIECE.test(said) ? { asks: "whichPiece" } : null;
}

function howMany(words: string): Question {
  const about = asLetters(words).toLowerCase();
  if (/\bto the (?:next )?ring\b/.test(about)) return { asks: "howFarToTheRing" };
  const edge = EDGES.find((name) => named(name).test(about)) ?? null;
  // "The AB side" is an edge, and no side pole.
  const kinds = edge ? about.replace(new RegExp(`${named(edge).source} side`, "i"), "") : about;
  return {
    asks: "howMany",
    what: COUNTABLES.find(([pattern]) => pattern.test(about))?.[1] ?? null,
    edge,
    kind: KINDS.find(([pattern]) => pattern.test(kinds))?.[1] ?? null,
    words,
  };
}

const named = (edge: EdgeName): RegExp => new RegExp(`\\b${edge[0]}[ -]?${edge[1]}\\b`, "i");

function where(words: string): Question {
  if (/\bnext\b/i.test(words)) return { asks: "whereNext" };
  return { asks: "where", places: placesIn(words), words };
}

/** Words that may be places of the plan: "BC3", and as it is said, "B C 3" and "Bravo Charlie twenty-one". */
function placesIn(words: string): readonly string[] {
  const joined = asLetters(words)
    .replaceAll(/\b([a-d])[ -]([a-d])\b/gi, "$1$2")
    .replaceAll(/\b([a-d]{1,2}|q)[ -](\d+|[a-z]+)([ -][a-z]+)?\b/gi, (whole, at: string, number: string, more = "") => {
      const both = readNumber(`${number}${more}`)?.n;
      const n = both ?? readNumber(number)?.n;
      return n === undefined ? whole : `${at}${n}${both === undefined ? more : ""}`;
    });
  return joined.toUpperCase().match(/[A-Z]+-?\d*/g) ?? [];
}

function tape(words: string): { tapeFt: number | "unknown" | null; words: string } {
  if (words === "") return { tapeFt: null, words };
  const said = readNumber(words);
  return { tapeFt: (said && inUnit(said, "ft")) ?? "unknown", words };
}
