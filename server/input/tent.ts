import { nearestName } from "../../machines/lookup/nearest.ts";
import { fieldsOf, listOf } from "../../machines/tent/reading.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { MAX_LENGTH_FT, MAX_WIDTH_FT, MIN_WIDTH_FT } from "../../machines/tent/spec-size.ts";
import { templateFor } from "../../machines/tent/templates.ts";
import { CORNERS, EDGES, type SpecProblem, type StationKind, type TentSpec } from "../../machines/tent/types.ts";
import type { Words } from "../../views/text/words.ts";
import type { Fields } from "./form.ts";
import type { Sentence, Wrong } from "./problem.ts";
import { noFields } from "./strict.ts";
import { typed, typedAll, typedList } from "./typed.ts";

const KINDS = ["corner", "seamEnd", "side"] as const satisfies readonly StationKind[];
const LENGTHS = ["widthFt", "lengthFt", "spacingFt", "centerPoleFt", "sidePoleFt", "setbackFt"] as const;

/** A tent's form as the spec that it says, not checked yet. What cannot be read stays as it was typed, for `checkSpec` to name. */
export function tentFromForm(f: Fields): SpecInput {
  const mids = typedList(f["tent.midsFt"], "ft");
  const anchors = some(KINDS, (kind) => {
    const count = typedAll(f, `tent.anchors.${kind}`, ["plates", "stakes"], "count");
    return count.plates === null && count.stakes === null ? undefined : count;
  });
  const rings = some(EDGES, (name) => typed(f[`tent.rings.${name}`], "count") ?? undefined);
  const shifted = some(CORNERS, (corner) => {
    const by = typedAll(f, `tent.shifted.${corner}`, ["xFt", "yFt"], "ft");
    return by.xFt === null && by.yFt === null ? undefined : by;
  });
  const input: unknown = {
    ...typedAll(f, "tent", LENGTHS, "ft"),
    quarterRings: typed(f["tent.quarterRings"], "count"),
    onePiece: f["tent.onePiece"] === "yes",
    splitEnds: f["tent.splitEnds"] === "yes",
    ...(mids.length > 0 ? { midsFt: mids } : {}),
    ridge: ridgeFrom(f),
    leaveOut: idsIn(f["tent.leaveOut"]),
    add: addedRows(f).map((row) => ({ kind: f[`tent.add.${row}.kind`], ...typedAll(f, `tent.add.${row}`, ["xFt", "yFt"], "ft") })),
    ...(anchors ? { anchors } : {}),
    ...(rings ? { rings } : {}),
    ...(shifted ? { shifted } : {}),
  };
  return input as SpecInput;
}

/** A tent as the fields of its form: all of it, so that reading the form gives the same tent. */
export function tentToForm(spec: TentSpec, words: Words): Fields {
  const { ridge } = spec;
  const flat: [string, string][] = [
    ...LENGTHS.map((name): [string, string] => [name, String(spec[name])]),
    ["quarterRings", String(spec.quarterRings)],
    ["midsFt", spec.midsFt.join(", ")],
    ["onePiece", spec.onePiece ? "yes" : "no"],
    ["splitEnds", spec.splitEnds ? "yes" : "no"],
    ["ridge.kind", ridge.kind],
    ["ridge.count", ridge.kind === "evenly" ? String(ridge.count) : ""],
    ["ridge.fromNearEndFt", ridge.kind === "given" ? ridge.fromNearEndFt.join(", ") : ""],
    ["leaveOut", spec.leaveOut.join(", ")],
    ...spec.add.flatMap(({ kind, xFt, yFt }, i): [string, string][] => [
      [`add.${i + 1}.kind`, kind],
      [`add.${i + 1}.xFt`, String(xFt)],
      [`add.${i + 1}.yFt`, String(yFt)],
    ]),
    ...KINDS.flatMap((kind): [string, string][] => [
      [`anchors.${kind}.plates`, String(spec.anchors[kind]?.plates ?? "")],
      [`anchors.${kind}.stakes`, String(spec.anchors[kind]?.stakes ?? "")],
    ]),
    ...EDGES.map((name): [string, string] => [`rings.${name}`, String(spec.rings?.[name] ?? "")]),
    ...CORNERS.flatMap((corner): [string, string][] => [
      [`shifted.${corner}.xFt`, asTaped(spec.shifted?.[corner]?.xFt, words)],
      [`shifted.${corner}.yFt`, asTaped(spec.shifted?.[corner]?.yFt, words)],
    ]),
  ];
  return Object.fromEntries(flat.map(([name, text]) => [`tent.${name}`, text]));
}

/** What a tent's form says: a spec, or the fields that are wrong with their sentences; `missing` are those left empty. */
export type TentRead = { readonly spec: TentSpec } | { readonly problems: Wrong; readonly missing: readonly string[] };

export function readTentForm(f: Fields): TentRead {
  const checked = checkSpec(tentFromForm(f));
  if ("spec" in checked) return checked;
  const named = checked.problems.map((p) => [besideField(`tent.${p.field}`, f), p] as const);
  const problems = noFields<Sentence>();
  for (const [field, p] of named) problems[field] ??= (w) => w.errors.tent(p);
  return { problems, missing: [...new Set(named.filter(([, p]) => isMissing(p)).map(([field]) => field))] };
}

/** Every problem of a spec from outside, by field. */
export const tentProblems = (problems: readonly SpecProblem[]): Wrong => {
  const fields = noFields<Sentence>();
  for (const p of problems) fields[`tent.${p.field}`] ??= (w) => w.errors.tent(p);
  return fields;
};

