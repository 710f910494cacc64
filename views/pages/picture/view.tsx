import { CallPicture } from "../../drawing/call/call-picture.tsx";
import { JobScreen } from "../../parts/job-screen.tsx";
import type { Screen } from "../../parts/say-form.tsx";

/** What a title and the dock leave of a phone. */
const BOX = { widePx: 328, highPx: 450 } as const;

/** The tent with what the call is about, as large as the screen; a press turns it to how one stands. */
export const PicturePage = (screen: Screen) => {
  const { drawn, guide, words } = screen;
  const beside = [
    { to: `picture?turned=${(drawn.quarters + 1) % 4}`, text: words.guide.turn },
    { to: "call", text: words.guide.whyHow },
  ];
  return (
    <JobScreen screen={screen} title={guide.call?.say ?? words.guide.closed} class="whole-drawing" beside={beside}>
      <div>
        <CallPicture {...drawn} box={BOX} words={words} />
      </div>
    </JobScreen>
  );
};
