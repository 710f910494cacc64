import { buzz } from "./buzz.ts";

const TICK_MS = 1000;
/** Said aloud again after so long while nobody reads the wind. Common practice, no source. */
const AGAIN_MS = 60_000;
/** An event of the page with what is to be said aloud. */
export const SAY_ALOUD = "ridgecall-say";

/** Lets the reminder of a wind reading grow with time: what the page was sent says when. */
export function tellDue(): void {
  let sent = "";
  let since = 0;
  let toldAt = Number.NEGATIVE_INFINITY;
  const look = () => {
    const line = document.querySelector<HTMLElement>(".due[data-due]");
    const { due = "", quiet = "", top = "", loud = "" } = line?.dataset ?? {};
    if (due !== sent) [sent, since] = [due, performance.now()];
    if (!line) return;
    const passedS = (performance.now() - since) / 1000;
    const steps = due.split(" ").filter((inS) => passedS >= Number(inS)).length;
    const [is, text] = (
      [
        ["later", ""],
        ["quiet", quiet],
        ["top", top],
        ["loud", loud],
      ] as const
    )[steps]!;
    if (line.dataset.is !== is) line.dataset.is = is;
    if (line.textContent !== text) line.textContent = text;
    if (is !== "loud" || performance.now() - toldAt < AGAIN_MS) return;
    toldAt = performance.now();
    buzz("hold");
    document.dispatchEvent(new CustomEvent(SAY_ALOUD, { detail: text }));
  };
  setInterval(look, TICK_MS);
}
