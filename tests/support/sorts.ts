import type { GateStand, Stand } from "./stand.ts";

/** Whether a gate still asks something. */
export const isOpen = (gate: GateStand | null): gate is GateStand => gate !== null && gate.status !== "good" && gate.status !== "waived";

/** What sort of answer a call wants, as far as a screen goes. */
function sortOf({ gate }: Stand): string {
  if (!isOpen(gate)) return "nothing asked";
  return `${gate.check.kind}${gate.notBy === null ? "" : ", of somebody else"}`;
}

/** The sorts of calls that a test has gone through on a screen: the rest of a raise is done without one, in a fraction of the time. */
export class Sorts {
  private readonly known = new Set<string>();
  /** Whether no call of its sort came before. */
  isNew(stand: Stand): boolean {
    return !this.known.has(sortOf(stand));
  }
  /** From now on its sort is known. */
  add(stand: Stand): void {
    this.known.add(sortOf(stand));
  }
}
