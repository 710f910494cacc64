import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import type { Hono } from "hono";

/** An application on a port of its own, until it is closed. */
export function serveApp(app: Pick<Hono, "fetch">): Promise<{ readonly url: string; readonly close: () => void }> {
  return new Promise((resolve) => {
    const listening = serve({ fetch: app.fetch, port: 0, hostname: "127.0.0.1" }, ({ port }: AddressInfo) =>
      resolve({ url: `http://127.0.0.1:${port}`, close: () => listening.close() }),
    );
  });
}
