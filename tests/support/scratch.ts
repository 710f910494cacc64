import { mkdtempSync, statfsSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const MEMORY = "/dev/shm";
const MIN_FREE_BYTES = 1024 ** 3;

/**
 * A new folder for the files of a test, in memory where the machine has room there: the journal flushes every entry, and what
 * tests look at survives a killed process there as well as on a disk. Whoever asks for it removes it.
 */
export const scratchFolder = (name: string): string => mkdtempSync(join(hasRoom(MEMORY) ? MEMORY : tmpdir(), `ridgecall-${name}-`));

function hasRoom(folder: string): boolean {
  try {
    const { bavail, bsize } = statfsSync(folder);
    return bavail * bsize >= MIN_FREE_BYTES;
  } catch {
    return false;
  }
}
