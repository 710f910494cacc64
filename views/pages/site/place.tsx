import { offsetOf } from "../../../machines/site/model.ts";
import { turnedBearing } from "../../../machines/site/north.ts";
import type { PlacementFound } from "../../../machines/site/placement.ts";
import { cornerAOf } from "../../../machines/site/stand.ts";
import { SiteDrawing } from "../../drawing/site/site-drawing.tsx";
import type { Words } from "../../text/words.ts";
import { SiteFrame, type SitePage } from "./frame.tsx";
import { SiteKey } from "./key.tsx";
import type { SiteState } from "./state.ts";
import { TooNear } from "./too-near.tsx";

type Props = SitePage & {
  /** Of the form, so that it is taken once. A prop called `key` is the library's own, and never arrives. */
  readonly formKey: string;
  /** What was found, and the name of what it was found by; `null` before anybody looked. */
  readonly sighted: { readonly by: string; readonly found: PlacementFound } | null;
};

/** Where the tent is wanted beside where it could stand: what is too near at each, how far it moves, and the press that takes it. */
export const PlacePage = (page: Props) => {
  const { state, words, sighted, formKey } = page;
  const { siteForms: text } = words;
  const found = sighted?.found ?? null;
  const there = found && found.is !== "nowhere" && found.is !== "asWanted" ? found : null;
  return (
    <SiteFrame {...page} title={text.placeTitle}>
      {found && (
        <p class="verdict" role="status">
          <b>{text.result(found)}</b>
        </p>
      )}
      <div class={there ? "places" : "site-top"}>
        <section>
          <h2>{text.wantedPlace}</h2>
          <figure class="site-figure">
            <SiteDrawing {...state} words={words} alsoSeen={there ? [there.place] : []} />
          </figure>
          <AtPlace clearances={state.clearances} isTold={state.isTold} words={words} />
        </section>
        {there && <Found state={state} found={there} words={words} />}
      </div>
      <SiteKey site={state.site} isShort={true} words={words} />
      {!found && (
        <form method="post" action={`${state.path}/place`} class="site-form">
          <p>{text.finding}</p>
          <button type="submit" class="main" name="go" value="find">
            {text.find}
          </button>
        </form>
      )}
      {there && state.mayChange && (
        <form method="post" action={`${state.path}/place`} class="site-form">
          <input type="hidden" name="key" value={formKey} />
          <input type="hidden" name="by" value={sighted!.by} />
          {state.job !== null && <p>{text.takeTold}</p>}
          <button type="submit" class="main" name="go" value="take">
            {text.takePlace}
          </button>
        </form>
      )}
      <p>{words.thisSite.screening}</p>
      <a class="button" href={state.path}>
        {text.back}
      </a>
    </SiteFrame>
  );
};

type There = Exclude<PlacementFound, { is: "nowhere" }>;

const Found = ({ state, found, words, words: { siteForms: text } }: { state: SiteState; found: There; words: Words }) => {
  const { place, clearances, shift } = found;
  const bearingDeg = state.bearingDeg === undefined ? undefined : turnedBearing(state.bearingDeg, shift.turnDeg);
  const { alongFt, offFt } = offsetOf(cornerAOf(state.plan, place));
  return (
    <section>
      <h2>{text.foundPlace}</h2>
      <figure class="site-figure">
        <SiteDrawing
          {...state}
          place={place}
          clearances={clearances}
          bearingDeg={bearingDeg}
          words={words}
          id="found"
          alsoSeen={[state.place]}
        />
      </figure>
      <p>
        <b>{text.moved(shift)}</b> {text.cornerA(alongFt, offFt)}
      </p>
      {clearances.leavesTicket !== null && clearances.leavesTicket.length > 0 && (
        <p class="alarm">{text.leavesTicket(clearances.leavesTicket.length)}</p>
      )}
      <AtPlace clearances={clearances} isTold words={words} />
      {found.is === "leastBad" && (
        <>
          <h3>{text.fixesTitle}</h3>
          <ul>
            {found.fixes.map((fix) => (
              <li>{text.fix(fix)}</li>
            ))}
          </ul>
          {isDug(found) && <p class="alarm">{text.dug}</p>}
        </>
      )}
    </section>
  );
};

/** Whether a stake of a place stands in dug ground, and does not slide out of it. */
function isDug({ clearances, ...found }: There): boolean {
  const slid = new Set("fixes" in found ? found.fixes.flatMap((fix) => (fix.is === "slide" ? [fix.station] : [])) : []);
  return clearances.neighbors.some(
    ({ from, short }) =>
      from.is === "buried" && from.line.kind === "excavation" && short.some(({ of }) => of.is !== "plate" || !slid.has(of.station)),
  );
}

/** What is too near at a place, or that nothing is. */
const AtPlace = ({ clearances, isTold, words }: { clearances: SiteState["clearances"]; isTold: boolean; words: Words }) => {
  const { thisSite: text, siteForms } = words;
  if (!isTold) return <p>{text.nothing}</p>;
  if (clearances.neighbors.some(({ short }) => short.length > 0)) return <TooNear clearances={clearances} words={words} />;
  return <p>{clearances.verdict === "notKnown" ? text.verdictTold.notKnown : siteForms.clear}</p>;
};
