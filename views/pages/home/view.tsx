import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { MAX_QUERY } from "./build-state.ts";
import type { HomeState, ListedJob } from "./state.ts";

type Draft = { readonly id: string; readonly title: string };
type Props = {
  state: HomeState;
  /** What only the office sees; `null` where somebody else looks. */
  office: { readonly drafts: readonly Draft[] } | null;
  words: Words;
};

/** All jobs, those of today first, rehearsals apart: a table on a desk, a card for each on a phone. */
export const HomePage = ({ state: { q, jobs }, office, words, words: { home, page } }: Props) => {
  const real = jobs.filter((job) => !job.rehearsal);
  const rehearsals = jobs.filter((job) => job.rehearsal);
  return (
    <Page words={words} title={home.jobs} where={{ on: "home" }} styles="home">
      <main class="home" hx-ignore>
        <h1>{page.name}</h1>
        <p class="intro">{home.intro}</p>
        <p class="notice">{home.defers}</p>
        <Find q={q} words={words} />
        {q !== "" && (
          <p class="found" role="status">
            {home.found(jobs.length, q)} <a href="/">{home.showAll}</a>
          </p>
        )}
        {q === "" && jobs.length === 0 && <p>{home.none}</p>}
        {real.length > 0 && <Table jobs={real} words={words} />}
        {rehearsals.length > 0 && (
          <section class="rehearsals">
            <h2>{home.rehearsals}</h2>
            <Table jobs={rehearsals} words={words} />
          </section>
        )}
        {office ? <OfficeWays drafts={office.drafts} words={words} /> : <CrewWays words={words} />}
      </main>
    </Page>
  );
};

const OfficeWays = ({ drafts, words: { draft, findings, home, learn, office, phone } }: { drafts: readonly Draft[]; words: Words }) => (
  <>
    {drafts.map(({ id, title }) => (
      <a class="button left-off" href={`/drafts/${id}`}>
        <b>{title}</b>
        <span>{draft.leftOff}</span>
      </a>
    ))}
    {drafts.length > 0 && (
      <a class="button" href="/drafts">
        {draft.allLeft}
      </a>
    )}
    <a class="button main open-one" href="/drafts/new">
      {home.open}
    </a>
    <a class="button elsewhere" href="/tents">
      {home.tents}
    </a>
    <a class="button here" href="/phone">
      {phone.title}
    </a>
    <a class="button elsewhere" href="/findings">
      {findings.title}
    </a>
    <a class="button elsewhere" href="/learning">
      {learn.learning}
    </a>
    <a class="button elsewhere" href="/office">
      {office.title}
    </a>
  </>
);

const CrewWays = ({ words: { join, office, phone } }: { words: Words }) => (
  <>
    <a class="button main" href="/join">
      {join.title}
    </a>
    <a class="button here" href="/phone">
      {phone.title}
    </a>
    <a class="button here" href="/office/in">
      {office.signIn}
    </a>
  </>
);

const Find = ({ q, words: { home } }: { q: string; words: Words }) => (
  <search>
    <form method="get" action="/" class="find">
      <label>
        {home.find}
        <input type="search" name="q" value={q} maxlength={MAX_QUERY} autocomplete="off" />
      </label>
      <button type="submit">{home.findIt}</button>
    </form>
  </search>
);

type TableProps = { jobs: readonly ListedJob[]; words: Words };

const Table = ({ jobs, words, words: { home } }: TableProps) => (
  <table class="listed">
    <thead>
      <tr>
        {Object.values(home.columns).map((name) => (
          <th scope="col">{name}</th>
        ))}
      </tr>
    </thead>
    <Days name={home.today} jobs={jobs.filter((job) => job.today)} words={words} />
    <Days name={home.before} jobs={jobs.filter((job) => !job.today)} words={words} />
  </table>
);

const Days = ({ name, jobs, words }: TableProps & { name: string }) =>
  jobs.length === 0 ? null : (
    <tbody>
      <tr class="day">
        <th scope="rowgroup" colspan={7}>
          {name}
        </th>
      </tr>
      {jobs.map((job) => Row({ job, words }))}
    </tbody>
  );

/** One job. On a phone all of its card is pressed, and what needs it names itself. */
const Row = ({ job, words: { home, page } }: { job: ListedJob; words: Words }) => (
  <tr class="job">
    <th scope="row">
      {job.rehearsal && <b class="rehearsal">{page.rehearsal}</b>}
      <a href={`/jobs/${job.id}`}>{job.title}</a>
      <span>{job.size}</span>
    </th>
    <td class="address">{job.address}</td>
    <td class="toward">{job.toward}</td>
    <td class="lead" data-name={home.columns.lead}>
      {job.lead ?? home.noLead}
    </td>
    <td class={`weather weather-${job.weather?.is ?? "none"}`}>
      {job.weather && <b>{job.weather.words}</b>}
      {job.weather?.reading && <span>{job.weather.reading}</span>}
    </td>
    <td class="last">
      <b>{job.last.clock}</b>
      <span>{job.last.by === null ? job.last.said : `${job.last.by}: ${job.last.said}`}</span>
    </td>
    <td class="stands-out">
      <StandsOut job={job} home={home} />
    </td>
  </tr>
);

/** The gravest first: who is hurt, what is held, a record that does not hold, then the marks of its entries. */
const StandsOut = ({ job, home }: { job: ListedJob; home: Words["home"] }) => {
  const [first, ...rest] = job.marks;
  const others = job.findings - (first?.count ?? 0);
  return (
    <>
      {job.hurt && <strong class="grave">{home.hurt}</strong>}
      {job.held && !job.hurt && <strong>{home.held}</strong>}
      {job.mismatch !== null && <strong class="grave">{home.mismatch(job.mismatch)}</strong>}
      {first && <a href={`/jobs/${job.id}/record?show=${first.mark}`}>{home.mark(first.name, first.count)}</a>}
      {others > 0 && (
        <a href={`/jobs/${job.id}/record?show=${rest.map(({ mark }) => mark).join(",")}`} aria-label={home.moreOf(others, job.title)}>
          {home.more(others)}
        </a>
      )}
    </>
  );
};
