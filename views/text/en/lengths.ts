import { toEighthIn, toMm } from "../../../machines/tent/tape.ts";
import { feetInches } from "./names.ts";

/** What lengths are written in: feet and inches, or whole millimeters. */
export type Units = "ft" | "mm";
export const UNITS: readonly Units[] = ["ft", "mm"];

/** A length in feet as a tape is read: to 1/8 in, or in whole millimeters without the unit. Rounded once, from the length itself. */
export const tapeText = (ft: number, units: Units): string => (units === "mm" ? String(toMm(ft)) : feetInches(toEighthIn(ft)));
