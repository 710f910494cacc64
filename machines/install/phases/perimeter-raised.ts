import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { atLeast, COMPETENT, exactly, gate, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { gust } from "./gust.ts";

const CORNERS = ["A", "B", "C", "D"] as const;

/** Side poles stand all round before anybody goes under. */
export function perimeterRaised(_: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const stations = plan.stations.length;
  const resumeFrom = "sides.gust";
  return [
    gust(resumeFrom, limits),
    {
      id: "sides.warning",
      wordsKey: "warning",
      gate: gate({ kind: "yesNo", good: false }, { roles: COMPETENT, validForS: limits.windOtherwiseS.is }),
    },
    { id: "straps.threaded", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    {
      id: "straps.turns",
      params: { turns: limits.minTurns.is },
      gate: gate(atLeast(limits.minTurns.is), { source: limits.minTurns.source, reopenedBy: ["stations", "anchors"] }),
    },
    { id: "straps.locked", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    { id: "sides.laid", params: { stations }, gate: gate(exactly(stations), { reopenedBy: ["stations"] }) },
    ...CORNERS.map(
      (corner, i): StepDraft => ({
        id: `raise.${corner}`,
        wordsKey: i === 0 ? "raise.firstCorner" : "raise.corner",
        params: { corner },
        committed: true,
        site: "raised",
        resumeFrom,
      }),
    ),
    ...plan.edges
      .filter((e) => e.between.length > 0)
      .map(
        (e): StepDraft => ({
          id: `raise.${e.name}`,
          wordsKey: "raise.edge",
          params: { edge: e.name, poles: e.between.length, first: e.between[0]!, last: e.between.at(-1)! },
          site: "raised",
          resumeFrom,
        }),
      ),
    { id: "pins.both", params: { stations }, site: "raised", resumeFrom, gate: gate(exactly(stations), { reopenedBy: ["stations"] }) },
    { id: "sides.feet", site: "raised", resumeFrom, gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "sides.notTight", site: "raised", resumeFrom, gate: gate(yes, { reopenedBy: ["stations"] }) },
  ];
}
