import type { Question as Asked } from "../install/script-index.ts";
import type { Step } from "../install/step.ts";

export type { Asked };

/** What words are understood against: the call in hand, and what is asked there, which need not be that call's own gate. */
export type Listening = { readonly step: Step | null; readonly asks: Asked | null };

/** The job is closed, or nobody has told what is asked. */
export const NOTHING_ASKED: Listening = { step: null, asks: null };

/**
 * The gates that words may answer, the likeliest first: what is asked, then the call's own.
 *
 * @example answerable({ step: null, asks: null }) // []
 */
export function answerable({ step, asks }: Listening): readonly Asked[] {
  const own = step?.gate ? [{ wordsKey: step.wordsKey, params: step.params, gate: step.gate }] : [];
  return asks === null ? own : [asks, ...own.filter(({ gate }) => gate.id !== asks.gate.id)];
}
