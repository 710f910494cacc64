/** What a guide page may weigh on a first visit, with all it loads: read on a field with one bar. Bytes on the wire. */
export const FIRST_VISIT_GOAL = 60_000;

type Ask = (path: string, headers: Record<string, string>) => Response | Promise<Response>;

/** The bytes of the answers to a first visit by their paths, heads and all, as a browser asks for them that has nothing of ours yet. */
export async function firstVisit(ask: Ask, page: string): Promise<ReadonlyMap<string, number>> {
  const took = async (path: string) => {
    const answer = await ask(path, { "accept-encoding": "gzip, deflate" });
    if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
    const zipped = answer.headers.get("content-encoding") === "gzip";
    const bytes = await answer.arrayBuffer();
    const text = async () =>
      zipped
        ? new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).text()
        : new TextDecoder().decode(bytes);
    const head = [...answer.headers].reduce((sum, [name, value]) => sum + `${name}: ${value}\r\n`.length, "HTTP/1.1 200 OK\r\n\r\n".length);
    return { bytes: head + bytes.byteLength, text };
  };
  const whole = await took(page);
  // A phone fetches the icon for its home screen only when it is put there.
  const loads = [...(await whole.text()).matchAll(/<(?:link rel="(?:icon|stylesheet|manifest)" href|script src)="([^"]+)"/g)].map(
    (m) => m[1]!,
  );
  const rest = await Promise.all(loads.map(async (path) => [path, (await took(path)).bytes] as const));
  return new Map([[page, whole.bytes], ...rest]);
}

/** All of it together. */
export const totalOf = (visit: ReadonlyMap<string, number>): number => [...visit.values()].reduce((sum, bytes) => sum + bytes, 0);
