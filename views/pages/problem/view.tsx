import { Page } from "../../parts/page.tsx";
import { regions } from "../../regions.ts";
import type { Words } from "../../text/words.ts";

type Props = { title: string; fields: Readonly<Record<string, string>>; back: string; partial: boolean; words: Words };

/** What is wrong and what to do: a line in the dock for a swap, a page for everybody else. */
export const ProblemPage = ({ title, fields, back, partial, words }: Props) => {
  const told = Object.entries(fields).map(([name, text]) => (name === "value" || text === title ? text : words.problem.beside(name, text)));
  if (partial) {
    return (
      <hx-partial hx-target={`#${regions.notice}`} hx-swap="innerHTML">
        {[title, ...told.filter((t) => t !== title)].join(" ")}
      </hx-partial>
    );
  }
  return (
    <Page words={words} title={words.problem.title}>
      <main class="more">
        <h1>{title}</h1>
        <ul>
          {told.map((t) => (
            <li>{t}</li>
          ))}
        </ul>
        <a class="button main" href={back}>
          {words.page.guide}
        </a>
      </main>
    </Page>
  );
};
