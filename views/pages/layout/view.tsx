import { EDGES, type TentPlan } from "../../../machines/tent/types.ts";
import { LayoutDrawing } from "../../drawing/layout.tsx";
import { UNITS, type Units } from "../../drawing/units.ts";
import { CornersTold } from "../../parts/corners-told.tsx";
import { RecordDigest } from "../../parts/digests.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { type LayoutState, PAPERS, type Paper } from "./state.ts";
import { LayoutTables, rowsIn } from "./tables.tsx";

type Props = { state: LayoutState; units: Units; paper: Paper; hurt: HurtState | null; words: Words };

/** The layout sheet: the drawing, and the same facts as tables. Printed, the one takes a page and the other the next. */
export function LayoutPage({ state: { job, plan, site, ratios, around, version, record }, units, paper, hurt, words }: Props) {
  const { edgeName, layout, page, tapeText } = words;
  const size = `${tapeText(plan.widthFt, units)} × ${tapeText(plan.lengthFt, units)}`;
  const north = site.baselineBearingDeg;
  return (
    <Page words={words} title={layout.title} where={{ on: "layout", job }} styles="layout" hurt={hurt} follows={job.id} hurtWay={job.id}>
      <main class={`layout ${paper}`} hx-ignore>
        {job.rehearsal && <p class="rehearsal">{page.notReal}</p>}
        <h1>{job.title}</h1>
        <p class="what">{layout.sheetOf(size)}</p>
        {version === null ? (
          <Choices id={job.id} units={units} paper={paper} words={words} />
        ) : (
          <p class="alarm">{layout.version(version)}</p>
        )}
        <p class="screen">{layout.drawing}</p>
        <figure class="sheet" aria-label={layout.drawing} tabindex={0}>
          <LayoutDrawing plan={plan} north={north} street={site.street} ratios={ratios} around={around} units={units} words={words} />
        </figure>
        {version === null && <Files id={job.id} units={units} isScreened={ratios !== undefined} words={words} />}
        <section class={`readings ${crowdOf(plan)}`}>
          <h2>{layout.readingsOf(job.title, size)}</h2>
          <ul class="screen">
            {layout.howTo.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
          <p class="notes">
            {[
              units === "mm" ? layout.inMm : layout.inFt,
              layout.stakeCorners(tapeText(plan.spec.setbackFt, units)),
              layout.plates,
              layout.bearings,
              north === undefined ? layout.noCompass : layout.compass(north),
              ...(site.street ? [layout.streetAt(site.street.name, site.street.edge)] : []),
            ].join(" ")}
          </p>
          <CornersTold plan={plan} site={around?.site} words={words} />
          <nav class="edges" aria-label={layout.edges}>
            {EDGES.map((edge) => (
              <a class="button" href={`#${edge}`}>
                {edgeName(edge)}
              </a>
            ))}
          </nav>
          <RecordDigest record={record} words={words} />
          <div class="tables">
            <LayoutTables plan={plan} units={units} words={words} />
          </div>
        </section>
      </main>
    </Page>
  );
}

/** How small the tables have to be printed to come on one page. */
function crowdOf(plan: TentPlan): "few" | "some" | "many" {
  const rows = rowsIn(plan);
  if (rows <= 110) return "few";
  return rows <= 190 ? "some" : "many";
}

type ChoicesProps = { id: string; units: Units; paper: Paper; words: Words };

/** Plain links: what is chosen stands in the address. */
function Choices({ id, units, paper, words: { layout } }: ChoicesProps) {
  const link = (u: Units, p: Paper) => `/jobs/${id}/layout?units=${u}&paper=${p}`;
  const current = (chosen: boolean) => (chosen ? "true" : undefined);
  return (
    <nav class="choices screen" aria-label={layout.choose}>
      {UNITS.map((u) => (
        <a class="button" href={link(u, paper)} aria-current={current(u === units)}>
          {layout.units[u]}
        </a>
      ))}
      {PAPERS.map((p) => (
        <a class="button" href={link(units, p)} aria-current={current(p === paper)}>
          {layout.papers[p]}
        </a>
      ))}
    </nav>
  );
}

const Files = ({ id, units, isScreened, words: { anchors, layout, page } }: Omit<ChoicesProps, "paper"> & { isScreened: boolean }) => (
  <nav class="files screen" aria-label={layout.files}>
    <p>{layout.print}</p>
    <a class="button" href={`/jobs/${id}/layout.svg?units=${units}`}>
      {layout.svg}
    </a>
    <a class="button" href={`/jobs/${id}/layout.dxf?units=${units}`}>
      {layout.dxf}
    </a>
    <a class="button" href={`/jobs/${id}/marks.csv`}>
      {layout.csv}
    </a>
    <a class="button" href={`/jobs/${id}/layout.json`}>
      {layout.json}
    </a>
    {isScreened && (
      <a class="button" href={`/jobs/${id}/anchors`}>
        {anchors.title}
      </a>
    )}
    <a class="button" href={`/jobs/${id}/plan`}>
      {page.plan}
    </a>
    <a class="button" href={`/jobs/${id}`}>
      {page.guide}
    </a>
  </nav>
);
