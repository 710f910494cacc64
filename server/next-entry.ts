import { digest, type Hash } from "../machines/digest/digest.ts";
import type { Command, CommandSource, Intent } from "../machines/install/commands.ts";
import { decide } from "../machines/install/decide.ts";
import type { DeviceId, EntryNo, Instant, PersonId } from "../machines/install/ids.ts";
import { currentStep, type Job, stateDigest } from "../machines/install/job.ts";
import { type Clocks, momentAt } from "../machines/install/moment.ts";
import type { Frozen } from "../machines/install/step.ts";
import { type CommandEntry, type JobId, NO_ENTRY, type Opening } from "../machines/record/entry.ts";
import { commitmentsTo, type People } from "../machines/record/people.ts";
import type { Names } from "./journal/journal.ts";
import type { StoredPhoto } from "./journal/photos.ts";
import { type KeptJob, personOf } from "./live-job.ts";

/** What came in besides the command itself. `request` is the digest of the body, so that a repeat can be told from a reuse. */
export type Envelope = {
  readonly key: string;
  readonly seen: EntryNo;
  readonly as: PersonId;
  readonly device: DeviceId;
  readonly request: Hash;
};
/** What is asked of a job, how it was said, the names of people that it brings in, and the photo that it names. */
export type Asked = {
  readonly intent: Intent;
  readonly source: CommandSource;
  readonly heard: string | null;
  readonly names?: Names;
  readonly photo?: StoredPhoto;
};
/** All that a command is made from, besides the job, with the clocks as they stood then. */
export type Given = Asked & Envelope & { readonly clocks: Clocks; readonly people: People };

/** Digest of a request's body as it came, but for names: a digest gives away what few things it can be of, and names are to be erasable. */
export const requestDigest = (body: unknown): Hash => digest.of(withoutNames(body));

/** Without who says it, which stands in its entry as an id, and without what people of a crew are called. */
function withoutNames(value: unknown, isCrew = false): unknown {
  if (Array.isArray(value)) return value.map((one) => withoutNames(one, isCrew));
  if (typeof value !== "object" || value === null) return value;
  const isName = (field: string) => field === "as" || (isCrew && field === "name") || /^crew\.\d+\.name$/.test(field);
  const kept = Object.entries(value).filter(([field, inside]) => !isName(field) && inside !== undefined);
  return Object.fromEntries(kept.map(([field, inside]) => [field, withoutNames(inside, field === "crew")]));
}

type Next = { readonly entry: CommandEntry } & Pick<KeptJob, "job" | "from">;

/** What a command leads to: the next entry of the job, the job after it, and from when its time is counted on. */
export function nextEntry(kept: KeptJob, { intent, as: by, request, names: _names, photo: _photo, clocks, people, ...said }: Given): Next {
  const tip = kept.entries.at(-1)!;
  const moment = momentAt(kept.from, clocks);
  const command: Command = { ...intent, ...said, ...moment, by, role: personOf(kept, by).role, entry: tip.entry.no + 1 };
  const [job, outcome] = decide(kept.job, command);
  const entry: CommandEntry = {
    kind: "command",
    schema: 1,
    job: tip.entry.job,
    no: command.entry,
    prev: tip.hash,
    procedure: job.frozen.procedure,
    at: moment.at,
    wall: moment.wall,
    ...where(job),
    request,
    ...peopleIn("did" in outcome ? people : {}),
    command,
    outcome,
  };
  return { entry, job, from: { ...moment, doubtMs: 0, elapsedMs: clocks.elapsedMs } };
}

/** The first entry of a job: its own time begins with the wall clock. */
export const openingEntry = (
  id: JobId,
  opened: Frozen,
  job: Job,
  { key, request, at, people }: Pick<Given, "key" | "request" | "people"> & { readonly at: Instant },
): Opening => ({
  kind: "opening",
  schema: 1,
  job: id,
  no: 1,
  prev: NO_ENTRY,
  procedure: opened.procedure,
  at,
  wall: at,
  ...where(job),
  request,
  ...peopleIn(people),
  key,
  opened,
});

const peopleIn = (people: People) => (Object.keys(people).length === 0 ? {} : { people: commitmentsTo(people) });

function where(job: Job) {
  const step = currentStep(job);
  return { after: stateDigest(job), phase: step?.phase ?? "closed", step: step?.id ?? "closed" };
}
