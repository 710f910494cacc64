/**
 * Moves marks on a line apart, each as little as can be, until none is nearer to the next than `gap`. In and out ascending,
 * in one unit. Pools neighbors that are too close around their middle (pool adjacent violators).
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
