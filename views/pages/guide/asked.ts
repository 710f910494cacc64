import type { Words } from "../../text/words.ts";
import type { GateState } from "./state.ts";

/** One of the things that a gate asks by name, put in one at a time. */
export type Item = {
  readonly name: string;
  /** Its name as it is asked for, with what is wanted where the crew sets it out. */
  readonly ask: string;
  /** What was given, in words; `null` where nothing was. */
  readonly given: string | null;
  readonly good: boolean;
};

/** What is asked of a gate now: one of its items, or the gate itself (`item` null); `settled` where what was given is not good: that is looked at first. */
export type Asked = { readonly item: Item | null; readonly no: number; readonly of: number; readonly settled: boolean };

/** An item, or the gate itself, that somebody asks to answer: it counts for as long as the answer is the one that they saw. */
export const pickOf = (gate: Pick<GateState, "answered">, name: string): string => `${name}.${gate.answered}`;
const ITSELF = "it";
/** The gate itself, answered once more. */
export const pickIt = (gate: Pick<GateState, "answered">): string => pickOf(gate, ITSELF);

/** That there is none, before it counts. */
const NONE = "none";
export const pickNone = (gate: Pick<GateState, "answered">): string => pickOf(gate, NONE);
export const isNonePicked = (gate: GateState, pick: string | null | undefined): boolean => gate.none !== null && pick === pickNone(gate);

/** Whether "none" is an answer to what a tile asks. */
export const takesNone = (tile: GateState["tile"]): boolean =>
  tile.input === "number" && tile.choices.some(({ value }) => value.kind === "none");

/** Whether a pick is one of this gate as it stands, and of what; `null` where it is none. */
export function picked(gate: GateState, pick: string | null | undefined): string | null {
  const name = pick?.endsWith(`.${gate.answered}`) ? pick.slice(0, pick.lastIndexOf(".")) : null;
  return name === null || name === ITSELF || namesOf(gate).includes(name) ? name : null;
}

const namesOf = ({ tile }: GateState): string[] => ("rows" in tile ? tile.rows.map(({ name }) => name) : takesNone(tile) ? [NONE] : []);

/** All that a gate asks by name, in its order; none where it asks one thing. */
export function itemsOf({ tile }: GateState, words: Words): Item[] {
  const { feetInches, guide, lengthName, lengths, partName } = words;
  switch (tile.input) {
    case "readings":
      return tile.rows.map(({ name, wantFt, withinIn, readFt, offIn, good }) => ({
        name,
        ask: guide.wantedLength(lengthName(name), feetInches(wantFt), withinIn),
        given: readFt === null ? null : good ? feetInches(readFt) : lengths.off(feetInches(readFt), offIn),
        good,
      }));
    case "figures":
      return tile.rows.map(({ name, given, good }) => ({
        name,
        ask: partName(name),
        given: given === null ? null : words.figureText(given, tile.unit),
        good,
      }));
    case "each":
      return tile.rows.map(({ name, yes }) => ({
        name,
        ask: partName(name),
        given: yes === null ? null : yes ? guide.yes : guide.no,
        good: yes === true,
      }));
    default:
      return [];
  }
}

/** Which item is put in now: the one picked, the next that is missing, else one that is not good. */
export function askedNow(gate: GateState, pick: string | null | undefined, words: Words): Asked {
  const items = itemsOf(gate, words);
  const name = picked(gate, pick) ?? (gate.tile.input === "readings" ? gate.tile.next : null);
  const item = [(i: Item) => i.name === name, (i: Item) => i.given === null, (i: Item) => !i.good, () => true]
    .map((is) => items.find(is))
    .find((found) => found !== undefined);
  const settled = items.length > 0 && gate.status === "outOfLimit" && picked(gate, pick) === null;
  return { item: item ?? null, no: item ? items.indexOf(item) + 1 : 0, of: items.length, settled };
}
