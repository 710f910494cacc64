import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { atLeast, COMPETENT, document, exactly, gate, measure, SHEET, type Source, yes } from "../gates.ts";
import { EXIT_SIGNS_FROM, EXTINGUISHER_FT, exitsFor } from "../limits.ts";
import type { StepDraft } from "../step.ts";

const EXITS: Source = { title: "International Fire Code", section: "Table 3103.12.2" };
const SIGNS: Source = { title: "Fire code as cities adopt it for tents", section: "exit signs, occupant load of 50 or more" };
const EXTINGUISHERS: Source = { title: "City fire rules for tents", section: "extinguisher within 75 ft of travel" };

/** Walked by somebody who did not tension it, made fit for the public, and handed over. */
export function inspected(brief: Brief, plan: TentPlan): StepDraft[] {
  const { use } = brief;
  const calls: StepDraft[] = [
    ...plan.edges.map(
      (e): StepDraft => ({
        id: `walked.${e.name}`,
        wordsKey: "walked.edge",
        params: { edge: e.name, stations: e.rings },
        gate: gate(exactly(e.rings), { roles: COMPETENT, secondPersonTo: "round.again", reopenedBy: ["stations", "anchors"] }),
      }),
    ),
    { id: "tails.rolled", gate: gate(yes) },
    { id: "stakes.capped", gate: gate(yes, { reopenedBy: ["stations"] }) },
    ...exitCalls(use.occupants),
    ...(use.permit === "notRequired"
      ? []
      : [
          {
            id: "permit",
            wordsKey: use.permit === "unknown" ? "permit.unknown" : "permit",
            gate: gate(document(null), { reopenedBy: ["use"], paper: "fireOfficial" }),
          },
        ]),
    ...(use.fabricCertificate === "notRequired"
      ? []
      : [
          {
            id: "certificate",
            wordsKey: use.fabricCertificate === "unknown" ? "certificate.unknown" : "certificate",
            gate: gate(document(null), { reopenedBy: ["use"], paper: "fireOfficial" }),
          },
        ]),
    ...(use.walls
      ? [{ id: "walls", gate: gate(yes, { source: SHEET, roles: COMPETENT, reopenedBy: ["use", "sheet"], paper: "engineer" }) }]
      : []),
    {
      id: use.hungLoads ? "hung.loads" : "hung.nothing",
      gate: gate(yes, { source: SHEET, roles: COMPETENT, reopenedBy: ["use", "sheet"], paper: "engineer" }),
    },
    { id: "weather.plan", gate: gate(yes, { roles: COMPETENT }) },
    { id: "handover", gate: gate(yes, { roles: COMPETENT }) },
  ];
  return calls;
}

/** Against the table; where it gives no figure, the fire official's paper and nothing else. */
function exitCalls(occupants: number | null): StepDraft[] {
  const row = occupants === null ? null : exitsFor(occupants);
  const params = {
    occupants: occupants ?? "unknown",
    exits: row?.exits ?? "unknown",
    widthIn: row?.widthIn ?? "unknown",
    walkFt: EXTINGUISHER_FT,
  };
  const opened = { roles: COMPETENT, reopenedBy: ["use"] as const, paper: "fireOfficial" as const };
  const exits: StepDraft[] = row
    ? [
        { id: "exits", params, gate: gate(atLeast(row.exits), { ...opened, source: EXITS }) },
        { id: "exits.width", params, gate: gate(measure("in", row.widthIn, null), { ...opened, source: EXITS }) },
      ]
    : [{ id: "exits", wordsKey: "exits.ask", params, gate: gate({ kind: "paperOnly" }, { ...opened, source: EXITS }) }];
  const signs: StepDraft[] =
    occupants === null || occupants >= EXIT_SIGNS_FROM
      ? [{ id: "exits.signs", params, gate: gate(yes, { ...opened, source: SIGNS }) }]
      : [];
  return [
    ...exits,
    ...signs,
    { id: "extinguishers", params, gate: gate(measure("ft", 0, EXTINGUISHER_FT), { ...opened, source: EXTINGUISHERS }) },
  ];
}
