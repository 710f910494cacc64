import { spawn } from "node:child_process";
import { watch } from "node:fs";
import { dirname } from "node:path";
import { bundled } from "./bundle.ts";

/**
 * Runs `tests/faults/append-loop.ts` on a file, kills it as soon as it has said so many `entries` or its folder has stirred
 * so many times, and gives all that it said: hash by number.
 */
export async function appendUntilKilled(file: string, when: { entries: number; stirs?: number }): Promise<Map<number, string>> {
  const loop = await bundled("tests/faults/append-loop.ts");
  let stirs = 0;
  const folder = watch(dirname(file), () => {
    if (++stirs === when.stirs) child.kill("SIGKILL");
  });
  const child = spawn(process.execPath, [loop, file], { stdio: ["ignore", "pipe", "pipe"] });
  let out = "";
  let said = 0;
  let complaint = "";
  const lines = () => out.split("\n").slice(0, -1);
  child.stderr.on("data", (data) => {
    complaint += data;
  });
  child.stdout.on("data", (data) => {
    const text = String(data);
    out += text;
    said += text.split("\n").length - 1;
    if (said >= when.entries) child.kill("SIGKILL");
  });
  return new Promise((resolve, reject) =>
    child.once("close", (code, signal) => {
      folder.close();
      if (signal !== "SIGKILL") reject(new Error(`ended by itself with ${code ?? signal}: ${complaint.trim()}`));
      else
        resolve(
          new Map(
            lines()
              .map((line) => line.split(" "))
              .map(([no, hash]) => [Number(no), hash!]),
          ),
        );
    }),
  );
}
