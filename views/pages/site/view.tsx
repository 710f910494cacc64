import { SiteDrawing } from "../../drawing/site/site-drawing.tsx";
import type { Words } from "../../text/words.ts";
import { Clearances } from "./clearances.tsx";
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
      {state.isTold && (
        <p class="verdict">
          <b>{text.verdictOf(clearances.verdict)}.</b> {text.verdictTold[clearances.verdict]}
        </p>
      )}
      {!state.isTold && <p>{text.nothing}</p>}
      <div class="site-top">
        <figure class="site-figure" aria-label={text.drawing}>
          <SiteDrawing {...state} words={words} />
        </figure>
        <div>
          <SiteKey site={site} isShort={clearances.neighbors.some((n) => n.short.length > 0)} words={words} />
          {site.slope && <p>{text.slope(site.slope.percent, site.slope.downhillDeg)}</p>}
          <Ways state={state} words={words} />
        </div>
      </div>
      <p>{text.screening}</p>
      {state.isTold && (
        <section>
          <h2>{text.clearances}</h2>
          <Clearances state={state} words={words} />
        </section>
      )}
      {state.job !== null && (
        <section>
          <h2>{text.loads}</h2>
          {state.screening ? <LoadLines screening={state.screening} words={words} /> : <p>{text.noLoads}</p>}
          <a class="button" href={`/jobs/${state.job}/anchors`}>
            {text.toAnchors}
          </a>
        </section>
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
