import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Intent } from "../../machines/install/commands.ts";
import type { Instant, PersonId } from "../../machines/install/ids.ts";
import { currentStep } from "../../machines/install/job.ts";
import { readAmendment } from "./amendment.ts";
import { type Press, toGateUnit } from "./say.ts";

/** A press, or a script's command: what it asks for, and the people that it names for the first time. */
export type Pressed = { readonly by: "press"; readonly intent: Intent; readonly names: Readonly<Record<PersonId, string>> | null };

/** What a press asks of a job at a moment. Throws a Problem where a unit or a brief cannot be read. */
export function readIntent(press: Press, live: LiveJob, at: Instant): Pressed {
  const only = (intent: Intent): Pressed => ({ by: "press", intent, names: null });
  switch (press.type) {
    case "answer": {
      const gate = currentStep(live.job)?.gate ?? null;
      return only({ ...press, value: toGateUnit(press.value, gate?.id === press.gate ? gate : null) });
    }
    case "reading": {
      if (press.kind === "thunder") return only({ type: "reading", reading: { kind: "thunder", takenAt: at } });
      const { mph, gustMph, place, takenAt } = press;
      return only({
        type: "reading",
        reading: { kind: "wind", mph, gustMph, takenAt: takenAt === null ? at : Date.parse(takenAt), place },
      });
    }
    case "amend": {
      const { frozen, names } = readAmendment(live, press.brief);
      return { by: "press", intent: { type: "amend", because: press.because, to: frozen }, names };
    }
    default:
      return only(press);
  }
}
