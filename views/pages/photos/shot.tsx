import type { Words } from "../../text/words.ts";
import { type PhotoShown, photoPath } from "./state.ts";

type Props = { readonly job: string; readonly photo: PhotoShown; readonly words: Words };
type Pictured = Pick<Props, "job" | "words"> & { readonly photo: Pick<PhotoShown, "no" | "hash" | "widthPx" | "heightPx"> };

/** A photo, loaded when it comes into view. It keeps its place until then. */
export const Picture = ({ job, photo: { no, hash, widthPx, heightPx }, words: { photos } }: Pictured) => (
  <img src={photoPath(job, hash)} alt={photos.alt(no)} width={widthPx} height={heightPx} loading="lazy" decoding="async" />
);

/** The same with what it shows, who took it, when, at which call, and of what. */
export const Shot = (shot: Props) => {
  const { text, by, time, call, of } = shot.photo;
  const { photos } = shot.words;
  return (
    <figure class="shot">
      <Picture {...shot} />
      <figcaption>
        {text !== null && <b>{text}</b>}
        <span>{photos.by(by, time)}</span>
        <span>{call}</span>
        {of !== null && of !== call && <span>{of}</span>}
      </figcaption>
    </figure>
  );
};
