import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { LookBackState, MomentState, SaidState } from "./state.ts";

type Props = { readonly state: LookBackState; readonly words: Words };

/** A rehearsal gone over, moment by moment: what was to be seen, what was said, what was right, and what it would have cost. */
export const LookBackPage = ({ state, words, words: { page, rehearsal } }: Props) => {
  const { gone } = rehearsal;
  return (
    <Page words={words} title={gone.title} where={{ on: null, job: { id: state.job, title: state.title } }} styles="look-back">
      <main class="look-back" hx-ignore>
        <p class="rehearsal">{page.notReal}</p>
        <h1>{gone.title}</h1>
        <p>{[state.title, state.way, state.trouble, gone.day(state.seed)].join(" · ")}</p>
        <p class="score">{state.score.map((line, i) => (i === 0 ? <b>{line}</b> : <span>{line}</span>))}</p>
        <p class="source">{gone.notSpeed}</p>
        <ol class="moments">
          {state.moments.map((moment) => (
            <Moment moment={moment} words={words} />
          ))}
        </ol>
        {state.isGone && <p>{rehearsal.jobGone}</p>}
        {state.from !== null && (
          <nav class="tiles">
            <a class="button main" href={`/jobs/${state.from}/rehearse?seed=${state.seed}`}>
              {gone.again}
            </a>
            <a class="button" href={`/jobs/${state.from}/rehearse`}>
              {gone.other}
            </a>
          </nav>
        )}
        <p class="source">{rehearsal.caution}</p>
      </main>
    </Page>
  );
};

const Moment = ({ moment, words }: { moment: MomentState; words: Words }) => {
  const { gone } = words.rehearsal;
  return (
    <li class={`moment moment-${moment.went}`}>
      <h2>
        <span>{moment.clock}</span> {moment.title} <b class="went">{gone.went[moment.went]}</b>
      </h2>
      <p class="call">{moment.call}</p>
      {moment.seen !== null && (
        <p>
          <b>{gone.seen}</b> {moment.seen}
        </p>
      )}
      {moment.said.length === 0 ? (
        moment.went === "well" && <p>{gone.nothing}</p>
      ) : (
        <ul>
          {moment.said.map((said) => (
            <Said said={said} words={words} />
          ))}
        </ul>
      )}
      {(moment.went === "unsafe" || moment.went === "untrue") && moment.cost !== "" && (
        <p class="cost">
          <b>{gone.cost}</b> {moment.cost}
        </p>
      )}
    </li>
  );
};

const Said = ({ said, words }: { said: SaidState; words: Words }) => {
  const { gone } = words.rehearsal;
  return (
    <li class={`said said-${said.is}`}>
      <p>
        <span>{said.clock}</span> <b>{gone.said}</b> {said.said}
      </p>
      {said.seen !== null && (
        <p>
          <b>{gone.seen}</b> {said.seen}
        </p>
      )}
      {said.right !== null && (
        <p>
          <b>{gone.should}</b> {said.right}
        </p>
      )}
      {said.why.map((why) => (
        <p>
          <b>{said.is === "caught" ? gone.refused : gone.why}</b> {why}
        </p>
      ))}
    </li>
  );
};

/** A rehearsal that is not over is ended before it is gone over: what is still open would be given away. */
export const EndPage = ({
  job,
  newKey,
  words,
  words: { page, rehearsal },
}: {
  job: { id: string; title: string };
  newKey: () => string;
  words: Words;
}) => (
  <Page words={words} title={rehearsal.gone.title} where={{ on: null, job }} styles="look-back">
    <main class="look-back" hx-ignore>
      <p class="rehearsal">{page.notReal}</p>
      <h1>{rehearsal.gone.title}</h1>
      <p>{rehearsal.gone.goOn}</p>
      <form method="post" action={`/jobs/${job.id}/look-back`}>
        <input type="hidden" name="key" value={newKey()} />
        <button type="submit" class="main">
          {rehearsal.gone.end}
        </button>
      </form>
      <a class="button" href={`/jobs/${job.id}`}>
        {page.guide}
      </a>
    </main>
  </Page>
);
