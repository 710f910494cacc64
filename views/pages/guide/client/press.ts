import { clientWords } from "../../../parts/client-words.ts";
import { regions } from "../../../regions.ts";
import { buzz } from "./buzz.ts";
import { isMine, revisionNow, saidHere } from "./revisions.ts";

/** How long after somebody else moved the call a press is taken to be meant for the one before. */
const SETTLE_MS = 400;

/**
 * What a press was made against is what the screen showed when the finger came down, not when it went up. And a press
 * just after somebody else's swap is not taken: the finger was on its way to another call.
 */
export function watchPresses(): void {
  let shown: string | null = null;
  let swappedAt = Number.NEGATIVE_INFINITY;
  document.addEventListener(
    "pointerdown",
    () => {
      shown = revisionNow();
    },
    true,
  );
  document.addEventListener(
    "submit",
    (event) => {
      const form = event.target as HTMLFormElement;
      const seen = form.querySelector<HTMLInputElement>('input[name="seen"]');
      if (!seen) return;
      const urgent = form.closest(".hold, .safe") !== null;
      if (!urgent && performance.now() - swappedAt < SETTLE_MS) {
        event.preventDefault();
        event.stopImmediatePropagation();
        const notice = document.getElementById(regions.notice);
        if (notice) notice.textContent = clientWords().justMoved;
        return;
      }
      if (shown !== null) seen.value = shown;
      shown = null;
      saidHere();
    },
    true,
  );
  let last = revisionNow();
  // The call stayed, and the press just made here was refused: twice, so that it is felt to be another thing.
  const refused = () => {
    if (isMine() && document.querySelector(".earlier li:last-child")?.classList.contains("refused")) buzz("refused");
  };
  const alarms = () => document.querySelectorAll(".call .alarm, .call .hurt").length;
  let alarmed = alarms();
  const moved = () => {
    const now = revisionNow();
    const held = alarms() > alarmed;
    alarmed = alarms();
    if (now === last && !held) return refused();
    last = now;
    if (!isMine()) swappedAt = performance.now();
    buzz(held ? "hold" : "moved");
  };
  new MutationObserver(() => {
    moved();
    document.querySelector("article.call")?.scrollIntoView({ block: "start" });
  }).observe(document.body, { subtree: true, attributes: true, attributeFilter: ["data-revision", "data-entry", "data-unrecorded"] });
}
