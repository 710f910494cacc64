import { createServer, type ServerOptions } from "node:https";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import type { Hono } from "hono";
import { createApp } from "./app.tsx";
import { DEMO_KEY, demoBrief } from "./demo.ts";
import { removeOld } from "./draft/remove-old.ts";
import { createHouse } from "./house.ts";
import { urlOf } from "./https/machine.ts";
import { networkOf, type Site, type SiteNetwork } from "./https/site.ts";
import { readBrief } from "./input/brief.ts";
import type { Dependencies } from "./jobs.ts";
import { requestDigest } from "./next-entry.ts";
import { type KeptDays, removeExpired } from "./retention.ts";
import { start } from "./terminal.ts";

/** How often it is tried to write holds that could not be written, in ms. */
const RETRY_MS = 5_000;
/** How long a connection stays open with nothing asked on it, in ms: a hold on an open one has no connecting to wait for. Common practice, no source. */
const IDLE_MS = 60_000;
const DAY_MS = 24 * 3600 * 1000;
/** How often it is looked for drafts and people that were kept long enough, in ms. */
const TIDY_MS = DAY_MS;
/** How often it is looked whether the house stream has an entry of the day, in ms: where the disk took none, it is tried again. */
const HOUSE_MS = 60_000;

/**
 * Where it listens: `secure` for https with a certificate that was given, `site` with the one made for the site's own network.
 * `demo`: whether a file without jobs gets the demo job.
 */
export type Place = {
  readonly host: string;
  readonly port: number;
  readonly secure: ServerOptions | null;
  readonly site?: Site | null;
  readonly demo: boolean;
  /** The office's, where somebody set one. */
  readonly passphrase: string | null;
  /** Absent: all is kept for good. */
  readonly kept?: KeptDays;
};
const FOR_GOOD: KeptDays = { names: null, records: null };
/**
 * `office` lets into it once, and has the passphrase that was made at the first start. `network` is what phones need to know on the site's own network, null elsewhere. `close` lets go of everybody who is
 * connected, and of the journal, once what was said is written.
 */
export type Running = {
  readonly url: string;
  readonly office: { readonly link: string; readonly passphrase: string | null };
  readonly network: SiteNetwork | null;
  readonly close: () => Promise<void>;
};

/**
 * The program on a port: what it answers, the demo job, and what it does now and then by itself. Resolves when it listens;
 * rejects with Node's error where the port is taken or cannot be had.
 */
export async function run(
  world: Dependencies,
  files: Hono,
  { host, port, secure, site, demo, passphrase, kept = FOR_GOOD }: Place,
): Promise<Running> {
  const { journal, clock } = world;
  let listensOn = port;
  const network = site ? networkOf(site, () => listensOn) : null;
  const { app, liveJobs, access, entrance, firstLink, connecting } = createApp(world, { files, network });
  const dayAfter = (days: number) => new Date(clock().wall + days * DAY_MS).toISOString().slice(0, 10);
  if (demo && (await journal.folds()).length === 0)
    await liveJobs.open(readBrief(demoBrief(dayAfter(-1), dayAfter(14))), DEMO_KEY, requestDigest(DEMO_KEY));
  const made = await entrance.firstPassphrase(passphrase);
  await access.remember();
  const house = createHouse(world, (failure) => console.error(start.noHouseEntry(failure)));
  const tidy = async () => {
    const { wall } = clock();
    void removeOld(journal, wall).catch(console.error);
    await removeExpired({ journal, liveJobs, house }, kept, wall).catch(console.error);
    // Where something was taken away, the day has its entry by that.
    await house.daily();
  };
  void tidy();
  const timers = [
    setInterval(() => void liveJobs.writeHolds().catch(console.error), RETRY_MS),
    setInterval(() => void tidy(), TIDY_MS),
    setInterval(() => void house.daily(), HOUSE_MS),
  ];
  for (const timer of timers) timer.unref();

  const serverOptions = site ? { cert: site.own.certificate, key: site.own.key } : secure;
  const tls = serverOptions && { createServer, serverOptions };
  return new Promise((resolve, reject) => {
    const server = serve({ fetch: app.fetch, port, hostname: host, ...tls }, (info: AddressInfo) => {
      server.off("error", reject);
      server.on("error", console.error);
      listensOn = info.port;
      const url = urlOf(tls ? "https" : "http", host, info.port);
      resolve({ url, office: { link: `${url}office/first?key=${firstLink.key}`, passphrase: made }, network, close });
    });
    if ("keepAliveTimeout" in server) server.keepAliveTimeout = IDLE_MS;
    if (tls) {
      server.on("connection", () => connecting(1));
      // Of each connection it is told one of these, once.
      for (const over of ["secureConnection", "tlsClientError"]) server.on(over, () => connecting(-1));
    }
    server.once("error", reject);
    async function close() {
      for (const timer of timers) clearInterval(timer);
      const closed = new Promise((done) => server.close(done));
      if ("closeAllConnections" in server) server.closeAllConnections();
      await closed;
      await house.beforeStop();
      await journal.close();
    }
  });
}
