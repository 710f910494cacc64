import { BURIED_KINDS, type SiteModel } from "../../../machines/site/model.ts";
import { UTILITY_COLOR } from "../../drawing/site/utility-colors.ts";
import type { Words } from "../../text/words.ts";

/** What the letters and marks of a site's drawing mean: only those that it has. */
export function SiteKey({ site, isShort, words: { siteDrawing: text } }: { site: SiteModel; isShort: boolean; words: Words }) {
  const kinds = BURIED_KINDS.filter((kind) => site.buried.some((line) => line.kind === kind));
  const notes = [
    ...(site.buried.length > 0 ? [text.key.zone] : []),
    ...(site.things.some(({ shape }) => shape.is !== "path") ? [text.key.things] : []),
    ...(isShort ? [text.key.tooNear] : []),
    ...(site.ground ? [text.key.ground] : []),
    ...(site.ticketArea ? [text.key.ticketArea] : []),
    text.key.scales,
  ];
  return (
    <ul class="site-key">
      {kinds.map((kind) => (
        <li>
          <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
            <circle cx="12" cy="12" r="11.5" fill="currentColor" />
            <circle cx="12" cy="12" r="10" fill={UTILITY_COLOR[kind]} />
            <circle cx="12" cy="12" r="7" fill="Canvas" />
          </svg>
          <b>{text.letter[kind]}</b> {text.buried[kind]}
        </li>
      ))}
      {site.overhead.length > 0 && (
        <li>
          <b>{text.overheadLetter}</b> {text.overhead}
        </li>
      )}
      {notes.map((note) => (
        <li>{note}</li>
      ))}
    </ul>
  );
}
