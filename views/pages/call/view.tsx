import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { Lesson } from "./lesson.tsx";

/** The call that is on, at length: the tent, why it is done, how it is done well, what goes wrong, where a limit comes from. */
export const CallPage = (screen: Screen) => {
  const { guide, words } = screen;
  const { call, gate } = guide;
  return (
    <JobScreen screen={screen} title={call?.say ?? words.guide.closed}>
      <Lesson {...screen} />
      {gate && <p class="source">{words.guide.source(gate.source)}</p>}
    </JobScreen>
  );
};
