import { Temporal } from "temporal-polyfill";
import * as v from "valibot";
import type { Brief, Role, Site } from "../../machines/install/brief.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { COMPETENT } from "../../machines/install/gates.ts";
import type { Instant, PersonId } from "../../machines/install/ids.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import { EDGES } from "../../machines/tent/types.ts";
import { errors } from "../../views/text/en/errors.ts";
import { kitOf, kitSchema } from "./kit.ts";
import { Problem } from "./problem.ts";
import { tentProblems, unknownFields } from "./tent.ts";

const words = (most = 200) => v.pipe(v.string(), v.trim(), v.minLength(1, errors.empty), v.maxLength(most, errors.tooLong(most)));
const notNumber = (issue: v.BaseIssue<unknown>) => (typeof issue.input === "string" ? errors.notNumber(issue.input) : errors.notANumber);
const number = (from: number, to: number) =>
  v.pipe(
    v.number(notNumber),
    v.check(
      (n) => n >= from && n <= to,
      (issue) => errors.outside(issue.input, from, to),
    ),
  );
const oneOf = (names: readonly string[]) => (issue: v.BaseIssue<unknown>) =>
  issue.input ? errors.notOneOf(issue.input, names) : errors.oneOf(names);
const orNull = <S extends v.GenericSchema>(schema: S) => v.optional(v.nullable(schema), null);
const ROLES = ["lead", "deputy", "competent", "crew", "trainee", "manager", "watcher", "siteOwner"] as const satisfies readonly Role[];
const UTILITIES = ["electric", "gas", "communication", "water", "sewer", "reclaimedWater"] as const;

/** A brief as a form or an office script sends it. Lengths in the units that the names say; dates local to `zone`. */
export const briefSchema = v.object({
  title: words(80),
  zone: v.pipe(words(60), v.check(isZone, errors.zone)),
  tent: v.looseObject({}),
  sheet: v.object({
    document: words(80),
    stakeKind: words(60),
    stakeDiameterIn: number(0.25, 6),
    stakeLengthIn: number(12, 96),
    embedmentIn: orNull(number(6, 96)),
    stakeLeanDeg: orNull(
      v.pipe(
        v.object({ from: number(0, 60), to: number(0, 60) }),
        v.check((d) => d.from <= d.to, errors.order),
      ),
    ),
    soil: words(60),
    pullTestLbf: orNull(number(1, 20_000)),
    squareInPer50Ft: orNull(number(0.05, 12)),
    sidePoleLeanDeg: orNull(number(0, 10)),
    raiseGustMph: orNull(number(1, 60)),
    stopGustMph: orNull(number(1, 60)),
    interiorOrder: v.optional(v.picklist(["quartersFirst", "centersFirst"]), "quartersFirst"),
  }),
  site: v.object({
    address: words(),
    rallyPoint: words(),
    firstAid: words(),
    soilKnown: v.boolean(errors.yesOrNo),
    overheadKv: v.optional(v.pipe(v.array(v.nullable(number(0, 2000))), v.maxLength(6, errors.tooMany(6))), []),
    baselineBearingDeg: v.nullish(number(0, 360)),
    street: v.nullish(v.object({ edge: v.picklist(EDGES, oneOf(EDGES)), name: words(60) })),
  }),
  ticket: v.object({
    number: words(40),
    validFrom: words(40),
    validTo: words(40),
    toleranceIn: v.optional(number(18, 120), 24),
    utilities: v.pipe(
      v.array(v.object({ kind: v.picklist(UTILITIES, oneOf(UTILITIES)), marked: v.boolean(errors.yesOrNo) })),
      v.minLength(1, errors.noUtilities),
      v.maxLength(6, errors.tooMany(6)),
    ),
  }),
  use: v.object({
    occupants: orNull(v.pipe(number(0, 50_000), v.integer(errors.whole))),
    permit: v.optional(v.picklist(["required", "notRequired", "unknown"]), "unknown"),
    fabricCertificate: v.optional(v.picklist(["required", "notRequired", "unknown"]), "unknown"),
    walls: v.boolean(errors.yesOrNo),
    hungLoads: v.boolean(errors.yesOrNo),
  }),
  rehearsal: v.optional(v.boolean(errors.yesOrNo), false),
  kit: v.nullish(kitSchema),
  crew: v.pipe(
    v.array(v.object({ name: words(60), role: v.picklist(ROLES, oneOf(ROLES)) })),
    v.minLength(2, errors.crewOfTwo),
    v.maxLength(40, errors.tooMany(40)),
  ),
});
export type BriefInput = v.InferInput<typeof briefSchema>;
export type Parsed = { frozen: Frozen; names: Record<PersonId, string> };

