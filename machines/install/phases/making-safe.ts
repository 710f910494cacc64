import type { Brief } from "../brief.ts";
import { onSite } from "../crew.ts";
import { COMPETENT, exactly, gate, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { EscapeId, StepDraft } from "../step.ts";
import { gust } from "./gust.ts";

/** The way out itself: no gate, so that nothing stale or failed can block it. */
const WAY_OUT: Record<EscapeId, readonly string[]> = {
  ground: ["tools", "cloth", "rallyPoint"],
  up: ["pole", "out", "restrain", "clear"],
  standing: ["people", "power", "restrain", "clear"],
};

/** The way out, then what must be good before anybody goes on. Only going on has gates. */
export function makingSafe(route: EscapeId, brief: Brief, limits: Limits): StepDraft[] {
  const crew = onSite(brief.crew).length;
  return [
    ...WAY_OUT[route].map(
      (call): StepDraft => ({
        id: `safe.${route}.${call}`,
        wordsKey: `safe.${call}`,
        params: { rallyPoint: brief.site.rallyPoint },
        committed: true,
      }),
    ),
    {
      id: `safe.${route}.headcount`,
      wordsKey: "safe.headcount",
      params: { crew },
      committed: true,
      gate: gate(exactly(crew), { roles: COMPETENT, reopenedBy: ["crew"] }),
    },
    gust(`safe.${route}.gust`, limits),
    { id: `safe.${route}.looked`, wordsKey: "safe.looked", gate: gate(yes, { roles: COMPETENT }) },
  ];
}
