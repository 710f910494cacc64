import type { Child } from "hono/jsx";
import { CORNERS, EDGES } from "../../machines/tent/types.ts";
import { Field, type Filled } from "./fields.tsx";

const KINDS = ["corner", "seamEnd", "side"] as const;
const OPTIONS: Readonly<Record<string, readonly string[]>> = {
  "tent.onePiece": ["no", "yes"],
  "tent.splitEnds": ["yes", "no"],
  "tent.ridge.kind": ["", "atSeams", "evenly", "given"],
};
const named = (names: readonly string[]) => names.map((name) => `tent.${name}`);
const USUAL = named([
  "widthFt",
  "lengthFt",
  "midsFt",
  "onePiece",
  "splitEnds",
  "spacingFt",
  "quarterRings",
  "centerPoleFt",
  "sidePoleFt",
  "setbackFt",
]);
const RIDGE = named(["ridge.kind", "ridge.count", "ridge.fromNearEndFt", "leaveOut"]);
const ANCHORS = named(KINDS.flatMap((kind) => [`anchors.${kind}.plates`, `anchors.${kind}.stakes`]));
const RINGS = named(EDGES.map((name) => `rings.${name}`));
const SHIFTED = named(CORNERS.flatMap((corner) => [`shifted.${corner}.xFt`, `shifted.${corner}.yFt`]));
const MIN_ROWS = 3;
const MAX_ROWS = 60;

/** Rows for poles more: those in use, and empty ones after them. */
function rowsIn(values: Filled["values"]): number[] {
  const used = Object.keys(values).flatMap((k) => (values[k] === "" ? [] : Number(/^tent\.add\.(\d+)\.[xy]Ft$/.exec(k)?.[1] ?? 0)));
  return Array.from({ length: Math.min(MAX_ROWS, Math.max(MIN_ROWS, Math.max(0, ...used) + 2)) }, (_, i) => i + 1);
}
const added = (row: number) => named(["kind", "xFt", "yFt"].map((what) => `add.${row}.${what}`));

/** Every field of a tent's form as it is filled now. */
export const tentFieldNames = (values: Filled["values"]): string[] => [
  ...USUAL,
  ...RIDGE,
  ...rowsIn(values).flatMap(added),
  ...ANCHORS,
  ...RINGS,
  ...SHIFTED,
];

const Fields = ({ names, values, problems, words, type }: Filled & { names: readonly string[]; type?: string }) => (
  <div class={`fields ${type ?? ""}`}>
    {names.map((name) => (
      <Field
        name={name}
        values={values}
        problems={problems}
        words={words}
        options={OPTIONS[name] ?? (name.endsWith(".kind") ? ["quarter", "center"] : undefined)}
      />
    ))}
  </div>
);

/** Less common fields, folded away unless one of them says something or is wrong. */
const Folded = ({ title, open, children }: { title: string; open: boolean; children: Child }) => (
  <details open={open}>
    <summary>{title}</summary>
    {children}
  </details>
);

/** All of a tent's spec as fields. The same in every form that has a tent in it. */
export const TentFields = ({ values, problems, words }: Filled) => {
  const part = { values, problems, words };
  const { groups, tents } = words;
  const said = (names: readonly string[]) => names.some((name) => values[name] || problems[name]);
  const rows = rowsIn(values);
  const ridge = values["tent.ridge.kind"];
  const oddRidge = ridge === "given" || (ridge === "evenly" && values["tent.onePiece"] !== "yes");
  const wrongRidge = RIDGE.some((name) => problems[name]);
  const places = rows.flatMap((row) => added(row).slice(1));
  return (
    <fieldset>
      <legend>{groups.tent}</legend>
      <Fields names={USUAL} {...part} />
      <Folded title={tents.groups.poles} open={oddRidge || wrongRidge || said(["tent.leaveOut", ...places])}>
        <Fields names={RIDGE} {...part} />
        <h3>{tents.groups.add}</h3>
        {rows.map((row) => (
          <Fields names={added(row)} type="three" {...part} />
        ))}
      </Folded>
      <Folded title={tents.groups.anchors} open={said(ANCHORS)}>
        <p>{tents.groups.anchorsHint}</p>
        <Fields names={ANCHORS} type="two" {...part} />
      </Folded>
      <Folded title={tents.groups.onSite} open={said([...RINGS, ...SHIFTED])}>
        <p>{tents.groups.ringsHint}</p>
        <Fields names={RINGS} type="two" {...part} />
        <p>{tents.groups.shiftedHint}</p>
        <Fields names={SHIFTED} type="two" {...part} />
      </Folded>
    </fieldset>
  );
};
