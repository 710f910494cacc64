/** A number, and how many there are of it. */
export type Counted = { readonly n: number; readonly count: number };
/** How numbers lie: a quarter of them are `low` or less, half `middle` or less, three quarters `high` or less. */
export type Spread = { readonly count: number; readonly low: number; readonly middle: number; readonly high: number };

/**
 * The quartiles of numbers that were counted, in whatever order; `null` of none. Each is one of the numbers themselves (nearest
 * rank): none is made up between two.
 *
 * @example spreadOf([{ n: 3, count: 1 }, { n: 1, count: 2 }, { n: 9, count: 1 }]) // { count: 4, low: 1, middle: 1, high: 3 }
 */
export function spreadOf(counts: readonly Counted[]): Spread | null {
  const sorted = [...counts].sort((a, b) => a.n - b.n);
  const count = sorted.reduce((sum, one) => sum + one.count, 0);
  if (count === 0) return null;
  const at = (share: number): number => {
    const rank = Math.ceil(share * count);
    let before = 0;
    for (const one of sorted) {
      before += one.count;
      if (before >= rank) return one.n;
    }
    return sorted.at(-1)!.n;
  };
  return { count, low: at(0.25), middle: at(0.5), high: at(0.75) };
}
