import * as v from "valibot";
import type { Gate, Unit, Value } from "../../machines/install/gates.ts";
import { inUnit, readNumber } from "../../machines/speech/en/numbers.ts";
import { edge } from "../../views/text/en/errors.ts";
import { Problem } from "./problem.ts";

/** Text without half letters: a hash is made of what is stored. */
const whole = v.transform((text: string) => text.replaceAll(/[\ud800-\udfff]/gu, "\ufffd"));
const text = (most: number) => v.pipe(v.string(), whole, v.trim(), v.minLength(1, edge.empty), v.maxLength(most, edge.tooLong(most)));
const UNITS = ["in", "ft", "deg", "lbf", "turns"] as const satisfies readonly Unit[];
const finite = v.pipe(v.number(edge.notANumber), v.finite(edge.notANumber));
const value = v.variant("kind", [
  v.strictObject({ kind: v.literal("yesNo"), yes: v.boolean(edge.yesOrNo) }),
  v.strictObject({ kind: v.literal("count"), n: v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole), v.minValue(0, edge.whole)) }),
  v.strictObject({ kind: v.literal("measure"), n: finite, unit: v.picklist([...UNITS, "mm", "m"], edge.oneOf([...UNITS, "mm", "m"])) }),
  v.strictObject({ kind: v.literal("none") }),
  v.strictObject({ kind: v.literal("unknown") }),
  v.strictObject({ kind: v.literal("lengths"), ft: v.record(v.string(), v.pipe(finite, v.minValue(0.1, edge.notANumber))) }),
  v.strictObject({
    kind: v.literal("counts"),
    n: v.record(v.string(), v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole), v.minValue(0, edge.whole))),
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
    of: v.literal("wind"),
    mph: v.pipe(finite, v.minValue(0, edge.from(0, 200)), v.maxValue(200, edge.from(0, 200))),
    gustMph: v.optional(v.nullable(v.pipe(finite, v.minValue(0, edge.from(0, 200)), v.maxValue(200, edge.from(0, 200)))), null),
    takenAt: v.optional(v.nullable(v.pipe(v.string(), v.isoTimestamp())), null),
    place: v.optional(text(80), "in the open"),
  }),
  v.object({ type: v.literal("amend"), because: text(300), brief: v.looseObject({}) }),
  v.object({ type: v.literal("correct"), of: v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole)) }),
  v.object({ type: v.literal("wrong"), of: v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole)) }),
  v.object({ type: v.literal("agree"), of: v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole)) }),
  v.object({ type: v.literal("disagree"), of: v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole)) }),
]);
const thunder = v.object({ type: v.literal("reading"), of: v.literal("thunder") });
const heard = v.object({ heard: text(300) });
const spoken = v.object({
  alternatives: v.pipe(v.array(text(300)), v.minLength(1, edge.nothingHeard), v.maxLength(10, edge.tooMany(10))),
  talk: v.optional(v.boolean(edge.yesOrNo), false),
  /** The entry whose read-back the screen showed when the speech began: what "correct" means. */
  readBack: v.optional(v.nullable(v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole))), null),
});
const envelope = v.object({
  as: text(60),
  key: v.pipe(v.string(edge.keyShape), v.regex(/^[\w.-]{8,80}$/, edge.keyShape)),
  seen: v.pipe(v.number(edge.notANumber), v.safeInteger(edge.whole), v.minValue(0, edge.whole)),
});

export type Body = v.InferOutput<typeof envelope> & {
  readonly say: v.InferOutput<typeof command> | v.InferOutput<typeof thunder> | v.InferOutput<typeof heard> | v.InferOutput<typeof spoken>;
};

/** One thing said, as JSON, or a Problem that names each field that is wrong. */
export function readSaid(input: unknown): Body {
  const fields: Record<string, string> = {};
  const body = (typeof input === "object" && input !== null ? input : {}) as Record<string, unknown>;
  const around = read(envelope, body, fields);
  if (["heard", "alternatives", "type"].filter((name) => name in body).length !== 1) fields.type = edge.heardOrType;
  const schema =
    "alternatives" in body ? spoken : "heard" in body ? heard : body.type === "reading" && body.of === "thunder" ? thunder : command;
  const say = read(schema, body, fields);
  if (!around || !say || Object.keys(fields).length > 0) throw new Problem(422, edge.bodyShape, fields);
  return { ...around, say: say as Body["say"] };
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
  if (gate?.asks.kind !== "measure")
    return { kind: "measure", n: raw.n, unit: raw.unit === "mm" ? "in" : raw.unit === "m" ? "ft" : raw.unit };
  const n = said === null ? null : inUnit(said, gate.asks.unit);
  if (n === null) throw new Problem(422, edge.wrongUnit(raw.unit, gate.asks.unit), { "value.unit": edge.oneOf([gate.asks.unit]) });
  return { kind: "measure", n: Math.round(n * 1e6) / 1e6, unit: gate.asks.unit };
}
