import type { FRICTION_BY } from "../../../machines/loads/ballast.ts";
import { UNDER_ROOF } from "../../../machines/loads/canopy.ts";
import { MIN_FACTOR_OF_SAFETY, MIN_PULLS } from "../../../machines/loads/capacity.ts";
import { GROUND_STATES, type PULL_DIRECTIONS, type Pull, SOILS, STAKE_MATERIALS } from "../../../machines/loads/ground.ts";
import { EXPOSURES } from "../../../machines/loads/pressure.ts";
import { own } from "../../../machines/lookup/own.ts";
import { ballast } from "./ballast.ts";
import { loads } from "./loads.ts";

const FIELD: Readonly<Record<string, { readonly label: string; readonly hint?: string }>> = {
  gustMph: { label: "Design gust, mph", hint: "3-second gust, 33 ft up in open country: the sheet's or the code's" },
  exposure: { label: "Ground upwind" },
  elevationFt: { label: "Ground above sea level, ft", hint: "empty: sea level" },
  underRoof: { label: "Under the roof", hint: "blocked: walls or goods over more than half of it" },
  material: { label: "Stakes are made of" },
  soil: { label: "Soil", hint: "only if it is one of these; else pulls" },
  groundState: { label: "The ground is" },
  factorOfSafety: { label: "Factor of safety", hint: `empty: ${MIN_FACTOR_OF_SAFETY}; never under that` },
  "sheetAllows.corner": { label: "Corner: most stakes a plate", hint: "as the sheet says; empty: it says nothing, and two at most count" },
  "sheetAllows.seamEnd": { label: "Seam end: most stakes a plate" },
  "sheetAllows.side": { label: "Side pole: most stakes a plate" },
  rainSincePulls: { label: "Heavy rain since the pulls" },
  "friction.coefficient": { label: "Friction under weights", hint: "0.05 to 1; empty: no weights are used" },
  "friction.by": { label: "Friction known by" },
};

const DIRECTION: Readonly<Record<(typeof PULL_DIRECTIONS)[number], string>> = { alongStrap: "along the strap", other: "another way" };
const BY: Readonly<Record<(typeof FRICTION_BY)[number], string>> = { dragTest: "a drag test on this ground", engineer: "the engineer" };
const worded = (all: readonly string[]) => all.map((one): [string, string] => [one, loads.amount(one)]);
const YES_NO: readonly (readonly [string, string])[] = [["yes", "yes"], ["no", "no"]]; // biome-ignore format: one line reads best

/** What can be chosen in a field, in words; the first is that nobody knows. */
const CHOICES: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  exposure: [["", "not known"], ...worded(EXPOSURES)],
  underRoof: [["", "not known"], ...worded(UNDER_ROOF)],
  material: [["", "not known"], ...worded(STAKE_MATERIALS)],
  soil: [["", "none of these, or not known"], ...worded(SOILS)],
  groundState: [["", "not known"], ...worded(GROUND_STATES)],
  rainSincePulls: [["", "not known"], ...YES_NO],
  "friction.by": [["", "not said"], ...Object.entries(BY)],
};
const CHOICES_OF_PULL: Readonly<Record<"direction" | "softestSpot", readonly (readonly [string, string])[]>> = {
  direction: [["", "not said"], ...Object.entries(DIRECTION)],
  softestSpot: [["", "not said"], ...YES_NO],
};

const pullText = ({ lbf, direction, softestSpot }: Pull): string =>
  `${lbf} lb ${DIRECTION[direction]}${softestSpot ? " at the softest spot" : ""}`;
const pullsText = (pulls: readonly Pull[]): string => (pulls.length === 0 ? "none" : pulls.map(pullText).join("; "));

/** A field of an anchorage as it is called; `undefined` where it is none. */
const field = (name: string): string | undefined => own(FIELD, name.replace(/^anchorage\./, ""))?.label;
const value = (name: string, fact: string | number | boolean | null): string => {
  if (typeof fact === "boolean") return fact ? "yes" : "no";
  const choices = own(CHOICES, name.replace(/^anchorage\./, ""));
  return choices?.find(([code]) => code === String(fact))?.[1] ?? String(fact);
};

/** What anchors are screened by, and the page that tells it. */
export const anchors = {
  title: "Anchors",
  intro: "Tell what is known. A second person looks at it and agrees, or not.",
  introDraft: "Tell what is known. What is left empty is not known, and the screening says so.",
  field,
  value,
  label: (name: string) => own(FIELD, name)?.label ?? name,
  hint: (name: string) => own(FIELD, name)?.hint,
  choices: (name: string) => own(CHOICES, name) ?? null,
  choicesOfPull: CHOICES_OF_PULL,
  groups: {
    wind: "Wind and roof",
    ground: "Stakes and ground",
    pulls: "Pulls made before the job",
    allows: "What the sheet allows",
    ballast: "Weights",
  },
  pullsIntro: `At least ${MIN_PULLS}, along the strap, one at the softest spot. The lowest counts.`,
  pull: (n: number) => `Pull ${n}`,
  pullFields: { lbf: "Held, lb", direction: "Pulled", softestSpot: "At the softest spot" },
  pullsChanged: (from: readonly Pull[], to: readonly Pull[]) => `Pulls before the job: ${pullsText(to)}; was ${pullsText(from)}.`,
  because: "Anchor figures entered.",
  look: "Show what changes",
  put: "Put it to a second person",
  keep: "Keep",
  toDraft: "Back to the sheet step",
  refused: "Something here can't be right. Nothing was kept or lost: fix what is marked.",
  found: "What the screening finds",
  notScreened: "Nobody has entered anything about the anchors yet. They are not screened.",
  worst: (station: string, ratio: string) => `Worst: ${station}. Load over what a stake may be counted for: ${ratio}.`,
  why: "Why",
  instead: "What to do",
  weights: ballast,
  opensNothing: "It opens no gate. The sheet's stakes in the sheet's soil do, or pulls.",
  pressures: (asce: string, en: string, used: string) => `Pressure by ASCE 7: ${asce}. By EN 13782: ${en}. Used: ${used}.`,
  pressureNone: "not worked out",
  fromMemory:
    "EN 13782's figures are from memory, and they nearly always decide. A figure from memory may shut a gate. It never opens one.",
  ratios: 'Load over what a stake may be counted for. Over 1 is short. Where it says "or more", under 1 is not known.',
  stations: "Each station",
  facts: "What is known",
  lines: "All lines, with formula, source and what is left out",
  link: "Anchors: wind, ground, pulls",
} as const;
