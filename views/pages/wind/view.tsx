import { WindDial } from "../../drawing/call/call-picture.tsx";
import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { WindForm } from "../guide/answers/wind-form.tsx";

/** A wind reading, at any call; and the way to what else the sky does. */
export const WindPage = (screen: Screen) => {
  const { guide, words } = screen;
  return (
    <JobScreen screen={screen} title={guide.weather.words} class="wind-page" beside={[{ to: "weather", text: words.more.sky }]}>
      <div>
        <WindDial facts={screen.drawn.wind} turn={screen.drawn.turn} words={words} />
      </div>
      <WindForm screen={screen} />
    </JobScreen>
  );
};

/** What the weather does, whoever tells it; and everybody out of the tent. */
export const WeatherPage = (screen: Screen) => {
  const { more } = screen.words;
  const told = (reading: "thunder" | "warning" | "rain", text: string) => (
    <SayForm screen={screen} fields={{ type: "reading", reading }}>
      <button type="submit">{text}</button>
    </SayForm>
  );
  return (
    <JobScreen screen={screen} title={more.alarms}>
      <div class="tiles">
        {told("thunder", more.thunder)}
        {told("warning", more.warning)}
        {told("rain", more.rain)}
        <SayForm screen={screen} fields={{ type: "makeSafe", because: more.everybodyOutBecause }}>
          <button type="submit">{more.everybodyOut}</button>
        </SayForm>
      </div>
      {screen.guide.weather.stop?.lightning && (
        <SayForm screen={screen} fields={{ type: "reading", reading: "noThunder" }} class="no-thunder">
          <label>
            {more.noThunder}
            <input name="because" required maxlength={300} autocomplete="off" />
          </label>
          <button type="submit">{more.takeBack}</button>
        </SayForm>
      )}
    </JobScreen>
  );
};
