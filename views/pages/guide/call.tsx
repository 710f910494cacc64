import { isCumulative } from "../../../machines/install/checks/any-check.ts";
import { CallPicture } from "../../drawing/call/call-picture.tsx";
import { nameOf } from "../../drawing/call/drawn.ts";
import { Hurt } from "../../parts/hurt.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";
import { Lesson } from "../call/lesson.tsx";
import { answerKind, hasPad } from "./answers/answer-kind.ts";
import { askedNow } from "./asked.ts";
import { SaidBack } from "./read-back.tsx";
import type { GateState } from "./state.ts";

/** From how many letters on a call is set smaller, so that it stands whole beside what answers it. */
const SIZES = [
  ["short", 100],
  ["medium", 150],
  ["long", Number.POSITIVE_INFINITY],
] as const;

/** The call that is on now, as large as there is room: what keeps it up, what is said, what is asked. */
export const Call = (screen: Screen) => {
  const { guide, words } = screen;
  const { weather } = guide;
  const lines = guide.hurt ? [] : alarmsOf(screen);
  const asks = asksOf(screen);
  const stop = weather.is === "stop" ? weather.words : "";
  const letters = [stop, ...lines.map(([, line]) => line), guide.call?.say, ...asks.map(({ text }) => text)].join("").length;
  return (
    <article
      id={regions.call}
      class={`call call-${SIZES.find(([, most]) => letters <= most)![0]}${hasPad(screen) ? " tight" : ""}`}
      data-revision={guide.revision}
      data-entry={guide.entry}
      data-step={guide.step}
      data-unrecorded={guide.held?.unrecorded ? guide.held.by : undefined}
    >
      <Drawing {...screen} />
      {guide.hurt && <Hurt hurt={guide.hurt} words={words} />}
      {stop !== "" && <p class="alarm stop">{stop}</p>}
      {lines.map(([is, line]) => (
        <p class={is}>{line}</p>
      ))}
      <SaidBack {...screen} />
      {guide.rehearsal && guide.call && (
        <section class="lesson-box" aria-label={words.guide.why} tabindex={0}>
          <Lesson {...screen} />
        </section>
      )}
      <h1 id={regions.said}>{guide.call?.say ?? words.guide.closed}</h1>
      {guide.gate && asks.length > 0 && (
        <section id={regions.asked} class={`gate gate-${guide.gate.status}`} aria-label={guide.gate.ask}>
          {asks.map(({ is, text }) => (
            <p class={is}>{text}</p>
          ))}
        </section>
      )}
      {guide.gate === null && guide.missing !== null && <p class="missing">{guide.missing}</p>}
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
function alarmsOf({ guide, words: { guide: text } }: Screen): ["alarm" | "warning", string][] {
  const { held, proposed } = guide;
  const alarms = [
    guide.readOnly,
    held && (held.only === "paused" ? text.pausedBy(held.by) : text.heldBy(held.by)),
    held?.unrecorded ? text.unrecorded(held.unrecorded) : null,
    ...guide.outOfUse.map(({ line }) => line),
    proposed && text.proposed(proposed.by, proposed.because),
  ];
  const told = (is: "alarm" | "warning", lines: readonly (string | null)[]) =>
    lines.flatMap((line): [typeof is, string][] => (line === null ? [] : [[is, line]]));
  return [...told("alarm", alarms), ...told("warning", [guide.warning, guide.clock])];
}

type Line = { readonly is: "again" | "ask" | "item" | "place" | "limit" | "missing" | "standing" | "shown"; readonly text: string };
const line = (is: Line["is"], text: string | null | false): Line[] => (text ? [{ is, text }] : []);

/** What is asked: the question, and which of a list now; once it was answered and is not good, what is wrong with it and what to do. */
function asksOf(screen: Screen): Line[] {
  const { guide, words } = screen;
  const { gate } = guide;
  if (!gate || guide.hurt || guide.readBack) return [];
  const { guide: text } = words;
  const head = [
    ...line("again", gate.because && text.askedAgain(gate.because)),
    ...line("again", gate.asked === "before" && text.askedBefore),
  ];
  // A pad leaves no room for the drawing.
  const place = line("place", guide.step === gate.id && hasPad(screen) && (guide.call?.place ?? false));
  const notBy = line("limit", gate.notBy && text.notBy(gate.notBy));
  const ask = line("ask", gate.ask !== guide.call?.say && gate.ask);
  if (gate.shown) return [...head, ...line("shown", gate.value), ...line("shown", text.shownBy(gate.shown.name))];
  if (gate.status === "open")
    return [
      ...head,
      ...place,
      ...ask,
      ...itemLine(screen, gate),
      ...line("limit", !isCumulative(gate.check) && text.wanted(gate.limit)),
      ...notBy,
    ];
  if (gate.status !== "good" && gate.status !== "waived")
    return [...head, ...place, ...line("missing", guide.missing ?? gate.ifNot), ...itemLine(screen, gate), ...notBy];
  if (answerKind(screen) === "gate") return [...ask, ...itemLine(screen, gate)];
  return line("standing", gate.value === null ? gate.statusWords : text.given(gate.value, gate.statusWords));
}

/** Which of a list is put in now: "2 of 6: A to B, 100 ft". */
function itemLine({ words, pick }: Screen, gate: GateState): Line[] {
  const { item, no, of, settled } = askedNow(gate, pick, words);
  if (item === null || settled) return [];
  return line("item", words.guide.itemNow(no, of, item.given === null ? item.ask : words.guide.given(item.ask, item.given)));
}
