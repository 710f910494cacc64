import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { TextField } from "../../parts/text-field.tsx";

/** The job stood down before it is over, with the reason. */
export const StandDownPage = (screen: Screen) => {
  const { more, page } = screen.words;
  return (
    <JobScreen screen={screen} title={more.standDown}>
      <SayForm screen={screen} fields={{ type: "standDown" }} class="stand-down">
        <TextField name="because" label={page.because} />
        <button type="submit">{more.standDown}</button>
      </SayForm>
    </JobScreen>
  );
};
