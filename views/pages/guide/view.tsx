import { Hurt } from "../../parts/hurt.tsx";
import { Page } from "../../parts/page.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";
import { Dock } from "./dock.tsx";
import { GateTile } from "./gate-tile.tsx";
import { Proposal } from "./proposal.tsx";
import { SaidBack } from "./read-back.tsx";
import { Why } from "./why.tsx";

/** How the last thing said on this screen went, for its buzz and its voice; `no` tells one from the next. */
export type Cue = { readonly went: string; readonly heard: string | null; readonly no: string };
type Shown = Screen & { readonly notice: string | null; readonly cue?: Cue };

/** Job, phase, weather and who holds the screen, in one slim strip. */
export const Strip = ({ guide, me, words: { guide: text, page } }: Screen) => {
  const person = guide.people.find((p) => p.id === me);
  return (
    <header id={regions.strip} class={`strip weather-${guide.weather.is}`}>
      {guide.rehearsal && <b class="rehearsal">{page.rehearsal}</b>}
      <strong>{guide.makingSafe ? text.makingSafe : guide.phaseName}</strong>
      <span>{text.calls(guide.progress.at, guide.progress.of)}</span>
      <span class="weather">{guide.weather.words}</span>
      <span>{person ? page.you(person.name, person.roleName) : guide.title}</span>
    </header>
  );
};

/** The conversation: what was said before, smaller; then the call that is on now, with its gate. */
export const Thread = (screen: Screen) => {
  const { guide } = screen;
  const { guide: text } = screen.words;
  return (
    <main id={regions.thread} class="thread">
      <ol class="earlier" aria-label={text.earlier}>
        {guide.thread.map((line) => (
          <li class={line.refused ? "refused" : "done"}>
            <span class="who">{`${line.time} ${line.spoken ? text.heardOn(line.who) : line.who}`}</span>{" "}
            <b>{line.spoken ? text.quoted(line.said) : line.said}</b> <span>{line.refused ? text.refused(line.reply) : line.reply}</span>
          </li>
        ))}
      </ol>
      <article
        class="call"
        data-revision={guide.revision}
        data-entry={guide.entry}
        data-step={guide.step}
        data-unrecorded={guide.held?.unrecorded ? guide.held.by : undefined}
      >
        {guide.hurt && <Hurt hurt={guide.hurt} words={screen.words} />}
        {guide.readOnly !== null && <p class="alarm">{guide.readOnly}</p>}
        {guide.held && <p class="alarm">{guide.held.only === "paused" ? text.pausedBy(guide.held.by) : text.heldBy(guide.held.by)}</p>}
        {guide.held?.unrecorded && <p class="alarm">{text.unrecorded(guide.held.unrecorded)}</p>}
        {guide.outOfUse.map(({ line }) => (
          <p class="alarm">{line}</p>
        ))}
        {guide.warning !== null && <p class="warning">{guide.warning}</p>}
        {guide.clock !== null && <p class="warning">{guide.clock}</p>}
        <SaidBack {...screen} />
        <Proposal {...screen} />
        <h1>{guide.call?.say ?? text.closed}</h1>
        {guide.gate && <GateTile screen={screen} gate={guide.gate} />}
        <Why {...screen} />
      </article>
    </main>
  );
};

/** What the guide said to this screen's last press; other screens' presses leave it alone. */
const Notice = ({ notice }: Pick<Shown, "notice">) => (
  <p id={regions.notice} class="notice" role="status">
    {notice ?? ""}
  </p>
);

/** The words that this screen's phone was heard to say. */
const Caption = ({ cue, words }: Pick<Shown, "cue" | "words">) => (
  <p id={regions.heard} class="heard" data-reply={cue?.no ?? ""} data-went={cue?.went ?? ""}>
    {cue?.heard ? words.guide.heard(cue.heard) : ""}
  </p>
);

/** What a press is answered with and what the stream sends: a partial for each region. */
export const Live = (screen: Shown) => (
  <>
    <hx-partial hx-target={`#${regions.strip}`} hx-swap="outerMorph">
      <Strip {...screen} />
    </hx-partial>
    <hx-partial hx-target={`#${regions.thread}`} hx-swap="outerMorph">
      <Thread {...screen} />
    </hx-partial>
    <hx-partial hx-target={`#${regions.dock}`} hx-swap="outerMorph">
      <Dock {...screen} />
    </hx-partial>
    {screen.cue && (
      <hx-partial hx-target={`#${regions.heard}`} hx-swap="outerMorph">
        <Caption {...screen} />
      </hx-partial>
    )}
    {screen.notice !== null && (
      <hx-partial hx-target={`#${regions.notice}`} hx-swap="innerHTML">
        {screen.notice}
      </hx-partial>
    )}
  </>
);

export const GuidePage = (screen: Shown) => (
  <Page words={screen.words} title={screen.guide.title} styles={["guide"]}>
    <div class="guide">
      <Strip {...screen} />
      <Thread {...screen} />
      <div class="foot">
        <p id={regions.earStatus} class="ear" role="status"></p>
        <Caption {...screen} />
        <Notice notice={screen.notice} />
        <Dock {...screen} />
      </div>
      {[regions.ear, regions.alarm].map((id) => (
        <form id={id} method="post" action={`/jobs/${screen.guide.job}/say`} hx-sync="this:queue all" hidden>
          <input type="hidden" name="as" value={screen.me ?? ""} />
        </form>
      ))}
      <div
        id={regions.live}
        hx-sse:connect={`/jobs/${screen.guide.job}/live`}
        hx-trigger="load, every 5s"
        hx-sync="this:drop"
        hx-swap="none"
      ></div>
    </div>
  </Page>
);
