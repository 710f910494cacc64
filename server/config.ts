/** Settings from the environment. */
export type Config = {
  readonly port: number;
  readonly host: string;
  readonly file: string;
  readonly demo: boolean;
  readonly wakeWord: string;
};

/** PORT (4160), HOST (127.0.0.1), RIDGECALL_FILE (ridgecall.db), RIDGECALL_DEMO=no to start without the demo job, RIDGECALL_WAKE_WORD (albatross). */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  const port = Number(env.PORT ?? 4160);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) throw new Error(`PORT is "${env.PORT}"; give a number from 0 to 65535`);
  const wakeWord = (env.RIDGECALL_WAKE_WORD ?? "albatross").trim().toLowerCase();
  if (!/^\p{L}{5,20}$/u.test(wakeWord))
    throw new Error(`RIDGECALL_WAKE_WORD is "${env.RIDGECALL_WAKE_WORD}"; give one word of 5 to 20 letters`);
  return { port, host: env.HOST ?? "127.0.0.1", file: env.RIDGECALL_FILE ?? "ridgecall.db", demo: env.RIDGECALL_DEMO !== "no", wakeWord };
}
