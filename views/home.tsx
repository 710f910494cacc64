import { Page } from "./page.tsx";
import { label } from "./text/en/page.ts";

type Listed = { readonly id: string; readonly title: string; readonly size: string; readonly phaseName: string };

export const HomePage = ({ jobs }: { jobs: readonly Listed[] }) => (
  <Page title={label.jobs}>
    <main class="home">
      <h1>{label.name}</h1>
      <p>{label.intro}</p>
      <p class="notice">{label.defers}</p>
      {jobs.map((job) => (
        <a class="button job" href={`/jobs/${job.id}`}>
          <b>{job.title}</b>
          <span>{`${job.size} · ${job.phaseName}`}</span>
        </a>
      ))}
      <a class="button main" href="/jobs/new">
        {label.open}
      </a>
    </main>
  </Page>
);
