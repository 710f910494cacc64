import { copying } from "../terminal.ts";

/** A copy cannot be made, or not be put where it should go. The message is one sentence for a person. */
export class Refused extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = "Refused";
  }
}

/** Codes by which the system and SQLite say that a disk, or somebody's share of it, is full. */
const FULL = new Set(["ENOSPC", "EDQUOT", "SQLITE_FULL"]);

/** One sentence for whatever went wrong while `file` was made in `folder`. */
export function sentenceOf(error: unknown, file: string, folder: string): string {
  if (error instanceof Refused) return error.message;
  const { code } = error as { code?: string };
  return code !== undefined && FULL.has(code) ? copying.fullDisk(folder) : copying.notWritten(file, reasonOf(error));
}

/** What the system says, without its call and path: "EACCES: permission denied". */
export const reasonOf = (error: unknown): string => (error as Error).message.split(", ")[0]!;

/** Whether an error of the system has this code. */
export const isCode = (error: unknown, code: string): boolean => (error as { code?: unknown }).code === code;
