/** Stands in a page for what comes later. No page has it of itself. */
const INSIDE = "\u0000";

/** What comes before and after the inside of something that is rendered whole. */
export async function around(render: (inside: string) => Promise<string>): Promise<readonly [string, string]> {
  const whole = await render(INSIDE);
  const at = whole.indexOf(INSIDE);
  return [whole.slice(0, at), whole.slice(at + INSIDE.length)];
}

/** A long page sent part by part. After each part everything else that waits has its turn: a hold does not wait for a reader. */
export function streamed(parts: AsyncGenerator<string>): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  return new ReadableStream({
    async pull(controller) {
      const { done, value } = await parts.next();
      if (done) return controller.close();
      controller.enqueue(encoder.encode(value));
      await new Promise<void>((resolve) => setTimeout(resolve));
    },
    cancel: () => void parts.return(undefined),
  });
}
