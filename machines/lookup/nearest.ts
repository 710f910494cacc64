/** Letters that two names may differ by and still be taken for a slip: one in three, and never more than three. */
const slipsIn = (name: string): number => Math.min(3, Math.floor(name.length / 3));

/**
 * The known name that somebody most likely meant, upper and lower case being the same; `null` where none is near.
 *
 * @example nearestName("embedmentin", ["embedmentIn", "soil"]) // "embedmentIn"
 */
export function nearestName(name: string, known: readonly string[]): string | null {
  const [best] = known
    .map((other) => ({ other, off: editDistance(name.toLowerCase(), other.toLowerCase()) }))
    .filter(({ off }) => off <= slipsIn(name))
    .sort((a, b) => a.off - b.off);
  return best?.other ?? null;
}

/** Letters to put in, leave out, change, or swap with the next, to come from one word to another (Damerau, 1964). */
function editDistance(from: string, to: string): number {
  if (Math.abs(from.length - to.length) > 3) return Number.POSITIVE_INFINITY;
  let before: number[] = [];
  let row = Array.from({ length: to.length + 1 }, (_, i) => i);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const swapped = from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      const changed = row[j - 1]! + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(next[j - 1]! + 1, row[j]! + 1, changed, swapped ? before[j - 2]! + 1 : changed));
    }
    [before, row] = [row, next];
  }
  return row[to.length]!;
}
