import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import { FindingCard } from "./card.tsx";
import { Charts } from "./charts.tsx";
import { Look } from "./look.tsx";
import type { FindingsState, Looked } from "./state.ts";

type Props = { readonly state: FindingsState; readonly newKey: () => string; readonly words: Words };

/** What is looked for, and where in the list, as it stands in an address. */
export const queryOf = (looked: Looked, before: string | null = null): string => {
  const said = Object.entries({ ...looked, before: before ?? "" }).filter(([, value]) => value !== "");
  return new URLSearchParams(said).toString();
};
const hrefOf = (path: string, query: string): string => (query === "" ? path : `${path}?${query}`);

/** What a manager looks at over all jobs: in numbers, then one by one, newest first. */
export const FindingsPage = ({ state, newKey, words, words: { findings } }: Props) => {
  const { looked, before, next, found, jobs, kinds, cards } = state;
  return (
    <Page words={words} title={findings.title} where={{ on: "findings" }} styles="findings">
      <main class="findings" hx-ignore>
        <div class="about">
          <h1>{findings.title}</h1>
          <p>{findings.intro}</p>
          <p class="sum">{findings.sum(found, jobs)}</p>
          <Look state={state} words={words} />
          {kinds.length > 0 && (
            <nav class="kinds" aria-label={findings.kinds}>
              {kinds.map(({ kind, title, count }) => (
                <a href={hrefOf("/findings", queryOf({ ...looked, kind }))} aria-label={findings.kind(title, count)}>
                  <span>{title}</span> <b>{findings.count(count)}</b>
                </a>
              ))}
            </nav>
          )}
        </div>
        <Charts state={state} words={words} />
        <section class="list" aria-labelledby="list">
          <h2 id="list">{findings.list}</h2>
          {cards.length === 0 && <p>{Object.values(looked).some((value) => value !== "") ? findings.noneLeft : findings.none}</p>}
          {cards.map((card) => (
            <FindingCard card={card} newKey={newKey} back={queryOf(looked, before)} words={words} />
          ))}
          <nav class="ways pages" aria-label={findings.pages}>
            {before !== null && (
              <a class="button" href={hrefOf("/findings", queryOf(looked))}>
                {findings.first}
              </a>
            )}
            {next !== null && (
              <a class="button" href={hrefOf("/findings", queryOf(looked, next))} rel="next">
                {findings.next}
              </a>
            )}
          </nav>
        </section>
        <nav class="ways" aria-label={findings.elsewhere}>
          <a class="button" href="/findings/jobs">
            {findings.jobCounts}
          </a>
          <a class="button" href="/">
            {findings.home}
          </a>
          <a class="button" href={hrefOf("/findings.json", queryOf(looked, before))}>
            {findings.asJson}
          </a>
        </nav>
      </main>
    </Page>
  );
};
