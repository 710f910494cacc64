import type { Context } from "hono";
import { streamSSE } from "hono/streaming";
import type { JobId } from "../../machines/record/entry.ts";
import type { Hub } from "../hub.ts";
import { yieldTurn } from "./stream.ts";

/** How often a live screen hears that the server is still there, in ms. */
const BEAT_MS = 15_000;

/** Something that a screen is kept up to date with: what wakes it, and what it is sent then, under the number of the entry that it is of. */
export type Followed = {
  readonly listen: (wake: () => void) => () => void;
  readonly shown: () => Promise<{ readonly entry: number | null; readonly html: string }>;
};

/** A job itself, of which a screen shows something. */
export const followedJob = (hub: Hub, job: JobId, shown: Followed["shown"]): Followed => ({
  listen: (wake) => hub.listen(job, wake),
  shown,
});

/** A stream that sends what a screen shows, at once and after each change of it, until the screen goes away. */
export const follow = (c: Context, ...all: readonly Followed[]) =>
  streamSSE(c, async (stream) => {
    let wake = () => {};
    // A pass runs out, a token is revoked, somebody is taken off the crew, while a screen follows.
    const maySee = c.get("mayStillSee") ?? (async () => true);
    const changed = new Set(all);
    const leave = all.map((followed) =>
      followed.listen(() => {
        changed.add(followed);
        wake();
      }),
    );
    stream.onAbort(() => wake());
    try {
      while (!stream.aborted) {
        const [next] = changed;
        if (next) {
          changed.delete(next);
          // Who pressed is answered first.
          await yieldTurn();
          if (!(await maySee())) break;
          const { entry, html } = await next.shown();
          const data = html.replaceAll("\n", " ");
          await stream.writeSSE(entry === null ? { data } : { id: String(entry), data });
        } else {
          await new Promise<void>((resolve) => {
            wake = resolve;
            setTimeout(resolve, BEAT_MS).unref?.();
          });
          if (!(await maySee())) break;
          if (!stream.aborted && changed.size === 0) await stream.writeSSE({ event: "beat", data: "" });
        }
      }
    } finally {
      for (const go of leave) go();
    }
  });
