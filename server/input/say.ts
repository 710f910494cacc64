import * as v from "valibot";
import type { Said } from "../../machines/conversation/interpret.ts";
import { expected } from "../../machines/install/checks/any-check.ts";
import { inUnitOf } from "../../machines/install/checks/measure.ts";
import { shortText } from "../../machines/install/checks/value-form.ts";
import { type GivenValue, valueSchema } from "../../machines/install/checks/values.ts";
import { PRESSED } from "../../machines/install/commands.ts";
import type { Gate, Value } from "../../machines/install/gates.ts";
import { SHORT_BOUNDS } from "../../machines/install/thing.ts";
import { ORDER_ON_SITE } from "../../machines/tent/load.ts";
import { saidOf, says, saysOf, wrongKindOf } from "./issue.ts";
import { Problem, type Sentence } from "./problem.ts";
import { BESIDE_ALARM, BESIDE_WIND, COLD, gustProblem, HEAT, LOOK, speed } from "./reading.ts";
import { noFields, strict } from "./strict.ts";
import { VALUE_ERRORS } from "./value-errors.ts";

const text = (max: number) => shortText(max, VALUE_ERRORS);
const value = valueSchema(VALUE_ERRORS);
const entry = v.pipe(v.number(says("notANumber")), v.safeInteger(says("whole")), v.minValue(0, says("whole")));
const moment = v.pipe(
  v.string(),
  v.isoTimestamp(saysOf(({ errors }, given) => errors.notATime(String(given)))),
  v.check(
    (time) => Number.isFinite(Date.parse(time)),
    saysOf(({ errors }, given) => errors.notATime(String(given))),
  ),
);
/** What comes with everything that is said: by whom, under which key, against which entry. */
export const AROUND = { as: text(60), key: v.pipe(v.string(says("keyShape")), v.regex(/^[\w.-]{8,80}$/, says("keyShape"))), seen: entry };
const envelope = v.object(AROUND);
/** What is said, in the same object as who says it. */
const said = <E extends v.ObjectEntries>(entries: E) => strict(entries, Object.keys(AROUND));
const short = v.pipe(
  v.number(says("notANumber")),
  v.safeInteger(says("whole")),
  v.minValue(SHORT_BOUNDS.from, says("from", SHORT_BOUNDS.from, SHORT_BOUNDS.to)),
  v.maxValue(SHORT_BOUNDS.to, says("from", SHORT_BOUNDS.from, SHORT_BOUNDS.to)),
);
const thing = v.variant("is", [
  strict({ is: v.literal("piece"), id: text(20) }),
  strict({
    is: v.literal("kit"),
    item: v.picklist(
      ORDER_ON_SITE,
      saysOf(({ errors }, given) => errors.notOneOf(given, ORDER_ON_SITE)),
    ),
    short,
  }),
]);
const FOUND = ["buried", "overhead", "thing"] as const;
const command = v.variant("type", [
  ...(["next", "back", "hold", "takeLead"] as const).map((type) => said({ type: v.literal(type) })),
  said({ type: v.literal("carryOn"), became: v.optional(v.nullable(text(300)), null) }),
  // The alarm counts without a word of what happened.
  said({ type: v.literal("hurt"), words: v.optional(text(300), PRESSED) }),
  said({ type: v.literal("answer"), gate: text(80), value }),
  said({ type: v.literal("waive"), gate: text(80), because: text(300) }),
  said({ type: v.literal("makeSafe"), because: v.optional(v.nullable(text(300)), null) }),
  said({ type: v.literal("standDown"), because: text(300) }),
  said({ type: v.literal("outOfUse"), thing, because: text(300) }),
  said({ type: v.literal("backInUse"), thing, because: text(300) }),
  said({
    type: v.literal("found"),
    what: v.looseObject({
      is: v.picklist(
        FOUND,
        saysOf(({ errors }, given) => errors.notOneOf(given, FOUND)),
      ),
    }),
  }),
  said({ type: v.literal("note"), text: text(1000) }),
  v.variant("kind", [
    said({
      type: v.literal("reading"),
      kind: v.literal("wind"),
      mph: speed,
      ...BESIDE_WIND,
      takenAt: v.optional(v.nullable(moment), null),
      place: v.optional(v.nullable(text(80)), null),
    }),
    said({ type: v.literal("reading"), kind: v.literal("windByLook"), look: LOOK, ...BESIDE_WIND }),
    said({ type: v.literal("reading"), kind: v.literal("heat"), ...HEAT }),
    said({ type: v.literal("reading"), kind: v.literal("cold"), ...COLD }),
    said({ type: v.literal("reading"), kind: v.literal("noThunder"), because: text(300) }),
  ]),
  said({ type: v.literal("amend"), because: text(300), brief: v.custom<object>((brief) => typeof brief === "object" && brief !== null) }),
  said({ type: v.literal("handOver"), to: text(60) }),
  said({ type: v.literal("correct"), target: entry }),
  said({ type: v.literal("wrong"), target: entry }),
  said({ type: v.literal("agree"), target: entry }),
  said({ type: v.literal("disagree"), target: entry }),
]);
const TOLD = ["thunder", "warning", "rain"] as const;
/** Counts from now: no time that comes with it, however written, keeps an alarm out. */
const told = said({ type: v.literal("reading"), kind: v.picklist(TOLD), ...BESIDE_ALARM });
const isTold = ({ type, kind }: Record<string, unknown>) => type === "reading" && TOLD.some((one) => one === kind);
const heard = said({ heard: text(300) });
const spoken = said({
  alternatives: v.pipe(v.array(text(2000)), v.minLength(1, says("nothingHeard")), v.maxLength(10, says("tooMany", 10))),
  talk: v.optional(v.boolean(says("yesOrNo")), false),
  /** The entry whose read-back the screen showed when the speech began: what "correct" means. */
  readBack: v.optional(v.nullable(entry), null),
});

