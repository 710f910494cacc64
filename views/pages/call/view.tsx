import { CallPicture } from "../../drawing/call/call-picture.tsx";
import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { Lesson } from "./lesson.tsx";

/** On a phone the drawing has the upper half. */
const BOX = { widePx: 328, highPx: 215 } as const;

/** The call that is on, at length: the tent, turned as one stands; why it is done, how it is done well, what goes wrong. */
export const CallPage = (screen: Screen) => {
  const { drawn, guide, words } = screen;
  const { call, gate } = guide;
  const turn = { to: `call?turned=${(drawn.quarters + 1) % 4}`, text: words.guide.turn };
  return (
    <JobScreen screen={screen} title={call?.say ?? words.guide.closed} class="this-call" beside={turn}>
      <div>
        <CallPicture {...drawn} box={BOX} words={words} />
      </div>
      <Lesson {...screen} />
      {gate && <p class="source">{words.guide.source(gate.source)}</p>}
    </JobScreen>
  );
};
