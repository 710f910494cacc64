import type { FarLength, FarOff } from "../../../machines/site/far-off.ts";
import type { LengthName } from "../../../machines/site/lengths.ts";
import type { Suspect } from "../../../machines/site/misread.ts";
import type { LengthComparison, Move, Squared } from "../../../machines/site/squaring.ts";
import { CORNERS } from "../../../machines/tent/types.ts";
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
      return `${capital(lengthName(found.longest))} is longer than ${found.others.map(lengthName).join(" and ")} together: no triangle does that. ${found.far ? farText(found.far) : again(found.suspects)}`;
    case "noFigure":
      return `No four corners A B C D have these lengths. ${again(found.suspects)}`;
    case "misread":
      return `The six do not agree with each other. ${again(found.suspects)}`;
    case "farOff":
      return `These are nowhere near. ${farText(found.far)}`;
    case "square":
      return found.checked ? "Square, and the six agree." : `Square. ${FIVE}`;
    case "out":
      return found.suspects.length > 0
        ? `Not square, or misread. ${first(found.suspects)} If it reads the same: ${moved(found.moves, found.lengths)}`
        : `Not square. ${moved(found.moves, found.lengths)}${found.checked ? "" : ` ${FIVE}`}`;
  }
}

const FIVE = "Five lengths cannot show a misread: measure the sixth if anything can be reached.";

/** What the lengths may be instead, where they are far from what is wanted. */
function farText(far: FarOff): string {
  switch (far.is) {
    case "units":
      return `Names or units? Read as ${UNIT[far.unit]}, they fit. Read feet and inches.`;
    case "swapped":
      return `Names or units? ${capital(lengthName(far.names[0]))} and ${lengthName(far.names[1])} look swapped. Look at the corners, and enter them again.`;
    case "corners":
      return `Names or units? They fit with other corners: ${CORNERS.filter((c) => far.are[c] !== c)
        .map((c) => `your ${c} is ${far.are[c]}`)
        .join(", ")}. A and B are the baseline, C and D go on clockwise.`;
    case "unknown":
      return `Names or units? Farthest off: ${far.lengths.slice(0, MAX_FAR).map(farLength).join("; ")}. No unit and no other naming fits. Look at the corners, and measure all again.`;
  }
}
/** So many are heard in one breath. */
const MAX_FAR = 3;
const farLength = ({ name, readFt, wantFt }: FarLength): string =>
  `${lengthName(name)}, ${feetInches(readFt)} read, ${feetInches(toInch(wantFt))} wanted`;
const UNIT = { m: "meters", in: "inches", yd: "yards" } as const;

/** What was likely there instead, of each that may have been misread. */
const suspected = ({ name, readFt, likelyFt }: Suspect): string =>
  `${lengthName(name)}: ${feetInches(readFt)} read, about ${feetInches(toInch(likelyFt))} likely`;

/** What is measured again, the likeliest first. */
const first = (suspects: readonly Suspect[]): string => `Measure ${suspects.map(suspected).join("; or ")}, again first.`;

function again(suspects: readonly Suspect[]): string {
  if (suspects.length === 0) return "None of them stands out. Measure them all again.";
  return `If the marks are near their places, it is ${suspects.map(suspected).join("; or ")}. Measure ${suspects.length > 1 ? "those two" : "that one"} again.`;
}

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

/** Two feet and more in feet and inches: nobody counts off 720 inches. */
export const far = (byIn: number): string => (Math.abs(byIn) < 24 ? inches(Math.abs(byIn)) : feetInches(Math.abs(byIn) / 12));
const onBaseline = (alongIn: number) => `${far(alongIn)} ${alongIn > 0 ? "away from A" : "toward A"}`;
const across = (corner: "C" | "D", byIn: number) =>
  byIn === 0 ? null : `${far(byIn)} ${byIn < 0 ? "toward" : "away from"} ${BESIDE[corner]}`;
/** C's end is the far one, D's the near one; outward is away from the tent. */
const out = (corner: "C" | "D", byIn: number) =>
  byIn === 0 ? null : `${far(byIn)} ${byIn > 0 === (corner === "C") ? "outward" : "inward"}`;
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
  off: (read: string, byIn: number) => `${read}: ${far(byIn)} ${byIn > 0 ? "long" : "short"}`,
  afresh: "Start over",
  list: "Open the list",
};
