import type { Command, EntryNo } from "../install/commands.ts";
import type { Entry, Said, Sealed } from "./entry.ts";

/** Finds an entry of the same job by its number; nothing where there is none. */
export type Earlier = (no: EntryNo) => Entry | null | undefined;

/**
 * An entry's command as it counts: a "correct" counts as what it confirms, named by its entry; all else as itself. `entries`
 * are the job's, from the first.
 */
export function countedAs(said: Said, entries: readonly Sealed[]): Command {
  return countedBy(said, (no) => entries[no - 1]?.entry);
}

/** The same where earlier entries are looked up one by one. */
export function countedBy({ command }: Said, earlier: Earlier): Command {
  if (command.type !== "correct") return command;
  const heard = earlier(command.of);
  return heard?.kind === "command" && heard.command.type === "readBack" ? { ...command, ...heard.command.ask } : command;
}
