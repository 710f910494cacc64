import type { Child } from "hono/jsx";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { StepProps } from "./state.ts";
import { DRAFT_STEPS, type DraftStep } from "./steps.ts";

type FrameProps = Pick<StepProps, "draft" | "message" | "words"> & {
  step: DraftStep;
  /** A sentence on the tent that was picked, with a way to look at it. */
  news?: string | null;
  children?: Child;
};

/** A step of a draft as a page: how far it is, what is wrong, and its form. */
export const Frame = ({ draft, step, message, news, words, children }: FrameProps) => {
  const { draft: text } = words;
  return (
    <Page words={words} title={text.heads[step]} styles="draft">
      <main class="draft">
        <p class="progress">{text.progress(DRAFT_STEPS.indexOf(step) + 1, DRAFT_STEPS.length)}</p>
        <h1>{text.heads[step]}</h1>
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        {news && (
          <div class="alarm">
            <p>{news}</p>
            <a class="button" href={`/drafts/${draft}/tent`}>
              {text.lookAgain}
            </a>
          </div>
        )}
        {children}
      </main>
    </Page>
  );
};

type SendProps = Pick<StepProps, "words"> & { main: string; children?: Child };

/** What a step is sent with: on, whatever else it offers, and back. Nothing typed is lost either way. */
export const Send = ({ words: { draft: text }, main, children }: SendProps) => (
  <div class="send">
    <button type="submit" class="main" name="go" value="on">
      {main}
    </button>
    {children}
    <button type="submit" name="go" value="back">
      {text.back}
    </button>
  </div>
);

/**
 * What Enter in a field sends: a browser takes the first press of a form for it, so this stands first in each, and nobody sees it.
 * It keeps what was typed and goes nowhere.
 */
export const Unpressed = ({ go, words }: { go: "stay" | "look" | "more"; words: Words }) => (
  <button type="submit" class="unpressed" name="go" value={go} tabindex={-1} aria-label={words.draft.stay}></button>
);
