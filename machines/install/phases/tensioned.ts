import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, exactly, gate, measure, noneOf, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";

/** Corners and seam ends first, then the rest from both sides at once, then once more when it has settled. */
export function tensioned(_: Brief, plan: TentPlan, { sidePoleLeanDeg }: Limits): StepDraft[] {
  const poles = plan.poles.length;
  const leanDeg = sidePoleLeanDeg.is;
  const calls: StepDraft[] = [
    { id: "tension.corners" },
    ...(plan.seams.length > 0
      ? [{ id: "tension.seamEnds", params: { seamEnds: plan.stations.filter((s) => s.kind === "seamEnd").length } }]
      : []),
    { id: "tension.plumb", gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "tension.sides" },
    ...plan.edges.map(
      (e): StepDraft => ({
        id: `plumb.${e.name}`,
        wordsKey: "plumb.edge",
        params: { edge: e.name, leanDeg, sidePoleFt: plan.spec.sidePoleFt },
        gate: gate(measure("deg", -leanDeg, leanDeg), {
          hard: false,
          source: sidePoleLeanDeg.source,
          reopenedBy: ["sheet", "stations"],
        }),
      }),
    ),
    { id: "feet.onLine", gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "interior.tied", params: { poles }, gate: gate(exactly(poles), { reopenedBy: ["poles"] }) },
    ...(plan.seams.length > 0
      ? [{ id: "seams.gaps", params: { seams: plan.seams.length }, gate: gate(noneOf, { reopenedBy: ["seams"] }) }]
      : []),
    { id: "handles.locked", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    { id: "settle" },
    { id: "round.again", gate: gate(yes, { roles: COMPETENT, reopenedBy: ["stations", "anchors", "poles"] }) },
  ];
  return calls;
}
