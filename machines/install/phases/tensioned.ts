import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, exactly, gate, measure, noneOf, SHEET, yes } from "../gates.ts";
import { sidePoleLeanDeg } from "../limits.ts";
import type { Call } from "../step.ts";

/** Corners and seam ends first, then the rest from both sides at once, then once more when it has settled. */
export function tensioned({ sheet }: Brief, plan: TentPlan): Call[] {
  const poles = plan.poles.length;
  const leanDeg = sidePoleLeanDeg(sheet);
  const calls: Call[] = [
    { id: "tension.corners" },
    ...(plan.seams.length > 0
      ? [{ id: "tension.seamEnds", of: { seamEnds: plan.stations.filter((s) => s.kind === "seamEnd").length } }]
      : []),
    { id: "tension.plumb", gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "tension.sides" },
    ...plan.edges.map(
      (e): Call => ({
        id: `plumb.${e.name}`,
        call: "plumb.edge",
        of: { edge: e.name, leanDeg, sidePoleFt: plan.spec.sidePoleFt },
        gate: gate(measure("deg", -leanDeg, leanDeg), {
          hard: false,
          source: sheet.sidePoleLeanDeg === null ? "common practice, no source" : SHEET,
          reopenedBy: ["sheet", "stations"],
        }),
      }),
    ),
    { id: "feet.onLine", gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "interior.tied", of: { poles }, gate: gate(exactly(poles), { reopenedBy: ["poles"] }) },
    ...(plan.seams.length > 0
      ? [{ id: "seams.gaps", of: { seams: plan.seams.length }, gate: gate(noneOf, { reopenedBy: ["seams"] }) }]
      : []),
    { id: "handles.locked", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    { id: "settle" },
    { id: "round.again", gate: gate(yes, { who: COMPETENT, reopenedBy: ["stations", "anchors", "poles"] }) },
  ];
  return calls;
}
