import type { Screen } from "../../parts/say-form.tsx";
import { LOUDNESS } from "./watch-state.ts";

/**
 * That a wind reading is due: a quiet line first, then over everything else, then aloud. When, in seconds from when it was sent, goes
 * with it, so that it grows on a screen that nothing else wakes.
 */
export const ReadingDue = ({ guide: { watch } }: Screen) =>
  watch && (
    <p
      class="due"
      role="status"
      data-due={watch.due.inS.join(" ")}
      data-is={watch.due.is}
      data-quiet={watch.due.says.quiet}
      data-top={watch.due.says.top}
      data-loud={watch.due.says.loud}
    >
      {LOUDNESS.filter((is) => is === watch.due.is).map((is) => watch.due.says[is])}
    </p>
  );

/** What happens at which gust, with the one that the last reading is at: a press shows the whole plan. */
export const WatchLevels = ({ guide: { watch, job }, words: { weatherPlan: text } }: Screen) =>
  watch && (
    <a class="levels" href={`/jobs/${job}/weather-plan`} aria-label={text.levelsLink(watch.levels)}>
      {watch.levels.map(({ gust, does, now }) => (
        <span class={now ? "level now" : "level"}>
          <b>{now ? text.now(gust) : gust}</b> <span>{does}</span>
        </span>
      ))}
    </a>
  );
