import { amount } from "../figures/line.ts";
import { distanceFt } from "../tent/grid.ts";
import type { StakePlate, Station } from "../tent/types.ts";
import { type Canopy, canopyOf, roofShape } from "./canopy.ts";
import { type Capacity, capacityOf } from "./capacity.ts";
import type { AnchorFacts, ScreenedPlan } from "./facts.ts";
import type { LoadLeftOut, LoadLine } from "./lines.ts";
import { judgePlate, type PlateJudged } from "./plate.ts";
import { type Pressure, pressureOn } from "./pressure.ts";
import { reasonsOfStakes, stakesAt } from "./stakes.ts";
import { strapLines } from "./strap.ts";
import { type Tributary, tributaries } from "./tributary.ts";
import { type Instead, insteadOf, type Reason, type Verdict, worstOf } from "./verdict.ts";

/** One plate of a station, counted from 1. */
export type PlateScreened = PlateJudged & { readonly plate: number };
export type StationScreened = {
  readonly station: string;
  readonly verdict: Verdict;
  /** Of its worst plate; `null` where it cannot be said. */
  readonly ratio: number | null;
  /** It may be more: of a plate it is only known to be at least so much, or not at all. */
  readonly isAtLeast: boolean;
  readonly plates: readonly PlateScreened[];
  /** What the station has to hold; each plate has its own lines. */
  readonly lines: readonly LoadLine[];
};

/**
 * What a screening of a tent's anchors comes to. It may shut a gate or say that something is not known. `opens` is nothing, whatever the
 * verdict: only the tent's sheet met in soil of the kind it names, or pulls on the site, open one.
 */
export type Screening = {
  readonly opens: "nothing";
  readonly verdict: Verdict;
  readonly ratio: number | null;
  /** It may be more: at a station it is only known to be at least so much, or not at all. */
  readonly isAtLeast: boolean;
  /** The station with the largest ratio. */
  readonly worst: string | null;
  readonly reasons: readonly Reason[];
  readonly instead: readonly Instead[];
  readonly leftOut: readonly LoadLeftOut[];
  readonly pressure: Pressure | null;
  /** Pressure and coefficients, which all stations share. */
  readonly lines: readonly LoadLine[];
  /** Of one stake, which all plates share. */
  readonly capacity: Capacity;
  readonly stations: readonly StationScreened[];
};

/** Left out of every screening, beside what its lines leave out. */
const ALWAYS_LEFT_OUT: readonly LoadLeftOut[] = ["snowAndWater", "hungLoads", "insideTies", "strapsAndPoles"];

/**
 * Screens the anchors of an open canopy, station by station. The facts must be without problems (`problemsOfFacts`). What is not known
 * is taken at its kindest, so that what is short is short for certain, and nothing else is ever more than "not known" then. A tent with
 * walls is another case: nothing is worked out, and it is referred to an engineer.
 */
export function screenAnchors(plan: ScreenedPlan, facts: AnchorFacts): Screening {
  const capacity = capacityOf(facts.stake, facts.ground);
  const load = loadOn(plan, facts);
  const parts = load && tributaries(plan);
  const stations = plan.stations.map((station) =>
    screenStation(station, { plan, facts, capacity, load, part: parts?.get(station.id) ?? null }),
  );
  const byRatio = [...stations].sort((a, b) => (b.ratio ?? -1) - (a.ratio ?? -1))[0];
  const lines = load ? [...load.pressure.lines, ...load.canopy.lines] : [];
  const reasons = [...reasonsOfLoad(facts, load), ...capacity.reasons, ...reasonsOfStakes(plan, facts)];
  const all = [...lines, ...capacity.lines, ...stations.flatMap((s) => [...s.lines, ...s.plates.flatMap((p) => p.lines)])];
  return {
    opens: "nothing",
    verdict: worstOf(stations.map((s) => s.verdict)),
    ratio: byRatio?.ratio ?? null,
    isAtLeast: stations.some((s) => s.isAtLeast),
    worst: byRatio && byRatio.ratio !== null ? byRatio.station : null,
    reasons,
    instead: insteadOf(reasons),
    leftOut: [...new Set([...ALWAYS_LEFT_OUT, ...all.flatMap((line) => line.leftOut)])],
    pressure: load?.pressure ?? null,
    lines,
    capacity,
    stations,
  };
}

type Load = { readonly pressure: Pressure; readonly canopy: Canopy; readonly riseFt: number };

/** `null` for a tent that has walls or may have, and for a roof that no figure is for. */
function loadOn({ spec }: ScreenedPlan, { walls, wind, underRoof }: AnchorFacts): Load | null {
  if (walls !== false) return null;
  const roof = { eaveFt: spec.sidePoleFt, peakFt: spec.centerPoleFt, widthFt: spec.widthFt };
  const { meanFt, riseFt } = roofShape(roof);
  const pressure = pressureOn(wind, { meanFt, peakFt: roof.peakFt });
  const canopy = canopyOf(roof, underRoof);
  return pressure && canopy && { pressure, canopy, riseFt };
}

