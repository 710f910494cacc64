import * as v from "valibot";
import { FOLLOW_UPS } from "../../machines/record/follow-up.ts";
import { FINDING_KINDS } from "../../machines/record/oversight/finding.ts";
import { MAX_TEXT } from "../../views/pages/findings/card.tsx";
import { saidOf, says, saysOf, wrongKindOf } from "./issue.ts";
import { Problem, type Sentence } from "./problem.ts";
import { noFields, strict } from "./strict.ts";

const oneOf = <const T extends readonly [string, ...string[]]>(names: T) =>
  v.picklist(
    names,
    saysOf(({ errors }, given) => errors.notOneOf(given, names)),
  );
const whole = v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole")), v.minValue(1, says("whole")));

const followUp = strict({
  key: v.pipe(v.string(says("keyShape")), v.regex(/^[\w.-]{8,80}$/, says("keyShape"))),
  job: v.pipe(v.string(), v.maxLength(80, says("tooLong", 80))),
  kind: oneOf(FINDING_KINDS),
  entry: whole,
  is: oneOf(FOLLOW_UPS),
  text: v.pipe(v.string(), v.trim(), v.minLength(1, says("empty")), v.maxLength(MAX_TEXT, says("tooLong", MAX_TEXT))),
  /** A person of that job by id; nobody is the office itself. */
  who: v.optional(v.nullable(v.pipe(v.string(), v.maxLength(80, says("tooLong", 80)))), null),
});
export type FollowUpInput = v.InferOutput<typeof followUp>;

/** What somebody says of a finding, or a Problem that names each field that is wrong. */
export function readFollowUp(input: unknown): FollowUpInput {
  const result = v.safeParse(followUp, input);
  const fields = noFields<Sentence>();
  if (!result.success) for (const issue of result.issues) fields[v.getDotPath(issue) ?? "body"] ??= saidOf(issue) ?? wrongKindOf(issue);
  if (result.success && result.output.is !== "followedUp" && result.output.who !== null) fields.who = (w) => w.findings.whoOnly;
  if (!result.success || Object.keys(fields).length > 0) throw new Problem(422, (w) => w.findings.wrongFollowUp, fields);
  return result.output;
}

/** The same of the form on a card, which sends whom it offers with whatever is pressed. */
export const followUpFromForm = ({ key, job, kind, entry, is, text, who = "" }: Readonly<Record<string, string>>): unknown => ({
  key,
  job,
  kind,
  entry: /^\d+$/.test(entry ?? "") ? Number(entry) : entry,
  is,
  text,
  who: is === "followedUp" && who !== "" ? who : null,
});
