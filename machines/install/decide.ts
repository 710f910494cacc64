import type { Command } from "./commands.ts";
import type { Job } from "./job.ts";
import { judge } from "./judge.ts";
import { confirm, discard, stage } from "./read-back.ts";
import type { Outcome } from "./refusals.ts";
import { transition } from "./transition.ts";

/**
 * One command, exactly one outcome; with it the job as it stands afterward. The clock goes first. Replay runs the same
 * lines. Throws where the chart did not answer exactly once: that is a mistake in the chart, never in the command.
 */
export function decide(job: Job, command: Command): [Job, Outcome] {
  const { at, wall, doubtMs } = command;
  const [snapshot] = transition(job.machine, job.snapshot, { type: "clock", at, wall, doubtMs });
  const now: Job = { ...job, snapshot };
  switch (command.type) {
    case "readBack":
      return stage(now, command);
    case "correct":
      return confirm(now, command);
    case "wrong":
      return discard(now, command);
    default:
      return judge(now, command);
  }
}
