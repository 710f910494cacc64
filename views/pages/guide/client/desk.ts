import { regions } from "../../../regions.ts";

/** Where the drawing beside the call shows; as in the style of the guide. */
const WIDE = "(width >= 900px) and (height >= 520px)";

/** What the call itself draws, whether it shows or not; `null` where it draws nothing, and so moves nothing. */
const drawnNow = (): string | null => document.querySelector(`#${regions.call} .drawing`)?.innerHTML ?? null;

/** Asks for the large drawing whenever the call draws something else. Until it comes the old one is marked as behind. */
export function followCall(): void {
  if (!document.getElementById(regions.desk)) return;
  const wide = matchMedia(WIDE);
  let shown = drawnNow();
  const follow = () => {
    const desk = document.getElementById(regions.desk);
    if (!desk || !wide.matches) return;
    const now = drawnNow() ?? shown;
    if (now === shown) return;
    shown = now;
    desk.classList.add("behind");
    desk.dispatchEvent(new Event("moved"));
  };
  new MutationObserver(follow).observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
  wide.addEventListener("change", follow);
  // What did not come is asked for again when there is a way.
  window.addEventListener("online", () => {
    if (document.querySelector(`#${regions.desk}.behind`)) shown = null;
    follow();
  });
}
