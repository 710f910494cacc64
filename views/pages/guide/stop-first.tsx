import type { Screen } from "../../parts/say-form.tsx";
import type { StopState } from "./stop.ts";

/** From how many letters on it is set smaller. */
const LONG = 100;

/** Whether a stop stands before the call: not while somebody is hurt, and not once the call is the way out itself. */
export const stopsFirst = ({ guide }: Pick<Screen, "guide">): StopState | null =>
  guide.hurt || guide.makingSafe ? null : guide.weather.stop;

/** That the weather stops all work: why, and what to do, larger than all else of the call. */
export const StopFirst = ({ stop: { why, todo } }: { stop: StopState }) => (
  <section class={`stop-first ${why.length + todo.length > LONG ? "stop-long" : "stop-short"}`} role="alert">
    <p>{why}</p>
    <p>{todo}</p>
  </section>
);
