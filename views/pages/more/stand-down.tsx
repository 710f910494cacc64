import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";

/** The job stood down before it is over, with the reason. */
export const StandDownPage = (screen: Screen) => {
  const { more, page } = screen.words;
  return (
    <JobScreen screen={screen} title={more.standDown}>
      <SayForm screen={screen} fields={{ type: "standDown" }} class="stand-down">
        <label>
          {page.because}
          <input name="because" required maxlength={300} autocomplete="off" />
        </label>
        <button type="submit">{more.standDown}</button>
      </SayForm>
    </JobScreen>
  );
};
