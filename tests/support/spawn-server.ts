import { type ChildProcess, spawn } from "node:child_process";

/**
 * The real program on a port of its own; `before` it, modules that change the world it runs in. Resolves when it says that it
 * is up; rejects with what it said instead.
 */
export async function spawnServer(
  file: string,
  env: Record<string, string> = {},
  before: readonly string[] = [],
): Promise<{ url: string; child: ChildProcess; stopped: Promise<void> }> {
  const child = spawn(process.execPath, ["--import", "tsx", ...before.flatMap((module) => ["--import", module]), "server/main.ts"], {
    env: { ...process.env, PORT: "0", RIDGECALL_FILE: file, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const stopped = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  let out = "";
  const url = await new Promise<string>((resolve, reject) => {
    const read = (data: Buffer) => {
      out += data;
      const up = /https?:\/\/[\d.]+:\d+\//.exec(out);
      if (up) resolve(up[0]);
    };
    child.stdout.on("data", read);
    child.stderr.on("data", read);
    child.once("exit", (code) => reject(new Error(`exit ${code}: ${out.trim()}`)));
  });
  return { url, child, stopped };
}
