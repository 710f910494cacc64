/**
 * A column of a published table between two of its rows, by a straight line; `null` beyond its first and last row, as nothing is
 * published there. Rows are in rising order of their first number.
 *
 * @example interpolate([[10, 1], [20, 3]], 15) // 2
 */
export function interpolate(rows: readonly (readonly [at: number, value: number])[], at: number): number | null {
  const above = rows.findIndex(([x]) => x >= at);
  if (above < 0) return null;
  const [x1, y1] = rows[above]!;
  if (x1 === at) return y1;
  if (above === 0) return null;
  const [x0, y0] = rows[above - 1]!;
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}
