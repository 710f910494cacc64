import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { Proposal } from "../guide/proposal.tsx";

/** A change of the plan that waits for somebody else to agree or not. */
export const ChangePage = (screen: Screen) => (
  <JobScreen screen={screen} title={screen.words.guide.change}>
    <Proposal {...screen} />
  </JobScreen>
);
