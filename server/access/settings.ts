import type { Context } from "hono";
import type { RandomBytes } from "./codes.ts";
import type { AccessMode } from "./visitor.ts";

/** How a server lets people in: see AccessMode. `addressOf` says where a request comes from. */
export type AccessSettings = {
  readonly mode: AccessMode;
  readonly random: RandomBytes;
  readonly addressOf: (c: Context) => string;
};
