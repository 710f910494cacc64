import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { TextField } from "../../parts/text-field.tsx";

/** Anything in words, as it would be said; and a note for the record. */
export const WordsPage = (screen: Screen) => {
  const { more, page } = screen.words;
  return (
    <JobScreen screen={screen} title={more.words}>
      <SayForm screen={screen} fields={{}} class="in-words">
        <TextField name="heard" label={more.inWords} />
        <button type="submit">{more.say}</button>
      </SayForm>
      <SayForm screen={screen} fields={{ type: "note" }} class="note">
        <TextField name="text" label={more.note} />
        <button type="submit">{page.record}</button>
      </SayForm>
    </JobScreen>
  );
};
