import type { Child } from "hono/jsx";
import { Hold } from "./hold.tsx";
import { Unlock, UnlockNow } from "./lock.tsx";
import { Page } from "./page.tsx";
import type { Screen } from "./say-form.tsx";

type Props = {
  readonly screen: Screen;
  readonly title: string;
  readonly class?: string;
  /** At most two other ways from here, between Hold and the way back. */
  readonly beside?: readonly { readonly to: string; readonly text: string }[];
  /** Where from it is kept up to date besides. */
  readonly live?: string;
  readonly children?: Child;
};

/** A page of a job beside its guide: one phone screen of plain forms, with Hold where it always is and the way back beside it. A phone that is locked for the pocket is unlocked here too. */
export const JobScreen = ({ screen, screen: { guide, me, access, words }, title, beside = [], live, children, ...rest }: Props) => (
  <Page
    words={words}
    title={title}
    where={{ on: null, job: { id: guide.job, title: guide.title } }}
    styles="guide"
    hurt={guide.hurt}
    follows={guide.job}
  >
    <div class="beside-guide" hx-ignore>
      <main class={`more ${rest.class ?? ""}`.trim()} tabindex={0}>
        {guide.rehearsal && <p class="rehearsal">{words.page.notReal}</p>}
        <h1>
          {title}
          {access.trials && " "}
          {access.trials && <b class="trials">{words.page.trials}</b>}
        </h1>
        {children}
        <UnlockNow {...screen} />
      </main>
      <footer class="dock">
        {me !== null && <Hold {...screen} />}
        {beside.map((way) => (
          <Way screen={screen} {...way} class="beside" />
        ))}
        <Unlock {...screen} />
        <a class="button back-to-call" href={`/jobs/${guide.job}`}>
          {words.page.guide}
        </a>
      </footer>
    </div>
    {live !== undefined && <div hx-sse:connect={live} hx-trigger="load, every 5s" hx-sync="this:drop" hx-swap="none" hidden></div>}
  </Page>
);

/** A way to another page of the job. */
export const Way = ({ screen, to, text, ...rest }: { screen: Screen; to: string; text: string; class?: string }) => (
  <a class={`button ${rest.class ?? ""}`.trim()} href={`/jobs/${screen.guide.job}/${to}`}>
    {text}
  </a>
);
