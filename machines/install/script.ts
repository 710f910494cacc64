import type { TentPlan } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
import { conditionsOf } from "./conditions.ts";
import type { Limits } from "./limits.ts";
import { anchorsSet } from "./phases/anchors-set.ts";
import { inspected } from "./phases/inspected.ts";
import { interiorRaised } from "./phases/interior-raised.ts";
import { makingSafe } from "./phases/making-safe.ts";
import { perimeterRaised } from "./phases/perimeter-raised.ts";
import { sectionsJoined } from "./phases/sections-joined.ts";
import { standing } from "./phases/standing.ts";
import { struck } from "./phases/struck.ts";
import { tensioned } from "./phases/tensioned.ts";
import { utilitiesMarked } from "./phases/utilities-marked.ts";
import { type EscapeId, PHASES, type PhaseId, type Script, type SiteState, type Step, type StepDraft } from "./step.ts";
import { watchOf } from "./watch.ts";

const SITE: Record<PhaseId | EscapeId, SiteState> = {
  utilitiesMarked: "clear",
  anchorsSet: "staked",
  sectionsJoined: "spread",
  perimeterRaised: "spread",
  interiorRaised: "raised",
  tensioned: "raised",
  inspected: "raised",
  standing: "raised",
  struck: "raised",
  ground: "spread",
  up: "raised",
};
/** Fills in what a call did not say. The words are found under the id unless the call names others. */
const step = (phase: Step["phase"], c: StepDraft): Step => ({
  id: c.id,
  phase,
  wordsKey: c.wordsKey ?? c.id,
  params: c.params ?? {},
  gate: c.gate ? { id: c.id, ...c.gate } : null,
  work: c.work ?? null,
  needs: c.needs ?? [],
  site: c.site ?? SITE[phase],
  resumeFrom: c.resumeFrom ?? null,
  onlyAfter: c.onlyAfter ?? null,
  begins: c.begins ?? null,
});

/** Which calls this plan needs, phase by phase, asked within these limits. */
export function scriptOf(brief: Brief, plan: TentPlan, limits: Limits): Script {
  const phases: Record<PhaseId, (brief: Brief, plan: TentPlan, limits: Limits) => StepDraft[]> = {
    utilitiesMarked,
    anchorsSet,
    sectionsJoined,
    perimeterRaised,
    interiorRaised,
    tensioned,
    inspected,
    standing,
    struck,
  };
  const way = (route: EscapeId) => makingSafe(route, brief).map((c) => step(route, c));
  const steps = PHASES.flatMap((phase) => phases[phase](brief, plan, limits).map((c) => step(phase, c)));
  const watch = watchOf(brief, limits);
  return {
    steps,
    conditions: conditionsOf(brief, steps, limits),
    escapes: { ground: way("ground"), up: way("up"), standing: way("standing") },
    ...(watch ? { watch } : {}),
  };
}
