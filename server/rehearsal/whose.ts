import type { Intent } from "../../machines/install/commands.ts";
import type { DeviceId, PersonId } from "../../machines/install/ids.ts";
import type { Entries } from "../../machines/record/entries.ts";
import { isPlayed } from "../../machines/rehearsal/scene.ts";
import { Problem } from "../input/problem.ts";
import type { Rehearsed } from "../journal/learning.ts";
import type { KeptJob } from "../live-job.ts";

type Said = { readonly as: PersonId; readonly device: DeviceId; readonly intent: Intent };

/** What holds a rehearsal too, from whichever phone and whoever says it. */
const HOLDS: ReadonlySet<Intent["type"]> = new Set(["hold", "pause", "hurt"]);

/** Throws a Problem where something is said to a rehearsal that is over, from a second phone, or for somebody who is played. */
export function checkRehearsal({ job, entries, names }: KeptJob, { as, device, intent }: Said, row: Rehearsed | null): void {
  if (!job.frozen.brief.practice || HOLDS.has(intent.type)) return;
  if (row?.over) throw new Problem(409, (w) => w.rehearsal.over);
  const asked = intent.type === "readBack" ? intent.intent : intent;
  if (asked.type === "amend" || asked.type === "found") throw new Problem(409, (w) => w.rehearsal.planFixed);
  const lead = job.frozen.brief.crew.find(({ role }) => role === "lead")!;
  if (as !== lead.id) throw new Problem(403, (w) => w.rehearsal.playsThemselves(names[as] ?? as));
  const first = firstDevice(entries);
  if (first !== null && first !== device) throw new Problem(409, (w) => w.rehearsal.otherPhone);
}

/** The phone that a rehearsal is led on; `null` before anything was said. */
function firstDevice(entries: Entries): DeviceId | null {
  for (const { entry } of entries)
    if (entry.kind === "command" && !isPlayed(entry.command) && !HOLDS.has(entry.command.type)) return entry.command.device;
  return null;
}
