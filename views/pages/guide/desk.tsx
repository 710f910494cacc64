import { CallPicture } from "../../drawing/call/call-picture.tsx";
import { nameOf } from "../../drawing/call/drawn.ts";
import { LEFT_OF_A_DESK } from "../../drawing/call/small-frame.ts";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";

/** What an answer that is no drawing says of itself is no drawing: the one that stands there stays. */
const KEPT_ON_ERROR = { "hx-status:4xx": "swap:none", "hx-status:5xx": "swap:none" };

/**
 * The tent, large, beside the call, where a screen has the width for it. It does not come with every change, as the call does: a
 * phone never shows it, and a screen that does asks for it (`client/desk.ts`) whenever it is not what the call draws.
 */
export const Desk = ({ guide, drawn, words }: Pick<Screen, "guide" | "drawn" | "words">) => (
  <section
    id={regions.desk}
    class="desk"
    data-drawn={nameOf(drawn)}
    hx-get={`/jobs/${guide.job}/drawing`}
    hx-trigger="moved"
    hx-swap="outerMorph"
    hx-sync="this:replace"
    {...KEPT_ON_ERROR}
    aria-label={words.guide.tentNow}
  >
    <CallPicture {...drawn} box={LEFT_OF_A_DESK} id="desk-picture" words={words} />
  </section>
);
