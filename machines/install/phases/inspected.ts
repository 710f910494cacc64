import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { knownOf } from "../facts.ts";
import { atLeast, COMPETENT, exactlyEach, gate, measure, SHEET, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";
import { closedFromMph } from "../watch.ts";
import { forecastFresh } from "./forecast-calls.ts";
import { kitLines } from "./needs.ts";

/** Walked by somebody who did not tension it, made fit for the public, and handed over. */
export function inspected(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const { use } = brief;
  const bySheet = { source: SHEET, roles: COMPETENT, reopenedBy: ["use", "sheet"] as const, paper: "engineer" as const };
  return [
    {
      id: "walked",
      work: "outside",
      gate: gate(exactlyEach(Object.fromEntries(plan.edges.map((e) => [e.name, e.rings]))), {
        roles: COMPETENT,
        secondPersonTo: "round.again",
        reopenedBy: ["stations", "anchors", "blow"],
      }),
    },
    { id: "trips", needs: kitLines("stakeCap", "strapFlag"), gate: gate(yes, { reopenedBy: ["stations"] }) },
    ...(use.walls ? [{ id: "walls", work: "openCloth" as const, needs: kitLines("wallSet", "ladder"), gate: gate(yes, bySheet) }] : []),
    ...exitCalls(use.occupants, limits),
    { id: "fire", gate: gate(yes, { roles: COMPETENT, reopenedBy: ["use"], paper: "fireOfficial" }) },
    { id: use.hungLoads ? "hung.loads" : "hung.nothing", gate: gate(yes, bySheet) },
    ...windPlan(use.walls, limits),
    ...forecastFresh(brief, limits),
    ...weatherPlanCalls(brief, limits),
    { id: "night.watch", gate: gate(yes, { roles: COMPETENT }) },
    { id: "handover", gate: gate(yes, { roles: COMPETENT }) },
  ];
}

/** Agreed with the customer's person, never above what is published. */
function windPlan(walls: boolean, { insideGustMph, wallsGustMph, raiseGustMph }: Limits): StepDraft[] {
  // Nobody handles a wall in more wind than cloth is handled in.
  const wallsOff = raiseGustMph.is < wallsGustMph.is ? raiseGustMph : wallsGustMph;
  const agreed = (id: string, { is, source }: Limits["insideGustMph"]): StepDraft => ({
    id,
    gate: gate(measure("mph", 1, is), { source, roles: COMPETENT, reopenedBy: ["sheet", "use"] }),
  });
  return [agreed("plan.evacuate", insideGustMph), ...(walls ? [agreed("plan.walls", wallsOff)] : [])];
}

/** The weather plan is told to the customer's person, and somebody else hears them agree, or they do it themselves. */
function weatherPlanCalls({ weatherPlan, site: { stormShelter } }: Brief, limits: Limits): StepDraft[] {
  if (!weatherPlan) return [];
  const reopenedBy = ["weather", "places", "sheet"] as const;
  const { watchedBy, clearMin } = weatherPlan;
  return [
    {
      id: "storm.plan",
      params: { watchedBy, clearMin, limitMph: closedFromMph(limits), ...knownOf({ stormShelter }) },
      gate: gate(yes, { roles: COMPETENT, reopenedBy }),
    },
    { id: "storm.agreed", gate: gate(yes, { roles: [...COMPETENT, "watcher"], secondPersonTo: "storm.plan", reopenedBy }) },
  ];
}

/** Against the table; where it gives no figure, the fire official's paper and nothing else. */
function exitCalls(occupants: number | null, { exits: table, exitSignsFrom, extinguisherFt }: Limits): StepDraft[] {
  const row = table.is;
  const params = { occupants: occupants ?? "unknown" };
  const opened = { roles: COMPETENT, reopenedBy: ["use"] as const, paper: "fireOfficial" as const };
  const exits: StepDraft[] = row
    ? [
        { id: "exits", params, gate: gate(atLeast(row.exits), { ...opened, source: table.source }) },
        { id: "exits.width", params, gate: gate(measure("in", row.widthIn, null), { ...opened, source: table.source }) },
      ]
    : [{ id: "exits", wordsKey: "exits.ask", params, gate: gate({ kind: "paperOnly" }, { ...opened, source: table.source }) }];
  const signs: StepDraft[] =
    occupants === null || occupants >= exitSignsFrom.is
      ? [{ id: "exits.signs", needs: kitLines("exitSign"), params, gate: gate(yes, { ...opened, source: exitSignsFrom.source }) }]
      : [];
  return [
    ...exits,
    ...signs,
    {
      id: "extinguishers",
      needs: kitLines("extinguisher"),
      params,
      gate: gate(measure("ft", 0, extinguisherFt.is), { ...opened, source: extinguisherFt.source }),
    },
  ];
}
