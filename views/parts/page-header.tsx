import type { Words } from "../text/words.ts";

const SITE = { home: "/", tents: "/tents", findings: "/findings", office: "/office" } as const;
const OF_JOB = { guide: "", plan: "/plan", layout: "/layout", truck: "/truck", time: "/time", record: "/record" } as const;

/** Where a page lies: which of those in the header it is, if any, and the job that it is of. */
export type Where = {
  readonly on: keyof typeof SITE | keyof typeof OF_JOB | null;
  readonly job?: { readonly id: string; readonly title: string };
};

type Props = { readonly where: Where; readonly words: Words };

/** The ways between pages, where a screen has the width for it: on a phone each page has its own. */
export const PageHeader = ({ where: { on, job }, words: { header } }: Props) => (
  <header class="page-header">
    <Ways label={header.site} on={on} ways={Object.entries(SITE).map(([name, href]) => [name, href, header[name as keyof typeof SITE]])} />
    {job && (
      <>
        <b class="of-job">{job.title}</b>
        <Ways
          label={header.job}
          on={on}
          ways={Object.entries(OF_JOB).map(([name, path]) => [name, `/jobs/${job.id}${path}`, header[name as keyof typeof OF_JOB]])}
        />
      </>
    )}
  </header>
);

/** Each way is its name, where it leads, and what it says. */
type WaysProps = { readonly label: string; readonly on: Where["on"]; readonly ways: readonly (readonly [string, string, string])[] };

const Ways = ({ label, on, ways }: WaysProps) => (
  <nav aria-label={label}>
    {ways.map(([name, href, text]) => (
      <a href={href} aria-current={name === on ? "page" : undefined}>
        {text}
      </a>
    ))}
  </nav>
);
