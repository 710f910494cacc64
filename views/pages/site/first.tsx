import type { Screening } from "../../../machines/loads/screening.ts";
import type { Words } from "../../text/words.ts";
import type { SiteState } from "./state.ts";
import { LeavesTicket } from "./ticket-area.tsx";
import { TooNear } from "./too-near.tsx";

/** What matters first: what of the site is shut and why, in a few lines. All else on the page stands behind it. */
export const First = ({ state, words, words: { thisSite: text } }: { state: SiteState; words: Words }) => {
  const { clearances, screening, isTold, site } = state;
  const isAnchored = clearances.verdict === "notShort" && site.fixes?.some(({ is }) => is === "engineeredAnchor");
  const leaves = clearances.leavesTicket !== null && clearances.leavesTicket.length > 0;
  return (
    <section class="first">
      {isTold ? (
        <p class="verdict">
          <b>{text.verdictOf(clearances.verdict, countsOf(clearances))}.</b>{" "}
          {isAnchored ? text.besideAnchors : text.verdictTold[clearances.verdict]}
        </p>
      ) : (
        <p>{text.nothing}</p>
      )}
      <TooNear clearances={clearances} words={words} />
      {leaves && <LeavesTicket clearances={clearances} words={words} />}
      {screening && <Anchors screening={screening} words={words} />}
    </section>
  );
};

/** Of how many lines and things, each counted once by what is worst at it, how many are short and how many not known. */
function countsOf({ neighbors }: SiteState["clearances"]) {
  const short = neighbors.filter((one) => one.short.length > 0);
  const notKnown = neighbors.filter((one) => one.short.length === 0 && one.nearest.some(({ verdict }) => verdict === "notKnown"));
  return { short: short.length, notKnown: notKnown.length, of: neighbors.length };
}

const Anchors = ({ screening, words: { thisSite: text, loads, anchors } }: { screening: Screening; words: Words }) => (
  <>
    <p class="verdict">
      <b>{text.anchorsAre(screening.verdict)}.</b>
      {screening.worst !== null &&
        screening.ratio !== null &&
        ` ${anchors.worst(screening.worst, loads.ratio(screening.ratio, screening.isAtLeast))}`}
    </p>
    {screening.reasons.length > 0 && (
      <ul>
        {screening.reasons.map((reason) => (
          <li>{loads.reason(reason)}</li>
        ))}
      </ul>
    )}
  </>
);
