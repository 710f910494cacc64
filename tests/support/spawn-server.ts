import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { bundled } from "./bundle.ts";

type Running = { readonly url: string; readonly child: ChildProcess; readonly stopped: Promise<void> };

/**
 * The real program on a port of its own. Resolves when it says that it is up; rejects with what it said instead.
 */
export async function spawnServer(file: string, env: Record<string, string> = {}): Promise<Running> {
  return started(process.execPath, [await bundled("server/main.ts")], { PORT: "0", RIDGECALL_FILE: file, ...env });
}

/** The same by the command that `npm start` stands for, unbundled. */
export function npmStart(file: string): Promise<Running> {
  const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as { scripts: { start: string } };
  const [program, ...args] = scripts.start.split(" ");
  return started(program!, args, { PORT: "0", RIDGECALL_FILE: file });
}

async function started(program: string, args: readonly string[], env: Record<string, string>): Promise<Running> {
  const child = spawn(program, args, { env: { ...process.env, ...env }, stdio: ["ignore", "pipe", "pipe"] });
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
