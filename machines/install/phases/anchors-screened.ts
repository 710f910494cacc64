import { ANCHOR_FACTOR } from "../../loads/sources.ts";
import type { TentPlan } from "../../tent/types.ts";
import { type AnchorsScreened, screenedOf } from "../anchor-screening.ts";
import type { Brief } from "../brief.ts";
import { type PullsFor, pullToReachLbf } from "../checks/pulls-for.ts";
import { BRIEF, COMPETENT, figures, type GateDraft, gate } from "../gates.ts";
import type { StepDraft } from "../step.ts";
import { kitLines } from "./needs.ts";

/** Three, one of them where the ground looks softest: `MIN_PULLS` of the loads. */
const PULLS = ["softest", "second", "third"] as const;
const NONE = { before: [], after: [] } as const;

/**
 * What the screening of the anchors comes to: told before the first stake is driven, and asked for once all are in. Where it is short,
 * pulls on this ground or an engineer's paper open the way, and nothing else; where it rests on pulls that were made before, heavy rain
 * asks for them again. Not known and not short neither open nor shut anything. Empty where nobody told anything of the anchors.
 */
export function anchorsScreened(
  brief: Brief,
  plan: TentPlan,
): { readonly before: readonly StepDraft[]; readonly after: readonly StepDraft[] } {
  const screened = screenedOf(brief, plan);
  return screened ? { before: [toldBefore(screened)], after: askedAfter(screened) } : NONE;
}

/** Whether a job's anchors may have to be pulled on. */
export const mayPullAnchors = (brief: Brief, plan: TentPlan): boolean => anchorsScreened(brief, plan).after.length > 0;

function toldBefore({ screening: { verdict, ratio, isAtLeast, reasons, instead, capacity }, worst }: AnchorsScreened): StepDraft {
  return {
    id: "anchors.screened",
    wordsKey: `screened.${capacity.by === "refused" ? "sand" : verdict}`,
    params: {
      ...(worst ? { station: worst.station, demandLbf: worst.demandLbf } : {}),
      // Rounded up: nothing is told to be kinder than it was worked out to be.
      ...(ratio === null ? {} : { percent: Math.ceil(ratio * 100 - 1e-6), ...(isAtLeast ? { orMore: "orMore" } : {}) }),
      because: reasons[0] ?? "none",
      instead: instead.join(" "),
    },
  };
}

function askedAfter(screened: AnchorsScreened): readonly StepDraft[] {
  const { screening, worst, isLoadKnown } = screened;
  const call = (wordsKey: string, params: StepDraft["params"], declared: GateDraft): StepDraft[] => [
    { id: "anchors.pulled", wordsKey, work: "outside", needs: kitLines("pullGauge", "comeAlong"), params, gate: declared },
  ];
  if (screening.verdict === "short") {
    if (!worst || !isLoadKnown) return call("anchors.noLoad", { because: screening.reasons[0] ?? "none" }, { ...pulledGate(null) });
    return call("anchors.pulls", paramsOf(worst), pulledGate(worst));
  }
  const isByPulls = screening.verdict === "notShort" && screening.capacity.by === "pulls";
  return isByPulls && worst ? call("anchors.pulledBefore", paramsOf(worst), { ...pulledGate(worst), dormant: true }) : [];
}

const paramsOf = ({ station, demandLbf }: NonNullable<AnchorsScreened["worst"]>) => ({ station, demandLbf });

/** Where no load can be worked out there is nothing that a pull could be held against: only an engineer's paper is left. */
function pulledGate(worst: AnchorsScreened["worst"]): GateDraft {
  const declared = {
    roles: COMPETENT,
    reopenedBy: ["rain", "sheet", "anchors", "site", "stations", "anchorage"],
    paper: "engineer",
  } as const;
  if (worst === null) return gate({ kind: "paperOnly" }, { source: BRIEF, ...declared });
  const { station: _, ...pulls } = worst;
  const { title, section } = ANCHOR_FACTOR;
  return gate({ ...pullsCheck(pulls), pulls } as GateDraft["check"], { source: { title, section }, ...declared });
}

const pullsCheck = (pulls: PullsFor) =>
  figures("lbf", Object.fromEntries(PULLS.map((name) => [name, { from: pullToReachLbf(pulls), to: null }])));
