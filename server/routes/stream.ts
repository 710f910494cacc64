/** Stand in a page for what comes later; of private use, and in no words of ours. */
export const insides = { first: "\ue001", second: "\ue002", either: /([\ue001\ue002])/ } as const;

/** What comes before and after the inside of something that is rendered whole. A person's words stand before it, never after. */
export async function around(render: (inside: string) => Promise<string>): Promise<readonly [string, string]> {
  const whole = await render(insides.first);
  const at = whole.lastIndexOf(insides.first);
  return [whole.slice(0, at), whole.slice(at + 1)];
}

/** Whoever else waits has their turn. */
export const yieldTurn = () => new Promise<void>((resolve) => setTimeout(resolve));

/** A long page sent part by part. After each part everything else that waits has its turn: a hold does not wait for a reader. */
export function streamed(parts: AsyncGenerator<string>): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  return new ReadableStream({
    async pull(controller) {
      const { done, value } = await parts.next();
      if (done) return controller.close();
      controller.enqueue(encoder.encode(value));
      await yieldTurn();
    },
    cancel: () => void parts.return(undefined),
  });
}
