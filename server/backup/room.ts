import { statSync } from "node:fs";
import { freeBytesIn } from "../journal/watch-file.ts";
import { copying } from "../terminal.ts";
import { Refused } from "./refused.ts";

/**
 * Refuses where a folder is missing, or its disk has no room for a copy of a data file. The log is counted twice: it is copied,
 * and what it holds moves into the copy. `spareBytes` must stay free besides where the file lies on the same disk.
 */
export function refuseWithoutRoom(folder: string, file: string, spareBytes: number): void {
  const place = statSync(folder, { throwIfNoEntry: false });
  if (!place?.isDirectory()) throw new Refused(copying.folderMissing(folder));
  const lengthOf = (part: string) => statSync(part, { throwIfNoEntry: false })?.size ?? 0;
  const needsBytes = lengthOf(file) + 2 * lengthOf(`${file}-wal`) + (statSync(file).dev === place.dev ? spareBytes : 0);
  const freeBytes = freeBytesIn(folder);
  if (freeBytes !== null && freeBytes < needsBytes) throw new Refused(copying.noRoom(folder, needsBytes, freeBytes));
}
