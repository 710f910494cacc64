import { CORNERS, type TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { atLeast, exactly, gate, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { kitLines, toRaise } from "./needs.ts";

/** Side poles stand all round before anybody goes under: threaded slack, stood, pulled through, locked. */
export function perimeterRaised(_: Brief, plan: TentPlan, { minTurns }: Limits): StepDraft[] {
  const stations = plan.stations.length;
  const strapped = { reopenedBy: ["stations", "anchors"] as const };
  const straps = kitLines("perimeterStrap", "stakePlate");
  // Nothing is begun that cannot be finished: no corner goes up while a side pole or a strap is short.
  const raising = { work: "lift", needs: [...toRaise(plan), ...kitLines("cornerPole", "sidePole")] } as const;
  const up = { site: "raised", resumeFrom: "sides.laid" } as const;
  return [
    { id: "straps.threaded", work: "openCloth", needs: straps, gate: gate(yes, strapped) },
    { id: "sides.laid", work: "openCloth", gate: gate(exactly(stations), { reopenedBy: ["stations"] }) },
    ...CORNERS.map(
      (corner, i): StepDraft => ({
        id: `raise.${corner}`,
        wordsKey: i === 0 ? "raise.firstCorner" : "raise.corner",
        ...raising,
        params: { corner },
        ...up,
      }),
    ),
    ...plan.edges
      .filter((e) => e.between.length > 0)
      .map(
        (e): StepDraft => ({
          id: `raise.${e.name}`,
          wordsKey: "raise.edge",
          ...raising,
          params: { edge: e.name, poles: e.between.length, first: e.between[0]!, last: e.between.at(-1)! },
          ...up,
        }),
      ),
    { id: "sides.feet", ...up, gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "pins.both", ...up, gate: gate(exactly(stations), { reopenedBy: ["stations"] }) },
    { id: "straps.turns", ...up, gate: gate(atLeast(minTurns.is), { ...strapped, source: minTurns.source }) },
    { id: "straps.locked", ...up, gate: gate(yes, strapped) },
    { id: "sides.notTight", ...up, gate: gate({ kind: "yesNo", good: false }, { reopenedBy: ["stations"] }) },
  ];
}
