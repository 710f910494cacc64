import type { FC } from "hono/jsx";
import type { Value } from "../../../../machines/install/checks/registry.ts";
import type { TileInput } from "../../../../machines/install/checks/tile-input.ts";
import { HurtWay } from "../../../parts/hurt-press.tsx";
import { UnlockNow } from "../../../parts/lock.tsx";
import { SayForm, type Screen } from "../../../parts/say-form.tsx";
import { regions } from "../../../regions.ts";
import { Agree, LookAtIt } from "../agree.tsx";
import { type Asked, askedNow } from "../asked.ts";
import { SiteWays } from "../site.tsx";
import { answerKind } from "./answer-kind.ts";
import { EachOne, Figure, Reading } from "./item.tsx";
import { NumberOrNone } from "./number.tsx";
import { PaperNamed, PaperSeen } from "./paper.tsx";
import { Choices, type Props } from "./press.tsx";
import { WindForm } from "./wind-form.tsx";

type Input = TileInput<Value>["input"];
type Inputs = { readonly [K in Input]: FC<Props & { tile: Extract<TileInput<Value>, { input: K }>; asked: Asked }> };

/** One for each way to answer. A kind of check says which of them is its own, and with what in it. */
const INPUTS: Inputs = {
  choices: ({ tile, asked: _, ...props }) => <Choices {...props} choices={tile.choices} />,
  number: NumberOrNone,
  readings: Reading,
  figures: Figure,
  each: EachOne,
  document: ({ asked: _, ...props }) => <PaperNamed {...props} />,
  link: ({ tile, screen: { guide, words } }) => (
    <a class="button main" href={`/jobs/${guide.job}/${tile.to}`}>
      {words.lengths.list}
    </a>
  ),
  // Filled in, and not agreed to yet: there is nothing more to fill in.
  facts: ({ tile, screen, screen: { guide, words } }) =>
    guide.proposed ? (
      <LookAtIt screen={screen} class="button" />
    ) : (
      <a class="button main" href={`/jobs/${guide.job}/facts?of=${tile.facts.join("+")}`}>
        {words.facts.fill}
      </a>
    ),
  // Only a change of the plan takes it away: where one waits, that is looked at.
  site: ({ screen, screen: { guide, words } }) =>
    guide.proposed ? (
      <LookAtIt screen={screen} class="button" />
    ) : (
      <a class="button main" href={`/jobs/${guide.job}/site/place`}>
        {words.workedOut.move}
      </a>
    ),
  wind: ({ screen }) => <WindForm screen={screen} />,
  none: () => null,
};

/**
 * What this call can be answered with, under the thumb: what waits to be confirmed before all else, and one Next where nothing is
 * asked. Where a swap brings another question it takes the focus itself (`client/focus.ts`), and is told with what is said and asked.
 */
export const Answers = (screen: Screen) => (
  <section
    id={regions.answers}
    class={`answers answers-${answerKind(screen)}`}
    aria-label={screen.words.guide.answerIt}
    aria-describedby={`${regions.said} ${regions.asked}`}
    tabindex={-1}
  >
    <What {...screen} />
    <SiteWays {...screen} />
    <UnlockNow {...screen} />
  </section>
);

const What = (screen: Screen) => {
  const { guide, pick, words } = screen;
  const { gate } = guide;
  switch (answerKind(screen)) {
    case "nobody":
      return <WhoAsks {...screen} />;
    case "readBack":
      return (
        <SayForm screen={screen} fields={{ type: "correct", target: guide.readBack!.entry }} class="main correct">
          <button type="submit">{words.guide.correct}</button>
        </SayForm>
      );
    case "hurt":
      return <Became {...screen} />;
    case "stop":
      return <MakeSafe screen={screen} class="main safe" />;
    case "held":
      return (
        <SayForm screen={screen} fields={{ type: "carryOn" }} class="main">
          <button type="submit">{words.guide.carryOn}</button>
        </SayForm>
      );
    case "agree":
      return <Agree screen={screen} proposed={guide.proposed!} />;
    case "seen":
      return <PaperSeen screen={screen} gate={gate!} />;
    case "gate": {
      // Each way to answer stands under its own name: an index cannot tell TypeScript that.
      const Shown = INPUTS[gate!.tile.input] as FC<Props & { tile: TileInput<Value>; asked: Asked }>;
      return <Shown screen={screen} gate={gate!} tile={gate!.tile} asked={askedNow(gate!, pick, words)} />;
    }
    case "next":
      return <GoOn {...screen} />;
    case "watching":
      return <p class="watching">{words.learn.youWatch}</p>;
    case "closed":
      return null;
  }
};

/** The way out. */
export const MakeSafe = ({ screen, ...rest }: { screen: Screen; class: string }) => (
  <SayForm screen={screen} fields={{ type: "makeSafe" }} {...rest}>
    <button type="submit">{screen.words.guide.makeSafe}</button>
  </SayForm>
);

/** On to the next call. Under stop the way out stands beside it; what is out of use is brought back first. */
const GoOn = (screen: Screen) => {
  const { guide, words } = screen;
  return (
    <>
      <SayForm screen={screen} fields={{ type: "next" }} class="main">
        <button type="submit">{words.guide.next}</button>
      </SayForm>
      {guide.lacks && (
        <a class="button" href={`/jobs/${guide.job}/trouble`}>
          {words.trouble.title}
        </a>
      )}
    </>
  );
};

/** After somebody was hurt it goes on only with what became of it. */
const Became = (screen: Screen) => (
  <SayForm screen={screen} fields={{ type: "carryOn" }} class="main became">
    <label class="put-in">
      {screen.words.hurt.became}
      <input name="became" required maxlength={300} autocomplete="off" />
    </label>
    <button type="submit">{screen.words.guide.carryOn}</button>
  </SayForm>
);

/** Before anything is said, the screen belongs to somebody. */
const WhoAsks = ({ guide, access: { here }, words, words: { page } }: Screen) => (
  <div class="who">
    <HurtWay job={guide.job} words={words} />
    <p>{page.who}</p>
    <form method="get" action={`/jobs/${guide.job}`}>
      {guide.people
        .filter(({ id }) => here === null || here.includes(id))
        .map((p) => (
          <button type="submit" name="as" value={p.id}>
            {page.you(p.name, p.roleName)}
          </button>
        ))}
    </form>
  </div>
);
