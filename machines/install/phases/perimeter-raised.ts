import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { atLeast, COMPETENT, exactly, gate, yes } from "../gates.ts";
import { LEAST_TURNS, WIND_GOOD_S } from "../limits.ts";
import type { Call } from "../step.ts";
import { gust } from "./gust.ts";

const CORNERS = ["A", "B", "C", "D"] as const;

/** Side poles stand all round before anybody goes under. */
export function perimeterRaised({ sheet }: Brief, plan: TentPlan): Call[] {
  const stations = plan.stations.length;
  const goOnFrom = "sides.gust";
  return [
    gust(goOnFrom, sheet),
    {
      id: "sides.warning",
      call: "warning",
      gate: gate({ kind: "yesNo", good: false }, { who: COMPETENT, goodForS: WIND_GOOD_S.otherwise }),
    },
    { id: "straps.threaded", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    { id: "straps.turns", of: { turns: LEAST_TURNS }, gate: gate(atLeast(LEAST_TURNS), { reopenedBy: ["stations", "anchors"] }) },
    { id: "straps.locked", gate: gate(yes, { reopenedBy: ["stations", "anchors"] }) },
    { id: "sides.laid", of: { stations }, gate: gate(exactly(stations), { reopenedBy: ["stations"] }) },
    ...CORNERS.map(
      (corner, i): Call => ({
        id: `raise.${corner}`,
        call: i === 0 ? "raise.firstCorner" : "raise.corner",
        of: { corner },
        committed: true,
        site: "raised",
        goOnFrom,
      }),
    ),
    ...plan.edges
      .filter((e) => e.between.length > 0)
      .map(
        (e): Call => ({
          id: `raise.${e.name}`,
          call: "raise.edge",
          of: { edge: e.name, poles: e.between.length, first: e.between[0]!, last: e.between.at(-1)! },
          site: "raised",
          goOnFrom,
        }),
      ),
    { id: "pins.both", of: { stations }, site: "raised", goOnFrom, gate: gate(exactly(stations), { reopenedBy: ["stations"] }) },
    { id: "sides.feet", site: "raised", goOnFrom, gate: gate(yes, { reopenedBy: ["stations"] }) },
    { id: "sides.notTight", site: "raised", goOnFrom, gate: gate(yes, { reopenedBy: ["stations"] }) },
  ];
}
