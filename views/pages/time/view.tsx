import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { PhaseRow, TimeState } from "./state.ts";

/** What was typed as the size of another crew, and what is wrong with it. */
export type Asked = { readonly said: string; readonly problem: string | null };

type Props = { state: TimeState; asked: Asked; words: Words };
type Shown = Props & { hurt: HurtState | null };

/** Crew and time of one job: the forecast in large type, another crew, each phase, what is assumed. */
export const TimePage = ({ state, asked, hurt, words, words: { page, time } }: Shown) => (
  <Page
    words={words}
    title={time.title}
    where={{ on: "time", job: { id: state.job, title: state.title } }}
    styles="time"
    hurt={hurt}
    follows={state.job}
    hurtWay={state.job}
  >
    <main class="time" hx-ignore>
      {state.rehearsal && <p class="rehearsal">{page.notReal}</p>}
      <h1>{time.of(state.title)}</h1>
      <section class="told">
        {state.lead && <p class="lead">{state.lead}</p>}
        <p class="headline">{state.headline}</p>
        {state.between && <p class="between">{state.between}</p>}
        {state.notes.map((note) => (
          <p>{note}</p>
        ))}
        {state.people !== null && (
          <p>{state.people === state.onBrief ? time.with(state.people) : time.whatIf(state.people, state.onBrief ?? 0)}</p>
        )}
        {state.caveat && <p class="caveat">{state.caveat}</p>}
        {state.leftMin && <p>{time.eight}</p>}
      </section>
      <a class="button" href={`/jobs/${state.job}`}>
        {page.guide}
      </a>
      {state.onBrief !== null && <CrewForm state={state} asked={asked} words={words} />}
      {state.phases.length > 0 && <Phases state={state} words={words} />}
      <section>
        <h2>{time.assumptions}</h2>
        <ul class="assumed">
          {state.assumed.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      </section>
      <a class="button" href={`/jobs/${state.job}/time.json${state.people === state.onBrief ? "" : `?people=${state.people}`}`}>
        {time.asJson}
      </a>
    </main>
  </Page>
);

const CrewForm = ({ state, asked, words: { time } }: Props) => (
  <form method="get" action={`/jobs/${state.job}/time`} class="crew">
    <h2>{time.crew}</h2>
    <label>
      {time.ask}
      <small>{time.ask1}</small>
      {asked.problem && <span class="wrong">{asked.problem}</span>}
      <input
        name="people"
        inputmode="numeric"
        maxlength={20}
        autocomplete="off"
        value={asked.said}
        aria-invalid={asked.problem ? "true" : undefined}
      />
    </label>
    <button type="submit">{time.workOut}</button>
    {state.people !== state.onBrief && (
      <a class="button" href={`/jobs/${state.job}/time`}>
        {time.own(state.onBrief ?? 0)}
      </a>
    )}
  </form>
);

const Phases = ({ state, words, words: { time } }: Omit<Props, "asked">) => (
  <section>
    <h2>{time.phases}</h2>
    <table class="phases">
      <thead>
        <tr>
          {Object.values(time.columns).map((name) => (
            <th scope="col">{name}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {state.phases.map((row) => (
          <Row row={row} words={words} />
        ))}
      </tbody>
    </table>
  </section>
);

const rangeText = (range: { low: number; likely: number; high: number }, { about, time }: Words) =>
  time.range(about(range.likely), about(range.low), about(range.high));

const leftText = ({ is, leftMin, wholeMin }: PhaseRow, words: Words) =>
  leftMin ? rangeText(leftMin, words) : is === "later" && wholeMin ? words.time.all : words.time.nothing;

const Row = ({ row, words, words: { about, phaseIsName, time } }: { row: PhaseRow; words: Words }) => (
  <tr class={row.is}>
    <th scope="row">
      {row.name}
      <span>{phaseIsName(row.is)}</span>
    </th>
    <td data-name={time.columns.whole}>{row.wholeMin ? rangeText(row.wholeMin, words) : time.notWith(row.people, row.least ?? 0)}</td>
    <td data-name={time.columns.spent}>
      {row.spentMin > 0 ? about(row.spentMin) : time.nothing}
      {row.overdue && <strong>{time.overdue}</strong>}
    </td>
    <td data-name={time.columns.left}>{leftText(row, words)}</td>
    <td data-name={time.columns.estimate} class="rests">
      {row.estimateMin !== null && (
        <details>
          <summary>{time.restsOn(about(row.estimateMin))}</summary>
          <ul>
            {row.restsOn.map((line) => (
              <li>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </td>
    <td data-name={time.columns.factor}>
      <b>{time.times(row.factor.likely, row.factor.low, row.factor.high)}</b>
      <span>{time.fromJobs(row.factor.jobs)}</span>
      {row.factor.leftOut > 0 && <span>{time.leftOut(row.factor.leftOut)}</span>}
    </td>
  </tr>
);
