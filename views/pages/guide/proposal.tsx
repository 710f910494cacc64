import { Changes } from "../../parts/changes.tsx";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import { label } from "../../text/en/page.ts";

/** A change of the plan that waits for somebody else to agree or not. */
export const Proposal = (screen: Screen) => {
  const { proposed } = screen.guide;
  if (!proposed) return null;
  return (
    <section class="alarm">
      <p>{label.proposed(proposed.by, proposed.because)}</p>
      <Changes {...proposed} />
      <div class="tiles">
        <SayForm screen={screen} fields={{ type: "agree", target: proposed.entry }}>
          <button type="submit">{label.agree}</button>
        </SayForm>
        <SayForm screen={screen} fields={{ type: "disagree", target: proposed.entry }}>
          <button type="submit">{label.disagree}</button>
        </SayForm>
      </div>
    </section>
  );
};
