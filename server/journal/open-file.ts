import { chmodSync, existsSync, linkSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { start } from "../terminal.ts";
import { logAlone, whatIsWrong } from "./check-file.ts";
import { closeDatabase, openDatabase } from "./data-file.ts";
import type { Journal } from "./journal.ts";
import { sqliteJournal } from "./sqlite.ts";

const OWNER_ALONE = 0o600;

/** The data file cannot be used. The message is one sentence for a person; the file was not touched. */
export class JournalUnusable extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = "JournalUnusable";
  }
}

/**
 * Opens a data file, or makes it. An existing one is looked at before it is touched, so that one that cannot be used
 * stays as it is. Throws JournalUnusable and nothing else. One server at a time: the lock on the file is the kernel's
 * and goes with the process, however that ends.
 */
export function openJournal(file: string): Journal {
  try {
    const problem = existsSync(file) ? whatIsWrong(file) : make(file);
    if (problem) throw new JournalUnusable(problem);
    return sqliteJournal(file);
  } catch (error) {
    if (error instanceof JournalUnusable) throw error;
    const { code, message } = error as { code?: string; message: string };
    throw new JournalUnusable(code === "SQLITE_BUSY" ? start.inUse(file) : start.cannotOpen(file, reason(message)));
  }
}

/** Makes an empty data file whole or not at all: killed on the way, it leaves nothing at the path that would be refused later. */
function make(file: string): string | null {
  const log = logAlone(file);
  if (log) return start.logAlone(file, log);
  const folder = mkdtempSync(`${file}.new-`);
  try {
    const made = join(folder, "data");
    closeDatabase(openDatabase(made));
    // Names lie in it, and what lets people in.
    chmodSync(made, OWNER_ALONE);
    put(made, file);
    return null;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Gives a file its name. A link never replaces what another server put there meanwhile; some disks have no links. */
function put(made: string, file: string) {
  try {
    linkSync(made, file);
  } catch {
    if (!existsSync(file)) renameSync(made, file);
  }
}

/** What the system says, without its call and path: "EACCES: permission denied", "unable to open database file". */
const reason = (message: string) => (/^ConnectionFailed/.test(message) ? "unable to open it" : message.split(", ")[0]!);
