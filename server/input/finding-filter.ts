import * as v from "valibot";
import { isDay } from "../../machines/install/checks/paper-form.ts";
import { PHASES } from "../../machines/install/step.ts";
import { MAKING_SAFE } from "../../machines/record/doubts/doubt.ts";
import { FOLLOW_UP_STATES } from "../../machines/record/follow-up.ts";
import { FINDING_KINDS, type FindingKind } from "../../machines/record/oversight/finding.ts";
import type { Cursor, FindingFilter } from "../journal/oversight.ts";
import { saidOf, says, saysOf, wrongKindOf } from "./issue.ts";
import { Problem, type Sentence } from "./problem.ts";
import { noFields } from "./strict.ts";

/** What can be looked for, as an address has it. */
export const FILTER_FIELDS = ["crew", "lead", "tent", "phase", "kind", "state", "from", "to"] as const;
export type FilterFields = Readonly<Record<(typeof FILTER_FIELDS)[number], string>>;
/** Where findings can begin. */
const PLACES = [...PHASES, MAKING_SAFE, "closed"] as const;

const orAny = <S extends v.GenericSchema<string, unknown>>(schema: S) =>
  v.union([
    v.pipe(
      v.literal(""),
      v.transform(() => null),
    ),
    schema,
  ]);
const oneOf = <const T extends readonly [string, ...string[]]>(names: T) =>
  v.picklist(
    names,
    saysOf(({ errors }, given) => errors.notOneOf(given, names)),
  );
const day = v.pipe(
  v.string(),
  v.check(
    isDay,
    saysOf(({ errors }, given) => errors.notADay(String(given))),
  ),
);
const name = v.pipe(v.string(), v.maxLength(60, says("tooLong", 60)));
const FIELDS = {
  crew: orAny(name),
  lead: orAny(name),
  tent: orAny(
    v.pipe(
      v.string(),
      v.regex(
        /^\d+(\.\d+)?x\d+(\.\d+)?$/,
        saysOf(({ errors }, given) => errors.wrongKind(given)),
      ),
    ),
  ),
  phase: orAny(oneOf(PLACES)),
  kind: orAny(oneOf(FINDING_KINDS)),
  state: orAny(oneOf(FOLLOW_UP_STATES)),
  from: orAny(day),
  to: orAny(day),
} as const;

/** What is looked for, as it was typed: spaces around it say nothing. */
export const filterFields = (query: (name: string) => string | undefined): FilterFields =>
  Object.fromEntries(FILTER_FIELDS.map((field) => [field, (query(field) ?? "").trim()])) as FilterFields;

/** What an address asks for. Throws a Problem that names each part that is wrong. */
export function readFilter(fields: FilterFields): FindingFilter {
  const wrong = noFields<Sentence>();
  const read = <K extends keyof typeof FIELDS>(field: K): v.InferOutput<(typeof FIELDS)[K]> | null => {
    const result = v.safeParse(FIELDS[field], fields[field]);
    if (result.success) return result.output as v.InferOutput<(typeof FIELDS)[K]>;
    const issue = innermost(result.issues[0]);
    wrong[field] = saidOf(issue) ?? wrongKindOf(issue);
    return null;
  };
  const filter: FindingFilter = {
    crew: read("crew"),
    lead: read("lead"),
    size: read("tent"),
    phase: read("phase"),
    kind: read("kind"),
    state: read("state"),
    from: read("from"),
    to: read("to"),
  };
  if (filter.from !== null && filter.to !== null && filter.to < filter.from) wrong.to = (w) => w.findings.endsBefore;
  if (Object.keys(wrong).length > 0) throw new Problem(422, (w) => w.findings.wrongFilter, wrong);
  return filter;
}

/** What is wrong with a value that is neither nothing nor what it should be: the latter. */
const innermost = (issue: v.BaseIssue<unknown>): v.BaseIssue<unknown> => issue.issues?.at(-1) ?? issue;

/** The place in the list behind a finding, as an address has it. */
export const cursorText = ({ at, job, kind, entry }: Cursor): string => [at, job, kind, entry].join("~");

/** The same read again; `null` where nothing is asked. Throws a Problem where it is no such place. */
export function readCursor(text: string): Cursor | null {
  if (text === "") return null;
  const [, at, job, kind, entry] = /^(-?\d{1,15})~([\w-]{1,80})~(\w{1,40})~(\d{1,9})$/.exec(text) ?? [];
  const known = FINDING_KINDS.find((one): one is FindingKind => one === kind);
  if (!known) throw new Problem(422, (w) => w.findings.noPlace, { before: (w) => w.findings.noPlace });
  return { at: Number(at), job: job!, kind: known, entry: Number(entry) };
}
