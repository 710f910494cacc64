import type { Context } from "hono";

/** What fits into an address. The whole of it stands in the record. */
const MAX_CHARACTERS = 500;

/** Back to a page, which says the reply: what a plain form ends in. `part` is the line of the page to come back to. */
export const backTo = (c: Context, path: string, reply: string, part = ""): Response =>
  c.redirect(`${path}?reply=${encodeURIComponent([...reply].slice(0, MAX_CHARACTERS).join(""))}${part && `#${part}`}`, 303);
