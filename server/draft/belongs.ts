import { DEFAULTS } from "../../machines/install/limits.ts";
import { stepShowing } from "../../views/pages/draft/steps.ts";
import type { PartName } from "../input/brief-parts.ts";
import type { Fields } from "../input/form.ts";
import { typed } from "../input/typed.ts";

/** What anchors are screened by is told of one ground, and of stakes as one sheet has them. */
const ANCHORS: string = "anchorage" satisfies PartName;

/** Fields without those of which something holds. */
export const without = (fields: Fields, gone: (name: string) => boolean): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([name]) => !gone(name)));

/** A draft without its sheet, and without what was said of the ground by it: as where nobody said anything of either. */
export const withoutSheet = (fields: Fields): Fields =>
  without(fields, (name) => /^sheet\./.test(name) || ["unknown.sheet", "site.soilKnown", ANCHORS].includes(name));

/** Figures of a sheet that its step does not show, and what was said by them. Nobody saw them under another document. */
const notOnSheetStep = (name: string) =>
  (/^sheet\./.test(name) && stepShowing(name) !== "sheet") || name === "site.soilKnown" || name === ANCHORS;
/** All that is so at one address: its places, ground, lines and streets, and its time. */
const ofAddress = (name: string) => /^site\./.test(name) || ["siteModel", "weatherPlan", "forecast", "zone", ANCHORS].includes(name);

/** What goes once a field says something else than it said. */
const GOES_WITH: readonly (readonly [field: string, goes: (name: string) => boolean])[] = [
  ["sheet.document", notOnSheetStep],
  ["sheet.soil", (name) => name === "site.soilKnown"],
  ["site.address", ofAddress],
];

const says = (fields: Fields, name: string) => (fields[name] ?? "").trim();
const another = (before: Fields, after: Fields, name: string) =>
  name in after && says(before, name) !== "" && says(after, name) !== says(before, name);

/** What a draft says once something was typed over it: what belonged to what is another by now goes with that, unless it was typed too. */
export function typedOver(before: Fields, over: Fields): Fields {
  const gone = GOES_WITH.filter(([field]) => another(before, over, field)).map(([, goes]) => goes);
  const left = without(before, (name) => gone.some((goes) => goes(name)));
  const elsewhere = another(before, over, "site.address");
  return { ...(elsewhere ? withUsualTolerance(left) : left), ...over };
}

/** A tolerance is local law's: that of another place stands where it keeps stakes farther from a mark than the usual one. */
function withUsualTolerance(fields: Fields): Fields {
  const inches = typed(fields["ticket.toleranceIn"], "in");
  const wider = typeof inches === "number" && inches > DEFAULTS.toleranceIn.is;
  return wider ? fields : without(fields, (name) => name === "ticket.toleranceIn");
}

/** Whether something that a tent said is said otherwise. What nobody had said yet may be filled in. */
export const isAnotherTent = (before: Fields, after: Fields): boolean =>
  Object.keys(before).some((name) => /^tent\./.test(name) && says(before, name) !== "" && says(after, name) !== says(before, name));
