import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { onSite } from "../crew.ts";
import { COMPETENT, exactly, gate, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { gust } from "./gust.ts";

/** A line of poles that goes up together. */
export type Line = { readonly id: string; readonly kind: "quarters" | "center"; readonly row: string; readonly poles: readonly string[] };

/** The lines in the order that the sheet gives: quarters leaned in from one end and then the centers, or the centers first. */
export function linesOf({ sheet }: Brief, plan: TentPlan): Line[] {
  const quarters = plan.rows.flatMap((r): Line[] =>
    r.quarters.length > 0 ? [{ id: `quarters.${r.id}`, kind: "quarters", row: r.id, poles: r.quarters }] : [],
  );
  const centers = plan.rows.flatMap((r) =>
    r.centers.map((pole): Line => ({ id: `center.${pole}`, kind: "center", row: r.id, poles: [pole] })),
  );
  return sheet.interiorOrder === "quartersFirst" ? [...quarters, ...centers] : [...centers, ...quarters];
}

/** The most dangerous hour: people under cloth, with poles that do not stand by themselves yet. */
export function interiorRaised(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const poles = plan.poles.length;
  const lines = linesOf(brief, plan);
  return [
    { id: "hats", gate: gate(yes) },
    { id: "poles.pinned", params: { poles }, gate: gate(exactly(poles), { reopenedBy: ["poles"] }) },
    { id: "plates.atMarks", params: { poles }, gate: gate(exactly(poles), { reopenedBy: ["poles"] }) },
    { id: "under.caller", gate: gate(yes, { roles: COMPETENT, reopenedBy: ["crew"] }) },
    { id: "under.hands", gate: gate(yes, { roles: COMPETENT, reopenedBy: ["crew", "poles"] }) },
    { id: "under.wayOut", gate: gate(yes, { roles: COMPETENT }) },
    ...lines.flatMap((line) =>
      underCalls(
        brief,
        limits,
        line.id,
        { kind: line.kind, row: line.row, poles: line.poles.join(" "), count: line.poles.length },
        "lean.line",
      ),
    ),
    ...underCalls(brief, limits, "upright", { kind: "all", row: "all", poles: "all", count: poles }, "stand.all"),
    { id: "groundCloth.out", gate: gate(yes, { reopenedBy: ["pieces"] }) },
  ];
}

/**
 * Wind, those who go under counted, the lift, feet restrained before hands come off, and the same number counted out by
 * somebody else. From the lift to the count out it is safer to finish than to leave.
 */
function underCalls(brief: Brief, limits: Limits, id: string, params: StepDraft["params"], lift: string): StepDraft[] {
  const resumeFrom = `gust.${id}`;
  const here = { params: params!, resumeFrom };
  const crew = onSite(brief.crew).length;
  return [
    gust(resumeFrom, limits),
    {
      id: `under.${id}`,
      wordsKey: "under.in",
      ...here,
      gate: gate({ kind: "count", from: 0, to: crew }, { roles: COMPETENT, reopenedBy: ["crew"] }),
    },
    { id: `lift.${id}`, wordsKey: lift, ...here, committed: true },
    {
      id: `feet.${id}`,
      wordsKey: "feet.restrained",
      ...here,
      committed: true,
      gate: gate(yes, { roles: COMPETENT, reopenedBy: ["poles"] }),
    },
    {
      id: `out.${id}`,
      wordsKey: "under.out",
      ...here,
      committed: true,
      gate: gate({ kind: "sameCount", as: `under.${id}` }, { roles: COMPETENT, secondPersonTo: `under.${id}`, reopenedBy: ["crew"] }),
    },
  ];
}
