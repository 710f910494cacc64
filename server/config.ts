import { start } from "./terminal.ts";

/** Settings from the environment. `certificate` and `key` are files in PEM: phones let a page listen over https only. */
export type Config = {
  readonly port: number;
  readonly host: string;
  readonly file: string;
  readonly demo: boolean;
  readonly wakeWord: string;
  readonly tls: { readonly certificate: string; readonly key: string } | null;
};

/**
 * PORT (4160), HOST (127.0.0.1), RIDGECALL_FILE (ridgecall.db), RIDGECALL_DEMO=no to start without the demo job,
 * RIDGECALL_WAKE_WORD (albatross), RIDGECALL_CERTIFICATE with RIDGECALL_KEY. Throws one sentence where one cannot be used.
 */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  const port = Number(env.PORT ?? 4160);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) throw new Error(start.badPort(env.PORT ?? ""));
  const wakeWord = (env.RIDGECALL_WAKE_WORD ?? "albatross").trim().toLowerCase();
  if (!/^\p{L}{5,20}$/u.test(wakeWord)) throw new Error(start.badWakeWord(env.RIDGECALL_WAKE_WORD ?? ""));
  const { RIDGECALL_CERTIFICATE: certificate, RIDGECALL_KEY: key } = env;
  if (!certificate !== !key) throw new Error(start.halfTls);
  return {
    port,
    host: env.HOST ?? "127.0.0.1",
    file: env.RIDGECALL_FILE ?? "ridgecall.db",
    demo: env.RIDGECALL_DEMO !== "no",
    wakeWord,
    tls: certificate && key ? { certificate, key } : null,
  };
}
