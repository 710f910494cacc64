import { NUMBER, type Sayable } from "../../../machines/speech/sayable.ts";
import { JobScreen } from "../../parts/job-screen.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { TextField } from "../../parts/text-field.tsx";

/** So many ways of each kind are shown: the likeliest stand first. */
const SHOWN = 6;

/** Anything in words, as it would be said, with what can be said at this call; and a note for the record. */
export const WordsPage = ({ screen, sayable }: { screen: Screen; sayable: Sayable }) => {
  const { more, page } = screen.words;
  const kinds = [
    [more.answers, sayable.answers],
    [more.orders, sayable.orders],
    [more.questions, sayable.questions],
    [more.holds, sayable.holds],
  ] as const;
  return (
    <JobScreen screen={screen} title={more.words}>
      <SayForm screen={screen} fields={{}} class="in-words">
        <TextField name="heard" label={more.inWords} />
        <button type="submit">{more.say}</button>
      </SayForm>
      <details class="sayable">
        <summary>{more.sayable}</summary>
        <dl>
          {kinds
            .filter(([, phrases]) => phrases.length > 0)
            .map(([kind, phrases]) => (
              <>
                <dt>{kind}</dt>
                <dd>{shown(phrases).map(more.quoted).join(" ")}</dd>
              </>
            ))}
        </dl>
      </details>
      <SayForm screen={screen} fields={{ type: "note" }} class="note">
        <TextField name="text" label={more.note} />
        <button type="submit">{page.record}</button>
      </SayForm>
    </JobScreen>
  );
};

const shown = (phrases: readonly string[]): string[] => phrases.slice(0, SHOWN).map((phrase) => phrase.replaceAll(NUMBER, "…"));
