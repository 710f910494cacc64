import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { Progress, ReadyToLead, Rehearsals } from "../learn/progress.tsx";
import type { Standing } from "../learn/state.ts";

type LearnerState = { readonly id: string; readonly name: string; readonly standing: Standing };

/** Everybody who learns, with how far they are, what the rule still wants, and their rehearsals. */
export const LearningPage = ({ learners, words, words: { learn, page } }: { learners: readonly LearnerState[]; words: Words }) => (
  <Page words={words} title={learn.learning} where={{ on: "office" }} styles="learning">
    <main class="join learn" hx-ignore>
      <h1>{learn.learning}</h1>
      <p>{learn.learningTold}</p>
      {learners.length === 0 && <p>{learn.nobody}</p>}
      {learners.map(({ name, standing }) => (
        <section class="learner">
          <h2>{name}</h2>
          <h3>{learn.progressOf(name)}</h3>
          <Progress progress={standing.progress} words={words} />
          <p>{learn.onAnyTent}</p>
          <h3>{learn.ready}</h3>
          <ReadyToLead lacking={standing.lacking} words={words} />
          <h3>{learn.rehearsals}</h3>
          <Rehearsals rehearsals={standing.rehearsals} words={words} />
        </section>
      ))}
      <a class="button" href="/">
        {page.home}
      </a>
    </main>
  </Page>
);
