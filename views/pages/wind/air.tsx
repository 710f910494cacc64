import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import type { AirState } from "./air-state.ts";
import { Choice } from "./view.tsx";

/** Heat and cold as they were told, what they come to, and the forms that tell them again. */
export const AirPage = ({ air, ...screen }: Screen & { air: AirState }) => {
  const { sky } = screen.words;
  const scale = <Choice name="scale" label={sky.unit} of={sky.scale} />;
  const temperature = (
    <label class="put-in">
      {sky.air}
      <input name="air" required maxlength={10} inputmode="decimal" autocomplete="off" />
    </label>
  );
  return (
    <JobScreen screen={screen} title={sky.toAir} class="air-page" beside={[{ to: "wind", text: sky.wind }]}>
      {air.warnings.map((line) => (
        <p class="alarm">{line}</p>
      ))}
      <h2>{sky.heat}</h2>
      {air.heat?.lines.map((line) => (
        <p>{line}</p>
      ))}
      <SayForm screen={screen} fields={{ type: "reading", reading: "heat" }} class="put-in-by">
        {temperature}
        {scale}
        <label class="put-in">
          {sky.humidity}
          <input name="humidity" required maxlength={10} inputmode="decimal" autocomplete="off" />
        </label>
        <Choice
          name="sun"
          label={sky.sunLabel}
          of={{ "": sky.sunNotTold, full: sky.sun("full"), partly: sky.sun("partly"), none: sky.sun("none") }}
        />
        <button type="submit" class="main">
          {sky.recordHeat}
        </button>
      </SayForm>
      <h2>{sky.cold}</h2>
      {air.cold?.lines.map((line) => (
        <p>{line}</p>
      ))}
      <SayForm screen={screen} fields={{ type: "reading", reading: "cold" }} class="put-in-by">
        {temperature}
        {scale}
        <label class="put-in">
          {sky.wind}
          <input name="windMph" required maxlength={10} inputmode="decimal" autocomplete="off" />
        </label>
        <Choice name="unit" label={sky.unit} of={sky.units} />
        <button type="submit" class="main">
          {sky.recordCold}
        </button>
      </SayForm>
    </JobScreen>
  );
};
