import { type Bounds, WIND_BOUNDS } from "../figures/bounds.ts";
import { type FigureProblem, FigureProblems } from "../figures/problems.ts";
import type { StationKind, TentPlan } from "../tent/types.ts";
import { UNDER_ROOF, type UnderRoof } from "./canopy.ts";
import { MAX_PULL_LBF, MIN_FACTOR_OF_SAFETY } from "./capacity.ts";
import { GROUND_STATES, type Ground, PULL_DIRECTIONS, SOILS, STAKE_MATERIALS, type Stake } from "./ground.ts";
import { EXPOSURES, type WindFacts } from "./pressure.ts";

/** Stakes driven at a plate that has not what the plan says. Plates of a station are counted from 1. */
export type Driven = { readonly station: string; readonly plate: number; readonly stakes: number };

/** All that an anchor screening asks beside the frozen plan. `null`, everywhere: not known. */
export type AnchorFacts = {
  /** Walls hung or half hung: another case, that is referred on. The brief's `use.walls`. */
  readonly walls: boolean | null;
  readonly wind: WindFacts;
  readonly underRoof: UnderRoof | null;
  readonly stake: Stake | null;
  readonly ground: Ground;
  /** The most stakes on one plate that the sheet allows. */
  readonly sheetAllows: Readonly<Record<StationKind, number | null>>;
  /** Plates that have more or fewer stakes than planned. */
  readonly driven: readonly Driven[];
};
export type ScreenedPlan = Pick<TentPlan, "spec" | "edges" | "stations" | "plates">;

/** Against slips and nonsense, not limits of a tent. Common practice, no source. */
const BOUNDS = {
  elevationFt: { from: -1500, to: 15_000 },
  diameterIn: { from: 0.25, to: 12 },
  lengthIn: { from: 6, to: 120 },
  factor: { from: MIN_FACTOR_OF_SAFETY, to: 10 },
  pullLbf: { from: 0, to: MAX_PULL_LBF },
  stakes: { from: 0, to: 20 },
  /** A sheet that allows no stake on a plate has no plate. */
  allowed: { from: 1, to: 20 },
} as const satisfies Record<string, Bounds>;
const MAX_PULLS = 200;
const MAX_DRIVEN = 2000;

/** What came in for a screening, of unknown kind throughout. */
export type AnchorFactsInput = { readonly [K in keyof AnchorFacts]: unknown };

/** What is wrong with the facts, all at once, with the limit of each; where it is empty they are `AnchorFacts`. A pull without a direction is one. */
export function problemsOfFacts(facts: AnchorFactsInput, plan: ScreenedPlan): readonly FigureProblem[] {
  const problems = new FigureProblems();
  problems.choiceOrUnknown(facts.walls, "walls", [true, false]);
  problems.choiceOrUnknown(facts.underRoof, "underRoof", UNDER_ROOF);
  readWind(record(facts.wind), problems);
  if (facts.stake !== null) readStake(record(facts.stake), problems);
  readGround(record(facts.ground), problems);
  const allows = record(facts.sheetAllows);
  for (const kind of ["corner", "seamEnd", "side"] as const)
    problems.numberOrUnknown(allows[kind], { field: `sheetAllows.${kind}`, bounds: BOUNDS.allowed, unit: "number", whole: true });
  readDriven(list(facts.driven), plan, problems);
  return problems.found;
}

function readWind(wind: Fields, problems: FigureProblems): void {
  problems.numberOrUnknown(wind.gustMph, { field: "wind.gustMph", bounds: WIND_BOUNDS, unit: "mph" });
  problems.choiceOrUnknown(wind.exposure, "wind.exposure", EXPOSURES);
  problems.numberOrUnknown(wind.elevationFt, { field: "wind.elevationFt", bounds: BOUNDS.elevationFt, unit: "ft" });
}

function readStake(stake: Fields, problems: FigureProblems): void {
  problems.number(stake.diameterIn, { field: "stake.diameterIn", bounds: BOUNDS.diameterIn, unit: "in" });
  problems.number(stake.lengthIn, { field: "stake.lengthIn", bounds: BOUNDS.lengthIn, unit: "in" });
  const to = typeof stake.lengthIn === "number" ? stake.lengthIn : BOUNDS.lengthIn.to;
  problems.numberOrUnknown(stake.embeddedIn, { field: "stake.embeddedIn", bounds: { from: 0, to }, unit: "in" });
  problems.choiceOrUnknown(stake.material, "stake.material", STAKE_MATERIALS);
}

function readGround(ground: Fields, problems: FigureProblems): void {
  problems.choiceOrUnknown(ground.soil, "ground.soil", SOILS);
  problems.choiceOrUnknown(ground.state, "ground.state", GROUND_STATES);
  problems.choiceOrUnknown(ground.rainSincePulls, "ground.rainSincePulls", [true, false]);
  problems.numberOrUnknown(ground.factorOfSafety, { field: "ground.factorOfSafety", bounds: BOUNDS.factor, unit: "number" });
  const pulls = list(ground.pulls);
  problems.atMost(pulls.length, "ground.pulls", MAX_PULLS);
  for (const [i, pull] of pulls.slice(0, MAX_PULLS).entries()) {
    const { lbf, direction, softestSpot } = record(pull);
    problems.number(lbf, { field: `ground.pulls.${i}.lbf`, bounds: BOUNDS.pullLbf, unit: "lbf" });
    problems.choice(direction, `ground.pulls.${i}.direction`, PULL_DIRECTIONS);
    problems.choice(softestSpot, `ground.pulls.${i}.softestSpot`, [true, false]);
  }
}

function readDriven(driven: readonly unknown[], { stations }: ScreenedPlan, problems: FigureProblems): void {
  problems.atMost(driven.length, "driven", MAX_DRIVEN);
  for (const [i, one] of driven.slice(0, MAX_DRIVEN).entries()) {
    const { station, plate, stakes } = record(one);
    const there = stations.find((s) => s.id === station);
    if (!there) problems.choice(String(station), `driven.${i}.station`, stations.map((s) => s.id)); // biome-ignore format: one line reads best
    problems.number(plate, { field: `driven.${i}.plate`, bounds: { from: 1, to: there?.plates ?? 1 }, unit: "number", whole: true });
    problems.number(stakes, { field: `driven.${i}.stakes`, bounds: BOUNDS.stakes, unit: "number", whole: true });
  }
}

type Fields = Readonly<Record<string, unknown>>;
const record = (value: unknown): Fields => (typeof value === "object" && value !== null ? (value as Fields) : {});
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
