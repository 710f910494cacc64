import type { Listener } from "./ear.ts";
import { settings } from "./settings.ts";

/** Held anywhere but in a field, it talks: for a key on a strap or a desk. */
const TALK_KEY = "t";
/** What a headset's one key sends, by turns. */
const HEADSET: readonly MediaSessionAction[] = ["play", "pause"];
/** Nothing to hear: without something that plays, no key of a headset comes to a page. */
const SILENCE = "/assets/silence.wav";

/** Talk by the button on the page, by a key, and by the key of a headset. `before` is done as it goes down. */
export function watchTalk(ear: Listener, before: () => void): void {
  const isTalk = (event: Event) => (event.target as Element).closest?.("[data-talk]") != null;
  const down = () => {
    before();
    ear.press();
  };
  document.addEventListener("pointerdown", (event) => isTalk(event) && down());
  for (const up of ["pointerup", "pointercancel"]) document.addEventListener(up, () => ear.release());
  document.addEventListener("contextmenu", (event) => isTalk(event) && event.preventDefault());
  for (const gone of ["blur", "pagehide"]) window.addEventListener(gone, () => ear.release());
  const isKey = (event: KeyboardEvent) => (isTalk(event) && (event.key === " " || event.key === "Enter")) || isTalkKey(event);
  document.addEventListener("keydown", (event) => {
    if (!isKey(event) || event.repeat) return;
    event.preventDefault();
    down();
  });
  // Wherever the focus went meanwhile: a key that came up lets go.
  document.addEventListener("keyup", (event) => [" ", "Enter", TALK_KEY].includes(event.key.toLowerCase()) && ear.release());
  if (settings.headset)
    listenToHeadset(() => {
      down();
      ear.release();
    });
}

function isTalkKey(event: KeyboardEvent): boolean {
  const isTyped = (event.target as Element).matches?.("input, textarea, select");
  const button = document.querySelector<HTMLElement>("[data-talk]");
  return (
    event.key.toLowerCase() === TALK_KEY &&
    !(event.ctrlKey || event.metaKey || event.altKey) &&
    !isTyped &&
    button !== null &&
    !button.inert
  );
}

/** A press of it listens for one thing said, as a tap on the button does. Something has to play for it, from the first press on the page. */
function listenToHeadset(pressed: () => void): void {
  if (!("mediaSession" in navigator)) return;
  const silence = new Audio(SILENCE);
  silence.loop = true;
  const play = () => {
    silence.play().then(
      () => {
        navigator.mediaSession.playbackState = "playing";
      },
      () => {},
    );
  };
  document.addEventListener("pointerdown", play, { once: true });
  for (const action of HEADSET)
    navigator.mediaSession.setActionHandler(action, () => {
      play();
      pressed();
    });
}
