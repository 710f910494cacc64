import type { Child } from "hono/jsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Words } from "../../text/words.ts";
import type { SiteState } from "./state.ts";

/** What every page of a site has: whose site it is, and what is to be said first. */
export type SitePage = {
  readonly state: SiteState;
  readonly words: Words;
  readonly hurt: HurtState | null;
  /** What was just said or done, or is wrong. */
  readonly message?: string | null;
};

/** A page of a site: of a job, or of a draft. */
export const SiteFrame = ({ state, words, hurt, message = null, title, children }: SitePage & { title: string; children?: Child }) => {
  const { job } = state;
  const follows = job === null ? {} : { hurt, follows: job, hurtWay: job };
  return (
    <Page
      words={words}
      title={title}
      where={{ on: null, ...(job === null ? {} : { job: { id: job, title: state.title } }) }}
      styles="site"
      {...follows}
    >
      <main class="site-page">
        {state.rehearsal && <p class="rehearsal">{words.page.notReal}</p>}
        <p class="small">{state.title}</p>
        <h1>{title}</h1>
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        {children}
      </main>
    </Page>
  );
};
