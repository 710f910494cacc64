import { regions } from "../../../regions.ts";

/** What takes the focus where its own button went away with a swap: never a field, which would bring up a phone's keyboard. */
const TAKES = "a[href], button";

/** Whoever works by keyboard stays where they were: with a swap the focus goes to what answers the new call. */
export function keepFocus(): void {
  let within: string | null = null;
  document.addEventListener("focusin", (event) => {
    within = (event.target as Element).closest(`#${regions.answers}, #${regions.dock}, #${regions.strip}`)?.id ?? null;
  });
  new MutationObserver(() => {
    if (within === null || document.activeElement !== document.body) return;
    const places = [within, regions.answers, regions.dock].map((id) => document.getElementById(id));
    const targets = places.flatMap((place) => [...(place?.querySelectorAll<HTMLElement>(TAKES) ?? [])]);
    targets.find((target) => target.getClientRects().length > 0)?.focus({ preventScroll: true });
  }).observe(document.body, { subtree: true, childList: true });
}
