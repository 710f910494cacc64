import { MAX_WARNING_LETTERS } from "../../../machines/install/warning-text.ts";
import { BEAUFORT_NAMES } from "../../../machines/weather/beaufort.ts";
import { STOP_MILES } from "../../../machines/weather/lightning.ts";
import { WindDial } from "../../drawing/call/call-picture.tsx";
import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { WindForm } from "../guide/answers/wind-form.tsx";
import type { AirState } from "./air-state.ts";

/** A wind reading, at any call, in any unit; one by the look of things; and the ways to what else the sky does. */
export const WindPage = ({ air, ...screen }: Screen & { air: AirState }) => {
  const { guide, words } = screen;
  const { sky } = words;
  return (
    <JobScreen
      screen={screen}
      title={guide.weather.words}
      class="wind-page"
      beside={[
        { to: "weather", text: words.more.sky },
        { to: "air", text: sky.toAir },
      ]}
    >
      <WindForm screen={screen} labels={{ wind: sky.wind, gust: sky.gust }}>
        <div class="beside-wind">
          <Choice name="exposure" label={sky.where} of={sky.exposure} />
          <Choice name="unit" label={sky.unit} of={sky.units} />
          <label class="put-in">
            {sky.height}
            <input name="heightFt" data-own-keys maxlength={10} inputmode="decimal" autocomplete="off" />
          </label>
        </div>
      </WindForm>
      {guide.weather.watched && <p>{guide.weather.watched.words}.</p>}
      {[...guide.weather.sky, ...(air.gusty === null ? [] : [air.gusty])].map((line) => (
        <p class="warning">{line}</p>
      ))}
      <div>
        <WindDial facts={screen.drawn.wind} turn={screen.drawn.turn} words={words} />
      </div>
      <SayForm screen={screen} fields={{ type: "reading", reading: "windByLook" }} class="by-look">
        <label>
          {sky.byLook}
          <select name="look" required>
            <option value="">{sky.lookLabel}</option>
            {BEAUFORT_NAMES.map((name) => (
              <option value={name}>{sky.lookWith(name)}</option>
            ))}
          </select>
        </label>
        <button type="submit">{sky.recordLook}</button>
      </SayForm>
    </JobScreen>
  );
};

/** One of a few, the first unless another is chosen. */
export const Choice = ({ name, label, of }: { name: string; label: string; of: Readonly<Record<string, string>> }) => (
  <label class="put-in">
    {label}
    <select name={name}>
      {Object.entries(of).map(([value, text]) => (
        <option value={value}>{text}</option>
      ))}
    </select>
  </label>
);

/** What the weather does, whoever tells it; and everybody out of the tent. */
export const WeatherPage = ({ air, ...screen }: Screen & { air: AirState }) => {
  const { more, sky } = screen.words;
  const told = (reading: "thunder" | "warning" | "rain", text: string) => (
    <SayForm screen={screen} fields={{ type: "reading", reading }}>
      <button type="submit">{text}</button>
    </SayForm>
  );
  return (
    <JobScreen
      screen={screen}
      title={more.alarms}
      beside={[
        { to: "air", text: sky.toAir },
        { to: "weather-plan", text: screen.words.weatherPlan.link },
      ]}
    >
      {air.warnings.map((line) => (
        <p class="alarm">{line}</p>
      ))}
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
      <SayForm screen={screen} fields={{ type: "reading", reading: "thunder" }} class="count-flash">
        <p>{sky.anyThunder(STOP_MILES)}</p>
        <button type="button" data-flash data-bang={sky.bang} data-late={sky.tooLongAgo}>
          {sky.count}
        </button>
        <label>
          {sky.seconds}
          <input name="seconds" required maxlength={10} inputmode="decimal" autocomplete="off" />
        </label>
        <button type="submit">{sky.thunderTold}</button>
      </SayForm>
      <SayForm screen={screen} fields={{ type: "reading", reading: "warning" }} class="tell-warning">
        <label>
          {sky.warningWhat}
          <input name="what" required maxlength={MAX_WARNING_LETTERS} autocomplete="off" />
        </label>
        <label>
          {sky.warningUntil}
          <input name="until" maxlength={MAX_WARNING_LETTERS} autocomplete="off" />
        </label>
        <label>
          {sky.warningIssuer}
          <input name="issuer" maxlength={MAX_WARNING_LETTERS} autocomplete="off" />
        </label>
        <button type="submit">{sky.tellWarning}</button>
      </SayForm>
    </JobScreen>
  );
};
