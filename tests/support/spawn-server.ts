import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { bundled } from "./bundle.ts";

/** `said` is all that it wrote to the terminal, known once it has stopped. */
type Running = { readonly url: string; readonly child: ChildProcess; readonly stopped: Promise<void>; readonly said: Promise<string> };

/** Anybody speaks as anybody: what most tests are about is not who comes in. */
const FOR_TRIALS = ["--trials"];

/**
 * The real program on a port of its own, with `args` on its command line. Resolves when it says that it is up; rejects with
 * what it said instead.
 */
export async function spawnServer(file: string, env: Record<string, string> = {}, args: readonly string[] = FOR_TRIALS): Promise<Running> {
  return started(process.execPath, [await bundled("server/main.ts"), ...args], { PORT: "0", RIDGECALL_FILE: file, ...env });
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
  const said = new Promise<string>((resolve) => child.once("close", () => resolve(out)));
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
  return { url, child, stopped, said };
}
