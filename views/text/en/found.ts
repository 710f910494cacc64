import type { Check, Value } from "../../../machines/install/gates.ts";
import type { JobState } from "../../../machines/install/state.ts";
import { wantedCounts } from "../../../machines/install/status.ts";
import { squared } from "../../../machines/site/squaring.ts";
import { kitName, things } from "./names.ts";
import { squaredText } from "./squaring.ts";

/** What an answer comes to, where that is more than its value; `null` where it is not. */
export function foundText(asks: Check, value: Value, state: Pick<JobState, "answers">): string | null {
  if (asks.kind === "square" && value.kind === "lengths") return squaredText(squared(value.ft, asks));
  if (asks.kind === "counts" && value.kind === "counts") return countedText(wantedCounts(asks, state), value.n, asks.as === null);
  return null;
}

/** What is left to count, what is short and what is over. More than was wanted is no fault of a load. */
function countedText(want: Readonly<Record<string, number>>, n: Readonly<Record<string, number>>, moreIsGood: boolean): string {
  const items = Object.entries(want);
  const left = items.filter(([item]) => n[item] === undefined);
  const off = items.flatMap(([item, wanted]) => {
    const counted = n[item];
    if (counted === undefined || counted === wanted || (moreIsGood && counted > wanted)) return [];
    return [counted < wanted ? `${things(wanted - counted, item)} short of ${wanted}` : `${things(counted - wanted, item)} over ${wanted}`];
  });
  const still = left.length === 0 ? "" : `Still to count: ${left.map(([item]) => kitName(item)).join(", ")}.`;
  if (off.length > 0) return `${capital(off.join("; "))}. ${still}`.trim();
  return still || "All there.";
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
