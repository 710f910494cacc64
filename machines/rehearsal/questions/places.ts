import type { Point, Station, TentPlan } from "../../tent/types.ts";
import type { Seeded } from "../seeded.ts";
import { becauseAt } from "./job-words.ts";
import { choice, type Maker, type Shown, type Skills } from "./question.ts";

/** Places that are pressed lie at least this far apart, as a share of the longer side: a thumb on a phone has to tell them apart. */
export const APART = 0.32;

const shown = ({ xFt, yFt }: Point): Shown => ({ is: "place", xFt, yFt });

/** Wrong places, the likelier slips first, that lie clear of the right one and of each other. */
function wrongPlaces(plan: TentPlan, right: Point, slips: readonly Point[]): Shown[] {
  const minFt = APART * Math.max(plan.widthFt, plan.lengthFt);
  const kept: Point[] = [right];
  for (const slip of slips) if (kept.every((p) => Math.hypot(p.xFt - slip.xFt, p.yFt - slip.yFt) >= minFt)) kept.push(slip);
  return kept.slice(1).map(shown);
}

function placed(plan: TentPlan, random: Seeded, right: Point, slips: readonly Point[]) {
  return choice(random, shown(right), wrongPlaces(plan, right, slips));
}

const cornersOf = ({ stations }: TentPlan): Station[] => stations.filter((s) => s.kind === "corner");

/** Slips: counterclockwise, from another corner. */
const corner: Maker = (frozen, random) => {
  const corners = cornersOf(frozen.plan);
  const at = random.pick(corners);
  const made = placed(frozen.plan, random, at, random.shuffle(corners));
  return made && { ask: "place.corner", params: { corner: at.id }, ...made, because: becauseAt(frozen, "baseline") };
};

/** A station of an edge. Slips: counted from the edge's other corner, the same number on the edges beside and across it. */
const station: Maker = (frozen, random) => {
  const { edges, stations } = frozen.plan;
  const long = edges.filter((e) => e.between.length > 1);
  if (long.length === 0) return null;
  const edge = random.pick(long);
  const of = (id: string | undefined) => stations.filter((s) => s.id === id);
  // The middle one is the same from both ends.
  const numbers = edge.between.map((_, i) => i).filter((i) => i !== edge.between.length - 1 - i);
  const no = random.pick(numbers);
  const at = of(edge.between[no])[0]!;
  const fromOther = of(edge.between[edge.between.length - 1 - no]);
  const elsewhere = random.shuffle(edges.filter((e) => e !== edge)).flatMap((e) => [...of(e.between[no]), ...of(e.between.at(-1 - no))]);
  const made = placed(frozen.plan, random, at, [...fromOther, ...elsewhere, ...cornersOf(frozen.plan)]);
  return made && { ask: "place.station", params: { station: at.id }, ...made, because: becauseAt(frozen, "marked") };
};

/** A piece as it lies, by its middle. Slips: its mirror image, its neighbors. */
const piece: Maker = (frozen, random) => {
  const { pieces, widthFt, lengthFt } = frozen.plan;
  if (pieces.length < 2) return null;
  const middle = ({ at }: (typeof pieces)[number]): Point => ({ xFt: at.xFt + at.widthFt / 2, yFt: at.yFt + at.lengthFt / 2 });
  const at = random.pick(pieces);
  const { xFt, yFt } = middle(at);
  const mirrored = pieces.map(middle).filter((p) => p.xFt === widthFt - xFt || p.yFt === lengthFt - yFt);
  const made = placed(frozen.plan, random, { xFt, yFt }, [...mirrored, ...random.shuffle(pieces.map(middle)), ...random.shuffle(cornersOf(frozen.plan))]); // biome-ignore format: one line reads best
  return made && { ask: "place.piece", params: { piece: at.id }, ...made, because: becauseAt(frozen, "lay.piece") };
};

/** Pointed at on the drawing: from the plan. */
export const PLACES: Skills = {
  "place.corner": ["anchorsSet", corner],
  "place.station": ["anchorsSet", station],
  "place.piece": ["sectionsJoined", piece],
};
