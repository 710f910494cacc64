import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

/** A draft on the list: what it is called, and when something was last typed in it. */
export type LeftOff = { readonly id: string; readonly title: string; readonly typed: string };
type Props = { drafts: readonly LeftOff[]; days: number; words: Words };

/** All jobs that are told and not opened yet, newest first, each to go on with or to throw away. */
export const DraftsPage = ({ drafts, days, words, words: { draft: text, page } }: Props) => (
  <Page words={words} title={text.leftOff} styles="draft">
    <main class="draft">
      <h1>{text.leftOff}</h1>
      <p>{drafts.length === 0 ? text.noneLeft : text.keptFor(days)}</p>
      <div class="lines">
        {drafts.map(({ id, title, typed }) => (
          <div class="kept">
            <a class="button job" href={`/drafts/${id}`}>
              <b>{title}</b>
              <span>{typed}</span>
            </a>
            <a class="button" href={`/drafts/${id}/throw-away`} aria-label={text.throwOf(title)}>
              {text.throwAway}
            </a>
          </div>
        ))}
        <a class="button" href="/">
          {page.home}
        </a>
      </div>
    </main>
  </Page>
);
