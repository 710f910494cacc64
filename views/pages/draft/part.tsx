import type { Child } from "hono/jsx";
import type { Filled } from "../../parts/fields.tsx";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { DraftStep } from "./steps.ts";

/** What the page of a part shows of its draft: what that is called, and what is wrong with what was sent. */
export type PartProps = Filled & { readonly draft: string; readonly title: string; readonly message: string | null };

type Props = Pick<PartProps, "draft" | "title" | "message"> & {
  readonly part: "anchors" | "weather-plan";
  /** The step that leads here, and that is gone back to. */
  readonly step: DraftStep;
  readonly text: { readonly title: string; readonly intro: string; readonly keep: string; readonly toDraft: string };
  /** What stands over the fields. */
  readonly over?: Child;
  readonly children: Child;
  readonly words: Words;
};

/** A part of a brief on a page of its own, before the job is opened: the same fields as on the job's own page. */
export const DraftPart = ({ draft, title, message, part, step, text, over, children, words }: Props) => (
  <Page words={words} title={text.title} styles={part}>
    <main class={`draft ${part}`}>
      <h1>{text.title}</h1>
      <p>{title}</p>
      {message !== null && (
        <p class="alarm" role="alert">
          {message}
        </p>
      )}
      <p>{text.intro}</p>
      {over}
      <form method="post" action={`/drafts/${draft}/${part}`}>
        {children}
        <button type="submit" class="main">
          {text.keep}
        </button>
      </form>
      <a class="button" href={`/drafts/${draft}/${step}`}>
        {text.toDraft}
      </a>
    </main>
  </Page>
);
