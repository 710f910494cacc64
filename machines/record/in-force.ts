import type { Did } from "../install/commands.ts";
import type { EntryNo } from "../install/ids.ts";
import type { Frozen } from "../install/step.ts";
import type { EntryLookup } from "./entries.ts";
import type { CommandEntry, Entry } from "./entry.ts";

/** The entry whose script is in force after this one: an agreed amendment replaces the script, and so does what was found. */
export const frozenAfter = (frozenAt: EntryNo, { command, outcome, no }: CommandEntry): EntryNo => {
  if (!("did" in outcome)) return frozenAt;
  if (outcome.did === "amended" && command.type === "agree") return command.target;
  if (outcome.did !== "found") return frozenAt;
  // Spoken, it counts by the entry that it was heard in.
  return command.type === "correct" ? command.target : no;
};

/** What an entry froze, whether or not it came to be in force: an opening, a change put forward, something found. `null` for any other. */
export function frozeIn(entry: Entry | null | undefined): Frozen | null {
  if (!entry) return null;
  if (entry.kind === "opening") return entry.opened;
  const { command } = entry;
  const intent = command.type === "readBack" ? command.intent : command;
  return intent.type === "amend" || intent.type === "found" ? intent.to : null;
}

/** What an opening or an amendment froze. Throws if the entry is neither. */
export function frozenIn(no: EntryNo, earlier: EntryLookup): Frozen {
  const frozen = frozeIn(earlier(no));
  if (frozen) return frozen;
  throw new Error(`entry ${no} froze no script; look for the opening or the amendment that did`);
}

/** What takes a change off that waits for a second person. */
const SETTLES: readonly Did[] = ["amended", "discarded", "tookLead", "found"];

/** The change that waited for a second person when an entry was made, by its entry; `null` where none did. */
export function waitedBefore(no: EntryNo, earlier: EntryLookup): EntryNo | null {
  for (let n = no - 1; n > 1; n--) {
    const entry = earlier(n);
    if (entry?.kind !== "command" || !("did" in entry.outcome)) continue;
    if (entry.outcome.did === "proposed") return n;
    if (SETTLES.includes(entry.outcome.did)) return null;
  }
  return null;
}

/** What was in force when an entry was made: the opening, or the last amendment agreed to before it. */
export function frozenBefore(no: EntryNo, earlier: EntryLookup): Frozen {
  for (let n = no - 1; n > 1; n--) {
    const entry = earlier(n);
    if (entry?.kind !== "command") continue;
    const at = frozenAfter(1, entry);
    if (at > 1) return frozenIn(at, earlier);
  }
  return frozenIn(1, earlier);
}
