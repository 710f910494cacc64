import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

type Person = { readonly id: string; readonly name: string | null; readonly roleName: string };
type Props = {
  readonly job: { readonly id: string; readonly title: string };
  readonly people: readonly Person[];
  readonly problem: string | null;
  readonly words: Words;
};

/** The names that are kept of a job, each to be erased once it is closed. */
export const NamesPage = ({ job, people, problem, words, words: { office } }: Props) => (
  <Page words={words} title={office.names} where={{ on: null, job }} styles="join">
    <main class="join" hx-ignore>
      <h1>{office.names}</h1>
      <p>{job.title}</p>
      <p>{office.namesTold}</p>
      {problem !== null && (
        <p class="notice" role="alert">
          {problem}
        </p>
      )}
      <ul class="tokens">
        {people.map(({ id, name, roleName }) => (
          <li>
            <b>{name ?? office.erased(id)}</b> <span>{roleName}</span>
            {name !== null && (
              <form method="post" action={`/jobs/${job.id}/names`}>
                <input type="hidden" name="person" value={id} />
                <button type="submit" aria-label={office.eraseNamed(name)}>
                  {office.erase}
                </button>
              </form>
            )}
          </li>
        ))}
      </ul>
      <a class="button" href={`/jobs/${job.id}/record`}>
        {office.toRecord}
      </a>
    </main>
  </Page>
);
