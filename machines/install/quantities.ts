import { onSite } from "./crew.ts";
import { type Frozen, PHASES, type PhaseId } from "./step.ts";

/** What there is to do on a job, counted from its plan. Lengths in feet, areas in square feet; all else is a number of things. */
export type Quantities = {
  readonly perimeterFt: number;
  readonly stations: number;
  /** Corners and seam ends, where cloth is strapped before it goes up. */
  readonly tiedStations: number;
  readonly plates: number;
  readonly stakes: number;
  readonly pullTests: number;
  readonly pieces: number;
  readonly clothSqFt: number;
  readonly seamFt: number;
  readonly seamHalves: number;
  readonly longestHalfFt: number;
  readonly centerPoles: number;
  readonly quarterPoles: number;
  readonly centerPoleFt: number;
  /** The perimeter again where walls hang, and nothing where none do. */
  readonly wallFt: number;
};
export type Quantity = keyof Quantities;

/** The same with who is there to do it, and how many calls each phase has. Plain JSON, small enough to be kept with every job. */
export type Work = {
  /** On site by the brief: those who stand in the toolbox talk. */
  readonly people: number;
  readonly quantities: Quantities;
  readonly calls: Readonly<Record<PhaseId, number>>;
};

/** The work of a job as it was frozen. `null` where its plan has not the parts that are counted: then nothing is guessed. */
export function workOf({ brief, plan, script }: Frozen): Work | null {
  const whole = [plan.edges, plan.stations, plan.plates, plan.pieces, plan.seams, plan.poles, brief.crew, plan.kit].every(Array.isArray);
  if (!whole) return null;
  const halves = plan.seams.flatMap((s) => s.halves.map((h) => h.lengthFt));
  const perimeterFt = sum(plan.edges.map((e) => e.lengthFt));
  const poles = (kind: "center" | "quarter") => plan.poles.filter((p) => p.kind === kind).length;
  return {
    people: onSite(brief.crew).length,
    quantities: {
      perimeterFt,
      stations: plan.stations.length,
      tiedStations: plan.stations.filter((s) => s.kind !== "side").length,
      plates: plan.plates.length,
      stakes: sum(plan.plates.map((p) => (p.replaced ? 0 : p.stakes))),
      pullTests: script.steps.filter((s) => s.wordsKey.startsWith("pull.")).length,
      pieces: plan.pieces.length,
      clothSqFt: sum(plan.pieces.map(({ at }) => at.widthFt * at.lengthFt)),
      seamFt: sum(halves),
      seamHalves: halves.length,
      longestHalfFt: Math.max(0, ...halves),
      centerPoles: poles("center"),
      quarterPoles: poles("quarter"),
      centerPoleFt: plan.spec.centerPoleFt,
      wallFt: brief.use.walls ? perimeterFt : 0,
    },
    calls: Object.fromEntries(PHASES.map((phase) => [phase, script.steps.filter((s) => s.phase === phase).length])) as Work["calls"],
  };
}

const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);
