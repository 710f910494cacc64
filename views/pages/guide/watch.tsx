import type { Screen } from "../../parts/say-form.tsx";
import { LOUDNESS } from "./watch-state.ts";

/**
 * That a wind reading is due: a quiet line first, then over everything else, then aloud. When, in seconds from when it was sent, goes
 * with it, so that it grows on a screen that nothing else wakes.
 */
export const ReadingDue = ({ guide: { watch } }: Screen) => {
  if (!watch?.due) return null;
  const { inS, says, is } = watch.due;
  return (
    <p class="due" role="status" data-due={inS.join(" ")} data-is={is} data-quiet={says.quiet} data-top={says.top} data-loud={says.loud}>
      {LOUDNESS.filter((loudness) => loudness === is).map((loudness) => says[loudness])}
    </p>
  );
};

/** The agreed hour by which nobody is inside. */
export const ClearBy = ({ guide: { watch } }: Screen) => watch && watch.clearBy !== null && <p class="clear-by">{watch.clearBy}</p>;

/** What happens at which gust, with the one that the last reading is at: a press shows the whole plan. */
export const WatchLevels = ({ guide: { watch, job }, words: { weatherPlan: text } }: Screen) =>
  watch &&
  watch.levels.length > 0 && (
    <a class="levels" href={`/jobs/${job}/weather-plan`} aria-label={text.levelsLink(watch.levels)}>
      {watch.levels.map(({ gust, does, now }) => (
        <span class={now ? "level now" : "level"}>
          <b>{now ? text.now(gust) : gust}</b> <span>{does}</span>
        </span>
      ))}
    </a>
  );
