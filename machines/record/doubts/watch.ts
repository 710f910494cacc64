import type { Doubt, DoubtKind } from "./doubt.ts";
import type { Said } from "./said.ts";

/**
 * One kind of doubt as a fold over a record: what it keeps (plain JSON, small), what an entry changes of that, and the doubts
 * that it comes to so far. Rehearsals never reach it.
 */
export type Watch<S> = {
  readonly kind: DoubtKind;
  readonly open: S;
  readonly add: (state: S, said: Said) => S;
  readonly doubts: (state: S) => readonly Doubt[];
};

/** What a kind keeps that finds its doubts one by one and forgets nothing of them. */
export type Found = { readonly found: readonly Doubt[] };
