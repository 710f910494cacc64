import { existsSync, readFileSync, renameSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, extname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";
import { inject } from "vitest";

/** Packages that come with a binary, or ask for Node's own modules as files of before do, and so stay where they are. */
const INSTALLED = ["libsql", "esbuild", "selfsigned", "qrcode"];
const { resolve } = createRequire(import.meta.url);

const inPlace: Plugin = {
  name: "in place",
  setup(bundle) {
    bundle.onResolve({ filter: new RegExp(`^(${INSTALLED.join("|")})$`) }, ({ path }) => ({ path: resolve(path), external: true }));
    bundle.onLoad({ filter: /\/server\/(?:(?:build-)?assets|voice\/[\w-]+)\.ts$/ }, ({ path }) => ({
      contents: readFileSync(path, "utf8").replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)),
      loader: "ts",
    }));
  },
};

/**
 * A program of ours in one file, made once a run and started dozens of times: to load it file by file takes a processor two
 * seconds. As it is started by hand, it is tried where the README's commands are.
 */
export async function bundled(program: string): Promise<string> {
  const file = join(inject("shared"), `${basename(program, extname(program))}.mjs`);
  if (existsSync(file)) return file;
  const made = `${file}.${process.pid}`;
  await build({
    entryPoints: [program],
    outfile: made,
    bundle: true,
    platform: "node",
    format: "esm",
    plugins: [inPlace],
    logLevel: "error",
  });
  renameSync(made, file);
  return file;
}
