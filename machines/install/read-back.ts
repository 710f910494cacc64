import type { Command } from "./commands.ts";
import type { DeviceId, EntryNo, Instant } from "./ids.ts";
import type { Job, ReadBack } from "./job.ts";
import { judge } from "./judge.ts";
import type { Outcome } from "./refusals.ts";

/** How long a "correct" counts after what it confirms was read back, in s: long enough to hear it out and answer. Common practice, no source. */
export const READ_BACK_S = 20;

type Of<T extends Command["type"]> = Extract<Command, { type: T }>;

/** What waits for "correct" on a device at a moment, or null. */
export function waiting(job: Job, device: DeviceId, at: Instant): ReadBack | null {
  const waits = job.readBacks[device];
  return waits && at >= waits.at && at <= waits.at + READ_BACK_S * 1000 ? waits : null;
}

/** Heard: what would be refused is refused at once, all else waits and counts for nothing. A second one takes the place of the first. */
export function saidBack(job: Job, command: Of<"readBack">): [Job, Outcome] {
  const { ask, entry, by, seen, at, device } = command;
  const [, outcome] = judge(job, counted(command, { entry, ask, by, seen, at }));
  if ("refused" in outcome) return [without(job, device), outcome];
  return [{ ...job, readBacks: { ...job.readBacks, [device]: { entry, ask, by, seen, at } } }, { did: "readBack" }];
}

/** Confirmed by the same person on the same device in time: it counts now, as if it had been pressed when it was said. */
export function confirmed(job: Job, command: Of<"correct">): [Job, Outcome] {
  const waits = named(job, command, command.of);
  if (!waits) return [job, { refused: [{ why: "noReadBack" }] }];
  return judge(without(job, command.device), counted(command, waits));
}

/** Not what was meant: it is dropped, and nothing has changed. */
export function dropped(job: Job, command: Of<"wrong">): [Job, Outcome] {
  return named(job, command, command.of) ? [without(job, command.device), { did: "dropped" }] : [job, { refused: [{ why: "noReadBack" }] }];
}

function named(job: Job, { device, by, at }: Command, of: EntryNo): ReadBack | null {
  const waits = waiting(job, device, at);
  return waits && waits.entry === of && waits.by === by ? waits : null;
}

/** The command as it counts: what was asked then, said now, against the screen that was shown then. */
function counted({ key, source, heard, by, role, device, at, entry }: Command, { ask, seen }: ReadBack): Command {
  return { ...ask, key, source, heard, by, role, device, at, entry, seen };
}

function without(job: Job, device: DeviceId): Job {
  const { [device]: _, ...readBacks } = job.readBacks;
  return { ...job, readBacks };
}
