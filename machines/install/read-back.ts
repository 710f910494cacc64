import { own } from "../lookup/own.ts";
import type { Command } from "./commands.ts";
import type { DeviceId, EntryNo, Instant } from "./ids.ts";
import type { Job, ReadBack } from "./job.ts";
import { judge } from "./judge.ts";
import type { Outcome } from "./refusals.ts";

type Of<T extends Command["type"]> = Extract<Command, { type: T }>;

/** What waits for "correct" on a device at a moment, or null. */
export function pendingReadBack(job: Job, device: DeviceId, at: Instant): ReadBack | null {
  const waits = own(job.readBacks, device);
  return waits && at >= waits.at && at <= waits.at + job.frozen.limits.readBackS.is * 1000 ? waits : null;
}

/** Heard: what would be refused is refused at once, all else waits and counts for nothing. A second one takes the place of the first. */
export function stage(job: Job, command: Of<"readBack">): [Job, Outcome] {
  const { intent, entry, by, seen, at, device } = command;
  const [, outcome] = judge(job, asEffective(command, { entry, intent, by, seen, at }));
  if ("refused" in outcome) return [without(job, device), outcome];
  const readBack: Outcome = outcome.total ? { did: "readBack", total: outcome.total } : { did: "readBack" };
  return [{ ...job, readBacks: { ...job.readBacks, [device]: { entry, intent, by, seen, at } } }, readBack];
}

/** Confirmed by the same person on the same device in time: it counts now, as if it had been pressed when it was said. */
export function confirm(job: Job, command: Of<"correct">): [Job, Outcome] {
  const waits = findPending(job, command, command.target);
  if (!waits) return [job, { refused: [{ why: "noReadBack" }] }];
  return judge(without(job, command.device), asEffective(command, waits));
}

/** Not what was meant: it is dropped, and nothing has changed. */
export function discard(job: Job, command: Of<"wrong">): [Job, Outcome] {
  return findPending(job, command, command.target)
    ? [without(job, command.device), { did: "dropped" }]
    : [job, { refused: [{ why: "noReadBack" }] }];
}

function findPending(job: Job, { device, by, at }: Command, of: EntryNo): ReadBack | null {
  const waits = pendingReadBack(job, device, at);
  return waits && waits.entry === of && waits.by === by ? waits : null;
}

/** The command as it counts: what was asked then, said now, against the screen that was shown then. */
function asEffective({ key, source, heard, by, role, device, at, wall, doubtMs, entry }: Command, { intent, seen }: ReadBack): Command {
  return { ...intent, key, source, heard, by, role, device, at, wall, doubtMs, entry, seen };
}

function without(job: Job, device: DeviceId): Job {
  const { [device]: _, ...readBacks } = job.readBacks;
  return { ...job, readBacks };
}
