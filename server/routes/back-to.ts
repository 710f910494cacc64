import type { Context } from "hono";

/** What fits into an address. The whole of it stands in the record. */
const MAX_CHARACTERS = 500;

/** Back to a page, which says the reply: what a plain form ends in. `part` is the line of the page to come back to. */
export function backTo(c: Context, path: string, reply: string, part = ""): Response {
  const said = [...reply].slice(0, MAX_CHARACTERS).join("");
  const seal = c.get("access").seal(said);
  return c.redirect(`${path}?reply=${encodeURIComponent(said)}&seal=${seal}${part && `#${part}`}`, 303);
}

/** The reply that an address carries; `null` where it carries none, or one that this server did not put there. */
export function repliedIn(c: Context): string | null {
  const { reply, seal } = c.req.query();
  return reply !== undefined && c.get("access").seal(reply) === seal ? reply : null;
}
