import { regions } from "../../../regions.ts";
import { commandOf } from "./command.ts";
import { revisionNow } from "./revisions.ts";

const PLACES = `#${regions.answers}, #${regions.dock}, #${regions.strip}`;
/** What answers the call. All else in these places is the same at every call. */
const ANSWERS = `#${regions.answers} > *, #${regions.dock} .beside`;
const FIELDS = "input, select, textarea";

/** What has the focus, and what it was asked there when it came. */
type Focused = { readonly element: HTMLElement; readonly asked: string };

/**
 * What a press of this would be for. A field with the same name at the same call is the same question, whatever else of the job
 * has changed; a button says no more than its turn.
 */
function askedBy(element: HTMLElement): string {
  if (element.closest(ANSWERS) === null) return "";
  const form = element.closest("form");
  const step = document.querySelector<HTMLElement>("article.call")?.dataset.step;
  return `${step} ${element.matches(FIELDS) ? "" : revisionNow()} ${form ? commandOf(form) : element.getAttribute("href")}`;
}

/**
 * Whoever works by keyboard stays where they were for as long as that is the same question. With another one the focus goes to the
 * place where it is answered, and never to an answer: a key that comes late does nothing. Where somebody left by themselves nothing
 * brings them back.
 */
export function keepFocus(): void {
  let on: Focused | null = null;
  document.addEventListener("focusin", ({ target }) => {
    const element = target as HTMLElement;
    on = element.closest(PLACES) ? { element, asked: askedBy(element) } : null;
  });
  document.addEventListener(
    "pointerdown",
    ({ target }) => {
      if ((target as Element).closest(PLACES) === null) on = null;
    },
    true,
  );
  new MutationObserver(() => {
    if (!on) return;
    const { element, asked } = on;
    const now = document.activeElement;
    const isGone = () => now === document.body && (!element.isConnected || element.getClientRects().length === 0);
    if (now === element ? askedBy(element) !== asked : isGone()) document.getElementById(regions.answers)?.focus({ preventScroll: true });
  }).observe(document.body, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ["data-step", "data-revision", "value", "href"],
  });
}
