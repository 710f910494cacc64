import type { SiteClearances } from "../../site/clearances.ts";
import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import type { Shortfall } from "../checks/computed.ts";
import { BRIEF, COMPETENT, gate } from "../gates.ts";
import { shortfallsOf } from "../shortfalls.ts";
import type { StepDraft } from "../step.ts";

/**
 * What was worked out from the site as it was entered: one call for each kind of thing that stands too near, behind a gate that
 * only a change of the plan takes away; where nothing does, one call that says so and asks nothing. None where no site was entered.
 */
export function siteWorkedOut({ siteModel }: Brief, plan: TentPlan, worked: SiteClearances | null): StepDraft[] {
  if (siteModel === undefined || worked === null) return [];
  const { stakes, poles, cloth, ticket } = shortfallsOf(worked, plan);
  const calls = [...tooNear("site.stakes", stakes), ...tooNear("site.poles", poles), ...tooNear("site.cloth", cloth), ...tooNear("site.ticket", ticket)]; // biome-ignore format: one line reads best
  const fixes = engineered(siteModel);
  if (calls.length > 0) return [...calls, ...fixes];
  // Where a figure is missing nothing is said to be clear: the gates that measure ask for it.
  const isKnown =
    worked.neighbors.length > 0 && worked.neighbors.every(({ nearest }) => nearest.every(({ verdict }) => verdict !== "notKnown"));
  // An anchor stands in a zone, with calls of its own: nothing is said to be clear there.
  return isKnown && fixes.length === 0 ? [{ id: "site.clear", params: { neighbors: worked.neighbors.length }, work: "outside" }] : fixes;
}

function tooNear(id: string, short: readonly Shortfall[]): StepDraft[] {
  const [worst] = short;
  if (!worst) return [];
  const { kind, of, distance, wanted } = worst;
  return [
    {
      id,
      params: { kind, of: of.join(" "), distance: distance ?? "unknown", wanted: wanted ?? "unknown", others: short.length - 1 },
      work: "outside",
      gate: gate({ kind: "computed", short }, { source: BRIEF, roles: COMPETENT }),
    },
  ];
}

/** An anchor that an engineer names in place of a stake: its lines are exposed by hand first, and its paper is shown. */
function engineered({ fixes = [] }: NonNullable<Brief["siteModel"]>): StepDraft[] {
  return fixes.flatMap((fix): StepDraft[] => {
    if (fix.is !== "engineeredAnchor") return [];
    const { stake, expose } = fix;
    const at = stake.is === "plate" ? `${stake.station}.${stake.plate}` : stake.pole;
    const params = { stake: at, lines: expose.join(", ") };
    const reopenedBy = ["neighbors", "engineered", "stations", "anchors", "corner"] as const;
    return [
      {
        id: `anchor.exposed.${at}`,
        wordsKey: "anchor.exposed",
        params,
        work: "outside",
        gate: gate({ kind: "yesNo", good: true }, { roles: COMPETENT, reopenedBy }),
      },
      {
        id: `anchor.paper.${at}`,
        wordsKey: "anchor.paper",
        params,
        gate: gate({ kind: "paperOnly" }, { source: BRIEF, roles: COMPETENT, paper: "engineer", reopenedBy }),
      },
    ];
  });
}
