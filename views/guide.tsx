import { Page } from "./page.tsx";
import { GateTile } from "./parts/gate-tile.tsx";
import { Proposal } from "./parts/proposal.tsx";
import { SayForm, type Screen } from "./parts/say-form.tsx";
import { regions } from "./regions.ts";
import { label } from "./text/en/page.ts";

type Shown = Screen & { readonly notice: string | null };

/** Job, phase, weather and who holds the screen, in one slim strip. */
export const Strip = ({ guide, me }: Screen) => {
  const person = guide.people.find((p) => p.id === me);
  return (
    <header id={regions.strip} class={`strip weather-${guide.weather.is}`}>
      <strong>{guide.makingSafe ? label.makingSafe : guide.phaseName}</strong>
      <span>{label.calls(guide.progress.at, guide.progress.of)}</span>
      <span class="weather">{guide.weather.words}</span>
      <span>{person ? label.you(person.name, person.roleName) : guide.title}</span>
    </header>
  );
};

/** The conversation: what was said before, smaller; then the call that is on now, with its gate. */
export const Thread = (screen: Screen) => {
  const { guide } = screen;
  return (
    <main id={regions.thread} class="thread">
      <ol class="earlier" aria-label={label.earlier}>
        {guide.thread.map((line) => (
          <li class={line.refused ? "refused" : "done"}>
            <span class="who">{`${line.time} ${line.who}`}</span> <b>{line.said}</b>{" "}
            <span>{line.refused ? `${label.refused}: ${line.reply}` : line.reply}</span>
          </li>
        ))}
      </ol>
      <article class="call" data-turn={guide.turn} data-entry={guide.entry} data-step={guide.step}>
        {guide.readOnly !== null && <p class="alarm">{guide.readOnly}</p>}
        {guide.held && <p class="alarm">{label.heldBy(guide.held.by)}</p>}
        <Proposal {...screen} />
        <h1>{guide.call?.say ?? label.closed}</h1>
        {guide.gate && <GateTile screen={screen} gate={guide.gate} />}
        {guide.call && (
          <details class="why">
            <summary>{label.why}</summary>
            <p>{guide.call.why}</p>
          </details>
        )}
      </article>
    </main>
  );
};

/** At most four targets within the thumb's reach. */
export const Dock = (screen: Screen) => {
  const { guide, me } = screen;
  if (me === null) return <WhoAsks {...screen} />;
  return (
    <footer id={regions.dock} class="dock">
      {!guide.closed && (
        <SayForm screen={screen} fields={{ type: guide.held ? "carryOn" : "next" }} class="main">
          <button type="submit">{guide.held ? label.carryOn : label.next}</button>
        </SayForm>
      )}
      <div class="row">
        <SayForm screen={screen} fields={{ type: "hold" }} class="hold">
          <button type="submit">{label.hold}</button>
        </SayForm>
        {!guide.closed && (
          <SayForm screen={screen} fields={{ type: "makeSafe", because: "pressed" }} class="safe">
            <button type="submit">{label.makeSafe}</button>
          </SayForm>
        )}
        <a class="button" href={`/jobs/${guide.job}/more`}>
          {label.more}
        </a>
      </div>
    </footer>
  );
};

/** Before anything is said, the screen belongs to somebody. */
const WhoAsks = ({ guide }: Screen) => (
  <footer id={regions.dock} class="dock who">
    <p>{label.who}</p>
    <form method="get" action={`/jobs/${guide.job}`}>
      {guide.people.map((p) => (
        <button type="submit" name="as" value={p.id}>
          {label.you(p.name, p.roleName)}
        </button>
      ))}
    </form>
  </footer>
);

/** What the guide said to this screen's last press; other screens' presses leave it alone. */
const Notice = ({ notice }: Pick<Shown, "notice">) => (
  <p id={regions.notice} class="notice" role="status">
    {notice ?? ""}
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
    {screen.notice !== null && (
      <hx-partial hx-target={`#${regions.notice}`} hx-swap="innerHTML">
        {screen.notice}
      </hx-partial>
    )}
  </>
);

export const GuidePage = (screen: Shown) => (
  <Page title={screen.guide.title}>
    <div class="guide">
      <Strip {...screen} />
      <Thread {...screen} />
      <div class="foot">
        <Notice notice={screen.notice} />
        <Dock {...screen} />
      </div>
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
