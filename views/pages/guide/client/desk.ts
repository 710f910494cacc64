import { regions } from "../../../regions.ts";

/** Where the drawing beside the call shows; as in the style of the guide. */
const WIDE = "(width >= 900px) and (height >= 520px)";
/** What did not come is asked for again after so many ms. */
export const AGAIN_MS = 5000;

/** What the call itself draws, whether it shows or not; nothing where it draws nothing, and so moves nothing. */
const drawnNow = (): string | undefined => document.querySelector<HTMLElement>(`#${regions.call} .drawing`)?.dataset.drawn;
const deskNow = (): HTMLElement | null => document.getElementById(regions.desk);
const isBehind = (desk: HTMLElement): boolean => drawnNow() !== undefined && desk.dataset.drawn !== drawnNow();

/** Asks for the large drawing whenever the call draws something else, until it has come. Until then the old one is marked as behind. */
export function followCall(): void {
  if (!deskNow()) return;
  const wide = matchMedia(WIDE);
  let asked: string | undefined;
  let timer = 0;
  const follow = () => {
    const desk = deskNow();
    if (!desk || !wide.matches || !isBehind(desk)) return;
    if (!desk.classList.contains("behind")) desk.classList.add("behind");
    if (asked === drawnNow()) return;
    asked = drawnNow();
    desk.dispatchEvent(new Event("moved"));
  };
  const again = () => {
    // The one that is on its way may be the one.
    if (deskNow()?.classList.contains("htmx-request")) return;
    asked = undefined;
    follow();
  };
  document.addEventListener("htmx:finally:request", ({ target }) => {
    if (!(target instanceof HTMLElement) || target.id !== regions.desk) return;
    clearTimeout(timer);
    if (isBehind(target)) timer = window.setTimeout(again, AGAIN_MS);
  });
  new MutationObserver(follow).observe(document.body, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ["data-drawn"],
  });
  wide.addEventListener("change", follow);
  window.addEventListener("online", again);
}
