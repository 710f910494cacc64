import * as v from "valibot";
import type { Said } from "../../machines/conversation/interpret.ts";
import { type Bounds, COUNT_BOUNDS, isWithin, LENGTH_BOUNDS, MEASURE_BOUNDS, WIND_BOUNDS } from "../../machines/install/bounds.ts";
import type { Gate, Unit, Value } from "../../machines/install/gates.ts";
import { inUnit, METERS_PER_FOOT, METERS_PER_INCH } from "../../machines/speech/quantity.ts";
import { errors } from "../../views/text/en/errors.ts";
import { Problem } from "./problem.ts";
import { noFields, recordOf, strict } from "./strict.ts";

/** Text without half letters: a hash is made of what is stored. */
const wholeLetters = v.transform((text: string) => text.replaceAll(/[\ud800-\udfff]/gu, "\ufffd"));
const text = (most: number) =>
  v.pipe(v.string(), wholeLetters, v.trim(), v.minLength(1, errors.empty), v.maxLength(most, errors.tooLong(most)));
const UNITS = ["in", "ft", "deg", "lbf", "turns", "mm", "m"] as const satisfies readonly (Unit | "mm" | "m")[];
type SaidUnit = Unit | "mm" | "m" | "count" | "mph";
/** A number that can be believed, in its unit. */
const within = (unit: SaidUnit, { from, to }: Bounds) =>
  v.pipe(
    v.number(errors.notANumber),
    v.check(
      (n) => isWithin(n, { from, to }),
      (issue) => errors.unbelievable(issue.input, unit, from, to),
    ),
  );
const count = v.pipe(within("count", COUNT_BOUNDS), v.safeInteger(errors.whole));
const entry = v.pipe(v.number(errors.notANumber), v.safeInteger(errors.whole), v.minValue(0, errors.whole));
const value = v.variant("kind", [
  strict({ kind: v.literal("yesNo"), yes: v.boolean(errors.yesOrNo) }),
  strict({ kind: v.literal("count"), n: count }),
  strict({ kind: v.literal("measure"), n: v.number(errors.notANumber), unit: v.picklist(UNITS, errors.oneOf(UNITS)) }),
  strict({ kind: v.literal("none") }),
  strict({ kind: v.literal("unknown") }),
  strict({ kind: v.literal("lengths"), ft: recordOf(null, within("ft", LENGTH_BOUNDS)) }),
  strict({ kind: v.literal("counts"), n: recordOf(null, count) }),
  strict({ kind: v.literal("document"), named: text(80) }),
  strict({ kind: v.literal("paper"), by: text(80), document: text(80) }),
]);
/** A measurement within what its own unit can be. */
const answered = v.pipe(
  value,
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed || dataset.value.kind !== "measure") return;
    const { n, unit } = dataset.value;
    const { from, to } = MEASURE_BOUNDS[unit];
    const path: [v.ObjectPathItem] = [{ type: "object", origin: "value", input: dataset.value, key: "n", value: n }];
    if (!isWithin(n, { from, to })) addIssue({ message: errors.unbelievable(n, unit, from, to), path });
  }),
);
const moment = v.pipe(
  v.string(),
  v.isoTimestamp((issue) => errors.notATime(issue.input)),
  v.check(
    (time) => Number.isFinite(Date.parse(time)),
    (issue) => errors.notATime(issue.input),
  ),
);
const around = { as: text(60), key: v.pipe(v.string(errors.keyShape), v.regex(/^[\w.-]{8,80}$/, errors.keyShape)), seen: entry };
const envelope = v.object(around);
/** What is said, in the same object as who says it. */
const said = <E extends v.ObjectEntries>(entries: E) => strict(entries, Object.keys(around));
const command = v.variant("type", [
  ...(["next", "back", "hold", "carryOn"] as const).map((type) => said({ type: v.literal(type) })),
  said({ type: v.literal("answer"), gate: text(80), value: answered }),
  said({ type: v.literal("waive"), gate: text(80), because: text(300) }),
  said({ type: v.literal("makeSafe"), because: v.optional(v.nullable(text(300)), null) }),
  said({ type: v.literal("standDown"), because: text(300) }),
  said({ type: v.literal("note"), text: text(1000) }),
  said({
    type: v.literal("reading"),
    kind: v.literal("wind"),
    mph: within("mph", WIND_BOUNDS),
    gustMph: v.optional(v.nullable(within("mph", WIND_BOUNDS)), null),
    takenAt: v.optional(v.nullable(moment), null),
    place: v.optional(v.nullable(text(80)), null),
  }),
  said({ type: v.literal("amend"), because: text(300), brief: v.custom<object>((brief) => typeof brief === "object" && brief !== null) }),
  said({ type: v.literal("correct"), target: entry }),
  said({ type: v.literal("wrong"), target: entry }),
  said({ type: v.literal("agree"), target: entry }),
  said({ type: v.literal("disagree"), target: entry }),
]);
const thunder = said({ type: v.literal("reading"), kind: v.literal("thunder") });
const heard = said({ heard: text(300) });
const spoken = said({
  alternatives: v.pipe(v.array(text(300)), v.minLength(1, errors.nothingHeard), v.maxLength(10, errors.tooMany(10))),
  talk: v.optional(v.boolean(errors.yesOrNo), false),
  /** The entry whose read-back the screen showed when the speech began: what "correct" means. */
  readBack: v.optional(v.nullable(entry), null),
});

/** What a press, or a script, asks for: still in the units and words that it came in. */
export type Press = v.InferOutput<typeof command> | v.InferOutput<typeof thunder>;
export type Body = v.InferOutput<typeof envelope> & {
  readonly said: Exclude<Said, { by: "press" }> | { readonly by: "press"; readonly press: Press };
};

/** One thing said, as JSON, or a Problem that names each field that is wrong. */
export function readSay(input: unknown): Body {
  const fields = noFields();
  const body = (typeof input === "object" && input !== null ? input : {}) as Record<string, unknown>;
  const from = read(envelope, body, fields);
  if (["heard", "alternatives", "type"].filter((name) => Object.hasOwn(body, name)).length !== 1) fields.type = errors.heardOrType;
  const schema =
    "alternatives" in body ? spoken : "heard" in body ? heard : body.type === "reading" && body.kind === "thunder" ? thunder : command;
  const say = read(schema, body, fields);
  if (say && "gustMph" in say && say.gustMph !== null && say.gustMph < say.mph) fields.gustMph = errors.gustUnderMean(say.gustMph, say.mph);
  if (!from || !say || Object.keys(fields).length > 0) throw new Problem(422, errors.bodyShape, fields);
  return { ...from, said: saidAs(say) };
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
  const given = inTradeUnits(raw);
  if (gate?.check.kind !== "measure") return { kind: "measure", ...given };
  const n = inUnit(given, gate.check.unit);
  if (n === null) throw new Problem(422, errors.wrongUnit(raw.unit, gate.check.unit), { "value.unit": errors.oneOf([gate.check.unit]) });
  return { kind: "measure", n: Math.round(n * 1e6) / 1e6, unit: gate.check.unit };
}

function inTradeUnits({ n, unit }: Extract<v.InferOutput<typeof value>, { kind: "measure" }>): { readonly n: number; readonly unit: Unit } {
  if (unit === "mm") return { n: n / 1000 / METERS_PER_INCH, unit: "in" };
  return unit === "m" ? { n: n / METERS_PER_FOOT, unit: "ft" } : { n, unit };
}
