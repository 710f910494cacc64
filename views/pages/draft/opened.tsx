import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Props = { job: string; title: string; told: string; words: Words };

/** A draft that has become a job: when, whose it is, and the way there. */
export const OpenedPage = ({ job, title, told, words }: Props) => (
  <Page words={words} title={words.draft.openedTitle}>
    <main class="home">
      <h1>{words.draft.openedTitle}</h1>
      <p>{title}</p>
      <p class="alarm" role="alert">
        {told}
      </p>
      <a class="button main" href={`/jobs/${job}`}>
        {words.draft.toJob}
      </a>
      <a class="button" href={`/jobs/${job}/weather-plan`}>
        {words.weatherPlan.link}
      </a>
      <a class="button" href="/">
        {words.page.home}
      </a>
    </main>
  </Page>
);
