import type { Child } from "hono/jsx";
import { LayoutDrawing } from "../../drawing/layout.tsx";
import { HouseDigest, RecordDigest } from "../../parts/digests.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { PAPERS, type Paper } from "../layout/state.ts";
import type { FactGroup, ReportPerson, ReportState } from "./state.ts";

type Props = { readonly state: ReportState; readonly words: Words };
type Framed = Props & { readonly paper: Paper; readonly hurt: HurtState | null; readonly children?: Child };

/** The frame of a report: what the job is, and at the end what it can be checked by, who signs, and what it is not. The parts go inside, one after another. */
export const ReportPage = ({ state, paper, hurt, words, words: { page, report }, children }: Framed) => (
  <Page
    words={words}
    title={report.of(state.title)}
    where={{ on: "record", job: { id: state.job, title: state.title } }}
    styles="report"
    hurt={hurt}
    follows={state.job}
    hurtWay={state.job}
  >
    <main class={`report ${paper}`} hx-ignore>
      {state.rehearsal && <p class="rehearsal">{page.notReal}</p>}
      <h1>{report.of(state.title)}</h1>
      <p class="what">{`${state.size}. ${report.standsAt(state.standsAt)}`}</p>
      <Ways job={state.job} paper={paper} words={words} />
      <p class={state.problem === null ? "verdict" : "verdict broken"} id="verdict">
        {state.problem ?? report.whole(state.entries)}
      </p>
      <p>{`${report.times(state.opened, state.last, state.made)} ${report.zone(state.zone)}`}</p>
      <RecordDigest record={state.digests.record} words={words} />
      <Facts groups={state.facts} people={state.people} words={words} />
      {children}
      <Ending state={state} words={words} />
    </main>
  </Page>
);

/** Plain links: what is chosen stands in the address. */
const Ways = ({ job, paper, words: { page, proof, record, report } }: { job: string; paper: Paper; words: Words }) => (
  <nav class="ways" aria-label={report.choose}>
    <p>{report.print}</p>
    {PAPERS.map((one) => (
      <a class="button" href={`/jobs/${job}/report?paper=${one}`} aria-current={one === paper ? "true" : undefined}>
        {report.papers[one]}
      </a>
    ))}
    <a class="button" href={`/jobs/${job}/record`}>
      {record.link}
    </a>
    <a class="button" href={`/jobs/${job}/proof`}>
      {proof.link}
    </a>
    <a class="button" href={`/jobs/${job}`}>
      {page.guide}
    </a>
  </nav>
);

type Known = { readonly groups: readonly FactGroup[]; readonly people: readonly ReportPerson[]; readonly words: Words };

/** What was known of the job, and who is on it. */
const Facts = ({ groups, people, words: { record, report } }: Known) => (
  <section>
    <h2>{report.facts}</h2>
    <div class="fact-groups">
      {groups.map(({ name, facts }) => (
        <Table name={name} facts={facts} />
      ))}
    </div>
    <h2>{report.people}</h2>
    <p>{people.map(({ name, role, erased }) => record.person(erased ? report.erased(name) : name, role)).join("; ")}</p>
  </section>
);

const Table = ({ name, facts }: FactGroup) => (
  <table class="facts">
    <caption>{name}</caption>
    <tbody>
      {facts.map((fact) => (
        <tr>
          <th scope="row">{fact.name}</th>
          <td>{fact.is}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** The layout on a sheet of its own; on a screen it is scrolled in its own box. */
export const Drawing = ({ state: { plan, site, around }, words, words: { layout, report } }: Props) => (
  <section class="drawn">
    <h2>{report.drawing}</h2>
    <figure class="sheet" aria-label={layout.drawing} tabindex={0}>
      <LayoutDrawing plan={plan} north={site.baselineBearingDeg} street={site.street} around={around} units="ft" words={words} />
    </figure>
  </section>
);

const Ending = ({ state: { digests }, words, words: { proof, report } }: Props) => (
  <>
    <section class="ending">
      <h2>{report.proof}</h2>
      <RecordDigest record={digests.record} words={words} />
      <HouseDigest house={digests.house} words={words} />
      <p>{`${proof.writeDown} ${report.check}`}</p>
    </section>
    <section class="ending">
      <h2>{report.signed}</h2>
      <div class="signs">
        {report.signs.map((who) => (
          <p>{who}</p>
        ))}
      </div>
    </section>
    <section class="ending">
      <h2>{report.cautions}</h2>
      <ul>
        {report.cautionTexts.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </section>
  </>
);
