import { closeSync, fsyncSync, linkSync, lstatSync, openSync, renameSync, rmSync } from "node:fs";
import { isCode } from "./refused.ts";

/** Whether anything at all has this name, be it a link that leads nowhere. */
export const isTaken = (name: string): boolean => lstatSync(name, { throwIfNoEntry: false }) !== undefined;

/**
 * Gives a file another name on the same disk, at once; for good once its folder is synced. Never replaces what has that name:
 * throws EEXIST, and what else the system says.
 */
export function move(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    // Some disks have no links.
    if (isCode(error, "EEXIST") || isTaken(to)) throw error;
    renameSync(from, to);
  }
  rmSync(from, { force: true });
}

/** Waits until a file, or the names in a folder, are on disk. Some systems know no such thing for a folder. */
export function syncToDisk(name: string, kind: "file" | "folder" = "file"): void {
  let fd: number | null = null;
  try {
    fd = openSync(name, kind === "file" ? "r+" : "r");
    fsyncSync(fd);
  } catch (error) {
    if (kind === "file") throw error;
  } finally {
    if (fd !== null) closeSync(fd);
  }
}
