import { HurtWay } from "../../parts/hurt-press.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";

/** What a thumb reaches: the main target, and at most four beside each other. While something waits to be confirmed, that comes first. */
export const Dock = (screen: Screen) => {
  const { guide, me } = screen;
  const { guide: text } = screen.words;
  if (me === null) return <WhoAsks {...screen} />;
  if (guide.readBack)
    return (
      <footer id={regions.dock} class="dock heard-back">
        <SayForm screen={screen} fields={{ type: "correct", target: guide.readBack.entry }} class="main correct">
          <button type="submit">{text.correct}</button>
        </SayForm>
        <div class="row">
          <Hold {...screen} />
          <Talk {...screen} />
          <SayForm screen={screen} fields={{ type: "wrong", target: guide.readBack.entry }} class="wrong-one">
            <button type="submit">{text.wrongOne}</button>
          </SayForm>
          <More {...screen} />
        </div>
      </footer>
    );
  return (
    <footer id={regions.dock} class={guide.weather.is === "stop" ? "dock stops" : "dock"}>
      <Main {...screen} />
      <div class="row">
        <Hold {...screen} />
        <Talk {...screen} />
        {!guide.closed && (
          <SayForm screen={screen} fields={{ type: "makeSafe" }} class="safe">
            <button type="submit">{text.makeSafe}</button>
          </SayForm>
        )}
        <More {...screen} />
      </div>
    </footer>
  );
};

/** On to the next call, or back to work; after somebody was hurt, only with what became of it. */
const Main = (screen: Screen) => {
  const { guide, words } = screen;
  if (guide.hurt)
    return (
      <SayForm screen={screen} fields={{ type: "carryOn" }} class="main became">
        <label>
          {words.hurt.became}
          <input name="became" required maxlength={300} autocomplete="off" />
        </label>
        <button type="submit">{words.guide.carryOn}</button>
      </SayForm>
    );
  if (guide.closed) return null;
  return (
    <SayForm screen={screen} fields={{ type: guide.held ? "carryOn" : "next" }} class="main">
      <button type="submit">{guide.held ? words.guide.carryOn : words.guide.next}</button>
    </SayForm>
  );
};

/** What does not belong under the thumb; first of it, the press that says that somebody is hurt. */
const More = ({ guide, words }: Screen) => (
  <a class="button" href={`/jobs/${guide.job}/more`}>
    {words.guide.more}
  </a>
);

const Hold = (screen: Screen) => (
  <SayForm screen={screen} fields={{ type: "hold" }} class="hold">
    <button type="submit">{screen.words.guide.hold}</button>
  </SayForm>
);

/** Shows where the browser can listen; there the way to make safe is the first thing under More. */
const Talk = ({ words }: Screen) => (
  <div class="talk">
    <button type="button" data-talk>
      {words.guide.talk}
    </button>
  </div>
);

/** Before anything is said, the screen belongs to somebody. */
const WhoAsks = ({ guide, words, words: { page } }: Screen) => (
  <footer id={regions.dock} class="dock who">
    <HurtWay job={guide.job} words={words} />
    <p>{page.who}</p>
    <form method="get" action={`/jobs/${guide.job}`}>
      {guide.people.map((p) => (
        <button type="submit" name="as" value={p.id}>
          {page.you(p.name, p.roleName)}
        </button>
      ))}
    </form>
  </footer>
);
