import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Props = { draft: { readonly id: string; readonly title: string; readonly version: number }; changed: boolean; words: Words };

/** Asks once more before a draft is thrown away; `changed` where somebody typed in it since that was asked. */
export const ThrowAwayPage = ({ draft: { id, title, version }, changed, words, words: { draft: text } }: Props) => (
  <Page words={words} title={text.throwAway} styles="draft">
    <main class="draft">
      <h1>{text.throwTitle(title)}</h1>
      {changed && (
        <p class="alarm" role="alert">
          {text.throwChanged}
        </p>
      )}
      <p>{text.throwTold}</p>
      <div class="lines">
        <form method="post" action={`/drafts/${id}/throw-away`}>
          <input type="hidden" name="version" value={String(version)} />
          <button type="submit">{text.throwAway}</button>
        </form>
        <a class="button main" href={`/drafts/${id}`}>
          {text.keepDraft}
        </a>
      </div>
    </main>
  </Page>
);
