import * as v from "valibot";
import type { Brief, Site } from "../../machines/install/brief.ts";
import { INTERIOR_ORDERS, INTERIOR_TIES, PAPERWORK } from "../../machines/install/brief-choices.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { COMPETENT } from "../../machines/install/gates.ts";
import type { PersonId, WallTime } from "../../machines/install/ids.ts";
import { DEFAULTS, MAX_GUST_MPH, MIN_TOLERANCE_IN } from "../../machines/install/limits.ts";
import { cleanName, foldName, nameProblem } from "../../machines/install/person-name.ts";
import { ROLES } from "../../machines/install/roles.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { isNoShelter } from "../../machines/install/storm-shelter.ts";
import { UTILITIES } from "../../machines/install/utilities.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import { EDGES } from "../../machines/tent/types.ts";
import type { Words } from "../../views/text/words.ts";
import { partsOf } from "./brief-parts.ts";
import { saidOf, says, saysOf, wrongKindOf } from "./issue.ts";
import { kitOf, kitSchema } from "./kit.ts";
import { localTime } from "./local-time.ts";
import { NAME_PROBLEM } from "./person-name.ts";
import { Problem, type Sentence } from "./problem.ts";
import { noFields, strict } from "./strict.ts";
import { tentProblems, unknownFields } from "./tent.ts";

const words = (most = 200) => v.pipe(v.string(), v.trim(), v.minLength(1, says("empty")), v.maxLength(most, says("tooLong", most)));
const notNumber = saysOf(({ errors }, given) => (typeof given === "string" ? errors.notNumber(given) : errors.notANumber));
const number = (from: number, to: number, says: (words: Words, n: number) => string = ({ errors }, n) => errors.outside(n, from, to)) =>
  v.pipe(
    v.number(notNumber),
    v.check(
      (n) => n >= from && n <= to,
      saysOf((words, given) => says(words, Number(given))),
    ),
  );
/** A gust limit of a sheet: the guide goes no higher than its own, and says so. */
const gust = (limit: keyof typeof MAX_GUST_MPH) => {
  const cap = MAX_GUST_MPH[limit];
  return number(1, cap, ({ errors }, mph) => (mph > cap ? errors.overCap(mph, cap) : errors.outside(mph, 1, cap)));
};
/** From a mark to a stake. The guide goes no nearer than any law does. */
const tolerance = number(MIN_TOLERANCE_IN, 120, ({ errors }, inches) =>
  inches < MIN_TOLERANCE_IN ? errors.underLeast(inches, MIN_TOLERANCE_IN) : errors.outside(inches, MIN_TOLERANCE_IN, 120),
);
const oneOf = (names: readonly string[]) => saysOf(({ errors }, given) => (given ? errors.notOneOf(given, names) : errors.oneOf(names)));
const orNull = <S extends v.GenericSchema>(schema: S) => v.optional(v.nullable(schema), null);
/** One of a list; left out, its first. */
const firstOf = <const T extends readonly [string, ...string[]]>(names: T) =>
  v.optional(v.picklist(names, oneOf(names)), names[0] as T[number]);
/** A person's name as it is kept. */
const personName = v.pipe(
  words(60),
  v.rawCheck(({ dataset, addIssue }) => {
    const problem = dataset.typed ? nameProblem(dataset.value) : null;
    if (problem !== null) addIssue({ message: saysOf(({ errors }, given) => errors[NAME_PROBLEM[problem]](String(given))) });
  }),
  v.transform(cleanName),
);

/** No tree and no tent is a shelter in a storm, whatever it is called. */
const shelter = v.pipe(
  words(),
  v.check(
    (place) => !isNoShelter(place),
    saysOf(({ errors }, given) => errors.noShelter(String(given))),
  ),
);

/** A brief as a form or an office script sends it. Lengths in the units that the names say; dates local to `zone`. */
/** Overhead lines by their voltages, what was found on the site among them. */
const MAX_OVERHEAD = 20;

