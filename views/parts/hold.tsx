import { SayForm, type Screen } from "./say-form.tsx";

/** Stops the work at once: on the guide and on every page beside it, in the same place. A closed job has none to stop. */
export const Hold = (screen: Screen) =>
  screen.guide.closed ? null : (
    <SayForm screen={screen} fields={{ type: "hold" }} class="hold">
      <button type="submit">{screen.words.guide.hold}</button>
    </SayForm>
  );
