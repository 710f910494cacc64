import type { Context, MiddlewareHandler } from "hono";

type Limits = {
  /** The longest body that is taken of a request. */
  readonly maxBytes: (c: Context) => number;
  /** How much of a longer one is read and thrown away, so that its connection takes the next request. */
  readonly maxDrainBytes: number;
  /**
   * The answer to a longer one of so many bytes; `null` where nobody knows. With more left than is drained, the connection cannot be
   * used again, and the answer says so.
   */
  readonly refuse: (c: Context, bytes: number | null) => Promise<Response>;
};

/**
 * Refuses bodies that are too long, whether or not they say how long they are. What is left of one is read first: a
 * server that answers in the middle of a body drops the connection, and with it the next request on it.
 */
export const bodyLimit = ({ maxBytes: maxBytesOf, maxDrainBytes, refuse }: Limits): MiddlewareHandler =>
  async function limited(c, next) {
    const { headers } = c.req.raw;
    const maxBytes = maxBytesOf(c);
    const declared = headers.has("transfer-encoding") ? Number.NaN : Number(headers.get("content-length") ?? Number.NaN);
    // Before the body is asked for: it would be made a stream, which takes longer than all else that a short one needs.
    if (declared <= maxBytes) return next();
    const { body } = c.req.raw;
    if (!body) return next();
    const parts: Uint8Array[] = [];
    const reader = body.getReader();
    let size = 0;
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      size += value.length;
      if (size <= maxBytes) parts.push(value);
      if (size > maxDrainBytes) return refusedUnread(await refuse(c, declared > size ? declared : null));
    }
    if (size > maxBytes) return refuse(c, size);
    c.req.raw = new Request(c.req.raw, { body: joined(parts, size) });
    return next();
  };

function refusedUnread(answer: Response): Response {
  answer.headers.set("connection", "close");
  return answer;
}

function joined(parts: readonly Uint8Array[], size: number): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
