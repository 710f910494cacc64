import { Keypad } from "../../parts/keypad.tsx";
import { Page } from "../../parts/page.tsx";
import { Tick, type TruckScreen } from "./line.tsx";
import type { TruckLine } from "./state.ts";

type Props = { screen: TruckScreen; line: TruckLine; typed: string; problem: string | null };

/** One line's own page: any number of it, on keys that a glove hits. What was typed stands again where it was refused. */
export const TruckCountPage = ({ screen, line, typed, problem }: Props) => {
  const { state, words } = screen;
  const { page, truck } = words;
  const list = `/jobs/${state.job}/truck`;
  return (
    <Page
      words={words}
      title={truck.title}
      where={{ on: "truck", job: { id: state.job, title: state.title } }}
      styles="truck"
      hurt={screen.hurt}
      hurtWay={state.job}
    >
      <main class="truck one" hx-ignore>
        {state.rehearsal && <p class="rehearsal">{page.notReal}</p>}
        <h1>{truck.howMany(line.item, state.way)}</h1>
        <p>
          {truck.wanted(line)} {line.counted !== null && `${truck.is(line, state.way)}.`}
        </p>
        {problem !== null && (
          <p class="wrong" id="wrong" role="alert">
            {problem}
          </p>
        )}
        <form method="post" action={list} class="number">
          <Tick {...screen} line={line} />
          <input
            name="value"
            value={typed}
            aria-label={truck.howMany(line.item, state.way)}
            aria-describedby="wrong"
            aria-invalid={problem === null ? undefined : "true"}
            maxlength={40}
            inputmode="decimal"
            autocomplete="off"
          />
          <Keypad unit="count" words={words} />
          <button type="submit" class="main">
            {page.record}
          </button>
        </form>
        <a class="button" href={`${list}#line-${line.item}`}>
          {truck.toList}
        </a>
      </main>
    </Page>
  );
};
