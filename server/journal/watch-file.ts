import { statfsSync, statSync } from "node:fs";
import { dirname } from "node:path";
import type { Loss } from "../../machines/record/storage.ts";
import type { Condition } from "./journal.ts";

/**
 * Room below which people are warned, in bytes: 64 MiB. A raise of a large tent writes a few MiB, and the log beside the
 * data file some more before it is moved into it, so this is days of work. Our own margin, no source.
 */
export const MIN_FREE_BYTES = 64 * 1024 * 1024;

export type FileWatch = {
  /** What became of the file; `null` while it is there. Once it is lost it stays so: what is put there later is another file. */
  readonly look: () => Loss | null;
  readonly condition: () => Condition;
};
/** A database in memory has no file that could be lost, and no disk that could be full. */
export const NO_FILE: FileWatch = { look: () => null, condition: () => ({ is: "sound" }) };

/**
 * Watches a data file and its log by their names, while they are open: each must stay the same file, and never get shorter.
 * Only asks the folder about them: to open and close either here would let go of the locks that SQLite holds (POSIX).
 */
export function watchFile(file: string, freeIn: (folder: string) => number | null = freeBytesIn): FileWatch {
  const known = new Map<string, { readonly dev: number; readonly ino: number; readonly size: number }>();
  let lost: Loss | null = null;

  const lossOf = (part: string): Loss | null => {
    const was = known.get(part);
    const is = statSync(part, { throwIfNoEntry: false });
    if (!is) return was ? "deleted" : null;
    if (was && (is.dev !== was.dev || is.ino !== was.ino)) return "replaced";
    if (was && is.size < was.size) return "cutShort";
    known.set(part, { dev: is.dev, ino: is.ino, size: is.size });
    return null;
  };
  const look = (): Loss | null => {
    lost ??= lossOf(file) ?? lossOf(`${file}-wal`);
    return lost;
  };
  const condition = (): Condition => {
    const how = look();
    if (how) return { is: "lost", place: file, how };
    const freeBytes = freeIn(dirname(file));
    return freeBytes !== null && freeBytes < MIN_FREE_BYTES ? { is: "low", place: dirname(file), freeBytes } : { is: "sound" };
  };
  look();
  return { look, condition };
}

/** Bytes that we may still write in a folder; `null` where the system does not say. */
export function freeBytesIn(folder: string): number | null {
  try {
    const { blocks, bavail, bsize } = statfsSync(folder);
    // One that has no blocks at all does not count them.
    return blocks === 0 ? null : bavail * bsize;
  } catch {
    return null;
  }
}
