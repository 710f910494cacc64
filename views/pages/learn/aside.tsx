import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";
import type { Words } from "../../text/words.ts";
import type { AsideState, Told } from "./state.ts";

/** Shut until somebody presses it: it never pushes the call out of sight. Pressed, its answers make no entry in the record. */
export const AsideQuestion = ({ screen: { guide, words }, aside }: { screen: Screen; aside: AsideState | null }) => (
  <div id={regions.aside} class="aside">
    {aside && (
      <details>
        <summary>{words.learn.aside}</summary>
        <p>{aside.texts.ask}</p>
        {aside.texts.about !== null && <blockquote>{aside.texts.about}</blockquote>}
        <p>{words.learn.asideTold}</p>
        {aside.texts.options.map(({ id, text }) => (
          <form method="post" action={`/jobs/${guide.job}/learn/aside`} hx-post={`/jobs/${guide.job}/learn/aside`} hx-swap="none">
            <input type="hidden" name="id" value={aside.id} />
            <input type="hidden" name="shown" value={aside.shown} />
            <input type="hidden" name="given" value={id} />
            <button type="submit">{text}</button>
          </form>
        ))}
      </details>
    )}
    <a class="button" href={`/jobs/${guide.job}/learn`}>
      {words.learn.way}
    </a>
  </div>
);

const Why = ({ told, words: { learn } }: { told: Told; words: Words }) => (
  <>
    {!told.isRight && (
      <p class="right-is">
        {learn.rightIs} <b>{told.texts.options.find(({ id }) => id === told.right[0])?.text}</b>
      </p>
    )}
    {told.because && <p>{told.isRight ? told.because.why : (told.because.wrong ?? told.because.why)}</p>}
  </>
);

/** How it was answered, in the question's place. */
export const AsideTold = ({ told, words }: { told: Told; words: Words }) => (
  <hx-partial hx-target={`#${regions.aside}`} hx-swap="innerHTML">
    <p role="status">
      <b>{told.isRight ? words.learn.right : words.learn.wrong}</b>
    </p>
    <Why told={told} words={words} />
  </hx-partial>
);

/** The same on a page of its own. */
export const AsideToldPage = ({ screen, told }: { screen: Screen; told: Told }) => (
  <JobScreen screen={screen} title={told.isRight ? screen.words.learn.right : screen.words.learn.wrong} class="learn told">
    <p>{told.texts.ask}</p>
    <Why told={told} words={screen.words} />
  </JobScreen>
);
