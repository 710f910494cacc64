import { SiteDrawing } from "../../drawing/site/site-drawing.tsx";
import { CornersTold } from "../../parts/corners-told.tsx";
import type { Words } from "../../text/words.ts";
import { BallastSection } from "../anchors/ballast.tsx";
import { Clearances } from "./clearances.tsx";
import { First } from "./first.tsx";
import { SiteFrame, type SitePage } from "./frame.tsx";
import { SiteKey } from "./key.tsx";
import { LoadLines } from "./loads.tsx";
import type { SiteState } from "./state.ts";

/** A site as it was entered, with all that is worked out from it and where each figure comes from. Printed, it is one column. */
export const ThisSitePage = (page: SitePage) => {
  const { state, words } = page;
  const { thisSite: text } = words;
  const { clearances, site, plan } = state;
  return (
    <SiteFrame {...page} title={text.title}>
      <First state={state} words={words} />
      <div class="site-top">
        <figure class="site-figure" aria-label={text.drawing}>
          <SiteDrawing {...state} words={words} />
        </figure>
        <div>
          <SiteKey site={site} isShort={clearances.neighbors.some((n) => n.short.length > 0)} words={words} />
          <CornersTold plan={plan} site={site} words={words} />
          {site.slope && <p>{text.slope(site.slope.percent, site.slope.downhillDeg)}</p>}
          <Ways state={state} words={words} />
        </div>
      </div>
      <p>{text.screening}</p>
      {state.isTold && (
        <details>
          <summary>
            <h2>{text.clearances}</h2>
          </summary>
          <Clearances state={state} words={words} />
        </details>
      )}
      {state.screening && (
        <details>
          <summary>
            <h2>{text.loads}</h2>
          </summary>
          <LoadLines screening={state.screening} words={words} />
        </details>
      )}
      <BallastSection ballast={state.ballast} plan={plan} words={words} />
      {state.job !== null && !state.screening && <p>{text.noLoads}</p>}
      {state.job !== null && (
        <a class="button" href={`/jobs/${state.job}/anchors`}>
          {text.toAnchors}
        </a>
      )}
      <p class="screen">{text.print}</p>
      <p class="size">{words.page.size(plan.widthFt, plan.lengthFt)}</p>
    </SiteFrame>
  );
};

/** What can be done from here. Who may change nothing looks. */
const Ways = ({
  state: { path, up, job, mayAdd, mayChange },
  words: { thisSite: text, siteForms, page },
}: {
  state: SiteState;
  words: Words;
}) => (
  <nav class="ways" aria-label={text.title}>
    {(mayAdd || mayChange) && (
      <a class="button" href={`${path}/lines`}>
        {text.enter}
      </a>
    )}
    {mayChange && (
      <a class="button" href={`${path}/place`}>
        {text.place}
      </a>
    )}
    {mayChange && (
      <a class="button" href={`${path}/import`}>
        {text.import}
      </a>
    )}
    <a class="button" href={up}>
      {job === null ? siteForms.toStep : page.guide}
    </a>
  </nav>
);