export const briefSchema = strict({
  title: words(80),
  zone: v.pipe(
    words(60),
    v.check(
      isZone,
      saysOf(({ errors }, given) => errors.zone(String(given))),
    ),
  ),
  tent: v.custom<Record<string, unknown>>((tent) => typeof tent === "object" && tent !== null),
  sheet: v.nullable(
    strict({
      document: words(80),
      stakeKind: words(60),
      stakeDiameterIn: number(0.25, 6),
      stakeLengthIn: number(12, 96),
      embedmentIn: orNull(number(6, 96)),
      stakeLeanDeg: orNull(
        v.pipe(
          strict({ from: number(0, 60), to: number(0, 60) }),
          v.check((d) => d.from <= d.to, says("order")),
        ),
      ),
      soil: v.nullable(words(60)),
      pullTestLbf: orNull(number(1, 20_000)),
      squareInPer50Ft: orNull(number(0.05, 12)),
      sidePoleLeanDeg: orNull(number(0, 10)),
      raiseGustMph: orNull(gust("raiseGustMph")),
      stopGustMph: orNull(gust("stopGustMph")),
      insideGustMph: orNull(gust("insideGustMph")),
      interiorOrder: firstOf(INTERIOR_ORDERS),
      interiorTies: firstOf(INTERIOR_TIES),
    }),
  ),
  site: strict({
    address: words(),
    rallyPoint: v.nullable(words()),
    stormShelter: v.nullable(shelter),
    firstAid: v.nullable(words()),
    soilKnown: v.boolean(says("yesOrNo")),
    overheadKv: v.optional(v.pipe(v.array(v.nullable(number(0, 2000))), v.maxLength(MAX_OVERHEAD, says("tooMany", MAX_OVERHEAD))), []),
    baselineBearingDeg: v.nullish(number(0, 360)),
    street: v.nullish(strict({ edge: v.picklist(EDGES, oneOf(EDGES)), name: words(60) })),
  }),
  ticket: v.nullable(
    strict({
      number: words(40),
      validFrom: words(40),
      validTo: words(40),
      toleranceIn: v.optional(tolerance, DEFAULTS.toleranceIn.is),
      utilities: v.pipe(
        v.array(
          strict({
            kind: v.picklist(UTILITIES, oneOf(UTILITIES)),
            marked: v.union([v.boolean(), v.literal("unanswered")], says("markedOrNot")),
          }),
        ),
        v.minLength(1, says("noUtilities")),
        v.maxLength(6, says("tooMany", 6)),
      ),
    }),
  ),
  use: strict({
    occupants: orNull(v.pipe(number(0, 50_000), v.integer(says("whole")))),
    permit: firstOf(PAPERWORK),
    fabricCertificate: firstOf(PAPERWORK),
    walls: v.boolean(says("yesOrNo")),
    hungLoads: v.boolean(says("yesOrNo")),
  }),
  rehearsal: v.optional(v.boolean(says("yesOrNo")), false),
  kit: v.nullish(kitSchema),
  // Read by whoever knows them; what is left out of an amendment stays as it stands.
  siteModel: v.nullish(v.unknown()),
  anchorage: v.nullish(v.unknown()),
  forecast: v.nullish(v.unknown()),
  weatherPlan: v.nullish(v.unknown()),
  crew: v.pipe(
    v.array(strict({ name: personName, role: v.picklist(ROLES, oneOf(ROLES)) })),
    v.minLength(2, says("crewOfTwo")),
    v.maxLength(40, says("tooMany", 40)),
  ),
});
export type BriefInput = v.InferInput<typeof briefSchema>;
export type Parsed = { frozen: Frozen; names: Record<PersonId, string> };

/** A brief from outside as a job that can be opened, or a Problem that names every field that is wrong. */
export function readBrief(input: unknown): Parsed {
  const read = v.safeParse(briefSchema, input);
  const fields = noFields<Sentence>();
  if (!read.success) for (const issue of read.issues) fields[v.getDotPath(issue) ?? "brief"] ??= sentenceOf(issue);
  const given = (input as { tent?: object } | null)?.tent ?? {};
  const tent = checkSpec(given);
  if ("problems" in tent) Object.assign(fields, tentProblems(tent.problems));
  for (const [field, why] of unknownFields(given)) fields[`tent.${field}`] = why;
  if (!read.success || "problems" in tent || Object.keys(fields).length > 0) throw new Problem(422, (w) => w.errors.briefRefused, fields);
  const { title, zone, sheet, site, ticket, use, crew, rehearsal } = read.output;
  const kit = kitOf(read.output.kit);
  const days = ticket && { validFrom: localTime(ticket.validFrom, zone, "start"), validTo: localTime(ticket.validTo, zone, "end") };
  if (ticket && days) Object.assign(fields, wrongTicket(ticket, days));
  if (sheet) Object.assign(fields, wrongSheet(sheet, site));
  if (!crew.some((p) => p.role === "lead")) fields.crew = (w) => w.errors.noLead;
  else if (crew.filter((p) => COMPETENT.includes(p.role)).length < 2) fields.crew = (w) => w.errors.secondCompetent;
  else if (new Set(crew.map((p) => foldName(p.name))).size < crew.length) fields.crew = (w) => w.errors.sameName;
  if (Object.keys(fields).length > 0) throw new Problem(422, (w) => w.errors.briefRefused, fields);
  const people = crew.map((p, i) => ({ id: `p${i + 1}`, role: p.role }));
  const brief: Brief = {
    title,
    zone,
    tent: tent.spec,
    sheet,
    site: siteOf(site),
    use,
    crew: people,
    ticket: ticket && { ...ticket, validFrom: days!.validFrom!, validTo: days!.validTo! },
    ...(kit ? { kit } : {}),
    ...partsOf(read.output, { tent: tent.spec, sheet, use, zone }),
    ...(rehearsal ? { rehearsal } : {}),
  };
  return {
    frozen: freeze(brief),
    names: Object.fromEntries(crew.map((p, i) => [`p${i + 1}`, p.name])),
  };
}

