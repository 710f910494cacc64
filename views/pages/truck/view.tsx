import { HurtLive, Page } from "../../parts/page.tsx";
import { regions, truckIds } from "../../regions.ts";
import { Line, type TruckScreen } from "./line.tsx";
import { TruckPaper } from "./paper.tsx";
import { TruckWeight } from "./weight.tsx";

type Shown = TruckScreen & { readonly notice: string | null };

/** How far the list is, always in sight. */
const Head = ({ state, words: { truck } }: Pick<TruckScreen, "state" | "words">) => (
  <p id={truckIds.head} class="progress" role="status">
    {truck.progress(state)}
  </p>
);

/** Which way it is counted, or why it is only read now; what it weighs; and who ticks, where nobody has said so. */
const Facts = ({ state, me, people, words, words: { truck, anchors } }: TruckScreen) => (
  <div id={truckIds.facts} class="facts-of">
    <h1>{truck.heading[state.way]}</h1>
    {state.readOnly === null ? <p>{truck.order[state.way]}</p> : <p class="alarm">{state.readOnly}</p>}
    <TruckWeight state={state} words={words} />
    {state.ballast && (
      <a class="button to-anchors" href={`/jobs/${state.job}/anchors`}>
        {anchors.title}
      </a>
    )}
    {me === null && state.gate !== null && <WhoAsks state={state} people={people} words={words} />}
  </div>
);

const Lines = (screen: TruckScreen) => (
  <ol id={truckIds.lines} class="lines">
    {screen.state.lines.map((line) => (
      <Line screen={screen} line={line} />
    ))}
  </ol>
);

/** The loading list: read by everybody, ticked when the guide asks for it. Printed, it is one page to tick by hand. */
export const TruckPage = (screen: Shown) => {
  const { state, notice, words } = screen;
  const { page, truck } = words;
  return (
    <Page
      words={words}
      title={truck.title}
      where={{ on: "truck", job: { id: state.job, title: state.title } }}
      styles="truck"
      hurt={screen.hurt}
      hurtWay={state.job}
    >
      <main class="truck">
        <div class="top">
          <Head {...screen} />
          <p id={regions.notice} class="notice" role="status">
            {notice ?? ""}
          </p>
        </div>
        {state.rehearsal && <p class="rehearsal">{page.notReal}</p>}
        <p class="job-of">{`${state.title}, ${state.size}`}</p>
        <Facts {...screen} />
        <a class="button" href={`/jobs/${state.job}`}>
          {page.guide}
        </a>
        <Lines {...screen} />
        <nav class="ways">
          <a class="button main" href={`/jobs/${state.job}`}>
            {page.guide}
          </a>
          <a class="button" href={`/jobs/${state.job}/amend`}>
            {truck.change}
          </a>
          <p>{truck.print}</p>
          <a class="button" href={`/jobs/${state.job}/truck.csv`}>
            {truck.asCsv}
          </a>
          <a class="button" href={`/jobs/${state.job}/truck.json`}>
            {truck.asJson}
          </a>
        </nav>
      </main>
      <TruckPaper state={state} words={words} />
      <div
        id={regions.live}
        hx-sse:connect={`/jobs/${state.job}/truck/live`}
        hx-trigger="load, every 5s"
        hx-sync="this:drop"
        hx-swap="none"
      ></div>
    </Page>
  );
};

const WhoAsks = ({ state, people, words: { page, truck } }: Pick<TruckScreen, "state" | "people" | "words">) => (
  <form method="get" action={`/jobs/${state.job}/truck`} class="who" hx-ignore>
    <p>{truck.who}</p>
    {people.map((p) => (
      <button type="submit" name="as" value={p.id}>
        {page.you(p.name, p.roleName)}
      </button>
    ))}
  </form>
);

/** What a screen gets between whole pages: the head, and one line where `item` names it, or all of them. */
export const TruckLive = ({ item, notice, ...screen }: TruckScreen & { item: string | null; notice: string | null }) => {
  const { state } = screen;
  const line = state.lines.find((l) => l.item === item);
  return (
    <>
      <HurtLive {...screen} />
      <hx-partial hx-target={`#${truckIds.head}`} hx-swap="outerMorph">
        <Head {...screen} />
      </hx-partial>
      {line ? (
        <hx-partial hx-target={`#${truckIds.line(line.item)}`} hx-swap="outerMorph">
          <Line screen={screen} line={line} />
        </hx-partial>
      ) : (
        <>
          <hx-partial hx-target={`#${truckIds.facts}`} hx-swap="outerMorph">
            <Facts {...screen} />
          </hx-partial>
          <hx-partial hx-target={`#${truckIds.lines}`} hx-swap="outerMorph">
            <Lines {...screen} />
          </hx-partial>
        </>
      )}
      {notice !== null && (
        <hx-partial hx-target={`#${regions.notice}`} hx-swap="innerHTML">
          {notice}
        </hx-partial>
      )}
    </>
  );
};
