import { existsSync, realpathSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { inUse } from "../journal/check-file.ts";
import { restore } from "../terminal.ts";
import type { Terminal } from "../verify-records.ts";
import { type Aside, moveAside } from "./move-aside.ts";
import { move, syncToDisk } from "./place.ts";
import { Refused, sentenceOf } from "./refused.ts";
import { allHold, printJobs, printMade } from "./report.ts";
import { withCopy } from "./whole-copy.ts";

/**
 * Puts a copy of the one backup that `names` names in the place of the data file `file`. What was there is moved aside and never
 * lost. Prints a line for each job, one for the new file, and where the old one lies. 0 where it was done, 1 where a job in the
 * backup does not hold, 2 for all else, with one sentence why; then the old file is in its place.
 */
export function restoreFrom(names: readonly string[], file: string, terminal: Terminal): 0 | 1 | 2 {
  const [source, ...more] = names;
  if (!source || more.length > 0) {
    terminal.complain(restore.usage);
    return 2;
  }
  try {
    const place = existsSync(file) ? realpathSync(file) : file;
    refusePlace(place);
    return withCopy({ file: source, says: restore.source, spareBytes: 0 }, place, (copy) => {
      printJobs(copy, terminal);
      if (!allHold(copy)) {
        terminal.complain(restore.doesNotHold(source));
        return 1;
      }
      const aside = putInPlace(copy.file, place);
      printMade(copy, place, terminal);
      if (aside) terminal.print(restore.movedAside(aside.name));
      return 0;
    });
  } catch (error) {
    terminal.complain(sentenceOf(error, file, dirname(file)));
    return 2;
  }
}

function refusePlace(place: string) {
  if (!existsSync(place)) return;
  if (!statSync(place).isFile()) throw new Refused(restore.notAFile(place));
  if (inUse(place)) throw new Refused(restore.inUse(place));
}

/**
 * Asked again at the last moment, and once more of what was moved: a server may have started while the copy was made. Killed in
 * between, it leaves no data file there, and the old one aside; to restore again is enough then.
 */
function putInPlace(made: string, place: string): Aside | null {
  refusePlace(place);
  const aside = moveAside(place);
  try {
    if (aside && existsSync(aside.name) && inUse(aside.name)) throw new Refused(restore.inUse(place));
    move(made, place);
    syncToDisk(dirname(place), "folder");
    return aside;
  } catch (error) {
    if (aside) moveBack(aside, place);
    throw error;
  }
}

function moveBack(aside: Aside, place: string) {
  try {
    aside.moveBack();
  } catch {
    throw new Refused(restore.onlyMovedAside(place, aside.name));
  }
}
