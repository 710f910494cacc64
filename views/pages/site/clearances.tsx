import type { Clearance, NeighborClearances } from "../../../machines/site/clearances.ts";
import { knownFt, type Term } from "../../../machines/site/rules.ts";
import type { Words } from "../../text/words.ts";
import type { SiteState } from "./state.ts";
import { LeavesTicket } from "./ticket-area.tsx";

/** What there is to spare at the nearest, ft. */
const spareFt = ({ nearest }: NeighborClearances): number => {
  const [one] = nearest;
  return one ? one.distanceFt - knownFt(one.terms) : Number.POSITIVE_INFINITY;
};

/** Every line, thing and edge with what stands nearest to it and all that is too near: where each figure of a sum is from, told once, and then the sums, the tightest first. */
export function Clearances({ state: { clearances }, words, words: { thisSite: text } }: { state: SiteState; words: Words }) {
  const all = [...clearances.neighbors].sort((a, b) => spareFt(a) - spareFt(b));
  return (
    <>
      {all.length > 0 && (
        <>
          <h3>{text.termsTitle}</h3>
          <ul class="terms">
            {termsOf(all, text).map((term) => (
              <li>{term}</li>
            ))}
          </ul>
          <h3>{text.eachTitle}</h3>
          <ul class="clearances">
            {all.map((neighbor) => (
              <One neighbor={neighbor} words={words} />
            ))}
          </ul>
        </>
      )}
      <LeavesTicket clearances={clearances} words={words} />
      <h3>{text.leftOutTitle}</h3>
      <ul class="terms">
        {clearances.leftOut.map((what) => (
          <li>{text.leftOut(what)}</li>
        ))}
      </ul>
    </>
  );
}

const tellsSomething = ({ ft }: Term): boolean => ft !== 0;

/** Where each figure of the sums is from, each once. */
const termsOf = (neighbors: readonly NeighborClearances[], text: Words["thisSite"]): readonly string[] => [
  ...new Set(neighbors.flatMap((one) => toldOf(one).flatMap(({ terms }) => terms.filter(tellsSomething).map(text.term)))),
];

/** What stands nearest to it, and whatever else is too near. */
const toldOf = ({ nearest, short }: NeighborClearances): readonly Clearance[] => [
  ...nearest,
  ...short.filter((one) => !nearest.includes(one)),
];

/** A sum is told once for all that it is the same for. */
function One({ neighbor, words: { thisSite: text } }: { neighbor: NeighborClearances; words: Words }) {
  const told = text.told(neighbor.from);
  const bySum = new Map<string, Clearance[]>();
  for (const one of toldOf(neighbor)) bySum.set(text.wanted(one), [...(bySum.get(text.wanted(one)) ?? []), one]);
  return (
    <li>
      <div>
        <b>{text.name(neighbor.from)}</b>
        {told !== "" && <span class="told">{told}</span>}
      </div>
      <div>
        {[...bySum].map(([wanted, ones]) => (
          <>
            <ul>
              {ones.map((one) => (
                <li class={one.verdict}>{text.one(one)}</li>
              ))}
            </ul>
            <p>{wanted}</p>
          </>
        ))}
      </div>
    </li>
  );
}
