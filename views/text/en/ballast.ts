import type { Instead, Reason } from "../../../machines/loads/verdict.ts";
import { loads } from "./loads.ts";
import { number } from "./names.ts";

const pounds = (lb: number): string => `${number(lb)} lb`;

const INSTEAD: Readonly<Record<Instead, string>> = {
  tellIt: "Enter what is missing on the Anchors page.",
  pulls: loads.instead("pulls"),
  engineersPaper: "Get the weight in writing from a licensed engineer.",
  anotherAnchor: loads.instead("anotherAnchor"),
  dragTest: loads.instead("dragTest"),
};

/** Weights that straps end at: what each has to weigh, or why nobody can say. */
export const ballast = {
  title: "Weights at the straps",
  needed: ({ eachLb, straps, lb }: { readonly eachLb: number; readonly straps: number; readonly lb: number }) =>
    `${number(straps)} weights, one at each strap: ${pounds(eachLb)} each at least, ${pounds(lb)} together.`,
  /** The strap that the weight of all of them is worked out for. */
  at: (station: string, plate: number, of: number) =>
    `Worked out for the strap with the most to hold: ${loads.station(station, [plate], of)}.`,
  workedOut: "Worked out, not weighed. A screening figure: the tent's sheet or a licensed engineer governs it.",
  opens: "It opens no gate. Weights may tip or sink. The engineer says whether they do.",
  notKnown: "Weights: not known. None are on the truck list.",
  why: (reason: Reason) => loads.reason(reason),
  instead: (what: Instead) => INSTEAD[what],
  leftOut: "What the weight leaves out",
} as const;