function reasonsOfLoad({ walls }: AnchorFacts, load: Load | null): readonly Reason[] {
  if (walls !== false) return [walls ? "walled" : "wallsNotTold"];
  return load ? [...load.pressure.reasons, ...load.canopy.reasons] : ["roofSlopeNotPublished"];
}

type Context = {
  readonly plan: ScreenedPlan;
  readonly facts: AnchorFacts;
  readonly capacity: Capacity;
  readonly load: Load | null;
  readonly part: Tributary | null;
};

function screenStation(station: Station, context: Context): StationScreened {
  const { plan, load, part } = context;
  const held = load && part ? stationLines(load, part, plan) : null;
  const own = plan.plates.filter((plate) => plate.station === station.id);
  const plates = own.map((plate, i) => screenPlate({ station, plate, number: i + 1, held, of: own.length }, context));
  const ratios = plates.flatMap((p) => p.ratio ?? []);
  return {
    station: station.id,
    verdict: worstOf(plates.map((p) => p.verdict)),
    ratio: ratios.length === 0 ? null : Math.max(...ratios),
    isAtLeast: plates.some((p) => p.isAtLeast || p.ratio === null),
    plates,
    lines: held?.lines ?? [],
  };
}

type Held = { readonly upliftLbf: number; readonly dragLbf: number; readonly lines: readonly LoadLine[] };
type OnePlate = {
  readonly station: Station;
  readonly plate: StakePlate;
  readonly number: number;
  readonly held: Held | null;
  readonly of: number;
};

function screenPlate({ station, plate, number, held, of }: OnePlate, { plan, facts, capacity, load }: Context): PlateScreened {
  const strap = { sidePoleFt: plan.spec.sidePoleFt, outFt: distanceFt(station, plate) };
  const lines = held ? strapLines(strap, { ...held, plates: of }) : [];
  const stakes = stakesAt(station, { plate, number }, facts);
  const known = load !== null && reasonsOfLoad(facts, load).length === 0;
  const judged = judgePlate({ tensionLbf: lines.at(-1)?.result.n ?? null, known }, stakes, capacity);
  return { ...judged, plate: number, lines: [...lines, ...judged.lines] };
}

/** Uplift and drag of one station. Wind along either side of the tent is on its whole length of edge, at a corner on both. */
function stationLines({ pressure, canopy, riseFt }: Load, part: Tributary, { spec, edges }: ScreenedPlan): Held {
  const areaSqFt = Math.max(part.nearestSqFt, part.shareSqFt);
  const upliftLbf = pressure.psf * canopy.uplift * areaSqFt;
  const dragLbf = pressure.psf * canopy.drag * riseFt * part.edgeFt;
  const edge = { name: "edge", is: amount(part.edgeFt, "ft"), source: "plan" } as const;
  const psf = { name: "pressure", is: amount(pressure.psf, "psf"), source: pressure.lines.at(-1)!.source } as const;
  const sourceOf = (formula: LoadLine["formula"]) => canopy.lines.find((one) => one.formula === formula)!.source;
  const perimeterFt = edges.reduce((sum, e) => sum + e.lengthFt, 0);
  const line = (formula: LoadLine["formula"], inputs: LoadLine["inputs"], result: LoadLine["result"]): LoadLine => ({
    formula,
    inputs,
    result,
    source: formula === "stationUplift" || formula === "stationDrag" ? "statics" : "practice",
    leftOut: [],
  });
  const lines = [
    line("tributaryEdge", [], edge.is),
    line("areaNearest", [edge], amount(part.nearestSqFt, "sqFt")),
    line(
      "areaByShare",
      [
        edge,
        { name: "perimeter", is: amount(perimeterFt, "ft"), source: "plan" },
        { name: "roofArea", is: amount(spec.widthFt * spec.lengthFt, "sqFt"), source: "plan" },
      ],
      amount(part.shareSqFt, "sqFt"),
    ),
    line(
      "stationUplift",
      [
        psf,
        { name: "coefficient", is: amount(canopy.uplift, "number"), source: sourceOf("upliftUsed") },
        { name: "area", is: amount(areaSqFt, "sqFt"), source: "practice" },
      ],
      amount(upliftLbf, "lbf"),
    ),
    line(
      "stationDrag",
      [
        psf,
        { name: "coefficient", is: amount(canopy.drag, "number"), source: sourceOf("dragUsed") },
        { name: "rise", is: amount(riseFt, "ft"), source: "plan" },
        edge,
      ],
      amount(dragLbf, "lbf"),
    ),
  ];
  return { upliftLbf, dragLbf, lines };
}
