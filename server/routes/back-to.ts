import type { Context } from "hono";

/** What fits into an address. The whole of it stands in the record. */
const MAX_CHARACTERS = 500;

/** The address of a page that says a reply. `part` is the line of the page to come back to. */
export function addressOfReply(c: Context, path: string, reply: string, part = ""): string {
  const said = [...reply].slice(0, MAX_CHARACTERS).join("");
  return `${path}?reply=${encodeURIComponent(said)}&seal=${c.get("access").seal(said)}${part && `#${part}`}`;
}

/** Back to a page, which says the reply: what a plain form ends in. */
export const backTo = (c: Context, ...to: [path: string, reply: string, part?: string]): Response =>
  c.redirect(addressOfReply(c, ...to), 303);

/** The reply that an address carries; `null` where it carries none, or one that this server did not put there. */
export function repliedIn(c: Context): string | null {
  const { reply, seal } = c.req.query();
  return reply !== undefined && c.get("access").seal(reply) === seal ? reply : null;
}
