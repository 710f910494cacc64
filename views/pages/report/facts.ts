import type { Brief } from "../../../machines/install/brief.ts";
import type { Frozen } from "../../../machines/install/step.ts";
import { factsOf } from "../../parts/tent-facts.ts";
import type { Words } from "../../text/words.ts";
import type { Fact, FactGroup } from "./state.ts";

/** Fields of a brief that a report tells, by their part, as its form calls them. */
const SITE = ["address", "rallyPoint", "stormShelter", "firstAid", "soilKnown"] as const satisfies readonly (keyof Brief["site"])[];
const USE = ["occupants", "permit", "fabricCertificate", "walls", "hungLoads"] as const satisfies readonly (keyof Brief["use"])[];
const SHEET = [
  "document",
  "stakeKind",
  "stakeDiameterIn",
  "stakeLengthIn",
  "embedmentIn",
  "soil",
  "pullTestLbf",
  "interiorOrder",
  "interiorTies",
] as const satisfies readonly (keyof NonNullable<Brief["sheet"]>)[];
/** Limits that the weather is judged by. */
const GUSTS = ["raiseGustMph", "stopGustMph", "insideGustMph"] as const;

/** What was known of a job and its papers, what it is judged by, and the plan in brief: of the plan in force. */
export function factGroups({ brief, plan, limits }: Frozen, words: Words): FactGroup[] {
  const { report, groups, fieldName, sourceText, when } = words;
  const { sheet, ticket, site, use, zone } = brief;
  const fact = (field: string, value: string | number | boolean | null): Fact => ({ name: fieldName(field), is: report.value(value) });
  const date = (field: string, at: number): Fact => ({ name: fieldName(field), is: when.moment(zone, at) });
  return [
    {
      name: groups.site,
      facts: [...SITE.map((field) => fact(`site.${field}`, site[field])), { name: report.overhead, is: report.wires(site.overheadKv) }],
    },
    { name: groups.use, facts: USE.map((field) => fact(`use.${field}`, use[field])) },
    {
      name: groups.sheet,
      facts: sheet ? SHEET.map((field) => fact(`sheet.${field}`, sheet[field])) : [{ name: report.paper, is: report.none }],
    },
    {
      name: groups.ticket,
      facts: ticket
        ? [
            fact("ticket.number", ticket.number),
            date("ticket.validFrom", ticket.validFrom),
            date("ticket.validTo", ticket.validTo),
            fact("ticket.toleranceIn", ticket.toleranceIn),
            { name: report.utilities, is: ticket.utilities.map(({ kind, marked }) => report.utility(kind, marked)).join("; ") },
          ]
        : [{ name: report.paper, is: report.none }],
    },
    {
      name: report.limits,
      facts: GUSTS.map((key) => ({ name: fieldName(`sheet.${key}`), is: report.limit(limits[key].is, sourceText(limits[key].source)) })),
    },
    { name: report.plan, facts: factsOf(plan, words).map(([name, is]) => ({ name, is })) },
  ];
}
