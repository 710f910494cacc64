import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";

/** Anything in words, as it would be said; and a note for the record. */
export const WordsPage = (screen: Screen) => {
  const { more, page } = screen.words;
  const text = (name: string, label: string) => (
    <label>
      {label}
      <input name={name} required maxlength={300} autocomplete="off" />
    </label>
  );
  return (
    <JobScreen screen={screen} title={more.words}>
      <SayForm screen={screen} fields={{}} class="in-words">
        {text("heard", more.inWords)}
        <button type="submit">{more.say}</button>
      </SayForm>
      <SayForm screen={screen} fields={{ type: "note" }} class="note">
        {text("text", more.note)}
        <button type="submit">{page.record}</button>
      </SayForm>
    </JobScreen>
  );
};
