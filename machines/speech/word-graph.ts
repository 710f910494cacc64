import { NUMBER } from "./sayable.ts";

/** A way from one state to another by one word; by none where the word is empty. */
export type Arc = { readonly from: number; readonly to: number; readonly word: string };
/** All that may be said, as an engine of its own is told it: paths of words from `start` to `end`. States are counted from 0. */
export type WordGraph = { readonly states: number; readonly start: number; readonly end: number; readonly arcs: readonly Arc[] };

/**
 * The graph of phrases. What begins with the same words goes the same way as far as it does: an engine has the less to try. Where a
 * number stands in one, the graph of numbers does.
 *
 * @example wordGraph(["back one", "back"], { states: 0, start: 0, end: 0, arcs: [] }).arcs.filter(({ word }) => word === "back").length // 1
 */
export function wordGraph(phrases: readonly string[], numbers: WordGraph): WordGraph {
  const [start, end] = [0, 1];
  const arcs: Arc[] = [];
  let states = 2;
  const next = new Map<string, number>();
  const after = (from: number, word: string): number => {
    const way = `${from} ${word}`;
    const known = next.get(way);
    if (known !== undefined) return known;
    const to = states++;
    next.set(way, to);
    if (word !== NUMBER) arcs.push({ from, to, word });
    else {
      const offset = states;
      states += numbers.states;
      arcs.push(...numbers.arcs.map((arc) => ({ from: arc.from + offset, to: arc.to + offset, word: arc.word })));
      arcs.push({ from, to: numbers.start + offset, word: "" }, { from: numbers.end + offset, to, word: "" });
    }
    return to;
  };
  for (const phrase of new Set(phrases)) arcs.push({ from: phrase.split(" ").reduce(after, start), to: end, word: "" });
  return { states, start, end, arcs };
}

/** Every word of a graph, once. */
export const wordsIn = ({ arcs }: WordGraph): readonly string[] => [...new Set(arcs.map(({ word }) => word))].filter((word) => word !== "");

/** Whether a graph has a path that is made of these words. */
export function accepts({ start, end, arcs }: WordGraph, words: readonly string[]): boolean {
  const from = new Map<number, Arc[]>();
  for (const arc of arcs) from.set(arc.from, [...(from.get(arc.from) ?? []), arc]);
  const reached = (states: ReadonlySet<number>): Set<number> => {
    const all = new Set(states);
    for (const state of all) for (const { word, to } of from.get(state) ?? []) if (word === "") all.add(to);
    return all;
  };
  let at = reached(new Set([start]));
  for (const said of words)
    at = reached(new Set([...at].flatMap((state) => (from.get(state) ?? []).filter(({ word }) => word === said).map(({ to }) => to))));
  return at.has(end);
}
