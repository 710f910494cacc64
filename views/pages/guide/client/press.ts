import { clientWords } from "../../../parts/client-words.ts";
import { regions } from "../../../regions.ts";
import { buzz } from "./buzz.ts";
import { isMine, revisionNow, saidHere } from "./revisions.ts";

/** How long after a swap a press is taken to be meant for the call before. A finger that comes down twice is one press. */
const SETTLE_MS = 400;

/**
 * What a press was made against is what the screen showed when the finger came down, not when it went up. A press just after a
 * swap is not taken: somebody else's moved the call under a finger on its way, and a glove or a drop of water taps twice. What
 * can only stop, or leads out, is always taken. A key goes where it was aimed, so that only somebody else's swap keeps it off.
 */
export function watchPresses(): void {
  let shown: string | null = null;
  let swappedAt = Number.NEGATIVE_INFINITY;
  let othersAt = Number.NEGATIVE_INFINITY;
  document.addEventListener(
    "pointerdown",
    () => {
      shown = revisionNow();
    },
    true,
  );
  document.addEventListener(
    "keydown",
    (event) => {
      shown = null;
      // A key that is held down presses once.
      if (event.repeat && event.key === "Enter") event.preventDefault();
    },
    true,
  );
  document.addEventListener(
    "submit",
    (event) => {
      const form = event.target as HTMLFormElement;
      const seen = form.querySelector<HTMLInputElement>('input[name="seen"]');
      if (!seen) return;
      const since = performance.now() - (shown === null ? othersAt : swappedAt);
      if (since < SETTLE_MS && form.closest(".hold, .safe") === null) {
        event.preventDefault();
        event.stopImmediatePropagation();
        if (swappedAt === othersAt) say(clientWords().justMoved);
        shown = null;
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
    swappedAt = performance.now();
    if (!isMine()) othersAt = swappedAt;
    const now = revisionNow();
    const held = alarms() > alarmed;
    alarmed = alarms();
    if (now === last && !held) return refused();
    last = now;
    buzz(held ? "hold" : "moved");
  };
  new MutationObserver(() => {
    moved();
    showCall();
  }).observe(document.body, { subtree: true, attributes: true, attributeFilter: ["data-revision", "data-entry", "data-unrecorded"] });
}

/** Where a screen is too small for all of it, the call comes first. */
export const showCall = (): void => document.querySelector("article.call")?.scrollIntoView({ block: "start" });

function say(text: string): void {
  const notice = document.getElementById(regions.notice);
  if (notice) notice.textContent = text;
}
