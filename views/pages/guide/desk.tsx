import { CallPicture } from "../../drawing/call/call-picture.tsx";
import { LEFT_OF_A_DESK } from "../../drawing/call/small-frame.ts";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";

/**
 * The tent, large, beside the call, where a screen has the width for it. It does not come with every change, as the call does: a
 * phone never shows it, and a screen that does asks for it (`client/desk.ts`).
 */
export const Desk = ({ guide, drawn, words }: Pick<Screen, "guide" | "drawn" | "words">) => (
  <section
    id={regions.desk}
    class="desk"
    hx-get={`/jobs/${guide.job}/drawing`}
    hx-trigger="moved"
    hx-swap="outerMorph"
    hx-sync="this:replace"
    aria-label={words.guide.tentNow}
  >
    <CallPicture {...drawn} box={LEFT_OF_A_DESK} id="desk-picture" words={words} />
  </section>
);
