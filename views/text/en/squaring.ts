import type { LengthName } from "../../../machines/site/lengths.ts";
import type { Suspect } from "../../../machines/site/misread.ts";
import type { LengthComparison, Move, Squared } from "../../../machines/site/squaring.ts";
import { feetInches, inches } from "./names.ts";

/** A length by its ends, as it is said: AB is "A to B". */
export const lengthName = (name: string): string => `${name[0]} to ${name[1]}`;
const listed = (names: readonly LengthName[]) => names.map(lengthName).join(", ");

/** What measured lengths come to, and which marks to move, which way and how far. */
export function squaredText(found: Squared): string {
  switch (found.is) {
    case "notEnough":
      return `Still to measure: ${listed(found.missing)}. Five lengths fix the corners; six show a misread.`;
    case "noTriangle":
      return `${capital(lengthName(found.longest))} is longer than ${found.others.map(lengthName).join(" and ")} together: no triangle does that. ${again(found.suspect)}`;
    case "noFigure":
      return `No four corners A B C D have these lengths. ${again(found.suspect)}`;
    case "misread":
      return `The six do not agree with each other. ${again(found.suspect)}`;
    case "square":
      return found.checked ? "Square, and the six agree." : `Square. ${FIVE}`;
    case "out":
      return `Not square. ${moved(found.moves, found.lengths)}${found.checked ? "" : ` ${FIVE}`}`;
  }
}

const FIVE = "Five lengths cannot show a misread: measure the sixth if anything can be reached.";

const again = (suspect: Suspect | null): string =>
  suspect === null
    ? "None of them stands out. Measure them all again."
    : `If the marks are near their places, it is ${lengthName(suspect.name)}: ${feetInches(suspect.readFt)} read, about ${feetInches(toInch(suspect.likelyFt))} likely. Measure that one again.`;

/** A guess is no finer than an inch. */
const toInch = (ft: number) => Math.round(ft * 12) / 12;

function moved(moves: readonly Move[], lengths: readonly LengthComparison[]): string {
  if (moves.length > 0) return `Hold A and the line A to B. ${moves.map(moveText).join(" ")}`;
  const off = lengths.filter((l) => !l.good).map((l) => `${lengthName(l.name)} is ${feetInches(l.ft)}, wanted ${feetInches(l.wantFt)}`);
  return `The marks fit within what a tape can show, but ${off.join(", ")}. Measure again.`;
}

/** The mark that a mark's own end edge runs to. */
const BESIDE = { B: "A", C: "B", D: "A" } as const;

/** One way of a mark, as it stands beside its arrow. */
export const wayText = (corner: Move["corner"], way: "across" | "along", byIn: number): string =>
  (corner === "B" ? onBaseline(byIn) : way === "across" ? across(corner, byIn) : out(corner, byIn)) ?? "";

/** One mark, which way and how far. */
export function moveText({ corner, acrossIn, alongIn }: Move): string {
  const parts = corner === "B" ? [`${onBaseline(alongIn)}, along the baseline`] : [across(corner, acrossIn), out(corner, alongIn)];
  return `${corner}: ${parts.filter((p) => p !== null).join(" and ")}.`;
}

const onBaseline = (alongIn: number) => `${inches(Math.abs(alongIn))} ${alongIn > 0 ? "away from A" : "toward A"}`;
const across = (corner: "C" | "D", byIn: number) =>
  byIn === 0 ? null : `${inches(Math.abs(byIn))} ${byIn < 0 ? "toward" : "away from"} ${BESIDE[corner]}'s side`;
/** C's end is the far one, D's the near one; outward is away from the tent. */
const out = (corner: "C" | "D", byIn: number) =>
  byIn === 0 ? null : `${inches(Math.abs(byIn))} ${byIn > 0 === (corner === "C") ? "outward" : "inward"}`;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Words of the form that takes lengths, one at a time. */
export const lengths = {
  caption: "Corner to corner",
  which: "Which length is this?",
  from: "Marks",
  wanted: "Wanted",
  read: "Off the tape",
  within: (tolerance: string) => `± ${tolerance}`,
  notYet: "–",
  off: (read: string, byIn: number) => `${read}: ${inches(Math.abs(byIn))} ${byIn > 0 ? "long" : "short"}`,
  afresh: "Start over",
  list: "Open the list",
};
