import { loadOf } from "../../tent/load.ts";
import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { onSite } from "../crew.ts";
import { COMPETENT, exactly, gate, yes } from "../gates.ts";
import type { StepId } from "../ids.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { gust } from "./gust.ts";
import { linesOf } from "./interior-raised.ts";

/** Where a strike begins, by how far the job had got. */
export const STRIKE_FROM = { standing: "strike.people", cloth: "strike.unlace", stakes: "strike.stakes" } as const satisfies Record<
  string,
  StepId
>;

/** Down in the reverse order: interior before any perimeter strap comes off, and everything counted back. */
export function struck(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const gustId = "strike.gust";
  const kit = (item: string) => plan.kit.find((k) => k.item === item)?.count ?? 0;
  const load = loadOf(plan, brief.kit);
  const stakes = kit("perimeterStake") + kit("interiorStake");
  const up: StepDraft[] = [
    { id: STRIKE_FROM.standing, committed: true, gate: gate(yes, { roles: COMPETENT }) },
    { id: "strike.power", committed: true, gate: gate(yes, { roles: COMPETENT }) },
    gust(gustId, limits),
    { id: "strike.walls", gate: gate(yes) },
    { id: "strike.ease" },
    {
      id: "strike.under",
      wordsKey: "under.in",
      params: { kind: "all", row: "all", poles: "all", count: plan.poles.length },
      gate: gate({ kind: "count", from: 0, to: onSite(brief.crew).length }, { roles: COMPETENT, reopenedBy: ["crew"] }),
    },
    ...linesOf(brief, plan)
      .reverse()
      .map(
        (l): StepDraft => ({
          id: `lower.${l.id}`,
          wordsKey: "lower.line",
          params: { kind: l.kind, row: l.row, poles: l.poles.join(" "), count: l.poles.length },
          committed: true,
        }),
      ),
    {
      id: "strike.out",
      wordsKey: "under.out",
      params: { kind: "all", row: "all", poles: "all", count: plan.poles.length },
      committed: true,
      gate: gate({ kind: "sameCount", as: "strike.under" }, { roles: COMPETENT, secondPersonTo: "strike.under", reopenedBy: ["crew"] }),
    },
    {
      id: "strike.interiorDown",
      params: { poles: plan.poles.length },
      committed: true,
      gate: gate(exactly(plan.poles.length), { roles: COMPETENT, reopenedBy: ["poles"] }),
    },
    { id: "strike.sides", committed: true },
    { id: "strike.corners", committed: true },
  ].map((c: StepDraft) => ({ ...c, site: "raised", resumeFrom: gustId }));
  return [
    ...up,
    { id: STRIKE_FROM.cloth, wordsKey: plan.seams.length > 0 ? "strike.unlace" : "strike.lower", site: "spread" },
    { id: "strike.fold", site: "spread" },
    { id: STRIKE_FROM.stakes, params: { stakes } },
    {
      id: "back.stakes",
      params: { stakes },
      gate: gate(exactly(stakes), { roles: COMPETENT, reopenedBy: ["anchors", "stations", "poles"], paper: "siteOwner" }),
    },
    {
      id: "back.kit",
      params: { lines: load.length },
      gate: gate(
        { kind: "counts", want: Object.fromEntries(load.map((line) => [line.item, line.count])), as: "kit.loaded" },
        { hard: false },
      ),
    },
    { id: "strike.ground", gate: gate(yes, { roles: COMPETENT }) },
  ];
}
