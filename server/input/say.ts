import * as v from "valibot";
import type { Said } from "../../machines/conversation/interpret.ts";
import type { Gate, Unit, Value } from "../../machines/install/gates.ts";
import { readNumber } from "../../machines/speech/en/numbers.ts";
import { inUnit } from "../../machines/speech/quantity.ts";
import { errors } from "../../views/text/en/errors.ts";
import { Problem } from "./problem.ts";

/** Text without half letters: a hash is made of what is stored. */
const whole = v.transform((text: string) => text.replaceAll(/[\ud800-\udfff]/gu, "\ufffd"));
const text = (most: number) => v.pipe(v.string(), whole, v.trim(), v.minLength(1, errors.empty), v.maxLength(most, errors.tooLong(most)));
const UNITS = ["in", "ft", "deg", "lbf", "turns"] as const satisfies readonly Unit[];
const finite = v.pipe(v.number(errors.notANumber), v.finite(errors.notANumber));
const value = v.variant("kind", [
  v.strictObject({ kind: v.literal("yesNo"), yes: v.boolean(errors.yesOrNo) }),
  v.strictObject({
    kind: v.literal("count"),
    n: v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole), v.minValue(0, errors.whole)),
  }),
  v.strictObject({ kind: v.literal("measure"), n: finite, unit: v.picklist([...UNITS, "mm", "m"], errors.oneOf([...UNITS, "mm", "m"])) }),
  v.strictObject({ kind: v.literal("none") }),
  v.strictObject({ kind: v.literal("unknown") }),
  v.strictObject({ kind: v.literal("lengths"), ft: v.record(v.string(), v.pipe(finite, v.minValue(0.1, errors.notANumber))) }),
  v.strictObject({
    kind: v.literal("counts"),
    n: v.record(v.string(), v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole), v.minValue(0, errors.whole))),
  }),
  v.strictObject({ kind: v.literal("document"), named: text(80) }),
  v.strictObject({ kind: v.literal("paper"), by: text(80), document: text(80) }),
]);
const command = v.variant("type", [
  ...(["next", "back", "hold", "carryOn"] as const).map((type) => v.object({ type: v.literal(type) })),
  v.object({ type: v.literal("answer"), gate: text(80), value }),
  v.object({ type: v.literal("waive"), gate: text(80), because: text(300) }),
  v.object({ type: v.literal("makeSafe"), because: v.optional(v.nullable(text(300)), null) }),
  v.object({ type: v.literal("standDown"), because: text(300) }),
  v.object({ type: v.literal("note"), text: text(1000) }),
  v.object({
    type: v.literal("reading"),
    kind: v.literal("wind"),
    mph: v.pipe(finite, v.minValue(0, errors.from(0, 200)), v.maxValue(200, errors.from(0, 200))),
    gustMph: v.optional(v.nullable(v.pipe(finite, v.minValue(0, errors.from(0, 200)), v.maxValue(200, errors.from(0, 200)))), null),
    takenAt: v.optional(v.nullable(v.pipe(v.string(), v.isoTimestamp())), null),
    place: v.optional(v.nullable(text(80)), null),
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

/** What a press, or a script, asks for: still in the units and words that it came in. */
export type Press = v.InferOutput<typeof command> | v.InferOutput<typeof thunder>;
export type Body = v.InferOutput<typeof envelope> & {
  readonly said: Exclude<Said, { by: "press" }> | { readonly by: "press"; readonly press: Press };
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
  return { ...around, said: saidAs(say) };
}

function saidAs(say: v.InferOutput<typeof spoken> | v.InferOutput<typeof heard> | Press): Body["said"] {
  if ("alternatives" in say) return { by: "voice", ...say };
  return "heard" in say ? { by: "typing", words: say.heard } : { by: "press", press: say };
}

function read<S extends v.GenericSchema>(schema: S, body: unknown, fields: Record<string, string>): v.InferOutput<S> | null {
  const result = v.safeParse(schema, body);
  if (result.success) return result.output;
  for (const issue of result.issues) fields[v.getDotPath(issue) ?? "body"] ??= issue.message;
  return null;
}

/** A measurement in the unit that its gate is asked in; millimeters and meters become inches and feet. A Problem where it cannot. */
export function toGateUnit(raw: v.InferOutput<typeof value>, gate: Gate | null): Value {
  if (raw.kind !== "measure") return raw;
  const said = readNumber(`${raw.n} ${raw.unit}`);
  if (gate?.check.kind !== "measure")
    return { kind: "measure", n: raw.n, unit: raw.unit === "mm" ? "in" : raw.unit === "m" ? "ft" : raw.unit };
  const n = said === null ? null : inUnit(said, gate.check.unit);
  if (n === null) throw new Problem(422, errors.wrongUnit(raw.unit, gate.check.unit), { "value.unit": errors.oneOf([gate.check.unit]) });
  return { kind: "measure", n: Math.round(n * 1e6) / 1e6, unit: gate.check.unit };
}
