import type { BuriedKind } from "../../../machines/site/model.ts";
import { THING_NAMES } from "./thing-names.ts";

const BURIED: Readonly<Record<BuriedKind, string>> = {
  electric: "electric",
  gas: "gas, oil, steam",
  communication: "phone, cable, fiber",
  water: "drinking water",
  sewer: "sewer and drain",
  reclaimedWater: "reclaimed water, irrigation",
  survey: "survey mark (pink)",
  excavation: "edge of other digging (white)",
};

/** Words of a drawing of a site. */
export const siteDrawing = {
  title: (widthFt: number, lengthFt: number) => `The site with a tent of ${widthFt} by ${lengthFt} ft, seen from above`,
  desc: (n: { buried: number; overhead: number; things: number; short: number }) =>
    [
      "The baseline runs up.",
      `Buried lines: ${n.buried}. Overhead lines: ${n.overhead}. Things: ${n.things}.`,
      n.short === 0 ? "Nothing is ringed." : `Ringed, as too near: ${n.short}.`,
    ].join(" "),
  /** A letter for each kind of buried line, none of them a corner's. Common practice, no source. */
  letter: {
    electric: "E",
    gas: "G",
    communication: "T",
    water: "W",
    sewer: "S",
    reclaimedWater: "R",
    survey: "M",
    excavation: "X",
  } satisfies Record<BuriedKind, string>,
  overheadLetter: "OH",
  buried: BURIED,
  overhead: "overhead line",
  thing: THING_NAMES,
  off: (ft: number) => (ft === 0 ? "0" : `${Math.abs(ft)} ${ft < 0 ? "L" : "R"}`),
  key: {
    zone: "Hatched: its tolerance zone",
    things: "Hatched the other way: what stands there",
    tooNear: "Ringed and crossed: too near",
    ground: "Long dashes: ground that may be used",
    ticketArea: "Short dashes: the area that the ticket names",
    scales: "Left edge: feet along the baseline. Bottom: feet off it, R to the right, L to the left.",
  },
} as const;
