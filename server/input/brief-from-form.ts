import { INTERIOR_ORDERS, INTERIOR_TIES, PAPERWORK } from "../../machines/install/brief-choices.ts";
import { type FactName, PLACES } from "../../machines/install/facts.ts";
import { DEFAULTS } from "../../machines/install/limits.ts";
import { UTILITIES } from "../../machines/install/utilities.ts";
import type { Fields } from "./form.ts";
import { kitFromForm } from "./kit.ts";
import { tentFromForm } from "./tent.ts";
import { typed, typedAll } from "./typed.ts";

/** What a sheet means where one end of the lean is left empty, as its form says. */
const LEAN_DEG = DEFAULTS.stakeLeanDeg.is;
const yes = (text: string | undefined) => text === "yes";

/** The form of a job as a brief, not checked yet. What cannot be read stays as it was typed, for `readBrief` to name. */
export function briefFromForm(f: Fields) {
  // What was not known stays so until somebody fills it in.
  const unknown = (fact: FactName, field: string) => yes(f[`unknown.${fact}`]) && !isTyped(f[field]);
  const places = Object.fromEntries(PLACES.filter((place) => unknown(place, `site.${place}`)).map((place) => [place, null]));
  const texts = (group: string, names: readonly string[]) => Object.fromEntries(names.map((n) => [n, f[`${group}.${n}`] ?? ""]));
  const lean = typedAll(f, "sheet.stakeLeanDeg", ["from", "to"], "deg");
  const rows = [...new Set(Object.keys(f).flatMap((k) => /^crew\.(\d+)\./.exec(k)?.[1] ?? []))];
  const kit = kitFromForm(f);
  return {
    title: f.title ?? "",
    zone: f.zone ?? "",
    rehearsal: yes(f.rehearsal),
    tent: tentFromForm(f),
    sheet: unknown("sheet", "sheet.document")
      ? null
      : {
          ...texts("sheet", ["document", "stakeKind"]),
          soil: isTyped(f["sheet.soil"]) ? f["sheet.soil"]! : null,
          ...typedAll(f, "sheet", ["stakeDiameterIn", "stakeLengthIn", "embedmentIn", "squareInPer50Ft"], "in"),
          ...typedAll(f, "sheet", ["pullTestLbf"], "lbf"),
          ...typedAll(f, "sheet", ["sidePoleLeanDeg"], "deg"),
          ...typedAll(f, "sheet", ["raiseGustMph", "stopGustMph", "insideGustMph"], "mph"),
          stakeLeanDeg: lean.from === null && lean.to === null ? null : { from: lean.from ?? LEAN_DEG.from, to: lean.to ?? LEAN_DEG.to },
          interiorOrder: f["sheet.interiorOrder"] || INTERIOR_ORDERS[0],
          interiorTies: f["sheet.interiorTies"] || INTERIOR_TIES[0],
        },
    site: {
      ...texts("site", ["address", "rallyPoint", "stormShelter", "firstAid"]),
      ...places,
      soilKnown: yes(f["site.soilKnown"]),
      overheadKv: overheadFrom(f["site.overhead"]),
      baselineBearingDeg: typed(f["site.baselineBearingDeg"], "deg"),
      street: streetFrom(f),
    },
    ticket: unknown("ticket", "ticket.number")
      ? null
      : {
          ...texts("ticket", ["number", "validFrom", "validTo"]),
          toleranceIn: typed(f["ticket.toleranceIn"], "in") ?? DEFAULTS.toleranceIn.is,
          utilities: [...new Set([...listed(f["ticket.order"]), ...UTILITIES])].flatMap((kind) => {
            const is = f[`ticket.utilities.${kind}`];
            return is === undefined || !Object.hasOwn(MARKED, is) ? [] : [{ kind, marked: MARKED[is as keyof typeof MARKED] }];
          }),
        },
    use: {
      ...typedAll(f, "use", ["occupants"], "count"),
      permit: f["use.permit"] || PAPERWORK[0],
      fabricCertificate: f["use.fabricCertificate"] || PAPERWORK[0],
      walls: yes(f["use.walls"]),
      hungLoads: yes(f["use.hungLoads"]),
    },
    crew: rows.map((n) => ({ name: f[`crew.${n}.name`] ?? "", role: f[`crew.${n}.role`] ?? "" })).filter((p) => p.name.trim() !== ""),
    ...(kit ? { kit } : {}),
  };
}

const isTyped = (text: string | undefined) => (text ?? "").trim() !== "";
/** What a form holds of a sheet and a ticket before anybody said anything. */
const HELD = ["sheet.interiorOrder", "sheet.interiorTies", "ticket.order", "ticket.toleranceIn"];

/** What a utility stands at before anybody chose. */
const NOTHING_SAID = ["notOnTicket", "unanswered"];

/** Whether anything of a sheet or a ticket is typed. */
export const saysOf = (f: Fields, fact: "sheet" | "ticket") =>
  Object.entries(f).some(
    ([name, text]) => name.startsWith(`${fact}.`) && !HELD.includes(name) && isTyped(text) && !NOTHING_SAID.includes(text!),
  );

/** A form of a change: a part of a sheet or a ticket that nobody knew is all of it, with something missing. */
export const withParts = (f: Fields): Fields => ({
  ...f,
  ...Object.fromEntries((["sheet", "ticket"] as const).filter((fact) => saysOf(f, fact)).map((fact) => [`unknown.${fact}`, ""])),
});

/** What a utility answered, by the word that the form has for it. */
const MARKED = { marked: true, clear: false, unanswered: "unanswered" } as const;

/** The utilities in the order of the ticket that the form was made from. */
const listed = (order: string | undefined) => (order ?? "").split(",").filter((kind) => (UTILITIES as readonly string[]).includes(kind));

/** "none", or voltages in kV, each a number or "unknown". */
function overheadFrom(text: string | undefined): (number | string | null)[] {
  const lines = (text ?? "").split(/[,;\s]+/).filter((kv) => kv !== "" && kv.toLowerCase() !== "kv");
  if (lines.length === 0 || (lines.length === 1 && lines[0]!.toLowerCase() === "none")) return [];
  return lines.map((kv) => (kv.toLowerCase() === "unknown" ? null : typed(kv, "count")));
}

/** Nothing where neither the edge nor the name is given. */
function streetFrom(f: Fields): unknown {
  const { "site.street.edge": edge = "", "site.street.name": name = "" } = f;
  return edge === "" && name.trim() === "" ? null : { edge, name };
}
