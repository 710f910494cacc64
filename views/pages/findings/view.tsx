import type { Child } from "hono/jsx";
import { FLAGS } from "../../../machines/record/findings.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { Findings, JobFindings } from "./build-state.ts";

type Props = { state: Findings; jobs: Child; rehearsals: Child; words: Words };

/** The frame of the findings; the rows of the jobs go inside, then those of the rehearsals. */
export const FindingsPage = ({ state, jobs, rehearsals, words, words: { findings } }: Props) => (
  <Page words={words} title={findings.title} where={{ on: "findings" }} styles="findings">
    <main class="findings" hx-ignore>
      <h1>{findings.title}</h1>
      <p>{findings.intro}</p>
      {state.unreadable.map((job) => (
        <p class="verdict broken">
          <b>{findings.unreadable}</b> {findings.cannotRead(job)}
        </p>
      ))}
      {state.jobs.length === 0 ? (
        <p>{findings.none}</p>
      ) : (
        <Table together={state.together} words={words}>
          {jobs}
        </Table>
      )}
      {state.rehearsals.length > 0 && (
        <section>
          <h2>{findings.rehearsals}</h2>
          <p class="small">{findings.notCounted}</p>
          <Table words={words}>{rehearsals}</Table>
        </section>
      )}
      <nav class="ways">
        <a class="button" href="/">
          {findings.home}
        </a>
        <a class="button" href="/findings.json">
          {findings.asJson}
        </a>
      </nav>
    </main>
  </Page>
);

type TableProps = { together?: Findings["together"]; words: Words; children?: Child };

const Table = ({ together, words, words: { findings, markName }, children }: TableProps) => (
  <table class="jobs">
    <thead>
      <tr>
        {[findings.job, findings.phase, ...FLAGS.map((flag) => markName(flag)), findings.times].map((name) => (
          <th scope="col">{name}</th>
        ))}
      </tr>
    </thead>
    <tbody>
      {together && (
        <tr class="together">
          <th scope="row">{findings.all}</th>
          <td class="place" data-name={findings.jobs}>
            {findings.sum(together.jobs)}
          </td>
          {FLAGS.map((mark) => (
            <td class="number" data-name={markName(mark)}>
              {together.counts[mark]}
            </td>
          ))}
          <td data-name={findings.times}>{timesText(together.times, words)}</td>
        </tr>
      )}
      {children}
    </tbody>
  </table>
);

type RowProps = { job: JobFindings; rehearsal: boolean; words: Words };

/** One job. On a phone its row is a card, and each cell names itself. */
export const JobRow = ({ job, rehearsal, words, words: { findings, markName, page, record } }: RowProps) => (
  <tr>
    <th scope="row">
      <a href={`/jobs/${job.job}/record`}>{job.title}</a>
      <span>{`${job.size}, ${record.entries(job.entries)}`}</span>
      {rehearsal && <strong class="mark">{page.rehearsal}</strong>}
      {job.mismatch !== null && <strong class="mark refused">{findings.mismatch(job.mismatch)}</strong>}
    </th>
    <td class="place" data-name={findings.phase}>
      {job.phaseName}
    </td>
    {FLAGS.map((mark) => (
      <td class="number" data-name={markName(mark)}>
        {job.counts[mark] === 0 ? (
          0
        ) : (
          <a href={`/jobs/${job.job}/record?show=${mark}`} aria-label={findings.these(job.counts[mark], markName(mark), job.title)}>
            {job.counts[mark]}
          </a>
        )}
      </td>
    ))}
    <td data-name={findings.times}>{timesText(job.times, words)}</td>
  </tr>
);

const timesText = (times: JobFindings["times"], { findings }: Words) => (
  <ul>
    {times.map(({ name, text }) => (
      <li>{findings.took(name, text)}</li>
    ))}
  </ul>
);
