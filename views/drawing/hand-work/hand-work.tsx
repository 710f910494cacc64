import type { HandWorkId } from "../../../machines/picture/hand-work.ts";
import type { Words } from "../../text/words.ts";
import { DRAWINGS } from "./drawings.ts";
import { FRAME, NARROW } from "./geometry.ts";

type Props = { readonly id: HandWorkId; readonly words: Words };

/** The id of a drawing's figure where it can be led to. */
export const figureId = (id: HandWorkId): string => `hand-${id}`;

/** One drawing of the hand work: its title, its frames in order, and a line below each that says what to do. */
export const HandWork = ({ id, words }: Props) => {
  const { frames, narrow = false } = DRAWINGS[id];
  const { title, lines } = words.handWork.drawings[id];
  const { wide, high } = narrow ? NARROW : FRAME;
  return (
    <figure class="hand-work" id={figureId(id)}>
      <figcaption>{title}</figcaption>
      <ol class={narrow ? "hand-frames narrow" : "hand-frames"}>
        {frames.map((draw, i) => (
          <li>
            <svg class="hand-frame" viewBox={`0 0 ${wide} ${high}`} role="img" aria-label={lines[i]!.shows}>
              {draw(words)}
            </svg>
            <p>
              <b>{i + 1}</b>
              {lines[i]!.does}
            </p>
          </li>
        ))}
      </ol>
    </figure>
  );
};
