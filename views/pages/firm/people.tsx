import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Person = { readonly name: string; readonly role: string };
type Props = { people: readonly Person[]; draft: string | null; words: Words };

/** Whom the firm offers for its next job, each to be taken off; `draft` is the one that this was asked from. */
export const FirmPeoplePage = ({ people, draft, words, words: { firm, page } }: Props) => (
  <Page words={words} title={firm.title} styles="draft">
    <main class="draft">
      <h1>{firm.title}</h1>
      <p>{people.length === 0 ? firm.nobody : firm.told}</p>
      <div class="lines">
        <a class="button main" href={draft === null ? "/" : `/drafts/${draft}/crew`}>
          {draft === null ? page.home : firm.toCrew}
        </a>
        {people.map(({ name, role }) => (
          <form method="post" action="/firm/people" class="kept">
            {draft !== null && <input type="hidden" name="draft" value={draft} />}
            <input type="hidden" name="name" value={name} />
            <p class="named">
              <b>{name}</b>
              <span>{role}</span>
            </p>
            <button type="submit" aria-label={firm.takeOffName(name)}>
              {firm.takeOff}
            </button>
          </form>
        ))}
      </div>
    </main>
  </Page>
);
