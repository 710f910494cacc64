import * as v from "valibot";
import { expected } from "../../machines/install/checks/any-check.ts";
import { inUnitOf } from "../../machines/install/checks/measure.ts";
import { finite, shortText } from "../../machines/install/checks/value-form.ts";
import { type GivenValue, valueSchema } from "../../machines/install/checks/values.ts";
import type { Gate, Value } from "../../machines/install/gates.ts";
import { errors } from "../../views/text/en/errors.ts";
import { Problem } from "./problem.ts";

const text = (max: number) => shortText(max, errors);
const number = finite(errors);
const value = valueSchema(errors);
const command = v.variant("type", [
  ...(["next", "back", "hold", "carryOn"] as const).map((type) => v.object({ type: v.literal(type) })),
  v.object({ type: v.literal("answer"), gate: text(80), value }),
  v.object({ type: v.literal("waive"), gate: text(80), because: text(300) }),
  v.object({ type: v.literal("makeSafe"), because: text(300) }),
  v.object({ type: v.literal("standDown"), because: text(300) }),
  v.object({ type: v.literal("note"), text: text(1000) }),
  v.object({
    type: v.literal("reading"),
    kind: v.literal("wind"),
    mph: v.pipe(number, v.minValue(0, errors.from(0, 200)), v.maxValue(200, errors.from(0, 200))),
    gustMph: v.optional(v.nullable(v.pipe(number, v.minValue(0, errors.from(0, 200)), v.maxValue(200, errors.from(0, 200)))), null),
    takenAt: v.optional(v.nullable(v.pipe(v.string(), v.isoTimestamp())), null),
    place: v.optional(text(80), "in the open"),
  }),
  v.object({ type: v.literal("amend"), because: text(300), brief: v.looseObject({}) }),
  v.object({ type: v.literal("correct"), target: v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole)) }),
  v.object({ type: v.literal("wrong"), target: v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole)) }),
  v.object({ type: v.literal("agree"), target: v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole)) }),
  v.object({ type: v.literal("disagree"), target: v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole)) }),
]);
const thunder = v.object({ type: v.literal("reading"), kind: v.literal("thunder") });
const heard = v.object({ heard: text(300) });
const spoken = v.object({
  alternatives: v.pipe(v.array(text(300)), v.minLength(1, errors.nothingHeard), v.maxLength(10, errors.tooMany(10))),
  talk: v.optional(v.boolean(errors.yesOrNo), false),
  /** The entry whose read-back the screen showed when the speech began: what "correct" means. */
  readBack: v.optional(v.nullable(v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole))), null),
});
const envelope = v.object({
  as: text(60),
  key: v.pipe(v.string(errors.keyShape), v.regex(/^[\w.-]{8,80}$/, errors.keyShape)),
  seen: v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole), v.minValue(0, errors.whole)),
});

export type Body = v.InferOutput<typeof envelope> & {
  readonly say: v.InferOutput<typeof command> | v.InferOutput<typeof thunder> | v.InferOutput<typeof heard> | v.InferOutput<typeof spoken>;
};

/** One thing said, as JSON, or a Problem that names each field that is wrong. */
export function readSay(input: unknown): Body {
  const fields: Record<string, string> = {};
  const body = (typeof input === "object" && input !== null ? input : {}) as Record<string, unknown>;
  const around = read(envelope, body, fields);
  if (["heard", "alternatives", "type"].filter((name) => name in body).length !== 1) fields.type = errors.heardOrType;
  const schema =
    "alternatives" in body ? spoken : "heard" in body ? heard : body.type === "reading" && body.kind === "thunder" ? thunder : command;
  const say = read(schema, body, fields);
  if (!around || !say || Object.keys(fields).length > 0) throw new Problem(422, errors.bodyShape, fields);
  return { ...around, say: say as Body["say"] };
}

function read<S extends v.GenericSchema>(schema: S, body: unknown, fields: Record<string, string>): v.InferOutput<S> | null {
  const result = v.safeParse(schema, body);
  if (result.success) return result.output;
  for (const issue of result.issues) fields[v.getDotPath(issue) ?? "body"] ??= issue.message;
  return null;
}

/** A value as its gate takes it: a measurement in the unit that is asked for. Throws a Problem where it cannot be. */
export function toGateUnit(given: GivenValue, gate: Gate | null): Value {
  if (given.kind !== "measure") return given;
  const asked = gate && expected(gate.check);
  const wants = asked?.expects === "measure" ? asked.unit : null;
  const measured = inUnitOf(given, wants);
  if (measured) return measured;
  throw new Problem(422, errors.wrongUnit(given.unit, wants!), { "value.unit": errors.oneOf([wants!]) });
}
