import type { Brief } from "../brief.ts";
import { onSite } from "../crew.ts";
import { knownOf } from "../facts.ts";
import { COMPETENT, exactly, gate, yes } from "../gates.ts";
import type { EscapeId, StepDraft } from "../step.ts";

/** The way out itself: no gate, so that nothing stale or failed can block it. People first wherever some are inside. */
const WAY_OUT: Record<EscapeId, readonly string[]> = {
  ground: ["tools", "cloth", "rallyPoint"],
  up: ["pole", "out", "restrain", "clear"],
  standing: ["people", "power", "restrain", "clear"],
};

/** The way out, a count, and a look by somebody else. What the work needs is asked when it is gone on with. */
export function makingSafe(route: EscapeId, { crew, site: { rallyPoint, stormShelter } }: Brief): StepDraft[] {
  const params = knownOf({ rallyPoint, stormShelter });
  const counted = `safe.${route}.headcount`;
  return [
    ...WAY_OUT[route].map((call): StepDraft => ({ id: `safe.${route}.${call}`, wordsKey: `safe.${call}`, params })),
    {
      id: counted,
      wordsKey: "safe.headcount",
      params,
      gate: gate(exactly(onSite(crew).length), { roles: COMPETENT, reopenedBy: ["crew"] }),
    },
    { id: `safe.${route}.looked`, wordsKey: "safe.looked", gate: gate(yes, { roles: COMPETENT, secondPersonTo: counted }) },
  ];
}
