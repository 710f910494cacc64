import type { Command } from "../install/commands.ts";
import type { Value } from "../install/gates.ts";
import { type Entries, type EntryLookup, lookupIn } from "./entries.ts";
import type { CommandEntry } from "./entry.ts";

/**
 * An entry's command as it counts: a "correct" counts as what it confirms, named by its entry; all else as itself. `entries`
 * are the job's, from the first.
 */
export function effectiveCommand(said: CommandEntry, entries: Entries): Command {
  return effectiveCommandBy(said, lookupIn(entries));
}

/** The same where earlier entries are looked up one by one. */
export function effectiveCommandBy({ command }: CommandEntry, earlier: EntryLookup): Command {
  if (command.type !== "correct") return command;
  const heard = earlier(command.target);
  return heard?.kind === "command" && heard.command.type === "readBack" ? { ...command, ...heard.command.intent } : command;
}

/**
 * The answer that a gate has by an entry: what it says itself or, at a gate that is answered in parts, what it came to with it.
 * `null` where the entry answers nothing.
 */
export function answerValue(entry: CommandEntry, earlier: EntryLookup): Value | null {
  if ("did" in entry.outcome && entry.outcome.total) return entry.outcome.total;
  const command = effectiveCommandBy(entry, earlier);
  const said = command.type === "readBack" ? command.intent : command;
  return said.type === "answer" ? said.value : null;
}
