import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { createServer } from "node:https";
import type { AddressInfo } from "node:net";
import { createSecureContext } from "node:tls";
import { serve } from "@hono/node-server";
import { LANGUAGES } from "../views/text/languages.ts";
import { createApp } from "./app.tsx";
import { createAssets } from "./assets.ts";
import { readConfig } from "./config.ts";
import { DEMO_KEY, demoBrief } from "./demo.ts";
import { removeOld } from "./draft/remove-old.ts";
import { createHub } from "./hub.ts";
import { readBrief } from "./input/brief.ts";
import { JournalUnusable, openJournal } from "./journal/open-file.ts";
import { requestDigest } from "./next-entry.ts";
import { systemClock } from "./system-clock.ts";
import { start } from "./terminal.ts";

/** How often it is tried to write holds that could not be written, in ms. */
const RETRY_MS = 5_000;
/** How often it is looked for drafts and people that were kept long enough, in ms. */
const TIDY_MS = 24 * 3600 * 1000;

/** A day in the demo's future, as a date. */
const dayAfter = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

async function main() {
  const config = readConfig(process.env);
  const journal = openJournal(config.file);
  const world = {
    journal,
    hub: createHub(),
    clock: systemClock,
    newId: randomUUID,
    wakeWord: config.wakeWord,
    languages: LANGUAGES,
  };
  const { app, liveJobs } = createApp(world, createAssets());
  if (config.demo && (await journal.folds()).length === 0)
    await liveJobs.open(readBrief(demoBrief(dayAfter(-1), dayAfter(14))), DEMO_KEY, requestDigest(DEMO_KEY));
  const { port, host, tls } = config;
  const secure = tls && { createServer, serverOptions: tlsFiles(tls) };
  const server = serve({ fetch: app.fetch, port, hostname: host, ...secure }, (info: AddressInfo) =>
    console.log(start.listening(`${tls ? "https" : "http"}://${host}:${info.port}/`, config.file)),
  );
  server.on("error", (error: NodeJS.ErrnoException) => fail(error.code === "EADDRINUSE" ? start.portTaken(config.port) : error.message));
  setInterval(() => void liveJobs.writeHolds().catch(console.error), RETRY_MS).unref();
  const tidy = () => void removeOld(journal, systemClock().wall).catch(console.error);
  tidy();
  setInterval(tidy, TIDY_MS).unref();
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.once(signal, () => {
      server.close(() => void journal.close().finally(() => process.exit(0)));
      if ("closeAllConnections" in server) server.closeAllConnections();
    });
}

/** Certificate and key, tried together before anything listens. */
function tlsFiles({ certificate, key }: { certificate: string; key: string }) {
  try {
    const options = { cert: readFileSync(certificate), key: readFileSync(key) };
    createSecureContext(options);
    return options;
  } catch (error) {
    return fail(start.badTls(`${certificate}, ${key}`, (error as Error).message.split(", ")[0]!));
  }
}

function fail(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}

main().catch((error) => fail(error instanceof JournalUnusable || error instanceof Error ? error.message : String(error)));
