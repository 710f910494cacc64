import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";

/** A job that a code lets into: who can get on with it, and who cannot. */
export type JoinedWith = {
  readonly job: string;
  readonly title: string;
  readonly code: string;
  readonly people: readonly { readonly id: string; readonly name: string; readonly roleName: string }[];
  readonly leads: boolean;
};
type Props = {
  /** The job that it is asked for, where that is known. */
  readonly job: string | null;
  readonly typed: string;
  readonly problem: string | null;
  readonly into: JoinedWith | null;
  readonly words: Words;
};

/** Getting on a job: the code first, then who one is. */
export const JoinPage = ({ job, typed, problem, into, words, words: { join } }: Props) => (
  <Page words={words} title={join.title} styles="join">
    <main class="join" hx-ignore>
      <h1>{into?.title ?? join.title}</h1>
      {problem !== null && (
        <p class="notice" role="alert">
          {problem}
        </p>
      )}
      {into ? <Who into={into} words={words} /> : <Code job={job} typed={typed} words={words} />}
    </main>
  </Page>
);

const Code = ({ job, typed, words: { join } }: Pick<Props, "job" | "typed" | "words">) => (
  <form method="get" action="/join" class="code">
    {job !== null && <input type="hidden" name="job" value={job} />}
    <label>
      {join.ask}
      <input
        name="code"
        value={typed}
        required
        maxlength={40}
        autocomplete="off"
        autocapitalize="characters"
        spellcheck={false}
        aria-describedby="code-told"
      />
    </label>
    <p id="code-told">{join.asked}</p>
    <button type="submit" class="main">
      {join.go}
    </button>
  </form>
);

const Who = ({ into: { code, job, people, leads }, words: { join } }: { into: JoinedWith; words: Words }) => (
  <form method="post" action="/join" class="who">
    <input type="hidden" name="code" value={code} />
    <input type="hidden" name="job" value={job} />
    <p>{join.who}</p>
    {people.map(({ id, name, roleName }) => (
      <button type="submit" name="person" value={id}>
        {join.name(name, roleName)}
      </button>
    ))}
    <p class="small">{leads ? join.notListed : `${join.notListed} ${join.leadsCode}`}</p>
  </form>
);
