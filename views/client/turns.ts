/** What the screen showed at any moment since the page was loaded: a word is meant for the call that stood there when it began. */
const shown: { readonly at: number; readonly turn: string | null }[] = [];
const KEPT = 200;

export const turnNow = (): string | null => document.querySelector<HTMLElement>("[data-turn]")?.dataset.turn ?? null;

/** Begins to remember. */
export function rememberTurns(): void {
  shown.push({ at: Number.NEGATIVE_INFINITY, turn: turnNow() });
  new MutationObserver(() => {
    const turn = turnNow();
    if (turn !== shown.at(-1)?.turn) shown.push({ at: performance.now(), turn });
    if (shown.length > KEPT) shown.splice(1, shown.length - KEPT);
  }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-turn"] });
}

/** The turn that was on the screen at a moment, in ms of `performance.now()`. */
export const turnAt = (at: number): string | null => (shown.findLast((s) => s.at <= at) ?? { turn: turnNow() }).turn;
