import type { Command } from "../install/commands.ts";
import type { Said, Sealed } from "./entry.ts";

/**
 * An entry's command as it counts: a "correct" counts as what it confirms, named by its entry; all else as itself. `entries`
 * are the job's, from the first.
 */
export function countedAs({ command }: Said, entries: readonly Sealed[]): Command {
  if (command.type !== "correct") return command;
  const heard = entries[command.of - 1]?.entry;
  return heard?.kind === "command" && heard.command.type === "readBack" ? { ...command, ...heard.command.ask } : command;
}
