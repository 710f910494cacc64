import { randomBytes, randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { hostname, networkInterfaces } from "node:os";
import { createSecureContext } from "node:tls";
import { LANGUAGES } from "../views/text/languages.ts";
import { addressOf } from "./access/address-of.ts";
import { createAssets } from "./assets.ts";
import { readConfig } from "./config.ts";
import { announced } from "./https/announce.ts";
import { machineOf } from "./https/machine.ts";
import { siteOf } from "./https/site.ts";
import { createHub } from "./hub.ts";
import { JournalUnusable, openJournal } from "./journal/open-file.ts";
import { run } from "./program.ts";
import { systemClock } from "./system-clock.ts";
import { start } from "./terminal.ts";

async function main() {
  const { file, port, host, tls, demo, wakeWord, mode, passphrase, kept } = readConfig(process.env, process.argv.slice(2));
  const access = { mode, random: (count: number) => randomBytes(count), addressOf };
  const world = {
    journal: openJournal(file),
    hub: createHub(),
    clock: systemClock,
    newId: randomUUID,
    wakeWord,
    access,
    languages: LANGUAGES,
  };
  const site = tls === "site" ? await siteOf({ file, host, machine: machineOf(hostname(), networkInterfaces()), now: new Date() }) : null;
  const secure = tls !== "site" ? tls && tlsFiles(tls) : null;
  const running = await run(world, createAssets(), { host, port, demo, secure, site, passphrase, kept }).catch((error) =>
    fail(error.code === "EADDRINUSE" ? start.portTaken(port) : error.message),
  );
  console.log(start.listening(running.url, file));
  if (mode === "trials") console.log(start.trials);
  console.log(start.office(running.office.link, running.office.passphrase));
  if (running.network) console.log(await announced(running.network, process.stdout.isTTY));
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => void running.close().finally(() => process.exit(0)));
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
