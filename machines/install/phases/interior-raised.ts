import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { atLeast, COMPETENT, exactly, gate, measure, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { DRIVING, kitLines, toRaise } from "./needs.ts";
import { asOne, countIn, countOut, type Line, lineParams, linesOf } from "./pole-lines.ts";

/** Two at least on any interior pole. Common practice, no source; the sheet and the lead say more. */
const MIN_HANDS = 2;

/** The most dangerous hour: people under cloth, with poles that do not stand by themselves yet. Line by line, each tied before the next. */
export function interiorRaised(brief: Brief, plan: TentPlan, { maxShowingIn }: Limits): StepDraft[] {
  const poles = plan.poles.length;
  const lines = linesOf(brief, plan);
  const byLine = brief.sheet.interiorTies === "byLine";
  return [
    // It hides the dots and the locate paint that base plates and inside stakes go by.
    { id: "groundCloth.out", work: "outside", gate: gate(yes, { reopenedBy: ["pieces"] }) },
    { id: "poles.pinned", gate: gate(exactly(poles), { reopenedBy: ["poles"] }) },
    { id: "under.hands", gate: gate(atLeast(MIN_HANDS), { roles: COMPETENT, reopenedBy: ["crew", "poles", "strike"] }) },
    // Side poles alone hold the cloth: whoever sets a plate is under it as much as whoever lifts.
    ...asOne("under.plates", [
      {
        id: "under.plates",
        wordsKey: "under.plates",
        work: "under",
        needs: [...toRaise(plan), ...kitLines("polePlate")],
        gate: countIn(brief),
      },
      { id: "plates.atMarks", gate: gate(exactly(poles), { reopenedBy: ["poles"] }) },
      { id: "out.plates", wordsKey: "under.out", gate: countOut("under.plates") },
    ]),
    ...lines.flatMap((line) => [...liftCalls(brief, plan, line), ...(byLine ? [tied(line)] : [])]),
    ...(byLine ? [] : lines.map(tied)),
    {
      id: "tied.showing",
      work: "outside",
      gate: gate(measure("in", 0, maxShowingIn.is), {
        source: maxShowingIn.source,
        roles: COMPETENT,
        reopenedBy: ["sheet", "poles"],
        paper: "engineer",
      }),
    },
  ];
}

/** Those who go under counted, the lift, feet restrained before hands come off, and the same number counted out. */
function liftCalls(brief: Brief, plan: TentPlan, line: Line): StepDraft[] {
  const params = lineParams(line);
  const into = `under.${line.id}`;
  // Nobody goes under for a pole that cannot be stood and tied.
  const pole = line.kind === "center" ? "centerPole" : "quarterPole";
  const needs = [...toRaise(plan), ...kitLines(pole, "polePlate", "interiorStake", "interiorStrap")];
  return asOne(into, [
    { id: into, wordsKey: "under.in", work: "under", needs, params, gate: countIn(brief) },
    {
      id: `lift.${line.id}`,
      wordsKey: `lift.${line.kind}`,
      work: "lift",
      needs,
      params,
      gate: gate(yes, { roles: COMPETENT, past: true }),
    },
    { id: `out.${line.id}`, wordsKey: "under.out", params, gate: countOut(into) },
  ]);
}

/** Each inside stake is a stake: its ticket, paint and distance were asked before, its depth is measured when all are in. */
const tied = (line: Line): StepDraft => ({
  id: `tied.${line.id}`,
  wordsKey: `tied.${line.kind}`,
  work: "tying",
  needs: [...kitLines("interiorStake", "interiorStrap"), ...DRIVING],
  params: lineParams(line),
  // Asked again where the line has other poles than before: its count is another then.
  gate: gate(exactly(line.poles.length), { roles: COMPETENT, paper: "engineer" }),
});
