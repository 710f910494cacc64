import { Changes } from "../../parts/changes.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";

/** A change of the plan that waits for somebody else to agree or not. */
export const Proposal = (screen: Screen) => {
  const { proposed } = screen.guide;
  const { guide: text } = screen.words;
  if (!proposed) return null;
  return (
    <section class="alarm">
      <p>{text.proposed(proposed.by, proposed.because)}</p>
      <Changes {...proposed} words={screen.words} />
      <div class="tiles">
        <SayForm screen={screen} fields={{ type: "agree", target: proposed.entry }}>
          <button type="submit">{text.agree}</button>
        </SayForm>
        <SayForm screen={screen} fields={{ type: "disagree", target: proposed.entry }}>
          <button type="submit">{text.disagree}</button>
        </SayForm>
      </div>
    </section>
  );
};
