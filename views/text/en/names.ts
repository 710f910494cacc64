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

/** How far off is allowed, as a crew reads it: rounded down, to 1/4 in where it is as much as that. What judges keeps its value. */
export function tolerance(n: number): string {
  const parts = n >= 1 / 4 ? 4 : 16;
  return inches(Math.floor(n * parts + 1e-9) / parts || n);
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
    case "mph":
      return `${n} mph`;
  }
}

export const seamName = (id: string | number | undefined): string => {
  const text = String(id ?? "");
  return text.startsWith("R-") ? `ridge seam ${text.slice(2)}` : `seam ${text.replace(/^S/, "")}`;
};
export const pieceName = (id: string | number | undefined): string => {
  const text = String(id ?? "");
  if (text === "top") return "the top";
  return text.startsWith("end-") ? `end piece ${text.slice(4)}` : text.replace("-", " ");
};
const UTILITIES: Readonly<Record<string, string>> = {
  electric: "electric",
  gas: "gas",
  communication: "phone, cable, fiber",
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
  polePlate: "base plates",
  firstAidKit: "first aid kits",
  waterCooler: "water coolers",
  horn: "horns",
  windMeter: "wind meters",
  hardHat: "hard hats",
  whitePaint: "white paint cans",
  tape300: "300 ft tapes",
  tape200: "200 ft tapes",
  tape100: "100 ft tapes",
  pocketTape: "pocket tapes",
  layoutPin: "layout pins",
  stringLine: "string lines",
  level: "levels",
  plumbBob: "plumb bobs",
  caliper: "calipers",
  leanGauge: "lean gauges",
  pullGauge: "pull gauges",
  comeAlong: "come-alongs",
  ballastWeight: "ballast weights",
  stakeDriver: "stake drivers",
  earMuff: "ear muffs",
  goggles: "safety goggles",
  stakeCap: "stake caps",
  groundCloth: "ground cloths",
  footRope: "foot ropes",
  strapFlag: "strap flags",
  wallSet: "whole wall sets",
  exitSign: "exit signs",
  extinguisher: "extinguishers",
  ladder: "ladders",
  broom: "brooms",
  stakePuller: "stake pullers",
  shovel: "shovels",
};
export const kitName = (item: string | number | undefined): string => own(KIT, String(item)) ?? String(item);
const NUMBER = new Intl.NumberFormat("en-US", { maximumFractionDigits: 1 });
/** A number with its thousands apart, to at most a tenth. */
export const number = (n: number): string => NUMBER.format(n);
/** So many of a thing: 1 top, 84 stake plates. Every name of the kit ends in an s that one of them loses. */
export const things = (n: number, item: string): string => `${number(n)} ${n === 1 ? kitName(item).replace(/s$/, "") : kitName(item)}`;
const PARTS: Readonly<Record<string, string>> = {
  thinnest: "thinnest",
  sidePole: "side pole",
  insidePole: "inside pole",
  shortest: "shortest",
  softest: "softest spot",
  second: "second pull",
  third: "third pull",
  stakes: "stakes",
  plates: "plates",
  irrigation: "irrigation",
  lighting: "lighting",
  septic: "septic",
};
/** A name that one question asks several figures or answers by: an edge by its letters, a utility by its name. */
export const partName = (name: string): string => own(PARTS, name) ?? utilityName(name);
/** The edges that the wind comes at, after a colon; nothing where nobody read that. */
export const windwardSide = ({ windward }: Readonly<Record<string, string | number>>): string =>
  windward ? `: ${String(windward).replace(" ", " and ")}` : "";
/** The number of a station on its edge: AB12 is 12. */
export const stationNo = (id: string | number | undefined): string => String(id ?? "").replace(/^[A-D]+/, "");

/** The poles of one lift, at the head of a call: "Quarters Q1 to Q3". */
export const lineName = ({ kind, poles }: Readonly<Record<string, string | number>>): string =>
  kind === "center" ? `Center pole ${poles}` : `Quarters ${range(String(poles).split(" "))}`;

/** Poles that follow each other by the first and the last; others one by one. */
function range(ids: readonly string[]): string {
  const [first = "", last = ""] = [ids[0], ids.at(-1)];
  const no = (id: string) => Number(id.slice(1));
  const inARow = ids.every((id, i) => no(id) === no(first) + i);
  return inARow && ids.length > 2 ? `${first} to ${last}` : ids.join(ids.length === 2 ? " and " : " ");
}
