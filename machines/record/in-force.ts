import type { EntryNo } from "../install/ids.ts";
import type { Frozen } from "../install/step.ts";
import type { EntryLookup } from "./entries.ts";
import type { CommandEntry } from "./entry.ts";

/** The entry whose script is in force after this one: an agreed amendment replaces the script. */
export const frozenAfter = (frozenAt: EntryNo, { command, outcome }: CommandEntry): EntryNo =>
  "did" in outcome && outcome.did === "amended" && command.type === "agree" ? command.target : frozenAt;

/** What an opening or an amendment froze. Throws if the entry is neither. */
export function frozenIn(no: EntryNo, earlier: EntryLookup): Frozen {
  const entry = earlier(no);
  if (entry?.kind === "opening") return entry.opened;
  if (entry?.kind === "command" && entry.command.type === "amend") return entry.command.to;
  throw new Error(`entry ${no} froze no script; look for the opening or the amendment that did`);
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
