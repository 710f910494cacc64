import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Intent, Reading } from "../../machines/install/commands.ts";
import type { PersonId } from "../../machines/install/ids.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import { instantAt } from "../../machines/install/wall-time.ts";
import type { Words } from "../../views/text/words.ts";
import { readAmendment } from "./amendment.ts";
import { readFound } from "./found.ts";
import { handOverIntent } from "./hand-over.ts";
import { refuseOwnPaper } from "./own-paper.ts";
import { gustByLook, thunderReading, warningReading, windReading } from "./reading.ts";
import { type Press, toGateUnit } from "./say.ts";

/** A press, or a script's command: what it asks for, and the people that it names for the first time. */
export type Pressed = { readonly by: "press"; readonly intent: Intent; readonly names: Readonly<Record<PersonId, string>> | null };

type ReadingPress = Exclude<Extract<Press, { type: "reading" }>, { kind: "noThunder" }>;
function readingOf(press: ReadingPress, { now: { at }, job }: LiveJob): Reading {
  switch (press.kind) {
    case "wind":
      return windReading({ ...press, takenAt: press.takenAt === null ? at : instantAt(Date.parse(press.takenAt), job.snapshot.context) });
    case "windByLook":
      return windReading({
        ...press,
        gustMph: gustByLook(press.look, press.gustMph, job.snapshot.context),
        place: null,
        takenAt: at,
      });
    case "heat":
      return { kind: "heat", airF: press.airF, humidity: press.humidity, sun: press.sun, takenAt: at };
    case "cold":
      return { kind: "cold", airF: press.airF, windMph: press.windMph, takenAt: at };
    case "thunder":
      return thunderReading(press, at);
    case "warning":
      return warningReading(press, at);
    case "rain":
      return { kind: "rain", takenAt: at };
  }
}

/** What a press asks of a job as it is now. Throws a Problem where a unit or a brief cannot be read. */
export function readIntent(press: Press, live: LiveJob, words: Words): Pressed {
  const { at } = live.now;
  const only = (intent: Intent): Pressed => ({ by: "press", intent, names: null });
  switch (press.type) {
    case "answer": {
      const gate = indexOf(live.job.frozen.script).gates.get(press.gate) ?? null;
      const value = toGateUnit(press.value, gate);
      refuseOwnPaper(value, live.names);
      return only({ ...press, value });
    }
    case "reading": {
      if (press.kind === "noThunder") return only({ type: "reading", reading: { kind: "noThunder", takenAt: at, because: press.because } });
      return only({ type: "reading", reading: readingOf(press, live) });
    }
    case "amend": {
      const { frozen, names } = readAmendment(live, press.brief);
      return { by: "press", intent: { type: "amend", because: press.because, to: frozen }, names };
    }
    case "found":
      return only(readFound(live.job.frozen, press.what));
    case "handOver":
      return only(handOverIntent(live, press.to, words));
    default:
      return only(press);
  }
}
