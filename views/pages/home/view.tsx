import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Listed = {
  readonly id: string;
  readonly title: string;
  readonly size: string;
  readonly phaseName: string;
  readonly rehearsal: boolean;
};

type Props = { jobs: readonly Listed[]; words: Words };

const Jobs = ({ jobs, words: { page } }: Props) => (
  <>
    {jobs.map((job) => (
      <a class="button job" href={`/jobs/${job.id}`}>
        {job.rehearsal && <b class="rehearsal">{page.rehearsal}</b>}
        <b>{job.title}</b>
        <span>{`${job.size} · ${job.phaseName}`}</span>
      </a>
    ))}
  </>
);

export const HomePage = ({ jobs, words, words: { findings, home, page } }: Props) => (
  <Page words={words} title={home.jobs}>
    <main class="home">
      <h1>{page.name}</h1>
      <p>{home.intro}</p>
      <p class="notice">{home.defers}</p>
      <Jobs jobs={jobs.filter((job) => !job.rehearsal)} words={words} />
      {jobs.some((job) => job.rehearsal) && <h2>{home.rehearsals}</h2>}
      <Jobs jobs={jobs.filter((job) => job.rehearsal)} words={words} />
      <a class="button main" href="/jobs/new">
        {home.open}
      </a>
      <a class="button" href="/tents">
        {home.tents}
      </a>
      <a class="button" href="/findings">
        {findings.title}
      </a>
    </main>
  </Page>
);
