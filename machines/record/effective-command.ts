import { isCumulative, mergeAnswers } from "../install/checks/any-check.ts";
import type { Command } from "../install/commands.ts";
import type { Check, Value } from "../install/gates.ts";
import type { EntryNo } from "../install/ids.ts";
import { type Entries, lookupIn } from "./entries.ts";
import type { CommandEntry, Entry } from "./entry.ts";

/** Finds an entry of the same job by its number; `null` or `undefined` if the job has no such entry. */
export type EntryLookup = (no: EntryNo) => Entry | null | undefined;

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

/** Outcomes by which the guide comes to a call: what was answered there on an earlier stay is asked again. */
const ARRIVALS: ReadonlySet<string> = new Set(["moved", "wentBack", "goingOn"]);

/**
 * The answer that a gate has by an entry: what it says itself and, at a gate that is answered bit by bit, what was said
 * on the same stay at the call before it. `null` where the entry answers nothing.
 */
export function answerValue(entry: CommandEntry, asks: Check, earlier: EntryLookup): Value | null {
  const own = answerIn(entry, earlier);
  if (own === null || !isCumulative(asks)) return own;
  const said = [own];
  for (let e = earlier(entry.no - 1); e?.kind === "command" && e.step === entry.step; e = earlier(e.no - 1)) {
    if ("did" in e.outcome && ARRIVALS.has(e.outcome.did)) break;
    const before = "did" in e.outcome && e.outcome.did === "answered" ? answerIn(e, earlier) : null;
    if (before) said.unshift(before);
  }
  return said.reduce((before, value) => mergeAnswers(asks, before, value));
}

function answerIn(entry: CommandEntry, earlier: EntryLookup): Value | null {
  const command = effectiveCommandBy(entry, earlier);
  if (command.type === "readBack") return command.intent.type === "answer" ? command.intent.value : null;
  return command.type === "answer" ? command.value : null;
}
