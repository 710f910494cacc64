import type { Context } from "hono";
import { streamSSE } from "hono/streaming";
import type { JobId } from "../../machines/record/entry.ts";
import type { Hub } from "../hub.ts";

/** How often a live screen hears that the server is still there, in ms. */
const BEAT_MS = 15_000;

/** A stream that sends what a screen shows of a job, at once and after each change of the job, until the screen goes away. */
export const follow = (c: Context, hub: Hub, id: JobId, shown: () => Promise<{ readonly entry: number; readonly html: string }>) =>
  streamSSE(c, async (stream) => {
    let wake = () => {};
    let changed = true;
    const leave = hub.listen(id, () => {
      changed = true;
      wake();
    });
    stream.onAbort(() => wake());
    try {
      while (!stream.aborted) {
        if (changed) {
          changed = false;
          const { entry, html } = await shown();
          await stream.writeSSE({ id: String(entry), data: html.replaceAll("\n", " ") });
        } else {
          await new Promise<void>((resolve) => {
            wake = resolve;
            setTimeout(resolve, BEAT_MS).unref?.();
          });
          if (!stream.aborted && !changed) await stream.writeSSE({ event: "beat", data: "" });
        }
      }
    } finally {
      leave();
    }
  });
