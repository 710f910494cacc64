import type { SiteClearances } from "../../../machines/site/clearances.ts";
import type { Words } from "../../text/words.ts";

/** So many of what is too near are named at each line. */
const MAX_NAMED = 6;
/** So many lines and things are named that something is too near to. */
const MAX_LINES = 12;

type Props = { readonly clearances: Pick<SiteClearances, "neighbors">; readonly words: Words };

/** What stands too near, by the line or thing that it is too near to; nothing where there is none. */
export const TooNear = ({ clearances, words: { thisSite: text } }: Props) => {
  const short = clearances.neighbors.filter((neighbor) => neighbor.short.length > 0);
  if (short.length === 0) return null;
  return (
    <ul class="too-near">
      {short.slice(0, MAX_LINES).map(({ from, short: all }) => (
        <li>
          <b>{text.name(from)}</b>
          <ul>
            {all.slice(0, MAX_NAMED).map((one) => (
              <li>{text.one(one)}</li>
            ))}
          </ul>
          {all.length > MAX_NAMED && text.shorts(all.length)}
        </li>
      ))}
      {short.length > MAX_LINES && <li>{text.moreShort(short.length - MAX_LINES)}</li>}
    </ul>
  );
};
