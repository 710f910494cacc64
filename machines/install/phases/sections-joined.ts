import type { Seam, SeamHalf, TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { exactly, gate, noneOf, yes } from "../gates.ts";
import type { StepDraft } from "../step.ts";

/** Cloth on the ground, in order, joined, and never left loose. */
export function sectionsJoined(_: Brief, plan: TentPlan): StepDraft[] {
  const tiedDown = plan.stations.filter((s) => s.kind !== "side").length;
  return [
    { id: "damage.cloth", gate: gate(noneOf, { reopenedBy: ["pieces"] }) },
    { id: "damage.rope", gate: gate(noneOf, { reopenedBy: ["pieces"] }) },
    { id: "groundCloth", gate: gate(yes, { reopenedBy: ["pieces"] }) },
    { id: "softSoles", gate: gate(yes, { hard: false, reopenedBy: ["pieces"] }) },
    ...plan.pieces.map(
      (p): StepDraft => ({ id: `lay.${p.id}`, wordsKey: "lay.piece", params: { piece: p.id, order: p.order, total: plan.pieces.length } }),
    ),
    { id: "laid.order", params: { pieces: plan.pieces.length }, gate: gate(yes, { reopenedBy: ["pieces", "seams"] }) },
    {
      id: "laid.looked",
      params: { pieces: plan.pieces.length },
      gate: gate(yes, { secondPersonTo: "laid.order", reopenedBy: ["pieces", "seams"] }),
    },
    ...plan.edges.map(
      (e): StepDraft => ({
        id: `rings.${e.name}`,
        wordsKey: "rings.edge",
        params: { edge: e.name, rings: e.rings },
        gate: gate(exactly(e.rings), { reopenedBy: ["stations"] }),
      }),
    ),
    ...plan.seams.flatMap(seamCalls),
    { id: "cloth.strapped", params: { stations: tiedDown }, gate: gate(exactly(tiedDown), { reopenedBy: ["stations", "pieces"] }) },
  ];
}

function seamCalls(seam: Seam): StepDraft[] {
  const params = { seam: seam.id };
  return [{ id: `lace.${seam.id}.start`, wordsKey: "lace.start", params }, ...seam.halves.flatMap((half) => halfCalls(half, params))];
}

/** One short call a place, from the center ring out to the edge: both hands are busy. */
function halfCalls(half: SeamHalf, params: { seam: string }): StepDraft[] {
  const here = { ...params, half: half.id, toward: half.toward, lace: half.lacePiece, eyelet: half.eyeletPiece };
  const reopenedBy = ["seams"] as const;
  const rings = half.ringsAtFt.map(
    (atFt, i): StepDraft => ({ id: `lace.${half.id}.ring${i + 1}`, wordsKey: "lace.ring", params: { ...here, ring: i + 1, atFt } }),
  );
  return [
    ...rings,
    { id: `lace.${half.id}.valance`, wordsKey: "lace.valance", params: { ...here, rings: rings.length } },
    { id: `lace.${half.id}.back`, wordsKey: "lace.back", params: here },
    { id: `tied.${half.id}`, wordsKey: "half.tied", params: here, gate: gate(yes, { reopenedBy }) },
    {
      id: `looked.${half.id}`,
      wordsKey: "half.looked",
      params: here,
      gate: gate(noneOf, { secondPersonTo: `tied.${half.id}`, reopenedBy }),
    },
  ];
}
