import { toEighthIn, toMm } from "../../../machines/tent/tape.ts";
import type { Units } from "../../drawing/units.ts";
import { feetInches } from "./names.ts";

/** A length in feet as a tape is read: to 1/8 in, or in whole millimeters without the unit. Rounded once, from the length itself. */
export const tapeText = (ft: number, units: Units): string => (units === "mm" ? String(toMm(ft)) : feetInches(toEighthIn(ft)));
