import type { Amount } from "../../../machines/figures/line.ts";
import type { LoadFormula, LoadInputName, LoadLeftOut, LoadLine } from "../../../machines/loads/lines.ts";
import type { Screening } from "../../../machines/loads/screening.ts";
import type { Verdict } from "../../../machines/loads/verdict.ts";

/** What stands in a column: what came of a formula, or what went into one and is not the same at every plate. */
export type Column =
  | { readonly is: "result"; readonly formula: LoadFormula }
  | { readonly is: "input"; readonly formula: LoadFormula; readonly name: LoadInputName };

/** An input as it is told once: with its figure where that is the same everywhere, else by the column that has it. */
export type Told = LoadLine["inputs"][number] & { readonly column: Column | null };

/** Lines of one formula from one source, told once for all the plates that have them. */
export type KindOfLine = {
  readonly formula: LoadFormula;
  readonly source: LoadLine["source"];
  readonly inputs: readonly Told[];
  /** Whatever any of them leaves out. */
  readonly leftOut: readonly LoadLeftOut[];
};

/** Plates of one station as they are named: their numbers there, from 1, and of how many. */
export type PlateNames = { readonly station: string; readonly plates: readonly number[]; readonly of: number };

/** Plates at which every figure is the same. A figure is `null` where there is none. */
export type Row = {
  readonly stations: readonly PlateNames[];
  readonly figures: readonly (Amount | string | null)[];
  readonly ratio: number | null;
  readonly isAtLeast: boolean;
  readonly verdict: Verdict;
};

export type StationFigures = { readonly kinds: readonly KindOfLine[]; readonly columns: readonly Column[]; readonly rows: readonly Row[] };

type Entry = Pick<Row, "ratio" | "isAtLeast" | "verdict"> & { readonly name: PlateNames; readonly lines: readonly LoadLine[] };

/** What every station has to hold, with nothing lost and nothing said twice: each kind of line once, then its figures plate by plate, the worst first. */
export function stationFigures(screening: Pick<Screening, "stations">): StationFigures {
  const entries = entriesOf(screening);
  const columns: Column[] = [];
  const kinds = [
    ...groupedBy(
      entries.flatMap(({ lines }) => lines),
      kindKey,
    ).values(),
  ].map((lines): KindOfLine => {
    const [{ formula, source, inputs }] = lines as [LoadLine];
    const told = inputs.map((input, i): Told => {
      const isSame = lines.every((line) => sameValue(line.inputs[i]!.is, input.is));
      return { ...input, column: isSame ? null : columnFor({ is: "input", formula, name: input.name }, columns, entries) };
    });
    if (!columns.some((column) => column.is === "result" && column.formula === formula)) columns.push({ is: "result", formula });
    return { formula, source, inputs: told, leftOut: [...new Set(lines.flatMap((line) => line.leftOut))] };
  });
  // What all of it comes to stands first, beside the ratio.
  const shown = [...columns.slice(-1), ...columns.slice(0, -1)];
  return { kinds, columns: shown, rows: rowsOf(entries, shown) };
}

/** A station without a plate has a row all the same. */
const entriesOf = ({ stations }: Pick<Screening, "stations">): readonly Entry[] =>
  stations.flatMap(({ station, plates, lines, ratio, isAtLeast, verdict }): Entry[] =>
    plates.length === 0
      ? [{ name: { station, plates: [1], of: 1 }, lines, ratio, isAtLeast, verdict }]
      : plates.map((plate) => ({
          name: { station, plates: [plate.plate], of: plates.length },
          lines: [...lines, ...plate.lines],
          ratio: plate.ratio,
          isAtLeast: plate.isAtLeast,
          verdict: plate.verdict,
        })),
  );

/** The column of an input: that of a result, or of the same input before, where it has just these figures; else one of its own, that is added. */
function columnFor(wanted: Column & { is: "input" }, columns: Column[], entries: readonly Entry[]): Column {
  const isAlike = (column: Column): boolean =>
    (column.is === "result" || column.name === wanted.name) &&
    entries.every((entry) => {
      const figure = figureOf(entry, wanted);
      return figure === null || sameValue(figure, figureOf(entry, column));
    });
  const known = columns.find(isAlike);
  if (known) return known;
  columns.push(wanted);
  return wanted;
}

function figureOf({ lines }: Pick<Entry, "lines">, column: Column): Amount | string | null {
  const line = lines.find(({ formula }) => formula === column.formula);
  if (!line) return null;
  return column.is === "result" ? line.result : (line.inputs.find(({ name }) => name === column.name)?.is ?? null);
}

const ORDER: readonly Verdict[] = ["short", "notKnown", "notShort"];

function rowsOf(entries: readonly Entry[], columns: readonly Column[]): readonly Row[] {
  const all = entries.map((entry) => ({ ...entry, figures: columns.map((column) => figureOf(entry, column)) }));
  const alike = groupedBy(all, ({ figures, ratio, isAtLeast, verdict }) => JSON.stringify([figures, ratio, isAtLeast, verdict]));
  return [...alike.values()]
    .map(([first, ...rest]) => ({
      stations: byStation([first!, ...rest].map(({ name }) => name)),
      figures: first!.figures,
      ratio: first!.ratio,
      isAtLeast: first!.isAtLeast,
      verdict: first!.verdict,
    }))
    .sort((a, b) => ORDER.indexOf(a.verdict) - ORDER.indexOf(b.verdict) || (b.ratio ?? -1) - (a.ratio ?? -1));
}

const byStation = (names: readonly PlateNames[]): readonly PlateNames[] =>
  [...groupedBy(names, ({ station }) => station).values()].map((own) => ({ ...own[0]!, plates: own.flatMap(({ plates }) => plates) }));

const kindKey = ({ formula, source, inputs }: LoadLine): string =>
  JSON.stringify([formula, source, inputs.map(({ name, source: from }) => [name, from])]);

const sameValue = (a: Amount | string | null, b: Amount | string | null): boolean => JSON.stringify(a) === JSON.stringify(b);

function groupedBy<T>(all: readonly T[], keyOf: (one: T) => string): ReadonlyMap<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return groups;
}
