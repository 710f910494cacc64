import { createServer, type ServerOptions } from "node:https";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import type { Hono } from "hono";
import { createApp } from "./app.tsx";
import { DEMO_KEY, demoBrief } from "./demo.ts";
import { removeOld } from "./draft/remove-old.ts";
import { readBrief } from "./input/brief.ts";
import type { Dependencies } from "./jobs.ts";
import { requestDigest } from "./next-entry.ts";

/** How often it is tried to write holds that could not be written, in ms. */
const RETRY_MS = 5_000;
const DAY_MS = 24 * 3600 * 1000;
/** How often it is looked for drafts and people that were kept long enough, in ms. */
const TIDY_MS = DAY_MS;

/** Where it listens: `secure` for https. `demo`: whether a file without jobs gets the demo job. */
export type Place = { readonly host: string; readonly port: number; readonly secure: ServerOptions | null; readonly demo: boolean };
/** `close` lets go of everybody who is connected, and of the journal, once what was said is written. */
export type Running = { readonly url: string; readonly close: () => Promise<void> };

/**
 * The program on a port: what it answers, the demo job, and what it does now and then by itself. Resolves when it listens;
 * rejects with Node's error where the port is taken or cannot be had.
 */
export async function run(world: Dependencies, files: Hono, { host, port, secure, demo }: Place): Promise<Running> {
  const { journal, clock } = world;
  const { app, liveJobs } = createApp(world, files);
  const dayAfter = (days: number) => new Date(clock().wall + days * DAY_MS).toISOString().slice(0, 10);
  if (demo && (await journal.folds()).length === 0)
    await liveJobs.open(readBrief(demoBrief(dayAfter(-1), dayAfter(14))), DEMO_KEY, requestDigest(DEMO_KEY));
  const tidy = () => void removeOld(journal, clock().wall).catch(console.error);
  tidy();
  const timers = [setInterval(() => void liveJobs.writeHolds().catch(console.error), RETRY_MS), setInterval(tidy, TIDY_MS)];
  for (const timer of timers) timer.unref();

  const tls = secure && { createServer, serverOptions: secure };
  return new Promise((resolve, reject) => {
    const server = serve({ fetch: app.fetch, port, hostname: host, ...tls }, (info: AddressInfo) => {
      server.off("error", reject);
      server.on("error", console.error);
      resolve({ url: `${secure ? "https" : "http"}://${host}:${info.port}/`, close });
    });
    server.once("error", reject);
    async function close() {
      for (const timer of timers) clearInterval(timer);
      const closed = new Promise((done) => server.close(done));
      if ("closeAllConnections" in server) server.closeAllConnections();
      await closed;
      await journal.close();
    }
  });
}
