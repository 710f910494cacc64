import type { Seam, SeamHalf, TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { exactly, exactlyEach, gate, noneOf, yes } from "../gates.ts";
import type { StepDraft } from "../step.ts";
import { pieceKey } from "../thing.ts";
import { kitLines } from "./needs.ts";

/** It secures cloth that already lies there, so wind does not keep anybody from it; lightning does. */
const FASTENED = "cloth.strapped";

/** Cloth on the ground, in order, looked over as it opens, strapped as it lies, joined, and never left loose. */
export function sectionsJoined(_: Brief, plan: TentPlan): StepDraft[] {
  const pieces = plan.pieces.length;
  const tiedDown = plan.stations.filter((s) => s.kind !== "side").length;
  const [firstHalf] = plan.seams.flatMap((s) => s.halves);
  const calls: StepDraft[] = [
    { id: "groundCloth", needs: kitLines("groundCloth"), gate: gate(yes, { reopenedBy: ["pieces"] }) },
    ...plan.pieces.map(
      (p): StepDraft => ({
        id: `lay.${p.id}`,
        wordsKey: "lay.piece",
        needs: [pieceKey(p.id)],
        params: { piece: p.id, order: p.order, total: pieces },
      }),
    ),
    { id: FASTENED, gate: gate(exactly(tiedDown), { reopenedBy: ["stations", "pieces"] }) },
    { id: "damage", gate: gate(noneOf, { reopenedBy: ["pieces"] }) },
    { id: "laid.order", gate: gate(yes, { reopenedBy: ["pieces", "seams"] }) },
    { id: "laid.looked", gate: gate(yes, { secondPersonTo: "laid.order", reopenedBy: ["pieces", "seams"] }) },
    { id: "rings", gate: gate(exactlyEach(Object.fromEntries(plan.edges.map((e) => [e.name, e.rings]))), { reopenedBy: ["stations"] }) },
    ...(firstHalf ? [{ id: "lace.technique" }] : []),
    ...plan.seams.flatMap((seam) => seam.halves.flatMap((half) => halfCalls(seam, half, half === firstHalf))),
  ];
  return calls.map((c) => ({ ...c, work: c.id === FASTENED ? "outside" : "openCloth" }));
}

/** Out past the quarter rings, to the edge and back, and somebody else's look: both hands are busy. */
function halfCalls(seam: Seam, half: SeamHalf, first: boolean): StepDraft[] {
  const params = {
    seam: seam.id,
    half: half.id,
    toward: half.toward,
    lace: half.lacePiece,
    eyelet: half.eyeletPiece,
    atFt: half.ringsAtFt[0] ?? 0,
    ringsAtFt: half.ringsAtFt.join(" "),
    rings: half.ringsAtFt.length,
  };
  const reopenedBy = ["seams"] as const;
  const needs = [pieceKey(half.lacePiece), pieceKey(half.eyeletPiece)];
  const calls: StepDraft[] = [
    { id: `lace.${half.id}`, wordsKey: first ? "lace.first" : half.ringsAtFt.length > 0 ? "lace.ring" : "lace.out", params },
    { id: `tied.${half.id}`, wordsKey: "half.tied", params, gate: gate(yes, { reopenedBy }) },
    {
      id: `looked.${half.id}`,
      wordsKey: "half.looked",
      params,
      gate: gate(noneOf, { secondPersonTo: `tied.${half.id}`, reopenedBy }),
    },
  ];
  return calls.map((call) => ({ ...call, needs }));
}
