import { HAND_WORK } from "../../../machines/picture/hand-work.ts";
import { figureId, HandWork } from "../../drawing/hand-work/hand-work.tsx";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

/** `job` is the one that somebody came from, to which the page leads back; `null` where it was come to from elsewhere. */
type Props = { readonly words: Words; readonly job: string | null };

/** Every drawing of the hand work, in the order of a raise: to be learned from, and to be printed as a booklet. */
export const HandWorkPage = ({ words, words: { handWork: text, page }, job }: Props) => (
  <Page words={words} title={text.title} styles="hand-work" hurtWay={job ?? undefined}>
    <main class="hand-book" hx-ignore>
      <h1>{text.title}</h1>
      <p class="warning">{text.caution}</p>
      <p>{text.intro}</p>
      <p class="on-screen">{text.print}</p>
      {job !== null && (
        <a class="button main" href={`/jobs/${job}`}>
          {page.guide}
        </a>
      )}
      <nav class="hand-index" aria-label={text.index}>
        {HAND_WORK.map((id) => (
          <a class="button" href={`#${figureId(id)}`}>
            {text.drawings[id].title}
          </a>
        ))}
      </nav>
      {HAND_WORK.map((id) => (
        <HandWork id={id} words={words} />
      ))}
    </main>
  </Page>
);
