import { CallPicture } from "../../drawing/call/call-picture.tsx";
import { nameOf } from "../../drawing/call/drawn.ts";
import { Hurt } from "../../parts/hurt.tsx";
import { Lightning } from "../../parts/lightning.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";
import { Lesson } from "../call/lesson.tsx";
import { answerKind, hasPad } from "./answers/answer-kind.ts";
import { asksOf, saidOf } from "./asks.ts";
import { SaidBack } from "./read-back.tsx";
import { Site } from "./site.tsx";
import { StopFirst, stopsFirst } from "./stop-first.tsx";
import { isUnfolded } from "./trainee.ts";
import { ClearBy, ReadingDue, WatchLevels } from "./watch.tsx";

/** From how many letters on a call is set smaller, so that it stands whole beside what answers it. */
const SIZES = [
  ["short", 100],
  ["medium", 150],
  ["long", Number.POSITIVE_INFINITY],
] as const;

/** Beside more signs of a rehearsal than this, the why of a call is folded: on a phone it would push what answers the call out of sight. */
const MAX_SIGNS_BESIDE_WHY = 1;

/** The call that is on now, as large as there is room: what keeps it up, what is said, what is asked. */
export const Call = (screen: Screen) => {
  const { guide, words } = screen;
  const { stop } = guide.weather;
  const first = stopsFirst(screen);
  const answering = answerKind(screen) === "gate";
  const lines = guide.hurt ? [] : alarmsOf(screen);
  const { over, say, under } = saidOf(screen);
  const asks = asksOf(screen);
  const texts = [...lines.map(([, line]) => line), say, ...[...over, ...under, ...asks].map(({ text }) => text)];
  const size = SIZES.find(([, most]) => texts.join("").length <= most)![0];
  return (
    <article
      id={regions.call}
      class={`call call-${first ? "stopped" : size}${first && answering ? " call-answering" : ""}${hasPad(screen) ? " tight" : ""}`}
      data-revision={guide.revision}
      data-entry={guide.entry}
      data-step={guide.step}
      data-unrecorded={guide.held?.unrecorded ? guide.held.by : undefined}
    >
      <Drawing {...screen} />
      <ReadingDue {...screen} />
      {guide.hurt && <Hurt hurt={guide.hurt} words={words} />}
      {first ? <StopFirst stop={first} lightning={guide.weather.lightning} words={words} /> : stop && <p class="alarm stop">{stop.why}</p>}
      {guide.weather.lightning && !guide.hurt && <Lightning facts={guide.weather.lightning} words={words} />}
      {lines.map(([is, line]) => (
        <p class={is}>{line}</p>
      ))}
      {lines.length > 0 && hasPad(screen) && guide.weather.skyBrief !== null && <p class="warning sky-brief">{guide.weather.skyBrief}</p>}
      {guide.proposed && !guide.hurt && answerKind(screen) !== "agree" && <p class="alarm waits">{words.guide.waits}</p>}
      <SaidBack {...screen} />
      <Site {...screen} />
      {isUnfolded(screen) && guide.call && (guide.site?.signs.length ?? 0) <= MAX_SIGNS_BESIDE_WHY && (
        <section class="lesson-box" aria-label={words.guide.why} tabindex={0}>
          <Lesson {...screen} />
        </section>
      )}
      {over.map(({ is, text }) => (
        <p class={is}>{text}</p>
      ))}
      <h1 id={regions.said}>{say}</h1>
      {guide.gate && asks.length > 0 && (
        <section id={regions.asked} class={`gate gate-${guide.gate.status}`} aria-label={guide.gate.ask}>
          {asks.map(({ is, text }) => (
            <p class={is}>{text}</p>
          ))}
        </section>
      )}
      {guide.gate === null && guide.missing !== null && <p class="missing">{guide.missing}</p>}
      {under.map(({ is, text }) => (
        <p class={is}>{text}</p>
      ))}
      <ClearBy {...screen} />
      <WatchLevels {...screen} />
    </article>
  );
};

/** The tent with what this call is about: where there is room, and else behind a press on the strip. A press shows it large. */
const Drawing = ({ guide, drawn, words }: Screen) =>
  guide.hurt || guide.readBack ? null : (
    <div class="drawing" data-drawn={nameOf(drawn)}>
      <a href={`/jobs/${guide.job}/picture`}>
        <CallPicture {...drawn} words={words} />
      </a>
    </div>
  );

/** What everybody has to know before the call, the graver first. */
function alarmsOf(screen: Screen): ["alarm" | "warning" | "warning sky", string][] {
  const { guide } = screen;
  const { guide: text } = screen.words;
  const { held } = guide;
  const alarms = [
    guide.readOnly,
    held && (held.only === "paused" ? text.pausedBy(held.by) : text.heldBy(held.by)),
    held?.unrecorded ? text.unrecorded(held.unrecorded) : null,
    ...guide.outOfUse.map(({ line }) => line),
  ];
  const told = (is: "alarm" | "warning" | "warning sky", lines: readonly (string | null)[]) =>
    lines.flatMap((line): [typeof is, string][] => (line === null ? [] : [[is, line]]));
  return [...told("alarm", alarms), ...told("warning", [guide.warning, guide.clock]), ...told("warning sky", guide.weather.sky)];
}
