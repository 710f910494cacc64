import { getConnInfo } from "@hono/node-server/conninfo";
import type { Context } from "hono";

/** Where a request comes from, as Node knows it; what a proxy says of others is not believed. Empty where nobody knows. */
export const addressOf = (c: Context): string => getConnInfo(c).remote.address ?? "";
