import type { PoleRow, TentPlan } from "./types.ts";

/** Where a line of poles stands among those of its kind: counted from the end of the tent that is nearer. */
export type AlongTent = {
  readonly kind: "quarters" | "center";
  /** Counted from 1. */
  readonly no: number;
  readonly from: "DA" | "BC";
  /** As far from both ends. */
  readonly middle: boolean;
};

/** Where these poles stand along a tent; `null` for the only line of its kind, for poles that are no line, and for an added row. */
export function alongTent({ rows, poles }: Pick<TentPlan, "rows" | "poles">, ids: readonly string[]): AlongTent | null {
  const kind = rows.some((row) => row.centers.some((id) => ids.includes(id))) ? "center" : "quarters";
  const known = rows.filter((row) => row.kind !== "added");
  const lines = known.flatMap((row) => linesOf(row, kind)).sort((a, b) => levelFt(a) - levelFt(b));
  const at = lines.findIndex((line) => line.join() === ids.join());
  if (at < 0 || lines.length < 2) return null;
  const behind = lines.length - 1 - at;
  return { kind, no: Math.min(at, behind) + 1, from: at <= behind ? "DA" : "BC", middle: at === behind };

  function levelFt(line: readonly string[]): number {
    const here = poles.filter(({ id }) => line.includes(id));
    return here.reduce((sum, { yFt }) => sum + yFt, 0) / Math.max(here.length, 1);
  }
}

const linesOf = ({ quarters, centers }: PoleRow, kind: AlongTent["kind"]): (readonly string[])[] =>
  kind === "center" ? centers.map((id) => [id]) : quarters.length > 0 ? [quarters] : [];