/** What a press, or a script, asks for: still in the units and words that it came in. */
export type Press = v.InferOutput<typeof command> | v.InferOutput<typeof told>;
export type Body = v.InferOutput<typeof envelope> & {
  readonly said: Exclude<Said, { by: "press" }> | { readonly by: "press"; readonly press: Press };
};

/** One thing said, as JSON, or a Problem that names each field that is wrong. */
export function readSay(input: unknown): Body {
  const fields = noFields<Sentence>();
  const body = (typeof input === "object" && input !== null ? input : {}) as Record<string, unknown>;
  const from = read(envelope, body, fields);
  if (["heard", "alternatives", "type"].filter((name) => Object.hasOwn(body, name)).length !== 1) fields.type = (w) => w.errors.heardOrType;
  const schema = "alternatives" in body ? spoken : "heard" in body ? heard : isTold(body) ? told : command;
  const say = read(schema, body, fields);
  const gust = say && "mph" in say ? gustProblem(say) : null;
  if (gust) fields.gustMph = gust;
  if (!from || !say || Object.keys(fields).length > 0) throw new Problem(422, (w) => w.errors.bodyShape, fields);
  return { ...from, said: saidAs(say) };
}

function saidAs(say: v.InferOutput<typeof spoken> | v.InferOutput<typeof heard> | Press): Body["said"] {
  if ("alternatives" in say) return { by: "voice", ...say };
  return "heard" in say ? { by: "typing", words: say.heard } : { by: "press", press: say };
}

/** A part of what came, or `null` with what is wrong by field. */
export function read<S extends v.GenericSchema>(schema: S, body: unknown, fields: Record<string, Sentence>): v.InferOutput<S> | null {
  const result = v.safeParse(schema, body);
  if (result.success) return result.output;
  for (const issue of result.issues) fields[v.getDotPath(issue) ?? "body"] ??= saidOf(issue) ?? wrongKindOf(issue);
  return null;
}

/** A value as its gate takes it: a measurement in the unit that is asked for. Throws a Problem where it cannot be. */
export function toGateUnit(given: GivenValue, gate: Gate | null): Value {
  if (given.kind !== "measure") return given;
  const asked = gate && expected(gate.check);
  const wants = asked?.expects === "measure" ? asked.unit : null;
  const measured = inUnitOf(given, wants);
  if (measured) return measured;
  throw new Problem(422, (w) => w.errors.wrongUnit(given.unit, wants!), { "value.unit": (w) => w.errors.oneOf([wants!]) });
}
