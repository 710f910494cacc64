import type { TentPlan } from "../../tent/types.ts";
import type { Brief } from "../brief.ts";
import { atLeast, COMPETENT, document, exactly, gate, measure, SHEET, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";

/** Walked by somebody who did not tension it, made fit for the public, and handed over. */
export function inspected(brief: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
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
    ...exitCalls(use.occupants, limits),
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
function exitCalls(occupants: number | null, { exits: table, exitSignsFrom, extinguisherFt }: Limits): StepDraft[] {
  const row = table.is;
  const params = {
    occupants: occupants ?? "unknown",
    exits: row?.exits ?? "unknown",
    widthIn: row?.widthIn ?? "unknown",
    walkFt: extinguisherFt.is,
  };
  const opened = { roles: COMPETENT, reopenedBy: ["use"] as const, paper: "fireOfficial" as const };
  const exits: StepDraft[] = row
    ? [
        { id: "exits", params, gate: gate(atLeast(row.exits), { ...opened, source: table.source }) },
        { id: "exits.width", params, gate: gate(measure("in", row.widthIn, null), { ...opened, source: table.source }) },
      ]
    : [{ id: "exits", wordsKey: "exits.ask", params, gate: gate({ kind: "paperOnly" }, { ...opened, source: table.source }) }];
  const signs: StepDraft[] =
    occupants === null || occupants >= exitSignsFrom.is
      ? [{ id: "exits.signs", params, gate: gate(yes, { ...opened, source: exitSignsFrom.source }) }]
      : [];
  return [
    ...exits,
    ...signs,
    { id: "extinguishers", params, gate: gate(measure("ft", 0, extinguisherFt.is), { ...opened, source: extinguisherFt.source }) },
  ];
}
