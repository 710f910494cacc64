import type { Child } from "hono/jsx";
import { Page } from "../../parts/page.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";
import { AsideQuestion } from "../learn/aside.tsx";
import { Answers } from "./answers/answers.tsx";
import { Call } from "./call.tsx";
import { Desk } from "./desk.tsx";
import { Row } from "./row.tsx";
import { Strip } from "./strip.tsx";
import { isTrainee } from "./trainee.ts";

/** How the last thing said on this screen went, for its buzz and its voice; `no` tells one from the next. */
export type Cue = { readonly went: string; readonly heard: string | null; readonly no: string };
type Shown = Screen & { readonly notice: string | null; readonly cue?: Cue };

/** What was said before, above the call: scrolled up to. */
const Earlier = ({ guide, words: { guide: text } }: Screen) => (
  <ol id={regions.thread} class="earlier" aria-label={text.earlier}>
    {guide.thread.map((line) => (
      <li class={line.refused ? "refused" : "done"}>
        <span class="who">{`${line.time} ${line.spoken ? text.heardOn(line.who) : line.who}`}</span>{" "}
        {line.to !== null && <span>{line.to}</span>} <b>{line.spoken ? text.quoted(line.said) : line.said}</b>{" "}
        <span>{line.refused ? text.refused(line.reply) : line.reply}</span>
      </li>
    ))}
  </ol>
);

/** What the guide said to this screen's last press; other screens' presses leave it alone. */
const Notice = (screen: Shown) => (
  <p id={regions.notice} class="notice" role="status">
    <Reply {...screen} />
  </p>
);

/** What the call says already is said aloud, and not shown twice. */
const Reply = ({ notice, guide: { hurt, missing, readBack, weather }, words }: Shown) => {
  const isToldBySky = weather.skyBrief !== null && notice === words.didText("read");
  const told = hurt || readBack || notice === missing ? "said-above" : isToldBySky ? "told-above" : undefined;
  return notice && <span class={told}>{notice}</span>;
};

/** The words that this screen's phone was heard to say. */
const Caption = ({ cue, words }: Pick<Shown, "cue" | "words">) => (
  <p id={regions.heard} class="heard" data-reply={cue?.no ?? ""} data-went={cue?.went ?? ""}>
    {cue?.heard ? words.guide.heard(cue.heard) : ""}
  </p>
);

const Partial = ({ of, children }: { of: string; children: Child }) => (
  <hx-partial hx-target={`#${of}`} hx-swap="outerMorph">
    {children}
  </hx-partial>
);

/**
 * What a press is answered with and what the stream sends: a partial for each region. The call comes last: once it shows, what
 * answers it is there.
 */
export const Live = (screen: Shown) => (
  <>
    <Partial of={regions.answers}>
      <Answers {...screen} />
    </Partial>
    <Partial of={regions.dock}>
      <Row {...screen} />
    </Partial>
    <Partial of={regions.strip}>
      <Strip {...screen} />
    </Partial>
    <Partial of={regions.thread}>
      <Earlier {...screen} />
    </Partial>
    {screen.cue && (
      <Partial of={regions.heard}>
        <Caption {...screen} />
      </Partial>
    )}
    {screen.notice !== null && (
      <hx-partial hx-target={`#${regions.notice}`} hx-swap="innerHTML">
        <Reply {...screen} />
      </hx-partial>
    )}
    {isTrainee(screen) && (
      <Partial of={regions.aside}>
        <AsideQuestion screen={screen} aside={screen.aside ?? null} />
      </Partial>
    )}
    <Partial of={regions.call}>
      <Call {...screen} />
    </Partial>
  </>
);

/**
 * The guide: a strip, what is said and asked with what answers it, and the row with Hold. Only the middle scrolls, where a
 * screen is too small for all of it: nothing ever lies over anything.
 */
export const GuidePage = (screen: Shown) => (
  <Page
    words={screen.words}
    title={screen.guide.title}
    where={{ on: "guide", job: { id: screen.guide.job, title: screen.guide.title } }}
    styles="guide"
  >
    <div class="guide">
      <Strip {...screen} />
      <main class="middle" tabindex={0}>
        <div class="talked">
          <Earlier {...screen} />
          <div class="stage">
            <Call {...screen} />
            <p id={regions.earStatus} class="ear" role="status"></p>
            <Caption {...screen} />
            <Notice {...screen} />
            <Answers {...screen} />
            {isTrainee(screen) && <AsideQuestion screen={screen} aside={screen.aside ?? null} />}
          </div>
        </div>
      </main>
      <Row {...screen} />
      <Desk {...screen} />
      {[regions.ear, regions.alarm].map((id) => (
        <form id={id} method="post" action={`/jobs/${screen.guide.job}/say`} hx-sync="this:queue all" hidden>
          <input type="hidden" name="as" value={screen.me ?? ""} />
        </form>
      ))}
      <div
        id={regions.live}
        hx-sse:connect={`/jobs/${screen.guide.job}/live${screen.pick ? `?pick=${encodeURIComponent(screen.pick)}` : ""}`}
        hx-trigger="load, every 5s"
        hx-sync="this:drop"
        hx-swap="none"
      ></div>
    </div>
  </Page>
);
