import type { Check } from "../../machines/install/gates.ts";

/** The numbers that a check takes and no others. */
export function exact(check: Check | undefined): number[] {
  if (check?.kind === "count") return check.from !== null && check.from === check.to ? [check.from] : [];
  if (check?.kind !== "figures") return [];
  return Object.values(check.want).flatMap(({ from, to }) => (from !== null && from === to ? [from] : []));
}

const IN_WORDS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
/** Names of poles and stations, such as Q3 or AB12, are no counts. */
export const says = (text: string, n: number): boolean =>
  new RegExp(`(?<![\\w.])(?:${n}${IN_WORDS[n] === undefined ? "" : `|${IN_WORDS[n]}`})(?![\\w.]\\w|\\w)`, "i").test(text);
