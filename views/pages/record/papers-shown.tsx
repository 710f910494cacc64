import type { Words } from "../../text/words.ts";
import type { PaperShown } from "./state.ts";

/** Papers in place of a limit, as large as what a manager looks for first. */
export const Papers = ({ papers, words: { record } }: { papers: readonly PaperShown[]; words: Words }) =>
  papers.length === 0 ? null : (
    <section class="papers" aria-label={record.papers}>
      <h2>{record.papers}</h2>
      {papers.map(({ ask, by, document, dated, shown, seen }) => (
        <div class="paper">
          <strong>{record.paper(document, by, dated)}</strong>
          <p>{ask}</p>
          <p>
            <a href={`#e${shown.no}`}>{record.shownBy(shown.who, shown.no)}</a>
          </p>
          <p>{seen === null ? <b>{record.notSeen}</b> : <a href={`#e${seen.no}`}>{record.seenBy(seen.who, seen.no)}</a>}</p>
        </div>
      ))}
    </section>
  );
