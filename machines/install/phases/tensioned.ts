import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { COMPETENT, gate, measures, noneOf, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { kitLines } from "./needs.ts";

/** Corners and seam ends first, then the rest from both sides at once, then once more when it has settled. */
export function tensioned(_: Brief, plan: TentPlan, { sidePoleLeanDeg }: Limits): StepDraft[] {
  const sidePoleFt = plan.spec.sidePoleFt;
  const seams = plan.seams.length;
  const calls: StepDraft[] = [
    { id: seams > 0 ? "tension.seamEnds" : "tension.corners" },
    { id: "tension.plumb", gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "tension.sides" },
    {
      id: "plumb",
      needs: kitLines("plumbBob"),
      params: { sidePoleFt },
      gate: gate(
        measures(
          "in",
          plan.edges.map((e) => e.name),
          0,
          offPlumbIn(sidePoleLeanDeg.is, sidePoleFt),
        ),
        {
          hard: false,
          source: sidePoleLeanDeg.source,
          reopenedBy: ["sheet", "stations"],
        },
      ),
    },
    { id: "feet.onLine", needs: kitLines("stringLine"), gate: gate(yes, { reopenedBy: ["stations"] }) },
    ...(seams > 0 ? [{ id: "seams.gaps", gate: gate(noneOf, { reopenedBy: ["seams", "blow"] }) }] : []),
    { id: "handles.locked", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    { id: "round.again", gate: gate(yes, { roles: COMPETENT, reopenedBy: ["stations", "anchors", "poles", "blow"] }) },
  ];
  return calls.map((c) => ({ ...c, work: "outside" }));
}

/** How far the top of a pole may stand off plumb, in: the sine of its lean (degrees) times its length (ft), to the nearest sixteenth. Plain geometry. */
export const offPlumbIn = (deg: number, poleFt: number): number => Math.round(Math.sin((deg * Math.PI) / 180) * poleFt * 12 * 16) / 16;
