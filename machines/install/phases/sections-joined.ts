import type { Seam, SeamHalf, TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { exactly, gate, noneOf, yes } from "../gates.ts";
import type { Call } from "../step.ts";

/** Cloth on the ground, in order, joined, and never left loose. */
export function sectionsJoined(_: Brief, plan: TentPlan): Call[] {
  const tiedDown = plan.stations.filter((s) => s.kind !== "side").length;
  return [
    { id: "damage.cloth", gate: gate(noneOf, { reopenedBy: ["pieces"] }) },
    { id: "damage.rope", gate: gate(noneOf, { reopenedBy: ["pieces"] }) },
    { id: "groundCloth", gate: gate(yes, { reopenedBy: ["pieces"] }) },
    { id: "softSoles", gate: gate(yes, { hard: false, reopenedBy: ["pieces"] }) },
    ...plan.pieces.map(
      (p): Call => ({ id: `lay.${p.id}`, call: "lay.piece", of: { piece: p.id, order: p.order, of: plan.pieces.length } }),
    ),
    { id: "laid.order", of: { pieces: plan.pieces.length }, gate: gate(yes, { reopenedBy: ["pieces", "seams"] }) },
    {
      id: "laid.looked",
      of: { pieces: plan.pieces.length },
      gate: gate(yes, { otherThan: "laid.order", reopenedBy: ["pieces", "seams"] }),
    },
    ...plan.edges.map(
      (e): Call => ({
        id: `rings.${e.name}`,
        call: "rings.edge",
        of: { edge: e.name, rings: e.rings },
        gate: gate(exactly(e.rings), { reopenedBy: ["stations"] }),
      }),
    ),
    ...plan.seams.flatMap(seamCalls),
    { id: "cloth.strapped", of: { stations: tiedDown }, gate: gate(exactly(tiedDown), { reopenedBy: ["stations", "pieces"] }) },
  ];
}

function seamCalls(seam: Seam): Call[] {
  const of = { seam: seam.id };
  return [{ id: `lace.${seam.id}.start`, call: "lace.start", of }, ...seam.halves.flatMap((half) => halfCalls(half, of))];
}

/** One short call a place, from the center ring out to the edge: both hands are busy. */
function halfCalls(half: SeamHalf, of: { seam: string }): Call[] {
  const here = { ...of, half: half.id, toward: half.toward, lace: half.lacePiece, eyelet: half.eyeletPiece };
  const reopenedBy = ["seams"] as const;
  const rings = half.ringsAtFt.map(
    (atFt, i): Call => ({ id: `lace.${half.id}.ring${i + 1}`, call: "lace.ring", of: { ...here, ring: i + 1, atFt } }),
  );
  return [
    ...rings,
    { id: `lace.${half.id}.valance`, call: "lace.valance", of: { ...here, rings: rings.length } },
    { id: `lace.${half.id}.back`, call: "lace.back", of: here },
    { id: `tied.${half.id}`, call: "half.tied", of: here, gate: gate(yes, { reopenedBy }) },
    { id: `looked.${half.id}`, call: "half.looked", of: here, gate: gate(noneOf, { otherThan: `tied.${half.id}`, reopenedBy }) },
  ];
}
