/**
 * Moves marks on a line apart, as little as possible (least squares), until neighbors are at least `gap` apart. Input and output
 * are ascending and in the same unit. Isotonic regression by pooling adjacent violators.
 *
 * @example spread([0, 1, 10], 3) // [-1, 2, 10]
 */
export function spread(places: readonly number[], gap: number): number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const [i, place] of places.entries()) {
    let pool = { sum: place - i * gap, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pools.pop();
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  }
  return pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count)).map((base, i) => base + i * gap);
}
