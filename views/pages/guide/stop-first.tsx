import { Left } from "../../parts/lightning.tsx";
import type { LightningFacts } from "../../parts/lightning-facts.ts";
import type { Screen } from "../../parts/say-form.tsx";
import type { Words } from "../../text/words.ts";
import type { StopState } from "./stop.ts";

/** From how many letters on it is set smaller. */
const LONG = 100;

/** Whether a stop stands before the call: not while somebody is hurt, and not once the call is the way out itself. */
export const stopsFirst = ({ guide }: Pick<Screen, "guide">): StopState | null =>
  guide.hurt || guide.makingSafe ? null : guide.weather.stop;

type Props = { stop: StopState; lightning: LightningFacts | null; words: Words };

/** That the weather stops all work: why, and what to do, larger than all else of the call. */
export const StopFirst = ({ stop: { why, todo }, lightning, words: { sky } }: Props) => {
  // Where the strip gives way to an answer, the clock stands beside the time it runs to.
  const [before, ...after] = lightning === null ? [why] : why.split(lightning.quietAt);
  return (
    <section class={`stop-first ${why.length + todo.length > LONG ? "stop-long" : "stop-short"}`} role="alert">
      <p>
        {before}
        {lightning !== null && after.length > 0 && (
          <>
            {lightning.quietAt}
            <span class="stop-left">
              {" "}
              (<Left facts={lightning} />
              {lightning.miles !== null && sky.milesShort(lightning.miles)})
            </span>
            {after.join(lightning.quietAt)}
          </>
        )}
      </p>
      <p>{todo}</p>
    </section>
  );
};
