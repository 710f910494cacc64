import { loadOf } from "../../tent/load.ts";
import type { TentPlan } from "../../tent/types.ts";
import type { Brief, Ticket } from "../brief.ts";
import { onSite } from "../crew.ts";
import { BRIEF, COMPETENT, document, exactly, gate, measure, yes } from "../gates.ts";
import type { Limits } from "../limits.ts";
import type { StepDraft } from "../step.ts";

const PRIVATE_LINES = ["irrigation", "lighting", "septic"] as const;

/** Nothing goes into the ground until everybody who has a line there has answered. */
export function utilitiesMarked({ sheet, ticket, crew, site, kit }: Brief, plan: TentPlan, limits: Limits): StepDraft[] {
  const { overheadFt } = limits;
  const { is: toleranceIn, source: nearest } = limits.toleranceIn;
  const load = loadOf(plan, kit);
  const marked = ticket.utilities.filter((u) => u.marked);
  const poleFt = plan.spec.centerPoleFt;
  const lines = site.overheadKv.length > 0 ? site.overheadKv : [null];
  return [
    {
      id: "sheet.atHand",
      params: { document: sheet.document },
      gate: gate(document(sheet.document), { source: BRIEF, roles: COMPETENT, reopenedBy: ["sheet"] }),
    },
    {
      id: "kit.loaded",
      params: { lines: load.length, things: load.reduce((sum, line) => sum + line.count, 0) },
      // Kept when the plan changes on the site: what was loaded was loaded, and is judged against what is wanted now.
      gate: gate({ kind: "counts", want: Object.fromEntries(load.map((line) => [line.item, line.count])), as: null }, { hard: false }),
    },
    { id: "talk.hazards", gate: gate(yes, { reopenedBy: ["crew"] }) },
    { id: "talk.stopSignal", gate: gate(yes, { reopenedBy: ["crew"] }) },
    {
      id: "talk.rallyPoint",
      params: { rallyPoint: site.rallyPoint, firstAid: site.firstAid, address: site.address },
      gate: gate(yes, { reopenedBy: ["site", "crew"] }),
    },
    {
      id: "talk.headcount",
      params: { crew: onSite(crew).length },
      gate: gate(exactly(onSite(crew).length), { source: BRIEF, reopenedBy: ["crew"] }),
    },
    {
      id: "locate.ticket",
      params: { ticket: ticket.number },
      gate: inForce(ticket),
    },
    {
      id: "locate.covers",
      params: { setbackFt: plan.spec.setbackFt },
      gate: gate(yes, { roles: COMPETENT, reopenedBy: ["ticket", "stations"] }),
    },
    ...ticket.utilities.map(
      (u): StepDraft => ({
        id: `locate.${u.kind}`,
        wordsKey: u.marked ? "locate.marked" : "locate.clear",
        params: { utility: u.kind },
        gate: gate(yes, { roles: COMPETENT, reopenedBy: ["ticket"] }),
      }),
    ),
    { id: "marks.walked", params: { marked: marked.length }, gate: gate(yes, { reopenedBy: ["ticket"] }) },
    ...PRIVATE_LINES.map(
      (line): StepDraft => ({
        id: `private.${line}`,
        wordsKey: "private.asked",
        params: { line },
        gate: gate(yes, { roles: COMPETENT, reopenedBy: ["site"] }),
      }),
    ),
    ...lines.map((kv, i): StepDraft => {
      const clearFt = overheadFt.is[i] ?? null;
      const listed = site.overheadKv.length > 0;
      return {
        id: `overhead.${i + 1}`,
        wordsKey: listed ? "overhead.line" : "overhead.any",
        params: { line: i + 1, kv: kv ?? "unknown", poleFt, clearFt: clearFt ?? "unknown" },
        gate:
          clearFt === null
            ? gate({ kind: "paperOnly" }, { source: overheadFt.source, roles: COMPETENT, reopenedBy: ["site"], paper: "lineOwner" })
            : gate(measure("ft", poleFt + clearFt, null, !listed), {
                source: overheadFt.source,
                roles: COMPETENT,
                reopenedBy: ["site", "poles", "stations"],
                paper: "lineOwner",
              }),
      };
    }),
    { id: "white.footprint" },
    { id: "white.stakeLine", params: { setbackFt: plan.spec.setbackFt }, gate: gate(yes, { reopenedBy: ["stations"] }) },
    ...marked.map(
      (u): StepDraft => ({
        id: `nearest.${u.kind}`,
        wordsKey: "nearest.mark",
        params: { utility: u.kind, toleranceIn },
        gate: gate(measure("in", toleranceIn, null), {
          source: nearest,
          roles: COMPETENT,
          reopenedBy: ["ticket", "stations", "anchors"],
          paper: "utilityOwner",
        }),
      }),
    ),
    {
      id: "nearest.private",
      params: { toleranceIn },
      gate: gate(measure("in", toleranceIn, null, true), {
        source: nearest,
        roles: COMPETENT,
        reopenedBy: ["site", "stations", "anchors"],
        paper: "siteOwner",
      }),
    },
  ];
}

/** The ticket in hand and in force at this moment: asked when the marks are checked, and again on the day stakes are driven. */
export const inForce = (ticket: Ticket) =>
  gate(
    { kind: "document", expected: ticket.number, validFrom: ticket.validFrom, validTo: ticket.validTo },
    {
      source: { title: "The locate ticket's own dates; local one-call law governs", section: "start and expiry" },
      roles: COMPETENT,
      reopenedBy: ["ticket"],
    },
  );
