import type { Arc, WordGraph } from "../word-graph.ts";

const list = (words: string): readonly string[] => words.split(" ");
const ONES = list("one two three four five six seven eight nine");
const TEENS = list("ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen");
const TENS = list("twenty thirty forty fifty sixty seventy eighty ninety");

/**
 * Numbers as they are said at a tent, up to 999 and a fraction: "thirty-six", "a hundred and twelve", "one twenty eight", "four and a
 * half", "six point five". What could be two numbers is for the grammar to ask about.
 */
export const numberGraph: WordGraph = graph();

function graph(): WordGraph {
  const arcs: Arc[] = [];
  let states = 0;
  const state = () => states++;
  const add = (from: number, to: number, words: readonly string[]) => arcs.push(...words.map((word) => ({ from, to, word })));
  const [start, whole, end] = [state(), state(), state()];
  const underHundred = (from: number, to: number) => {
    const tens = state();
    add(from, to, [...ONES, ...TEENS, ...TENS]);
    add(from, tens, TENS);
    add(tens, to, ONES);
  };
  underHundred(start, whole);
  add(start, whole, ["zero"]);
  // A hundred, and what comes after it.
  const [count, hundred, and] = [state(), state(), state()];
  add(start, count, [...ONES, "a"]);
  add(count, hundred, ["hundred"]);
  add(hundred, whole, [""]);
  add(hundred, and, ["and", ""]);
  underHundred(and, whole);
  // "One twenty eight", "one oh four".
  const [pair, oh] = [state(), state()];
  add(start, pair, ONES);
  const tens = state();
  add(pair, whole, [...TEENS, ...TENS]);
  add(pair, tens, TENS);
  add(tens, whole, ONES);
  add(pair, oh, ["oh"]);
  add(oh, whole, ONES);
  // Fractions and tenths.
  const [part, article, three, point] = [state(), state(), state(), state()];
  add(whole, end, [""]);
  add(whole, part, ["and"]);
  add(part, article, ["a"]);
  add(article, end, ["half", "quarter"]);
  add(part, three, ["three"]);
  add(three, end, ["quarters"]);
  add(whole, point, ["point"]);
  add(point, end, [...ONES, "oh"]);
  return { states, start, end, arcs };
}
