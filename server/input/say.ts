import * as v from "valibot";
import type { Gate, Unit, Value } from "../../machines/install/gates.ts";
import { inUnit, readNumber } from "../../machines/speech/en/numbers.ts";
import { saidOf, says, wrongKindOf } from "./issue.ts";
import { Problem, type Sentence } from "./problem.ts";

/** Text without half letters: a hash is made of what is stored. */
const whole = v.transform((text: string) => text.replaceAll(/[\ud800-\udfff]/gu, "\ufffd"));
const text = (most: number) => v.pipe(v.string(), whole, v.trim(), v.minLength(1, says("empty")), v.maxLength(most, says("tooLong", most)));
const UNITS = ["in", "ft", "deg", "lbf", "turns"] as const satisfies readonly Unit[];
const finite = v.pipe(v.number(says("notANumber")), v.finite(says("notANumber")));
const value = v.variant("kind", [
  v.strictObject({ kind: v.literal("yesNo"), yes: v.boolean(says("yesOrNo")) }),
  v.strictObject({
    kind: v.literal("count"),
    n: v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole")), v.minValue(0, says("whole"))),
  }),
  v.strictObject({ kind: v.literal("measure"), n: finite, unit: v.picklist([...UNITS, "mm", "m"], says("oneOf", [...UNITS, "mm", "m"])) }),
  v.strictObject({ kind: v.literal("none") }),
  v.strictObject({ kind: v.literal("unknown") }),
  v.strictObject({ kind: v.literal("lengths"), ft: v.record(v.string(), v.pipe(finite, v.minValue(0.1, says("notANumber")))) }),
  v.strictObject({
    kind: v.literal("counts"),
    n: v.record(v.string(), v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole")), v.minValue(0, says("whole")))),
  }),
  v.strictObject({ kind: v.literal("document"), named: text(80) }),
  v.strictObject({ kind: v.literal("paper"), by: text(80), document: text(80) }),
]);
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
    mph: v.pipe(finite, v.minValue(0, says("from", 0, 200)), v.maxValue(200, says("from", 0, 200))),
    gustMph: v.optional(v.nullable(v.pipe(finite, v.minValue(0, says("from", 0, 200)), v.maxValue(200, says("from", 0, 200)))), null),
    takenAt: v.optional(v.nullable(v.pipe(v.string(), v.isoTimestamp())), null),
    place: v.optional(text(80), "in the open"),
  }),
  v.object({ type: v.literal("amend"), because: text(300), brief: v.looseObject({}) }),
  v.object({ type: v.literal("correct"), target: v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole"))) }),
  v.object({ type: v.literal("wrong"), target: v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole"))) }),
  v.object({ type: v.literal("agree"), target: v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole"))) }),
  v.object({ type: v.literal("disagree"), target: v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole"))) }),
]);
const thunder = v.object({ type: v.literal("reading"), kind: v.literal("thunder") });
const heard = v.object({ heard: text(300) });
const spoken = v.object({
  alternatives: v.pipe(v.array(text(300)), v.minLength(1, says("nothingHeard")), v.maxLength(10, says("tooMany", 10))),
  talk: v.optional(v.boolean(says("yesOrNo")), false),
  /** The entry whose read-back the screen showed when the speech began: what "correct" means. */
  readBack: v.optional(v.nullable(v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole")))), null),
});
const envelope = v.object({
  as: text(60),
  key: v.pipe(v.string(says("keyShape")), v.regex(/^[\w.-]{8,80}$/, says("keyShape"))),
  seen: v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole")), v.minValue(0, says("whole"))),
});

export type Body = v.InferOutput<typeof envelope> & {
  readonly say: v.InferOutput<typeof command> | v.InferOutput<typeof thunder> | v.InferOutput<typeof heard> | v.InferOutput<typeof spoken>;
};

/** One thing said, as JSON, or a Problem that names each field that is wrong. */
export function readSay(input: unknown): Body {
  const fields: Record<string, Sentence> = {};
  const body = (typeof input === "object" && input !== null ? input : {}) as Record<string, unknown>;
  const around = read(envelope, body, fields);
  if (["heard", "alternatives", "type"].filter((name) => name in body).length !== 1) fields.type = (w) => w.errors.heardOrType;
  const schema =
    "alternatives" in body ? spoken : "heard" in body ? heard : body.type === "reading" && body.kind === "thunder" ? thunder : command;
  const say = read(schema, body, fields);
  if (!around || !say || Object.keys(fields).length > 0) throw new Problem(422, (w) => w.errors.bodyShape, fields);
  return { ...around, say: say as Body["say"] };
}

function read<S extends v.GenericSchema>(schema: S, body: unknown, fields: Record<string, Sentence>): v.InferOutput<S> | null {
  const result = v.safeParse(schema, body);
  if (result.success) return result.output;
  for (const issue of result.issues) fields[v.getDotPath(issue) ?? "body"] ??= saidOf(issue) ?? wrongKindOf(issue);
  return null;
}

/** A measurement in the unit that its gate is asked in; millimeters and meters become inches and feet. A Problem where it cannot. */
export function toGateUnit(raw: v.InferOutput<typeof value>, gate: Gate | null): Value {
  if (raw.kind !== "measure") return raw;
  const said = readNumber(`${raw.n} ${raw.unit}`);
  if (gate?.check.kind !== "measure")
    return { kind: "measure", n: raw.n, unit: raw.unit === "mm" ? "in" : raw.unit === "m" ? "ft" : raw.unit };
  const n = said === null ? null : inUnit(said, gate.check.unit);
  const { unit } = gate.check;
  if (n === null) throw new Problem(422, (w) => w.errors.wrongUnit(raw.unit, unit), { "value.unit": (w) => w.errors.oneOf([unit]) });
  return { kind: "measure", n: Math.round(n * 1e6) / 1e6, unit: gate.check.unit };
}
