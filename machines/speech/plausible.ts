import type { Check, Value } from "../install/gates.ts";

/** A bare number beyond so many times what a gate allows was not heard right. Common practice, no source. */
const MAX_TIMES = 10;

/**
 * The numbers of an answer that are beyond anything plausible at a gate; empty where all are plausible, or nothing tells. The unit that
 * was said with a number is for the caller to look at: "fifty feet" at a gate of two is no slip.
 *
 * @example implausibleIn({ kind: "measure", n: 65, unit: "in" }, { kind: "measure", unit: "in", from: 0, to: 6, noneIsGood: false }) // [65]
 */
export function implausibleIn(value: Value, check: Check): readonly number[] {
  if (value.kind === "measure" && check.kind === "measure") return far(value.n, check);
  if (value.kind === "count" && check.kind === "count") return far(value.n, check);
  if (value.kind === "figures" && check.kind === "figures")
    return Object.entries(value.n).flatMap(([name, n]) => far(n, check.want[name] ?? { from: null, to: null }));
  return [];
}

function far(n: number, { from, to }: { readonly from: number | null; readonly to: number | null }): readonly number[] {
  const limit = Math.max(Math.abs(from ?? 0), Math.abs(to ?? 0));
  return limit > 0 && Math.abs(n) > MAX_TIMES * limit ? [n] : [];
}
