import { expected } from "../../install/checks/any-check.ts";
import type { Expected } from "../../install/checks/expected.ts";
import type { Unit } from "../../install/checks/units.ts";
import { LENGTHS } from "../../site/lengths.ts";
import { type Asked, answerable, type Listening } from "../listening.ts";
import { phrases } from "../phrases.ts";
import { FIXED_QUESTIONS } from "../question.ts";
import { NUMBER, type Sayable } from "../sayable.ts";
import { ADDRESSED, BARE } from "./commands.ts";
import { GATE_WORDS } from "./gate-words.ts";
import { HOLDS } from "./holds.ts";
import { BARE_QUESTIONS } from "./question-words.ts";

/** How a unit is said after a number. */
const UNIT_SAID: Readonly<Record<Unit, string>> = {
  in: "inches",
  ft: "feet",
  deg: "degrees",
  lbf: "pounds",
  turns: "turns",
  mph: "miles an hour",
};
/** Corners as they are said over a generator. */
const SPELLED: Readonly<Record<string, string>> = { A: "alpha", B: "bravo", C: "charlie", D: "delta" };
const spelled = (letters: string): string => [...letters].map((letter) => SPELLED[letter] ?? letter).join(" ");
const EDGE = /^[A-D]{2}$/;
/** A name as it is said: an edge by its letters, "reclaimedWater" in two words. */
const called = (name: string): string => (EDGE.test(name) ? spelled(name) : name.replaceAll(/(?=[A-Z])/g, " ").toLowerCase());

type Ways = { readonly [K in Expected["expects"]]: (asks: Extract<Expected, { expects: K }>, asked: Asked) => readonly string[] };
/** Ways to answer, the likeliest first. A paper's number and the counts of the truck are read out: they are no closed list. */
const ANSWERS: Ways = {
  yesNo: (_, { wordsKey }) => ["yes", "no", ...phrases(GATE_WORDS[wordsKey]?.so ?? "").filter((phrase) => phrase !== "")],
  count: (_, { gate: { check } }) => [NUMBER, `${NUMBER} of them`, ...(check.kind === "count" && check.to === 0 ? ["none"] : [])],
  measure: ({ unit }, { gate: { check } }) => [
    `${NUMBER} ${UNIT_SAID[unit]}`,
    NUMBER,
    ...(check.kind === "measure" && check.noneIsGood ? ["none"] : []),
  ],
  lengths: () => LENGTHS.map((name) => `${SPELLED[name[0]!]} to ${SPELLED[name[1]!]} ${NUMBER} feet`),
  figures: ({ names, unit }) => names.map((name) => `${called(name)} ${NUMBER}${unit === "count" ? "" : ` ${UNIT_SAID[unit]}`}`),
  each: ({ names }) => names.flatMap((name) => [`${called(name)} yes`, `${called(name)} no`]),
  wind: () => [`${NUMBER} gusting ${NUMBER}`, `${NUMBER} no gusts`],
  counts: () => [],
  document: () => [],
  nothing: () => [],
};

/** Longer ways are for whoever talks on; a list of them is endless. */
const MAX_WORDS = 5;
const flat = (expansions: Readonly<Record<string, string>>): string[] =>
  Object.values(expansions)
    .flatMap(phrases)
    .filter((phrase) => phrase.split(" ").length <= MAX_WORDS);
const MAIN_ORDERS = ["next", "back one", "make safe", "carry on", "correct", "wrong"];
const ORDERS = [...new Set([...MAIN_ORDERS, ...flat(BARE), ...flat(ADDRESSED)])];
/** One way of each first. */
const QUESTIONS = [
  ...new Set([
    ...FIXED_QUESTIONS.map((asks) => phrases(BARE_QUESTIONS[asks])[0]!),
    ...FIXED_QUESTIONS.flatMap((asks) => phrases(BARE_QUESTIONS[asks])),
  ]),
];
const HOLD_WORDS = ["hold", "stop", "hold it", "everybody stop", "freeze", ...flat(HOLDS)];

/**
 * What may be said where a job stands, from the same definitions that it is understood by.
 *
 * @example sayableAt({ step: null, asks: null }).holds[0] // "hold"
 */
export function sayableAt(listening: Listening): Sayable {
  const answers = answerable(listening).flatMap((asked) => {
    const asks = expected(asked.gate.check);
    // TypeScript cannot tell that each kind is answered in the ways that it is listed under.
    return (ANSWERS[asks.expects] as (asks: Expected, asked: Asked) => readonly string[])(asks, asked);
  });
  return {
    answers: [...new Set([...answers, ...(answers.length > 0 ? ["don't know"] : [])])],
    orders: ORDERS,
    questions: QUESTIONS,
    holds: HOLD_WORDS,
  };
}
