import type { Seam, SeamHalf } from "../../tent/types.ts";
import { becauseAt } from "./job-words.ts";
import { choice, countSlips, type Maker, type Shown, type Skills, worded } from "./question.ts";

const halvesOf = (seams: readonly Seam[]): SeamHalf[] => seams.flatMap((s) => s.halves);

/** Which piece brings the loops and which the holes. Slips: swapped, the half across, the neighbor's piece. */
const edges: Maker = (frozen, random) => {
  const { seams, pieces } = frozen.plan;
  if (seams.length === 0) return null;
  const half = random.pick(halvesOf(seams));
  const laced = (lace: string, eyelet: string): Shown => ({ is: "laced", lace, eyelet });
  const others = random.shuffle(pieces.map((p) => p.id).filter((id) => id !== half.lacePiece && id !== half.eyeletPiece));
  const slips = [
    laced(half.eyeletPiece, half.lacePiece),
    ...others.flatMap((id) => [laced(half.lacePiece, id), laced(id, half.eyeletPiece)]),
  ];
  const made = choice(random, laced(half.lacePiece, half.eyeletPiece), slips);
  return made && { ask: "laced", params: { half: half.id }, ...made, because: becauseAt(frozen, "laid.order") };
};

/** Runs that are laced, half by half. Slips: whole seams, pieces, as if ridges were halved too. */
const runs: Maker = (frozen, random) => {
  const { seams, pieces } = frozen.plan;
  if (seams.length === 0) return null;
  const n = halvesOf(seams).length;
  const slips = countSlips(n, [seams.length, pieces.length, seams.length * 2], "runs");
  const made = choice(random, { is: "count", n, of: "runs" }, slips);
  return made && { ask: "runs", ...made, because: becauseAt(frozen, "half.looked") };
};

/** How far out a quarter ring comes. Slips: from the edge in, half the way, the whole way. */
const ring: Maker = (frozen, random) => {
  const halves = halvesOf(frozen.plan.seams).filter((h) => h.ringsAtFt.length > 0);
  if (halves.length === 0) return null;
  const half = random.pick(halves);
  const at = half.ringsAtFt[0]!;
  const shown = (n: number): Shown => ({ is: "figure", n, unit: "ft" });
  const slips = [half.lengthFt - at, half.lengthFt, half.lengthFt / 2, at + 5, at / 2].map(shown);
  const step = frozen.script.steps.find((s) => s.id === `lace.${half.id}`);
  const made = choice(random, shown(at), slips);
  return made && { ask: "ring", params: { half: half.id }, ...made, because: step ? worded(step) : null };
};

/** Where two pieces are joined: from the plan. */
export const SEAMS: Skills = {
  "seam.edges": ["sectionsJoined", edges],
  "seam.runs": ["sectionsJoined", runs],
  "seam.ring": ["sectionsJoined", ring],
};
