import type { NeighborClearances } from "../../../machines/site/clearances.ts";
import { knownFt } from "../../../machines/site/rules.ts";
import type { Words } from "../../text/words.ts";
import type { SiteState } from "./state.ts";

/** So many lines and things are told one by one; a file may have thousands. */
const MAX_TOLD = 40;

/** What there is to spare at the nearest, ft. */
const spareFt = ({ nearest }: NeighborClearances): number => {
  const [one] = nearest;
  return one ? one.distanceFt - knownFt(one.terms) : Number.POSITIVE_INFINITY;
};

/** Every line, thing and edge with what stands nearest to it, the tightest first: distance, wanted as a sum of its terms, and the verdict. */
export function Clearances({ state: { clearances }, words, words: { thisSite: text } }: { state: SiteState; words: Words }) {
  const all = [...clearances.neighbors].sort((a, b) => spareFt(a) - spareFt(b));
  return (
    <>
      {all.slice(0, MAX_TOLD).map((neighbor) => (
        <One neighbor={neighbor} words={words} />
      ))}
      {all.length > MAX_TOLD && <p>{text.farther(all.length - MAX_TOLD)}</p>}
      <TicketArea clearances={clearances} words={words} />
      <h3>{text.leftOutTitle}</h3>
      <ul>
        {clearances.leftOut.map((what) => (
          <li>{text.leftOut(what)}</li>
        ))}
      </ul>
    </>
  );
}

/** What is wanted is told once, after the last that it is wanted of. */
function One({ neighbor: { from, short, nearest }, words: { thisSite: text } }: { neighbor: NeighborClearances; words: Words }) {
  const told = text.told(from);
  return (
    <section class="clearance">
      <h3>{text.name(from)}</h3>
      {told !== "" && <p class="told">{told}</p>}
      {short.length > nearest.length && <p class="told">{text.shorts(short.length)}</p>}
      <dl>
        {nearest.map((one, i) => (
          <div class={one.verdict}>
            <dt>{text.one(one)}</dt>
            {(i === nearest.length - 1 || text.wanted(one) !== text.wanted(nearest[i + 1]!)) && <dd>{text.wanted(one)}</dd>}
          </div>
        ))}
      </dl>
    </section>
  );
}

/** So many stakes are named. */
const MAX_NAMED = 6;

function TicketArea({ clearances: { leavesTicket }, words: { thisSite: text } }: { clearances: SiteState["clearances"]; words: Words }) {
  if (leavesTicket === null) return <p>{text.noTicketArea}</p>;
  if (leavesTicket.length === 0) return <p>{text.insideTicket}</p>;
  const named = leavesTicket.slice(0, MAX_NAMED).map(text.stake);
  return <p class="alarm">{text.leavesTicket(`${named.join(", ")}${leavesTicket.length > MAX_NAMED ? " …" : ""}`, leavesTicket.length)}</p>;
}
