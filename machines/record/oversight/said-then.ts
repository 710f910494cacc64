import type { EntryNo } from "../../install/ids.ts";
import { stepsIn } from "../../install/job.ts";
import { indexOf } from "../../install/script-index.ts";
import type { Script } from "../../install/step.ts";
import type { EntryLookup } from "../entries.ts";
import type { CommandEntry } from "../entry.ts";
import type { Flag, Fold } from "../findings.ts";
import { dayAt } from "./day.ts";
import { type Finding, sizeOf, type Worded } from "./finding.ts";

/** An entry with what stands out about it, and the fold before and after it. */
export type Flagged = { readonly entry: CommandEntry; readonly flags: readonly Flag[]; readonly folds: readonly [Fold, Fold] };
/** The same, with all that a finding of it is made from. */
export type Seen = Flagged & { readonly script: Script; readonly earlier: EntryLookup };

/** A question by its gate, or a call by its id, in its words; `null` where the script has none of that name. */
export function wordedIn(script: Script, id: string): Worded | null {
  const found = indexOf(script).questions.get(id) ?? stepsIn(script).byId.get(id);
  return found ? { wordsKey: found.wordsKey, params: found.params } : null;
}

/** What every finding has that is made now, and is told by an entry. */
export function commonTo(no: EntryNo, { entry, folds: [before], earlier }: Seen): Pick<Finding, "entry" | "at" | "day" | "lead" | "size"> {
  const at = (no === entry.no ? entry : earlier(no))!.wall;
  return { entry: no, at, day: dayAt(at, before.zone), lead: before.glance.lead, size: sizeOf(before) };
}
