import type { Shortfall } from "./checks/computed.ts";
import { type Found, nameOf, withFound } from "./found.ts";
import { limitsFor } from "./limits.ts";
import { scriptOf } from "./script.ts";
import type { Frozen, Script } from "./step.ts";

/** The job with what was found. Its plan stays, and so do its limits but those of the wires: nothing gets looser by a later default. */
export function foundIn({ procedure, brief, plan, limits }: Frozen, found: Found): Frozen {
  const changed = withFound(brief, found);
  const stricter = { ...limits, overheadFt: limitsFor(changed).overheadFt };
  return { procedure, brief: changed, plan, limits: stricter, script: scriptOf(changed, plan, stricter) };
}

/** All that a script has shut because it was worked out to stand too near. */
export const shortfallsIn = ({ steps }: Script): Shortfall[] =>
  steps.flatMap(({ gate }) => (gate?.check.kind === "computed" ? gate.check.short : []));

/** What of a script is shut because of what was found. */
export const shutBy = (what: Found, script: Script): Shortfall[] => shortfallsIn(script).filter(({ id }) => id === nameOf(what));
