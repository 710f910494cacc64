import type { Brief } from "../brief.ts";
import { onSite } from "../crew.ts";
import { COMPETENT, exactly, gate, yes } from "../gates.ts";
import type { Call, RouteId } from "../step.ts";
import { gust } from "./gust.ts";

/** The way out itself: no gate, so that nothing stale or failed can block it. */
const WAY_OUT: Record<RouteId, readonly string[]> = {
  ground: ["tools", "cloth", "rallyPoint"],
  up: ["pole", "out", "restrain", "clear"],
  standing: ["people", "power", "restrain", "clear"],
};

/** The way out, then what must be good before anybody goes on. Only going on has gates. */
export function makingSafe(route: RouteId, brief: Brief): Call[] {
  const crew = onSite(brief.crew).length;
  return [
    ...WAY_OUT[route].map(
      (call): Call => ({ id: `safe.${route}.${call}`, call: `safe.${call}`, of: { rallyPoint: brief.site.rallyPoint }, committed: true }),
    ),
    {
      id: `safe.${route}.headcount`,
      call: "safe.headcount",
      of: { crew },
      committed: true,
      gate: gate(exactly(crew), { who: COMPETENT, reopenedBy: ["crew"] }),
    },
    gust(`safe.${route}.gust`, brief.sheet),
    { id: `safe.${route}.looked`, call: "safe.looked", gate: gate(yes, { who: COMPETENT }) },
  ];
}
