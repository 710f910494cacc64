import type { TentPlan } from "../tent/types.ts";
import type { Brief } from "./brief.ts";
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
import { type Call, PHASES, type PhaseId, type RouteId, type Script, type SiteState, type Step } from "./step.ts";

const SITE: Record<PhaseId | RouteId, SiteState> = {
  utilitiesMarked: "clear",
  anchorsSet: "staked",
  sectionsJoined: "spread",
  perimeterRaised: "spread",
  interiorRaised: "raised",
  tensioned: "raised",
  inspected: "raised",
  standing: "raised",
  struck: "staked",
  ground: "spread",
  up: "raised",
};
/** Fills in what a call did not say. The words are found under the id unless the call names others. */
const step = (phase: Step["phase"], c: Call): Step => ({
  id: c.id,
  phase,
  call: c.call ?? c.id,
  of: c.of ?? {},
  gate: c.gate ? { id: c.id, ...c.gate } : null,
  committed: c.committed ?? false,
  site: c.site ?? SITE[phase],
  goOnFrom: c.goOnFrom ?? null,
});

/** Which calls this plan needs, phase by phase. */
export function scriptOf(brief: Brief, plan: TentPlan): Script {
  const phases: Record<PhaseId, (brief: Brief, plan: TentPlan) => Call[]> = {
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
  const way = (route: RouteId) => makingSafe(route, brief).map((c) => step(route, c));
  return {
    steps: PHASES.flatMap((phase) => phases[phase](brief, plan).map((c) => step(phase, c))),
    ways: { ground: way("ground"), up: way("up"), standing: way("standing") },
  };
}
