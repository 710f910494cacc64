/** Where a clause ends: what comes after a stop, a colon, a semicolon or a comma, but for one inside a number. */
const CLAUSE_ENDS = /(?<=[.!?:;,])\s+/;

/**
 * Of a text only what was not in the one before, clause by clause: for old hands, who know the rest. The whole of it where nothing is new.
 *
 * @example onlyChanged("Drive C to D. Six inches showing.", "Drive B to C. Six inches showing.") // "Drive C to D."
 */
export function onlyChanged(text: string, before: string): string {
  const known = new Set(before.split(CLAUSE_ENDS));
  const changed = text.split(CLAUSE_ENDS).filter((clause) => !known.has(clause));
  return changed.length === 0 ? text : changed.join(" ");
}
