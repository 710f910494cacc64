import { Temporal } from "temporal-polyfill";
import type { Brief, Sheet, Ticket } from "../../machines/install/brief.ts";
import { unknownIn } from "../../machines/install/facts.ts";
import type { Words } from "../../views/text/words.ts";
import type { Fields } from "./form.ts";
import { kitToForm } from "./kit.ts";
import { tentToForm } from "./tent.ts";

const text = (value: unknown) => (value === null || value === undefined ? "" : String(value));
const flat = (group: string, of: object) =>
  Object.fromEntries(Object.entries(of).flatMap(([k, v]) => (typeof v === "object" && v !== null ? [] : [[`${group}.${k}`, text(v)]])));

/** A brief as the fields of its form, for amending it. */
export function briefToForm(brief: Brief, names: Readonly<Record<string, string>>, words: Words): Fields {
  const yesNo = (on: boolean) => (on ? "yes" : "no");
  const { tent, sheet, site, ticket, use } = brief;
  return {
    title: brief.title,
    zone: brief.zone,
    rehearsal: yesNo(brief.rehearsal === true),
    ...tentToForm(tent, words),
    ...kitToForm(brief.kit),
    ...(sheet ? sheetToForm(sheet) : {}),
    ...flat("site", site),
    "site.soilKnown": yesNo(site.soilKnown),
    "site.street.edge": text(site.street?.edge),
    "site.street.name": text(site.street?.name),
    "site.overhead": site.overheadKv.length === 0 ? "none" : site.overheadKv.map((kv) => kv ?? "unknown").join(", "),
    ...(ticket ? ticketToForm(ticket, brief.zone) : {}),
    ...Object.fromEntries(unknownIn(brief).map((fact) => [`unknown.${fact}`, "yes"])),
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

/** A tent's sheet as the fields of its form. */
export const sheetToForm = (sheet: Sheet): Fields => ({
  ...flat("sheet", sheet),
  "sheet.stakeLeanDeg.from": text(sheet.stakeLeanDeg?.from),
  "sheet.stakeLeanDeg.to": text(sheet.stakeLeanDeg?.to),
});

const ANSWER = { true: "marked", false: "clear", unanswered: "unanswered" } as const;

const ticketToForm = (ticket: Ticket, zone: string): Fields => ({
  ...flat("ticket", ticket),
  "ticket.validFrom": local(ticket.validFrom, zone),
  "ticket.validTo": local(ticket.validTo, zone),
  // So that a change of something else leaves the ticket as it is, to the letter.
  "ticket.order": ticket.utilities.map((u) => u.kind).join(","),
  ...Object.fromEntries(ticket.utilities.map((u) => [`ticket.utilities.${u.kind}`, ANSWER[`${u.marked}`]])),
});

/** A local time, to the minute where it falls on one; the last moment of a day is the day, as it was written. */
function local(at: number, zone: string): string {
  const time = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone).toPlainDateTime();
  if (time.second === 0 && time.millisecond === 0) return time.toString({ smallestUnit: "minute" });
  const lastOfDay = time.hour === 23 && time.minute === 59 && time.second === 59 && time.millisecond === 999;
  return lastOfDay ? time.toPlainDate().toString() : time.toString();
}
