import type { MiddlewareHandler } from "hono";
import { createQueues } from "../queues.ts";
import { yieldTurn } from "./stream.ts";

/** Has long pages read one after the other, with everything else that waits in between: a hold does not wait for a row of readers. */
export function inTurns(): MiddlewareHandler {
  const inTurn = createQueues();
  return async (c, next) => {
    if (c.req.method !== "GET") return next();
    await inTurn("page", async () => {
      await yieldTurn();
      await next();
    });
  };
}
