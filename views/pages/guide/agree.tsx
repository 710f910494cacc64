import { COMPETENT } from "../../../machines/install/gates.ts";
import { SayForm, type Screen } from "../../parts/say-form.tsx";
import type { Proposed } from "./state.ts";

/** What changes is said on the call itself up to so many letters; what is more is looked at. */
const SHORT = 110;

/** A change that this screen's person may agree to now; `null` for who proposed it, and for who may not. */
export function toAgreeTo({ guide: { proposed, people }, me }: Pick<Screen, "guide" | "me">): Proposed | null {
  const role = people.find(({ id }) => id === me)?.role;
  const may = role !== undefined && COMPETENT.includes(role) && proposed?.byId !== me;
  return proposed && may && !proposed.later ? proposed : null;
}

const isShort = ({ changes }: Proposed): boolean => changes.length > 0 && changes.join(" ").length <= SHORT;

/** What is agreed to, as it is asked. */
export const askedToAgree = (proposed: Proposed, { guide: text }: Screen["words"]): string =>
  isShort(proposed) ? text.right(proposed.changes) : text.manyChanges(proposed.changes.length);

/** The page on which a change is looked at whole. */
export const LookAtIt = ({ screen: { guide, words }, ...rest }: { screen: Screen; class: string }) => (
  <a href={`/jobs/${guide.job}/change`} {...rest}>
    {words.guide.lookAtIt}
  </a>
);

/** Agreed to in one press where what changes stands above; else it is looked at first. */
export const Agree = ({ screen, proposed }: { screen: Screen; proposed: Proposed }) =>
  isShort(proposed) ? (
    <>
      <SayForm screen={screen} fields={{ type: "agree", target: proposed.entry }} class="main">
        <button type="submit">{screen.words.guide.agree}</button>
      </SayForm>
      <LookAtIt screen={screen} class="button" />
    </>
  ) : (
    <LookAtIt screen={screen} class="button main" />
  );