/** What a spec may say. */
const KNOWN: readonly string[] = [
  ...LENGTHS,
  "midsFt",
  "onePiece",
  "splitEnds",
  "quarterRings",
  "ridge",
  "leaveOut",
  "add",
  "anchors",
  "rings",
  "shifted",
] satisfies (keyof SpecInput)[];

const AT = ["xFt", "yFt"] as const;

/** What a spec from outside says besides: a slip, as a misspelled `leaveOut` would leave no pole out. By field, each with its sentence. */
export function unknownFields(spec: unknown): [string, Sentence][] {
  const { ridge, add, anchors, rings, shifted } = fieldsOf(spec);
  return [
    ...unknownIn(spec, KNOWN, ""),
    ...unknownIn(ridge, ["kind", "count", "fromNearEndFt"], "ridge."),
    ...listOf(add).flatMap((pole, i) => unknownIn(pole, ["kind", ...AT], `add[${i}].`)),
    ...unknownIn(anchors, KINDS, "anchors."),
    ...KINDS.flatMap((kind) => unknownIn(fieldsOf(anchors)[kind], ["plates", "stakes"], `anchors.${kind}.`)),
    ...unknownIn(rings, EDGES, "rings."),
    ...unknownIn(shifted, CORNERS, "shifted."),
    ...CORNERS.flatMap((corner) => unknownIn(fieldsOf(shifted)[corner], AT, `shifted.${corner}.`)),
  ];
}

const unknownIn = (value: unknown, known: readonly string[], prefix: string): [string, Sentence][] =>
  Array.isArray(value)
    ? []
    : Object.keys(fieldsOf(value))
        .filter((field) => !known.includes(field))
        .map((field) => [`${prefix}${field}`, (w) => w.errors.notKnown(field, nearestName(field, known), known)]);

/** The form's field for a field of the spec or the brief: an item of a list that is typed in one field stands beside that field. */
export function besideField(field: string, f: Fields): string {
  const added = /^tent\.add\[(\d+)\](.*)$/.exec(field);
  if (added) return `tent.add.${addedRows(f)[Number(added[1])] ?? 1}${added[2] || ".xFt"}`;
  const listed = field.replace(/\[\d+\]$/, "");
  if (listed === "tent.ridge") return "tent.ridge.kind";
  if (/^site\.overheadKv/.test(listed)) return "site.overhead";
  return /^crew\./.test(listed) ? "crew" : listed;
}

/** The usual tent of a size, to start the form with. Where nothing is usual the field stays empty, and is asked. */
export function usualTent(width: string | undefined, length: string | undefined): Fields {
  const [widthFt, lengthFt] = [typed(width, "ft"), typed(length, "ft")];
  if (typeof widthFt !== "number" || typeof lengthFt !== "number") return {};
  if (!(widthFt >= MIN_WIDTH_FT && widthFt <= MAX_WIDTH_FT && lengthFt >= widthFt && lengthFt <= MAX_LENGTH_FT)) return {};
  const t = templateFor(widthFt, lengthFt);
  return {
    "tent.widthFt": String(widthFt),
    "tent.lengthFt": String(lengthFt),
    "tent.midsFt": t.midsFt.join(", "),
    "tent.onePiece": t.onePiece ? "yes" : "no",
    "tent.splitEnds": t.splitEnds ? "yes" : "no",
    "tent.spacingFt": String(t.spacingFt),
    "tent.quarterRings": t.quarterRings === null ? "" : String(t.quarterRings),
    "tent.centerPoleFt": String(t.centerPoleFt),
    "tent.sidePoleFt": String(t.sidePoleFt),
    "tent.setbackFt": String(t.setbackFt),
  };
}

const isMissing = (p: SpecProblem) => p.value === "" && (p.code === "notANumber" || p.code === "ringsNotKnown");

function ridgeFrom(f: Fields): unknown {
  const kind = f["tent.ridge.kind"] ?? "";
  if (kind === "") return null;
  if (kind === "evenly") return { kind, count: typed(f["tent.ridge.count"], "count") };
  return kind === "given" ? { kind, fromNearEndFt: typedList(f["tent.ridge.fromNearEndFt"], "ft") } : { kind };
}

const idsIn = (text: string | undefined) =>
  (text ?? "")
    .split(/[,;+\s]+/)
    .filter((id) => id !== "")
    .map((id) => id.toUpperCase());

/** Numbers of the rows of added poles in which something is typed. */
const addedRows = (f: Fields): number[] =>
  [...new Set(Object.keys(f).flatMap((k) => (/^tent\.add\.\d+\.[xy]Ft$/.test(k) && f[k]?.trim() ? Number(k.split(".")[2]) : [])))].sort(
    (a, b) => a - b,
  );

/** A short length as a tape shows it, where that is exactly it; otherwise in feet. */
function asTaped(ft: number | undefined, { feetInches }: Words): string {
  if (ft === undefined) return "";
  const taped = feetInches(ft);
  return typed(taped, "ft") === ft ? taped : String(ft);
}

function some<K extends string, V>(keys: readonly K[], of: (key: K) => V | undefined): Partial<Record<K, V>> | undefined {
  const found = keys.flatMap((key) => {
    const value = of(key);
    return value === undefined ? [] : [[key, value] as const];
  });
  return found.length > 0 ? (Object.fromEntries(found) as Partial<Record<K, V>>) : undefined;
}