/** A brief from outside as a job that can be opened, or a Problem that names every field that is wrong. */
export function readBrief(input: unknown): Parsed {
  const read = v.safeParse(briefSchema, input);
  const fields: Record<string, string> = {};
  if (!read.success) for (const issue of read.issues) fields[v.getDotPath(issue) ?? "brief"] ??= sentenceOf(issue);
  const tent = checkSpec(((input as { tent?: object } | null)?.tent ?? {}) as Parameters<typeof checkSpec>[0]);
  if ("problems" in tent) Object.assign(fields, tentProblems(tent.problems));
  for (const [field, why] of unknownFields(read.success ? read.output.tent : {})) fields[`tent.${field}`] = why;
  if (!read.success || "problems" in tent) throw new Problem(422, errors.briefRefused, fields);
  const { title, zone, sheet, site, ticket, use, crew, rehearsal } = read.output;
  const kit = kitOf(read.output.kit);
  const validFrom = instant(ticket.validFrom, zone, "start");
  const validTo = instant(ticket.validTo, zone, "end");
  if (validFrom === null) fields["ticket.validFrom"] = errors.date(ticket.validFrom);
  if (validTo === null) fields["ticket.validTo"] = errors.date(ticket.validTo);
  if (validFrom !== null && validTo !== null && validTo <= validFrom) fields["ticket.validTo"] = errors.endsBefore;
  if (sheet.embedmentIn !== null && sheet.embedmentIn > sheet.stakeLengthIn)
    fields["sheet.embedmentIn"] = errors.deeperThanStake(sheet.embedmentIn, sheet.stakeLengthIn);
  if ((sheet.raiseGustMph ?? 20) > (sheet.stopGustMph ?? 25))
    fields["sheet.raiseGustMph"] = errors.raiseOverStop(sheet.raiseGustMph ?? 20, sheet.stopGustMph ?? 25);
  if (!crew.some((p) => p.role === "lead")) fields.crew = errors.noLead;
  else if (crew.filter((p) => COMPETENT.includes(p.role)).length < 2) fields.crew = errors.secondCompetent;
  else if (new Set(crew.map((p) => p.name.toLowerCase())).size < crew.length) fields.crew = errors.sameName;
  if (new Set(ticket.utilities.map((u) => u.kind)).size < ticket.utilities.length) fields["ticket.utilities"] = errors.utilityTwice;
  if (Object.keys(fields).length > 0) throw new Problem(422, errors.briefRefused, fields);
  const people = crew.map((p, i) => ({ id: `p${i + 1}`, role: p.role }));
  const brief: Brief = {
    title,
    zone,
    tent: tent.spec,
    sheet,
    site: siteOf(site),
    use,
    crew: people,
    ticket: { ...ticket, validFrom: validFrom!, validTo: validTo! },
    ...(kit ? { kit } : {}),
    ...(rehearsal ? { rehearsal } : {}),
  };
  return {
    frozen: freeze(brief),
    names: Object.fromEntries(crew.map((p, i) => [`p${i + 1}`, p.name])),
  };
}

/** What is wrong with a field, in our words: the library's own name types, which say nothing to a person. */
function sentenceOf({ input, received, message }: v.BaseIssue<unknown>): string {
  if (received === "undefined") return errors.missing;
  return /^Invalid /.test(message) ? errors.wrongKind(input) : message;
}

/** What was not said of a site is not there: a brief without it is frozen as it always was. */
function siteOf({ baselineBearingDeg, street, ...site }: v.InferOutput<typeof briefSchema>["site"]): Site {
  return {
    ...site,
    ...(typeof baselineBearingDeg === "number" ? { baselineBearingDeg } : {}),
    ...(street ? { street } : {}),
  };
}

function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

/** A local day or time of the zone; a day means its first moment at the start and its last at the end. `null` where it is neither. */
function instant(text: string, zone: string, end: "start" | "end"): Instant | null {
  try {
    if (text.includes("T")) return Temporal.PlainDateTime.from(text).toZonedDateTime(zone).epochMilliseconds;
    const day = Temporal.PlainDate.from(text);
    const from = day.toZonedDateTime(zone).epochMilliseconds;
    return end === "start" ? from : day.add({ days: 1 }).toZonedDateTime(zone).epochMilliseconds - 1;
  } catch {
    return null;
  }
}
