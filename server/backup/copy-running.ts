import { closeSync, constants, copyFileSync, openSync, readSync, rmSync, statSync } from "node:fs";
import { LOGS } from "../journal/check-file.ts";
import { copying } from "../terminal.ts";
import { isCode, Refused } from "./refused.ts";

/** Shares the blocks where the disk can do that, which takes no time and no room. */
const clone = (from: string, to: string) => copyFileSync(from, to, constants.COPYFILE_FICLONE);

/** How often the server may restart its log while we copy: it does so every few hundred entries. */
const TRIES = 20;

/**
 * Copies a data file and its log as they are at one moment, while a server may be writing in them: it asks for no lock (the
 * server keeps all of them) and changes nothing, so that the server cannot notice.
 *
 * That rests on the order. Pages move from the log into the file, and stay in the log until it is restarted, under another
 * number at its head (SQLite's file format, section 4). The file is copied first, however torn, then the log: with the same
 * number before and after, each page that may have changed meanwhile is in the copied log, and SQLite reads it from there.
 * What was written to disk before the copy began is in it. Throws Refused where the log never stays, and what the system says.
 */
export function copyRunning(file: string, to: string, copy: (from: string, to: string) => void = clone): void {
  for (let tries = 0; tries < TRIES; tries++) {
    const before = momentOf(file);
    copy(file, to);
    for (const log of LOGS) copyLog(file + log, to + log, copy);
    if (momentOf(file) === before) return;
  }
  throw new Refused(copying.tooBusy(file));
}

/** A log comes and goes; one of an earlier try must not stay beside a file that has none any more. */
function copyLog(log: string, to: string, copy: (from: string, to: string) => void) {
  rmSync(to, { force: true });
  try {
    copy(log, to);
  } catch (error) {
    if (!isCode(error, "ENOENT")) throw error;
  }
}

/** What stays the same for as long as a copy that was begun is good. */
function momentOf(file: string): string {
  const { dev, ino, size, mtimeNs } = statSync(file, { bigint: true });
  const log = headOf(`${file}-wal`);
  // Nothing is in the log: then only the file itself can change, and that shows on it, or in its other log.
  return [dev, ino, ...(log === null ? [size, mtimeNs, lengthOf(`${file}-journal`)] : [log])].join(" ");
}

const LOG_HEAD_BYTES = 32;
/** The head of a log with its numbers, and which file it is; null where nothing was written in it yet. */
function headOf(log: string): string | null {
  const stat = statSync(log, { bigint: true, throwIfNoEntry: false });
  if (!stat || stat.size < LOG_HEAD_BYTES) return null;
  const bytes = Buffer.alloc(LOG_HEAD_BYTES);
  try {
    const fd = openSync(log, "r");
    try {
      readSync(fd, bytes, 0, LOG_HEAD_BYTES, 0);
    } finally {
      closeSync(fd);
    }
  } catch (error) {
    if (isCode(error, "ENOENT")) return null;
    throw error;
  }
  return `${stat.dev} ${stat.ino} ${bytes.toString("hex")}`;
}

const lengthOf = (log: string): number => statSync(log, { throwIfNoEntry: false })?.size ?? -1;
