import { Temporal } from "temporal-polyfill";
import type { Brief } from "../../machines/install/brief.ts";
import type { Fields } from "./form.ts";

const text = (value: unknown) => (value === null || value === undefined ? "" : String(value));
const flat = (group: string, of: object) =>
  Object.fromEntries(Object.entries(of).flatMap(([k, v]) => (typeof v === "object" && v !== null ? [] : [[`${group}.${k}`, text(v)]])));

/** A brief as the fields of its form, for amending it. */
export function formOfBrief(brief: Brief, names: Readonly<Record<string, string>>): Fields {
  const local = (at: number) =>
    Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(brief.zone).toPlainDateTime().toString({ smallestUnit: "minute" });
  const yesNo = (on: boolean) => (on ? "yes" : "no");
  const { tent, sheet, site, ticket, use } = brief;
  return {
    title: brief.title,
    zone: brief.zone,
    rehearsal: yesNo(brief.rehearsal === true),
    ...flat("tent", tent),
    "tent.midsFt": tent.midsFt.join(", "),
    "tent.onePiece": yesNo(tent.onePiece),
    "tent.splitEnds": yesNo(tent.splitEnds),
    ...flat("sheet", sheet),
    "sheet.stakeLeanDeg.from": text(sheet.stakeLeanDeg?.from),
    "sheet.stakeLeanDeg.to": text(sheet.stakeLeanDeg?.to),
    ...flat("site", site),
    "site.soilKnown": yesNo(site.soilKnown),
    "site.overhead": site.overheadKv.length === 0 ? "none" : site.overheadKv.map((kv) => kv ?? "unknown").join(", "),
    ...flat("ticket", ticket),
    "ticket.validFrom": local(ticket.validFrom),
    "ticket.validTo": local(ticket.validTo),
    ...Object.fromEntries(ticket.utilities.map((u) => [`ticket.utilities.${u.kind}`, u.marked ? "marked" : "clear"])),
    ...flat("use", use),
    "use.walls": yesNo(use.walls),
    "use.hungLoads": yesNo(use.hungLoads),
    ...Object.fromEntries(
      brief.crew.flatMap((p, i) => [
        [`crew.${i + 1}.name`, names[p.id] ?? p.id],
        [`crew.${i + 1}.role`, p.role],
      ]),
    ),
  };
}

/** What a spec says that its form has no field for. It stays when the form is sent. */
export const besidesForm = ({ ridge, leaveOut, add, anchors }: Brief["tent"]) => ({ ridge, leaveOut, add, anchors });