type Read = v.InferOutput<typeof briefSchema>;

/** What the parts of a ticket say against one another. */
function wrongTicket(
  ticket: NonNullable<Read["ticket"]>,
  { validFrom, validTo }: Readonly<Record<"validFrom" | "validTo", WallTime | null>>,
): Record<string, Sentence> {
  const fields = noFields<Sentence>();
  if (validFrom === null) fields["ticket.validFrom"] = (w) => w.errors.date(ticket.validFrom);
  if (validTo === null) fields["ticket.validTo"] = (w) => w.errors.date(ticket.validTo);
  if (validFrom !== null && validTo !== null && validTo <= validFrom) fields["ticket.validTo"] = (w) => w.errors.endsBefore;
  if (new Set(ticket.utilities.map((u) => u.kind)).size < ticket.utilities.length)
    fields["ticket.utilities"] = (w) => w.errors.utilityTwice;
  return fields;
}

/** What the figures of a sheet say against one another. */
function wrongSheet(
  { embedmentIn, stakeLengthIn, raiseGustMph, stopGustMph, soil }: NonNullable<Read["sheet"]>,
  { soilKnown }: Read["site"],
): Record<string, Sentence> {
  const fields = noFields<Sentence>();
  // No ground is a soil that nobody named.
  if (soil === null && soilKnown) fields["sheet.soil"] = (w) => w.errors.empty;
  if (embedmentIn !== null && embedmentIn > stakeLengthIn)
    fields["sheet.embedmentIn"] = (w) => w.errors.deeperThanStake(embedmentIn, stakeLengthIn);
  const raiseMph = raiseGustMph ?? DEFAULTS.raiseGustMph.is;
  const stopMph = stopGustMph ?? DEFAULTS.stopGustMph.is;
  if (raiseMph > stopMph)
    fields["sheet.raiseGustMph"] = (w) => (raiseGustMph === null ? w.errors.usualOverStop : w.errors.raiseOverStop)(raiseMph, stopMph);
  return fields;
}

const openingSchema = strict({
  key: v.optional(v.pipe(v.string(says("keyShape")), v.regex(/^[\w.-]{8,80}$/, says("keyShape")))),
  brief: v.unknown(),
});

/** The body that opens a job: a brief with the key of the request, or a brief alone. Throws a Problem. */
export function readOpening(body: unknown): { readonly key?: string | undefined; readonly brief: unknown } {
  if (typeof body !== "object" || body === null || !Object.hasOwn(body, "brief")) return { brief: body };
  const read = v.safeParse(openingSchema, body);
  if (read.success) return read.output;
  const fields = noFields<Sentence>();
  for (const issue of read.issues) fields[v.getDotPath(issue) ?? "body"] ??= sentenceOf(issue);
  throw new Problem(422, (w) => w.errors.bodyShape, fields);
}

/** What is wrong with a field: that it is not there comes before what its schema says. */
const sentenceOf = (issue: v.BaseIssue<unknown>): Sentence =>
  issue.received === "undefined" ? wrongKindOf(issue) : (saidOf(issue) ?? wrongKindOf(issue));

/** What was not said of a site is not there: a brief without it is frozen as it always was. */
function siteOf({ baselineBearingDeg, street, ...site }: Read["site"]): Site {
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
