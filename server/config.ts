import { isLoopback } from "./access/loopback.ts";
import type { AccessMode } from "./access/visitor.ts";
import type { KeptDays } from "./retention.ts";
import { start } from "./terminal.ts";

/** What https goes by: "site" is a certificate that the program makes for the site's own network, else files in PEM; null is http. */
export type Tls = "site" | { readonly certificate: string; readonly key: string } | null;

/** Settings from the environment and the command line. Phones let a page listen over https only. */
export type Config = {
  readonly port: number;
  readonly host: string;
  readonly file: string;
  readonly demo: boolean;
  readonly wakeWord: string;
  readonly tls: Tls;
  readonly mode: AccessMode;
  /** For how many days after the last word names, and whole records, are kept. */
  readonly kept: KeptDays;
  /** The office's, where somebody set one; else the one that is kept, or one that is made. */
  readonly passphrase: string | null;
};

type Env = Readonly<Record<string, string | undefined>>;
const HTTPS = "--https";
const TRIALS = "--trials";

/**
 * PORT (4160), HOST (127.0.0.1, with --https 0.0.0.0), RIDGECALL_FILE (ridgecall.db), RIDGECALL_DEMO=no to start without the
 * demo job, RIDGECALL_WAKE_WORD (albatross), RIDGECALL_PASSPHRASE, RIDGECALL_NAMES_DAYS, RIDGECALL_RECORDS_DAYS; RIDGECALL_CERTIFICATE with RIDGECALL_KEY, or the argument
 * --https; the argument --trials. `args` are those after the program's name. Throws one sentence where one cannot be used.
 */
export function readConfig(env: Env, args: readonly string[] = []): Config {
  const port = Number(env.PORT ?? 4160);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) throw new Error(start.badPort(env.PORT ?? ""));
  const wakeWord = (env.RIDGECALL_WAKE_WORD ?? "albatross").trim().toLowerCase();
  if (!/^\p{L}{5,20}$/u.test(wakeWord)) throw new Error(start.badWakeWord(env.RIDGECALL_WAKE_WORD ?? ""));
  const unknown = args.find((argument) => argument !== HTTPS && argument !== TRIALS);
  if (unknown !== undefined) throw new Error(start.unknownArgument(unknown));
  const tls = readTls(env, args);
  const host = env.HOST ?? (tls === "site" ? "0.0.0.0" : "127.0.0.1");
  const passphrase = env.RIDGECALL_PASSPHRASE?.trim() || null;
  // On this machine alone, without settings, a newcomer plays the demo at once.
  const isAlone = isLoopback(host) && tls === null && passphrase === null;
  return {
    port,
    host,
    file: env.RIDGECALL_FILE ?? "ridgecall.db",
    demo: env.RIDGECALL_DEMO !== "no",
    wakeWord,
    tls,
    mode: args.includes(TRIALS) ? "trials" : isAlone ? "thisMachine" : "guarded",
    passphrase,
    kept: { names: daysIn(env, "RIDGECALL_NAMES_DAYS"), records: daysIn(env, "RIDGECALL_RECORDS_DAYS") },
  };
}

/** No job stands as long as that without a word. */
const MIN_DAYS = 30;
function daysIn(env: Env, name: string): number | null {
  const given = env[name]?.trim();
  if (!given) return null;
  const days = Number(given);
  if (!Number.isInteger(days) || days < MIN_DAYS) throw new Error(start.badDays(name, given, MIN_DAYS));
  return days;
}

function readTls({ RIDGECALL_CERTIFICATE: certificate, RIDGECALL_KEY: key }: Env, args: readonly string[]): Tls {
  if (args.includes(HTTPS)) {
    if (certificate || key) throw new Error(start.https.both);
    return "site";
  }
  if (!certificate !== !key) throw new Error(start.halfTls);
  return certificate && key ? { certificate, key } : null;
}
