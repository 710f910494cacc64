import type { Unit } from "../../../machines/install/gates.ts";
import { own } from "../../../machines/lookup/own.ts";

/** Feet as a tape shows them, to 1/16 in: 89.443 is 89 ft 5 5/16 in. */
export function feetInches(ft: number): string {
  const sixteenths = Math.round(Math.abs(ft) * 192);
  const feet = Math.floor(sixteenths / 192);
  const rest = inches((sixteenths % 192) / 16);
  const sign = ft < 0 && sixteenths > 0 ? "-" : "";
  return `${sign}${[feet > 0 ? `${feet} ft` : "", rest !== "0 in" || feet === 0 ? rest : ""].filter((t) => t !== "").join(" ")}`;
}

/** Inches with a fraction, to 1/16: 5.5 is 5 1/2 in. */
export function inches(n: number): string {
  const sixteenths = Math.round(Math.abs(n) * 16);
  const whole = Math.floor(sixteenths / 16);
  let over = sixteenths % 16;
  let under = 16;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  const fraction = over > 0 ? `${over}/${under}` : "";
  const text = whole > 0 || fraction === "" ? [String(whole), fraction].filter((t) => t !== "").join(" ") : fraction;
  return `${n < 0 && sixteenths > 0 ? "-" : ""}${text} in`;
}

/** A quantity as a crew says it. */
export function quantity(n: number, unit: Unit): string {
  switch (unit) {
    case "in":
      return inches(n);
    case "ft":
      return feetInches(n);
    case "deg":
      return `${Math.round(n * 10) / 10}°`;
    case "lbf":
      return `${n} lb`;
    case "turns":
      return `${n} turns`;
  }
}

export const seamName = (id: string | number | undefined): string => {
  const text = String(id ?? "");
  return text.startsWith("R-") ? `ridge seam at ${text.slice(2)}` : `seam ${text.replace(/^S/, "")}`;
};
export const pieceName = (id: string | number | undefined): string => {
  const text = String(id ?? "");
  if (text === "top") return "the top";
  return text.startsWith("end-") ? `end piece ${text.slice(4)}` : text.replace("-", " ");
};
const UTILITIES: Readonly<Record<string, string>> = {
  electric: "electric",
  gas: "gas",
  communication: "communication",
  water: "water",
  sewer: "sewer",
  reclaimedWater: "reclaimed water",
};
export const utilityName = (kind: string | number | undefined): string => own(UTILITIES, String(kind)) ?? String(kind);
const KIT: Readonly<Record<string, string>> = {
  wholeTop: "tops",
  endPiece: "end pieces",
  splitEndPiece: "split end pieces",
  midPiece: "mid pieces",
  centerPole: "center poles",
  quarterPole: "quarter poles",
  sidePole: "side poles",
  cornerPole: "corner poles",
  perimeterStake: "perimeter stakes",
  stakePlate: "stake plates",
  perimeterStrap: "ratchet straps",
  interiorStake: "interior stakes",
  interiorStrap: "interior straps",
  polePlate: "pole plates",
};
export const kitName = (item: string | number | undefined): string => own(KIT, String(item)) ?? String(item);
const NUMBER = new Intl.NumberFormat("en-US", { maximumFractionDigits: 1 });
/** A number with its thousands apart, to at most a tenth. */
export const number = (n: number): string => NUMBER.format(n);
/** So many of a thing: 1 top, 84 stake plates. Every name of the kit ends in an s that one of them loses. */
export const things = (n: number, item: string): string => `${number(n)} ${n === 1 ? kitName(item).replace(/s$/, "") : kitName(item)}`;
/** A row of interior poles as a crew calls it. */
export const rowName = (id: string | number | undefined): string => {
  const text = String(id ?? "");
  if (text.startsWith("hip-")) return `hip end ${text.slice(4)}`;
  return text.startsWith("line-") ? `line ${text.slice(5)}` : text;
};
/** The poles of one lift. */
export const lineName = (of: Readonly<Record<string, string | number>>): string => {
  if (of.kind === "all") return "all poles";
  return of.kind === "center" ? `center pole ${of.poles}` : `quarter poles of ${rowName(of.row)}, ${of.poles}`;
};
