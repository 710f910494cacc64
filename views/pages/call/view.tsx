import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { Lesson } from "./lesson.tsx";

/** The call that is on, at length: why it is done, how it is done well, what goes wrong, where its limit comes from. */
export const CallPage = (screen: Screen) => {
  const { call, gate } = screen.guide;
  const { guide, handWork, photos } = screen.words;
  const beside = [
    { to: "picture", text: guide.drawing },
    { to: "photos", text: photos.title },
  ];
  return (
    <JobScreen screen={screen} title={call?.say ?? guide.closed} beside={beside}>
      <Lesson {...screen} isLarge />
      <a class="button" href={`/hand-work?job=${screen.guide.job}`}>
        {handWork.all}
      </a>
      {gate && <p class="source">{guide.source(gate.source)}</p>}
    </JobScreen>
  );
};
