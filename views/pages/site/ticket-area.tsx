import type { SiteClearances } from "../../../machines/site/clearances.ts";
import type { Words } from "../../text/words.ts";

/** So many stakes are named. */
const MAX_NAMED = 6;

/** Whether every stake stands where the ticket says that lines were marked. */
export function LeavesTicket({ clearances: { leavesTicket }, words: { thisSite: text } }: { clearances: SiteClearances; words: Words }) {
  if (leavesTicket === null) return <p>{text.noTicketArea}</p>;
  if (leavesTicket.length === 0) return <p>{text.insideTicket}</p>;
  const named = leavesTicket.slice(0, MAX_NAMED).map(text.stake);
  return <p class="alarm">{text.leavesTicket(`${named.join(", ")}${leavesTicket.length > MAX_NAMED ? " …" : ""}`, leavesTicket.length)}</p>;
}
