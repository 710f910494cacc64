import type { MiddlewareHandler } from "hono";
import { createQueues } from "../queues.ts";
import { yieldTurn } from "./stream.ts";

/** Turns in a row in which nothing else is asked before a long page is made: a new connection takes some to say what it wants. Common practice, no source. */
const MIN_QUIET_TURNS = 5;
/** Turns that a long page waits for the rest, at most: where something is always asked, it still gets made. Common practice, no source. */
const MAX_TURNS = 50;

/**
 * Has long pages made one after the other, each only once nothing else is being answered: a hold does not wait for a row of
 * readers. `counted` goes before everything that answers, `lastInTurn` before what makes a long page. `connecting` is told 1 when
 * somebody begins to connect, and -1 when they have or gave up.
 */
export function createTurns() {
  const inTurn = createQueues();
  /** What is being answered and is no long page, and who is connecting. */
  let others = 0;

  async function untilQuiet(): Promise<void> {
    let quiet = 0;
    for (let turns = 0; turns < MAX_TURNS && quiet < MIN_QUIET_TURNS; turns++) {
      await yieldTurn();
      quiet = others === 0 ? quiet + 1 : 0;
    }
  }
  const counted: MiddlewareHandler = async (_, next) => {
    others++;
    try {
      await next();
    } finally {
      others--;
    }
  };
  const lastInTurn: MiddlewareHandler = async (c, next) => {
    // A HEAD makes the page too, only to be told how long it is.
    if (c.req.method !== "GET" && c.req.method !== "HEAD") return next();
    const { signal } = c.req.raw;
    others--;
    try {
      await inTurn("page", async () => {
        await untilQuiet();
        // Whoever went away meanwhile gets no page made.
        if (signal.aborted) c.res = new Response(null, { status: 408 });
        else await next();
      });
    } finally {
      others++;
    }
  };
  const connecting = (change: 1 | -1) => {
    others += change;
  };
  return { counted, lastInTurn, connecting };
}
