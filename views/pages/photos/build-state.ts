import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { questionAt, stepsIn } from "../../../machines/install/job.ts";
import { indexOf, type Question } from "../../../machines/install/script-index.ts";
import type { Frozen } from "../../../machines/install/step.ts";
import { lookupIn } from "../../../machines/record/entries.ts";
import { frozenAfter, frozenIn } from "../../../machines/record/in-force.ts";
import { isPhoto, type PhotoEntry } from "../../../machines/record/photos.ts";
import { sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import type { GateToShow, PhotoShown } from "./state.ts";

/** The photos of a job in the order of its record, each at its call as that was then. */
export function photosOf({ entries, names }: Pick<LiveJob, "entries" | "names">, words: Words): PhotoShown[] {
  const earlier = lookupIn(entries);
  const photos: PhotoShown[] = [];
  let frozenAt = 1;
  for (const { entry } of entries) {
    if (entry.kind === "opening") continue;
    if (isPhoto(entry)) photos.push(shownAs(entry, frozenIn(frozenAt, earlier), { names, words }));
    frozenAt = frozenAfter(frozenAt, entry);
  }
  return photos;
}

type Told = Pick<LiveJob, "names"> & { readonly words: Words };

function shownAs({ no, step, wall, command }: PhotoEntry, { brief, script }: Frozen, { names, words }: Told): PhotoShown {
  const { by, gate, text, hash, mime, bytes, widthPx, heightPx } = command;
  const call = stepsIn(script).byId.get(step);
  return {
    no,
    by: names[by] ?? by,
    time: words.when.dayAndClock(brief.zone, wall),
    utc: new Date(wall).toISOString(),
    call: call ? sayText(call, words) : words.guide.closed,
    gate,
    of: questionSaid(gate === null ? undefined : indexOf(script).questions.get(gate), words),
    text,
    hash,
    mime,
    bytes,
    widthPx,
    heightPx,
  };
}

const questionSaid = (question: Question | undefined, words: Words): string | null => (question ? sayText(question, words) : null);

/** So many gates that were answered are offered: whoever answers first and takes the photo then finds it again. */
const MAX_ANSWERED = 20;

/** The gates that a photo may be of: the one that is asked now, then those that were answered, the last one first. */
export function gatesToShow({ job, now }: Pick<LiveJob, "job" | "now">, words: Words): GateToShow[] {
  const { questions } = indexOf(job.frozen.script);
  const asked = questionAt(job, now.at)?.gate.id;
  const answered = Object.values(job.snapshot.context.answers)
    .sort((a, b) => b.entry - a.entry)
    .map(({ gate }) => gate)
    .filter((gate) => gate !== asked)
    .slice(0, MAX_ANSWERED);
  return [...(asked === undefined ? [] : [asked]), ...answered].flatMap((id) => {
    const question = questions.get(id);
    return question ? [{ id, say: sayText(question, words) }] : [];
  });
}

/** The gate that is asked now, as a photo is most likely of it; none where nothing is asked. */
export const gateNow = ({ job, now }: Pick<LiveJob, "job" | "now">): string => questionAt(job, now.at)?.gate.id ?? "";
