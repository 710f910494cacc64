import { SETTLE_MS } from "./settle.ts";

/** What the screen showed at a moment: the turn a word is meant for, and the read-back that "correct" is meant for. */
type Shown = { readonly at: number; readonly revision: string | null; readonly readBack: string | null; readonly mine: boolean };
const shown: Shown[] = [];
const KEPT = 200;
/** How long after a word or a press of our own a moved call is taken to be its answer, in ms. */
const MINE_MS = 2000;
let mineAt = Number.NEGATIVE_INFINITY;

export const revisionNow = (): string | null => document.querySelector<HTMLElement>("[data-revision]")?.dataset.revision ?? null;
const readBackNow = (): string | null => document.querySelector<HTMLElement>(".read-back")?.dataset.of ?? null;

/** Something was said or pressed here just now. */
export const saidHere = (): void => {
  mineAt = performance.now();
};
/** Whether what happens now is taken to be the answer to it. */
export const isMine = (): boolean => performance.now() - mineAt < MINE_MS;

/** Begins to remember. */
export function rememberRevisions(): void {
  shown.push({ at: Number.NEGATIVE_INFINITY, revision: revisionNow(), readBack: readBackNow(), mine: true });
  new MutationObserver(() => {
    const now = { at: performance.now(), revision: revisionNow(), readBack: readBackNow(), mine: isMine() };
    const last = shown.at(-1);
    if (now.revision !== last?.revision || now.readBack !== last?.readBack) shown.push(now);
    if (shown.length > KEPT) shown.splice(1, shown.length - KEPT);
  }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-revision", "data-of"] });
}

/** What was on the screen, and had been read, at a moment in ms of `performance.now()`. */
export function shownAt(at: number): Pick<Shown, "revision" | "readBack"> {
  return shown.findLast((s) => s.at + (s.mine ? 0 : SETTLE_MS) <= at) ?? { revision: revisionNow(), readBack: readBackNow() };
}
