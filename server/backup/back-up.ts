import { dirname, resolve } from "node:path";
import { LOGS, logAlone } from "../journal/check-file.ts";
import { MIN_FREE_BYTES } from "../journal/watch-file.ts";
import { backup } from "../terminal.ts";
import type { Terminal } from "../verify-records.ts";
import { isTaken, move, syncToDisk } from "./place.ts";
import { isCode, Refused, sentenceOf } from "./refused.ts";
import { allHold, printJobs, printMade } from "./report.ts";
import { withCopy } from "./whole-copy.ts";

/**
 * Copies the data file `file` to the one file that `names` names, while a server may write in it: whole, or nothing is there.
 * Prints a line for each job, and one for the copy. 0 where all jobs hold, 1 where one does not (it is copied all the same),
 * 2 where no copy was made, with one sentence why.
 */
export function backUp(names: readonly string[], file: string, terminal: Terminal): 0 | 1 | 2 {
  const [target, ...more] = names;
  if (!target || more.length > 0) {
    terminal.complain(backup.usage);
    return 2;
  }
  try {
    refuseTarget(target, file);
    return withCopy({ file, says: backup.source, spareBytes: MIN_FREE_BYTES }, target, (copy) => {
      put(copy.file, target);
      printJobs(copy, terminal);
      printMade(copy, target, terminal);
      if (allHold(copy)) return 0;
      terminal.complain(backup.doesNotHold(target));
      return 1;
    });
  } catch (error) {
    terminal.complain(sentenceOf(error, target, dirname(target)));
    return 2;
  }
}

/** Neither over anything that is there, nor under a name by which SQLite would take it for a log, or a log for its own. */
function refuseTarget(target: string, file: string) {
  if (isTaken(target)) throw new Refused(backup.taken(target));
  if (LOGS.some((log) => resolve(file + log) === resolve(target))) throw new Refused(backup.partOf(target, file));
  const log = logAlone(target);
  if (log) throw new Refused(backup.partOf(log, target));
}

function put(made: string, target: string) {
  try {
    move(made, target);
    syncToDisk(dirname(target), "folder");
  } catch (error) {
    throw isCode(error, "EEXIST") ? new Refused(backup.taken(target)) : error;
  }
}
