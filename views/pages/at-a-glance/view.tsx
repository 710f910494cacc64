import type { Child } from "hono/jsx";
import { FLAGS } from "../../../machines/record/findings.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { AtAGlance, JobFindings } from "./build-state.ts";

type Props = { state: AtAGlance; jobs: Child; rehearsals: Child; words: Words };

/** The frame of all jobs at a glance; the rows of the jobs go inside, then those of the rehearsals. */
export const AtAGlancePage = ({ state, jobs, rehearsals, words, words: { atAGlance } }: Props) => (
  <Page words={words} title={atAGlance.title} where={{ on: "findings" }} styles="at-a-glance">
    <main class="at-a-glance" hx-ignore>
      <h1>{atAGlance.title}</h1>
      <p>{atAGlance.intro}</p>
      {state.unreadable.map((job) => (
        <p class="verdict broken">
          <b>{atAGlance.unreadable}</b> {atAGlance.cannotRead(job)}
        </p>
      ))}
      {state.jobs.length === 0 ? (
        <p>{atAGlance.none}</p>
      ) : (
        <Table together={state.together} words={words}>
          {jobs}
        </Table>
      )}
      {state.rehearsals.length > 0 && (
        <section>
          <h2>{atAGlance.rehearsals}</h2>
          <p class="small">{atAGlance.notCounted}</p>
          <Table words={words}>{rehearsals}</Table>
        </section>
      )}
      <nav class="ways">
        <a class="button" href="/findings">
          {atAGlance.findings}
        </a>
        <a class="button" href="/">
          {atAGlance.home}
        </a>
        <a class="button" href="/atAGlance.json">
          {atAGlance.asJson}
        </a>
      </nav>
    </main>
  </Page>
);

type TableProps = { together?: AtAGlance["together"]; words: Words; children?: Child };

const Table = ({ together, words, words: { atAGlance, markName }, children }: TableProps) => (
  <table class="jobs">
    <thead>
      <tr>
        {[atAGlance.job, atAGlance.phase, ...FLAGS.map((flag) => markName(flag)), atAGlance.times].map((name) => (
          <th scope="col">{name}</th>
        ))}
      </tr>
    </thead>
    <tbody>
      {together && (
        <tr class="together">
          <th scope="row">{atAGlance.all}</th>
          <td class="place" data-name={atAGlance.jobs}>
            {atAGlance.sum(together.jobs)}
          </td>
          {FLAGS.map((mark) => (
            <td class="number" data-name={markName(mark)}>
              {together.counts[mark]}
            </td>
          ))}
          <td data-name={atAGlance.times}>{timesText(together.times, words)}</td>
        </tr>
      )}
      {children}
    </tbody>
  </table>
);

type RowProps = { job: JobFindings; rehearsal: boolean; words: Words };

/** One job. On a phone its row is a card, and each cell names itself. */
export const JobRow = ({ job, rehearsal, words, words: { atAGlance, markName, page, record } }: RowProps) => (
  <tr>
    <th scope="row">
      <a href={`/jobs/${job.job}/record`}>{job.title}</a>
      <span>{`${job.size}, ${record.entries(job.entries)}`}</span>
      {rehearsal && <strong class="mark">{page.rehearsal}</strong>}
      {job.mismatch !== null && <strong class="mark refused">{atAGlance.mismatch(job.mismatch)}</strong>}
    </th>
    <td class="place" data-name={atAGlance.phase}>
      {job.phaseName}
    </td>
    {FLAGS.map((mark) => (
      <td class="number" data-name={markName(mark)}>
        {job.counts[mark] === 0 ? (
          0
        ) : (
          <a href={`/jobs/${job.job}/record?show=${mark}`} aria-label={atAGlance.these(job.counts[mark], markName(mark), job.title)}>
            {job.counts[mark]}
          </a>
        )}
      </td>
    ))}
    <td data-name={atAGlance.times}>{timesText(job.times, words)}</td>
  </tr>
);

const timesText = (times: JobFindings["times"], { atAGlance }: Words) => (
  <ul>
    {times.map(({ name, text }) => (
      <li>{atAGlance.took(name, text)}</li>
    ))}
  </ul>
);
