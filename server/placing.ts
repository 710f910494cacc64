import { digest, type Hash } from "../machines/digest/digest.ts";
import type { SiteModel } from "../machines/site/model.ts";
import { findPlaceInSteps, type PlacementFound } from "../machines/site/placement.ts";
import type { ClearanceRules } from "../machines/site/rules.ts";
import type { Place } from "../machines/site/stand.ts";
import type { TentPlan } from "../machines/tent/types.ts";
import { Problem } from "./input/problem.ts";
import { createQueues } from "./queues.ts";
import { yieldTurn } from "./routes/stream.ts";

/** All that a place is looked for by. */
export type Sought = { readonly plan: TentPlan; readonly site: SiteModel; readonly rules: ClearanceRules; readonly place: Place };
/** What was found, and the name of what it was found by: the same site and tent have the same. */
export type Sighted = { readonly by: Hash; readonly found: PlacementFound };

/** Searches that wait for the one that is running, at most: each may hold the processor for some seconds, a turn of it at a time. */
const MAX_WAITING = 4;
/** Results that are kept: what is looked at is then taken without another search. */
const MAX_KEPT = 16;

/** Looks for places, one search at a time, with everything else in between: a hold does not wait for one. */
export function createPlacing() {
  const inTurn = createQueues();
  const kept = new Map<Hash, Promise<PlacementFound>>();
  let waiting = 0;

  async function search({ plan, site, rules, place }: Sought): Promise<PlacementFound> {
    const finding = findPlaceInSteps(plan, site, { place, rules });
    for (;;) {
      const step = finding.next();
      if (step.done) return step.value;
      await yieldTurn();
    }
  }

  /** The nearest place; throws a Problem where too many wait already. Asked for twice, it is looked for once. */
  return async function find(sought: Sought): Promise<Sighted> {
    const by = digest.of({ ...sought, plan: sought.plan.spec });
    const before = kept.get(by);
    if (before) return { by, found: await before };
    if (waiting > MAX_WAITING) throw new Problem(503, (w) => w.siteForms.busy);
    waiting++;
    const finding = inTurn("place", () => search(sought)).finally(() => waiting--);
    kept.set(by, finding);
    if (kept.size > MAX_KEPT) kept.delete(kept.keys().next().value!);
    finding.catch(() => kept.delete(by));
    return { by, found: await finding };
  };
}
export type Placing = ReturnType<typeof createPlacing>;
