/** What the screen showed at a moment: the turn a word is meant for, and the read-back that "correct" is meant for. */
type Shown = { readonly at: number; readonly turn: string | null; readonly readBack: string | null };
const shown: Shown[] = [];
const KEPT = 200;

export const turnNow = (): string | null => document.querySelector<HTMLElement>("[data-turn]")?.dataset.turn ?? null;
const readBackNow = (): string | null => document.querySelector<HTMLElement>(".read-back")?.dataset.of ?? null;

/** Begins to remember. */
export function rememberTurns(): void {
  shown.push({ at: Number.NEGATIVE_INFINITY, turn: turnNow(), readBack: readBackNow() });
  new MutationObserver(() => {
    const now = { at: performance.now(), turn: turnNow(), readBack: readBackNow() };
    const last = shown.at(-1);
    if (now.turn !== last?.turn || now.readBack !== last?.readBack) shown.push(now);
    if (shown.length > KEPT) shown.splice(1, shown.length - KEPT);
  }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-turn", "data-of"] });
}

/** What was on the screen at a moment, in ms of `performance.now()`. */
export const shownAt = (at: number): Omit<Shown, "at"> => shown.findLast((s) => s.at <= at) ?? { turn: turnNow(), readBack: readBackNow() };
