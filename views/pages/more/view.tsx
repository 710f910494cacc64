import { HurtPress } from "../../parts/hurt-press.tsx";
import { JobScreen, Way } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";

/** What is not under the thumb at every call, in the order of need: the way out and help first. */
export const MorePage = (screen: Screen) => {
  const { guide, me, words } = screen;
  const { guide: call, more } = words;
  return (
    <JobScreen screen={screen} title={guide.title}>
      {me !== null && !guide.closed && (
        <SayForm screen={screen} fields={{ type: "makeSafe" }} class="safe main">
          <button type="submit">{call.makeSafe}</button>
        </SayForm>
      )}
      <div class="alarms">
        <HurtPress {...screen} />
        {me !== null && !guide.closed && (
          <SayForm screen={screen} fields={{ type: "reading", reading: "thunder" }} class="thunder-one main">
            <button type="submit">{more.thunder}</button>
          </SayForm>
        )}
      </div>
      {me !== null && (
        <div class="tiles">
          {guide.closed || (
            <SayForm screen={screen} fields={{ type: "back" }}>
              <button type="submit">{more.back}</button>
            </SayForm>
          )}
          <Way screen={screen} to="words" text={more.words} />
          <Way screen={screen} to="tent" text={more.tent} />
          <Way screen={screen} to="settings" text={more.settings} />
          <Way screen={screen} to="learn" text={words.learn.way} />
          {guide.closed || <Way screen={screen} to="stand-down" text={more.standDown} class="quiet" />}
        </div>
      )}
    </JobScreen>
  );
};
