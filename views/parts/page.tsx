import { type Child, useContext } from "hono/jsx";
import { CLIENT_WORDS, regions } from "../regions.ts";
import type { Stylesheet } from "../stylesheets.ts";
import type { Words } from "../text/words.ts";
import { Thunder, Trials } from "./asset-paths.ts";
import { Hurt } from "./hurt.tsx";
import { HurtWay } from "./hurt-press.tsx";
import type { HurtState } from "./hurt-state.ts";
import { Lightning } from "./lightning.tsx";
import type { LightningFacts } from "./lightning-facts.ts";
import { Loads } from "./loads.tsx";
import { PageHeader, type Where } from "./page-header.tsx";
import { ThunderLines } from "./thunder-elsewhere.tsx";

type Props = {
  words: Words;
  title: string;
  where?: Where;
  styles?: Stylesheet;
  hurt?: HurtState | null;
  follows?: string | undefined;
  hurtWay?: string | undefined;
  children?: Child;
};

/**
 * A whole document. Everything on it works before any script has loaded. `where` is where the page lies among those
 * in the header; `styles` is the sheet that it wears;
 * `hurt` stands first on every page of a job on which somebody is; `follows` is the job from which a page that stays as it
 * is otherwise hears of it; `hurtWay` the job of a page on which nobody can tell it, and from which a press leads to where they can.
 */
export const Page = ({ words, title, where = NOWHERE, styles = "plain", hurt, follows, hurtWay, children }: Props) => (
  <html lang={words.lang}>
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      <meta name="htmx-config" content='{"defaultTimeout":8000}' />
      <title>{`${title} · ${words.page.name}`}</title>
      <ClientWords words={words} />
      <Loads styles={styles} />
    </head>
    <body>
      <PageHeader where={where} words={words} />
      {styles !== "guide" && <TrialsLine words={words} />}
      <ThunderLines words={words} />
      {hurt !== undefined && <HurtHere hurt={hurt} words={words} />}
      {hurtWay !== undefined && (
        <nav class="hurt-nav" aria-label={words.hurt.press}>
          <HurtWay job={hurtWay} words={words} />
        </nav>
      )}
      {children}
      {follows !== undefined && (
        <div hx-sse:connect={`/jobs/${follows}/hurt/live`} hx-trigger="load, every 5s" hx-sync="this:drop" hx-swap="none" hidden></div>
      )}
    </body>
  </html>
);

/** On a server for trials. A guide says it in its strip, and the pages beside it in their heading. */
const TrialsLine = ({ words: { page } }: { words: Words }) => (useContext(Trials) ? <aside class="trials">{page.trialsTold}</aside> : null);

const NOWHERE: Where = { on: null };

type AlarmsNow = { hurt: HurtState | null; lightning: LightningFacts | null; words: Words };

/** What such a page gets, whenever something happens on its job. */
export const HurtLive = (now: AlarmsNow) => (
  <hx-partial hx-target={`#${regions.hurt}`} hx-swap="outerMorph">
    <HurtRegion {...now} />
  </hx-partial>
);

/** With the lightning clock that the page came with. */
const HurtHere = ({ hurt, words }: Pick<Props, "words"> & { hurt: HurtState | null }) => (
  <HurtRegion hurt={hurt} lightning={useContext(Thunder)} words={words} />
);

/** It stands there empty too, so that a page that follows its job can fill it. */
export const HurtRegion = ({ hurt, lightning, words }: AlarmsNow) => (
  <div id={regions.hurt} class="hurt-region">
    {lightning && <Lightning facts={lightning} words={words} />}
    {hurt && <Hurt hurt={hurt} words={words} />}
  </div>
);

/** What the page says by itself: data for our own script. With no "<" left in it, no text can end the element. */
const ClientWords = ({ words: { client } }: { words: Words }) => (
  <script
    type="application/json"
    id={CLIENT_WORDS}
    dangerouslySetInnerHTML={{ __html: JSON.stringify(client).replaceAll("<", "\\u003c") }}
  />
);
