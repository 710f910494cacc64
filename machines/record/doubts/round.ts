import type { EntryNo } from "../../install/ids.ts";
import { isSure } from "./course.ts";
import { isOwn, type Said } from "./said.ts";

/**
 * Calls of one kind, one after the other, that people may do in one go: once around with three things to look at, or all edges
 * driven before the first is answered. Time that one of them did not need is there for the next. Plain JSON.
 */
export type Round = {
  /** The last entry by which the guide came to a call that was judged. */
  readonly visit: EntryNo;
  readonly spareMs: number;
};
export const NO_ROUND: Round = { visit: 0, spareMs: 0 };

/** The time there was for a call, where its answer is to be judged: the first that is good, at the call's first time. */
export type Judged = { readonly round: Round; readonly tookMs: number | null };

/** A round with one more entry. `needMs` is what the call that it was said at takes at least; `null` where it is none of the round. */
export function roundAfter(round: Round, said: Said, needMs: number | null): Judged {
  const { answered, before, after } = said;
  const { stepFrom, isNew } = before;
  const passes = needMs !== null && answered?.is === "good" && isOwn(said) && round.visit !== stepFrom.no;
  if (passes) {
    const hadMs = round.spareMs + (after.at - stepFrom.at);
    const isJudged = isNew && isSure(after, stepFrom);
    return {
      // What is not judged leaves all of its time: nothing is known to be missing.
      round: { visit: stepFrom.no, spareMs: isJudged ? Math.max(0, hadMs - needMs) : hadMs },
      tookMs: isJudged && hadMs < needMs ? hadMs : null,
    };
  }
  // Another kind of call in between ends it.
  const leaves = needMs === null && said.call !== null && after.step !== before.step;
  return { round: leaves ? NO_ROUND : round, tookMs: null };
}
