import { Page } from "../../parts/page.tsx";
import { regions } from "../../regions.ts";
import { label } from "../../text/en/page.ts";

type Props = { title: string; fields: Readonly<Record<string, string>>; back: string; partial: boolean };

/** What is wrong and what to do: a line in the dock for a swap, a page for everybody else. */
export const ProblemPage = ({ title, fields, back, partial }: Props) => {
  const told = Object.entries(fields).map(([name, text]) => (name === "value" || text === title ? text : `${name}: ${text}`));
  if (partial) {
    return (
      <hx-partial hx-target={`#${regions.notice}`} hx-swap="innerHTML">
        {[title, ...told.filter((t) => t !== title)].join(" ")}
      </hx-partial>
    );
  }
  return (
    <Page title={label.put}>
      <main class="more">
        <h1>{title}</h1>
        <ul>
          {told.map((t) => (
            <li>{t}</li>
          ))}
        </ul>
        <a class="button main" href={back}>
          {label.guide}
        </a>
      </main>
    </Page>
  );
};
