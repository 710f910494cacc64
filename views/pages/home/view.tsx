import { Page } from "../../parts/page.tsx";
import { label } from "../../text/en/page.ts";
import { findings } from "../../text/en/record.ts";

type Listed = {
  readonly id: string;
  readonly title: string;
  readonly size: string;
  readonly phaseName: string;
  readonly rehearsal: boolean;
};

const Jobs = ({ jobs }: { jobs: readonly Listed[] }) => (
  <>
    {jobs.map((job) => (
      <a class="button job" href={`/jobs/${job.id}`}>
        {job.rehearsal && <b class="rehearsal">{label.rehearsal}</b>}
        <b>{job.title}</b>
        <span>{`${job.size} · ${job.phaseName}`}</span>
      </a>
    ))}
  </>
);

export const HomePage = ({ jobs }: { jobs: readonly Listed[] }) => (
  <Page title={label.jobs}>
    <main class="home">
      <h1>{label.name}</h1>
      <p>{label.intro}</p>
      <p class="notice">{label.defers}</p>
      <Jobs jobs={jobs.filter((job) => !job.rehearsal)} />
      {jobs.some((job) => job.rehearsal) && <h2>{label.rehearsals}</h2>}
      <Jobs jobs={jobs.filter((job) => job.rehearsal)} />
      <a class="button main" href="/jobs/new">
        {label.open}
      </a>
      <a class="button" href="/tents">
        {label.tents}
      </a>
      <a class="button" href="/findings">
        {findings.title}
      </a>
    </main>
  </Page>
);
