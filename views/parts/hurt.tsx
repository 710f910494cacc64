import type { Words } from "../text/words.ts";
import type { HurtState } from "./hurt-state.ts";

/** Somebody is hurt: what to do, larger than all else on the page. */
export const Hurt = ({ hurt, words: { guide, hurt: text } }: { hurt: HurtState; words: Words }) => (
  <section class="hurt" role="alert">
    <h2>
      <a href={`tel:${text.number}`}>{text.title}</a>
    </h2>
    <p class="address">{hurt.address}</p>
    <p class="meet">{hurt.meets === null ? text.somebodyMeet : text.meet(hurt.meets)}</p>
    <p>
      <b>{text.firstAid}</b> {hurt.firstAid}
    </p>
    <p>
      <b>{text.rally}</b> {hurt.rally}
    </p>
    <p class="told-by">
      {text.toldBy(hurt.by, hurt.time)} {hurt.said !== null && guide.quoted(hurt.said)}
    </p>
    {hurt.rehearsal && <p class="rehearsal">{text.rehearsal}</p>}
  </section>
);
