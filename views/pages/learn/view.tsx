import { ROUND_MS } from "../../../machines/rehearsal/round.ts";
import { JobScreen, Way } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { Progress, ReadyToLead, Rehearsals } from "./progress.tsx";
import type { LearnState, Today } from "./state.ts";

type Props = { readonly screen: Screen /** `null` where nobody said whose screen this is. */; readonly state: LearnState | null };

/** What there is to learn today, how far somebody is, and what is still missing to lead. */
export const LearnPage = ({ screen, state }: Props) => {
  const { learn } = screen.words;
  return (
    <JobScreen screen={screen} title={learn.title} class="learn">
      {state ? <TodaysRound screen={screen} today={state.today} /> : <Nobody {...screen} />}
      <div class="tiles">
        <Way screen={screen} to="rehearse" text={learn.rehearse} />
        <a class="button" href="/hand-work">
          {learn.handWork}
        </a>
      </div>
      {state && <Standing screen={screen} standing={state.standing} />}
    </JobScreen>
  );
};

const Nobody = (screen: Screen) => (
  <>
    <p>{screen.words.learn.who}</p>
    <Way screen={screen} to="people" text={screen.words.learn.whoWay} class="main" />
  </>
);

const MINUTE_MS = 60_000;

const TodaysRound = ({ screen: { guide, words }, today: { due, fresh, nextDay, going } }: { screen: Screen; today: Today }) => {
  const { learn } = words;
  const isAnything = going !== null || due + fresh > 0;
  return (
    <section class="today">
      <h2>{learn.today}</h2>
      {isAnything ? (
        <>
          <p>{`${learn.due(due, fresh)} ${learn.takes(ROUND_MS / MINUTE_MS)}`.trim()}</p>
          <form method="post" action={`/jobs/${guide.job}/learn`} class="main">
            <button type="submit">{going === null ? learn.begin : learn.goOn}</button>
          </form>
        </>
      ) : (
        <p>{`${learn.nothing} ${nextDay === null ? "" : learn.nextAt(nextDay)}`.trim()}</p>
      )}
    </section>
  );
};

const Standing = ({ screen: { words }, standing }: { screen: Screen; standing: LearnState["standing"] }) => (
  <>
    <section>
      <h2>{words.learn.progress}</h2>
      <Progress progress={standing.progress} words={words} />
      <p>{words.learn.onThisTent}</p>
    </section>
    <section>
      <h2>{words.learn.ready}</h2>
      <ReadyToLead lacking={standing.lacking} words={words} />
    </section>
    <section>
      <h2>{words.learn.rehearsals}</h2>
      <Rehearsals rehearsals={standing.rehearsals} words={words} />
    </section>
  </>
);
