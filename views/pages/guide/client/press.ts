import { clientWords } from "../../../parts/client-words.ts";
import { buzz } from "./buzz.ts";
import { commandOf } from "./command.ts";
import { dropOutdated, notice } from "./notice.ts";
import { isMine, revisionNow, saidHere } from "./revisions.ts";
import { isSettling, settle } from "./settle.ts";

/** What lay under a finger, or had the focus of a key, when it went down. */
type Down = {
  readonly revision: string | null;
  readonly form: HTMLFormElement | null;
  readonly command: string | null;
  readonly settling: boolean;
};

function downOn(target: EventTarget | null): Down {
  const form = (target as Element | null)?.closest?.("form") ?? null;
  return { revision: revisionNow(), form, command: form && commandOf(form), settling: isSettling() };
}

/**
 * What a press was made against is what the screen showed when the finger came down, not when it went up: a form that says
 * something else by then is not sent. Nor is one just after a swap: somebody else's moved the call under a finger on its way, and
 * a glove, a drop of water or a key comes down twice. What can only stop, or leads out, is taken then too.
 */
export function watchPresses(): void {
  let down: Down | null = null;
  let mine = false;
  document.addEventListener(
    "pointerdown",
    (event) => {
      down = downOn(event.target);
    },
    true,
  );
  document.addEventListener(
    "keydown",
    (event) => {
      // A key that is held down presses once, and went down once.
      if (!event.repeat) down = downOn(event.target);
      else if (event.key === "Enter") event.preventDefault();
    },
    true,
  );
  document.addEventListener(
    "submit",
    (event) => {
      const form = event.target as HTMLFormElement;
      const seen = form.querySelector<HTMLInputElement>('input[name="seen"]');
      if (!seen) return;
      const began = down;
      down = null;
      const another = began?.form === form && began.command !== commandOf(form);
      const early = (isSettling() || began?.settling === true) && form.closest(".hold, .safe") === null;
      if (another || early) {
        event.preventDefault();
        event.stopImmediatePropagation();
        if (another || !mine) notice(clientWords().justMoved);
        return;
      }
      if (began?.revision) seen.value = began.revision;
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
    settle();
    mine = isMine();
    if (!mine) dropOutdated();
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
