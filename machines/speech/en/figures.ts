import type { Expected } from "../../install/checks/expected.ts";
import type { Unit } from "../../install/checks/units.ts";
import { own } from "../../lookup/own.ts";
import type { Meaning } from "../meanings.ts";
import type { AnswerParser } from "./asked.ts";
import { vocabularyOf, withoutPhrases } from "./gate-words.ts";
import { withoutOpening } from "./lead-in.ts";
import { namesIn } from "./names-in.ts";
import { numberInUnit } from "./number-in-unit.ts";
import { numberTexts } from "./number-list.ts";
import { readQuantity } from "./quantities.ts";
import { inFull, NEUTRAL, wordsOf } from "./talk.ts";

type Asks = Extract<Expected, { expects: "figures" }>;

/** What the figures are called; the others are called what they are named. */
const CALLED: Readonly<Record<string, string>> = {
  stakes: "stakes?(?! plates?)",
  plates: "(?:stake |base )?plates?",
  thinnest: "(?:the )?thinnest(?: one(?= is))?|thick",
  sidePole: "(?:to )?(?:the )?(?:nearest |closest )?side(?: pole)?",
  insidePole: "(?:to )?(?:the )?(?:nearest |closest )?(?:inside|center|quarter)(?: pole)?",
  softest: "(?:the )?softest(?: spot| one(?= is))?|(?:the )?soft spot",
  // "One second" and "a third" name nothing.
  second: "(?<!\\b(?:a|one|1) )(?:the )?second(?: (?:pull|stake|spot)| one(?= is))?",
  third: "(?<!\\b(?:a|one|1) )(?:the )?third(?: (?:pull|stake|spot)| one(?= is))?",
  shortest: "(?:the )?shortest(?: one(?= is))?|long",
};
/** What may stand between a number and its name, or the next pair. */
const AROUND =
  /^[\s,;:]*(?:(?:and|then|on|at|is|has|got|are|was|only|just|along|reads?|leans?|leaning|off)[\s,;:]+)*|[\s,;:]*(?:(?<![\p{L}])(?:and|then|on|at|along|for)[\s,;:]*)*$/giu;
/** What a stake did when the gauge was read. "Didn't hold" stays, and is not understood. */
const READ_WHEN = /\b(?:held|pulled|moved|slipped|let go|gave(?: way)?|started (?:to move|moving))\b/giu;
const AWAY = /\s+(?:out|outwards?|away(?: from the tent)?|off(?: plumb)?|sticking up|rings?|marks?|good(?: stations?)?|stations?)$/i;
const METRIC = /\b(?:[cm]m|m|(?:centi|milli)?met(?:re|er)s?|kn|newtons?|kph|km\/h|knots?)\b/i;

/**
 * Several numbers of one unit, by name or all of them in the order asked. By name some may be missing: they are asked for
 * next. A number that cannot be told from another, or has no place, makes all of it not understood.
 */
export const parseFigures: AnswerParser<"figures"> = (heard, asks, { wordsKey }) => {
  const { names, unit } = asks;
  const said = unit === "lbf" ? inFigures(heard).replaceAll(READ_WHEN, " ").replaceAll(/\s+/g, " ").trim() : inFigures(heard);
  const ofAll = same(said, asks, wordsKey);
  if (ofAll !== null) return ofAll;
  const named = namesIn(said, names, (name) => own(CALLED, name) ?? name);
  const pairs = named.each.length > 0 ? byName(named) : inOrder(said, names);
  if (pairs === null || new Set(pairs.map(({ name }) => name)).size < pairs.length) return { notUnderstood: true };
  const given = pairs.map(({ text }) => text.replace(AWAY, ""));
  if (mixesUnits(given, unit)) return { notUnderstood: true };
  const read = given.map((text) => figure(text, unit));
  const trouble = read.find((r) => typeof r !== "number");
  if (trouble !== undefined) return trouble as Meaning;
  return { kind: "figures", unit, n: Object.fromEntries(pairs.map(({ name }, i) => [name, read[i] as number])) };
};

/** Without what comes before figures, and what is missing after them. */
const inFigures = (said: string): string =>
  withoutOpening(said)
    .replace(/^(?:(?:we|i)(?:'ve)? (?:got|have)|it is|there are|they are(?! all\b)) /i, "")
    .replace(/,\s+\S+ (?:is |are )?(?:missing|short|to go)$/i, "");

const OF_ALL =
  /^(?:they are |it is )?(?:all|each)(?: (?:of them|four|is|are|at))? (.+)$|^(.+?) (?:on|at) (?:all(?: of them| four)?|each(?: edge| one)?|every edge)$/i;
/** One figure for every edge, or the words of the gate that say there is nothing to measure. */
function same(said: string, { names, unit }: Asks, wordsKey: string): ReturnType<AnswerParser<"figures">> | null {
  if (!names.every((name) => /^[A-D]{2}$/.test(name))) return null;
  const words = wordsOf(inFull(said));
  const each = (n: number) => ({ kind: "figures", unit, n: Object.fromEntries(names.map((name) => [name, n])) }) as const;
  if (withoutPhrases(words, vocabularyOf(wordsKey).so)?.every((word) => NEUTRAL.has(word)) && words.includes("all")) return each(0);
  const found = OF_ALL.exec(said);
  const text = found?.[1] ?? found?.[2];
  if (text === undefined) return null;
  const n = figure(text.replace(AWAY, ""), unit);
  return typeof n === "number" ? each(n) : "notUnderstood" in n ? null : n;
}

type Pair = { readonly name: string; readonly text: string };

/** All names before their numbers, or all after. */
function byName({ before, each }: ReturnType<typeof namesIn>): readonly Pair[] | null {
  const said = [before, ...each.map(({ after }) => after)];
  const texts = said.map((text) => text.replaceAll(AROUND, "").trim());
  const first = texts[0] === "";
  if (first === (texts.at(-1) === "")) return null;
  const at = (i: number) => (first ? i + 1 : i);
  // "AB and CD eleven", "eleven on AB and CD": with nothing but "and" between them, what stands beside one goes for both.
  const beside = (i: number): string => (/^\s*and\s*$/i.test(said[at(i)] ?? "") ? beside(first ? i + 1 : i - 1) : (texts[at(i)] ?? ""));
  return each.map(({ name }, i) => ({ name, text: beside(i) }));
}

function inOrder(said: string, names: readonly string[]): readonly Pair[] | null {
  const texts = numberTexts(said, names.length);
  return texts && names.map((name, i) => ({ name, text: texts[i]! }));
}

/** One figure. Nothing is counted in parts or below zero, and only a lean can be. */
function figure(text: string, unit: Asks["unit"]): number | Meaning {
  const read = numberInUnit(text, unit);
  if (!("n" in read)) return read;
  const real = unit === "count" ? Number.isSafeInteger(read.n) && read.n >= 0 : read.n >= 0 || unit === "deg";
  return real ? read.n : { notUnderstood: true };
}

/** Whether a unit that is not the one asked was said of some numbers and not of others: it may have been meant of all. */
function mixesUnits(texts: readonly string[], unit: Asks["unit"]): boolean {
  const units = texts.map((text) => ({ text, said: new Set(readQuantity(text).map((r) => r.unit)) }));
  const other = units.some(({ text, said }) => METRIC.test(text) || (said.size > 0 && !said.has(null) && !said.has(unit as Unit)));
  return other && units.some(({ said }) => said.size === 1 && said.has(null));
}
