import { type Found, withFound } from "./found.ts";
import { limitsFor } from "./limits.ts";
import { scriptOf } from "./script.ts";
import type { Frozen } from "./step.ts";

/** The job with what was found. Its plan stays, and so do its limits but those of the wires: nothing gets looser by a later default. */
export function foundIn({ procedure, brief, plan, limits }: Frozen, found: Found): Frozen {
  const changed = withFound(brief, found);
  const stricter = { ...limits, overheadFt: limitsFor(changed).overheadFt };
  return { procedure, brief: changed, plan, limits: stricter, script: scriptOf(changed, plan, stricter) };
}
