import type { LoadItem } from "../../tent/load.ts";
import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { atLeast, COMPETENT, exactly, type GateDraft, gate, measure, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import { replacedAt, replacedIn } from "../replaced.ts";
import type { StepDraft } from "../step.ts";
import { DRIVING, kitLines, toRaise } from "./needs.ts";
import { asOne, countIn, countOut, type Line, lineParams, linesOf, MIN_HANDS } from "./pole-lines.ts";

/**
 * The most dangerous hour: people under cloth, with poles that do not stand by themselves yet. Line by line: counted in, stood on
 * its plates, tied, counted out. Where the sheet ties all of them at the end, whoever ties is counted in and out for that.
 */
export function interiorRaised(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const lines = linesOf(brief, plan);
  const ties = (line: Line): StepDraft => ({ ...tied(brief, plan, line), gate: driven(limits) });
  const tying = [
    { id: TYING, wordsKey: "under.ties", work: "under" as const, needs: whole(plan), gate: countIn(brief) },
    ...lines.map(ties),
    { id: "out.ties", wordsKey: "under.out", gate: countOut(TYING) },
  ];
  return [
    { id: "poles.pinned", gate: gate(exactly(plan.poles.length), { reopenedBy: ["poles"] }) },
    { id: "under.hands", gate: gate(atLeast(MIN_HANDS), { roles: COMPETENT, reopenedBy: ["crew", "poles", "strike"] }) },
    ...lines.flatMap((line) => lineCalls(brief, plan, line, !tiedAtTheEnd(brief) ? [ties(line)] : [])),
    ...(!tiedAtTheEnd(brief) || lines.length === 0 ? [] : asOne(TYING, tying)),
    { id: "groundCloth.out", work: "openCloth", gate: gate(yes, { reopenedBy: ["pieces"] }) },
  ];
}

const TYING = "under.ties";

/** Nobody goes under for a pole that cannot be stood and tied. */
const whole = (plan: TentPlan, ...poles: readonly LoadItem[]): string[] => [
  ...toRaise(plan),
  ...kitLines(...poles, "interiorStake", "interiorStrap"),
  ...DRIVING,
];

/** Those who go under counted, the lift, feet restrained before hands come off, tied, and the same number counted out. */
function lineCalls(brief: Brief, plan: TentPlan, line: Line, ties: readonly StepDraft[]): StepDraft[] {
  const params = lineParams(line);
  const into = `under.${line.id}`;
  const needs = whole(plan, line.kind === "center" ? "centerPole" : "quarterPole", "polePlate");
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
    ...ties,
    { id: `out.${line.id}`, wordsKey: "under.out", params, gate: countOut(into) },
  ]);
}

/**
 * It finishes the line. Its ticket and gear were asked before anybody went under; the depth of its stakes is its answer. `anchored`:
 * poles that are strapped to an engineer's anchor, with no stake of their own.
 */
function tied({ siteModel }: Brief, plan: TentPlan, line: Line): Omit<StepDraft, "gate"> {
  const anchored = replacedAt(replacedIn(siteModel ?? {}), plan, (pole) => line.poles.includes(pole));
  return {
    id: `tied.${line.id}`,
    wordsKey: `tied.${line.kind}`,
    params: { ...lineParams(line), ...(anchored === "" ? {} : { anchored }) },
  };
}

const driven = ({ maxShowingIn }: Limits): GateDraft =>
  gate(measure("in", 0, maxShowingIn.is), {
    source: maxShowingIn.source,
    roles: COMPETENT,
    reopenedBy: ["sheet"],
    paper: "engineer",
  });

/** Each line is tied before the next goes up, unless the sheet says otherwise. */
const tiedAtTheEnd = ({ sheet }: Brief): boolean => sheet !== null && sheet.interiorTies !== "byLine";
