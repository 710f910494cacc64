import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync, transformSync } from "esbuild";
import type { AssetName } from "../views/parts/asset-paths.ts";
import { STYLESHEETS, type Stylesheet } from "../views/stylesheets.ts";

/** Something built from our sources, whole in memory; `hash` is of its text. */
export type Built = { readonly text: string; readonly type: string; readonly hash: string };

/** The first browsers with cascade layers. */
const BROWSERS = ["chrome99", "firefox97", "safari15.4"];
/** So much of a SHA-256 tells two versions of a file apart. */
const HASH_DIGITS = 12;

const views = (path: string) => fileURLToPath(new URL(`../views/${path}`, import.meta.url));
const built = (text: string, type: string): Built => ({
  text,
  type: `${type}; charset=utf-8`,
  hash: createHash("sha256").update(text).digest("hex").slice(0, HASH_DIGITS),
});

/**
 * Style sheets and the script, by the plain names that pages ask for, each built when it is first asked for: a program that nobody looks at
 * starts in half the time. `null` for another name.
 */
export function builtAssets(): (name: string) => Built | null {
  const known = new Map<string, Built>();
  return (name) => {
    const asset = known.get(name) ?? build(name);
    if (asset) known.set(name, asset);
    return asset;
  };
}

const SCRIPT: AssetName = "client.js";
function build(name: string): Built | null {
  if (name === SCRIPT) return built(script(), "text/javascript");
  const sheet = (Object.keys(STYLESHEETS) as Stylesheet[]).find((known) => name === `${known}.css`);
  return sheet ? built(styles(sheet), "text/css") : null;
}

/** A page's sheets in one, in the order that says which layer counts over which. */
function styles(name: Stylesheet): string {
  const whole = STYLESHEETS[name].map((file) => readFileSync(views(file), "utf8")).join("");
  return transformSync(whole, { loader: "css", minify: true, target: BROWSERS }).code;
}

/**
 * One script: htmx, its extension for live screens, our own browser code. In one file, because htmx starts in the task after
 * its own: an extension that is still on its way by then is never applied, and the screen would not follow.
 */
function script(): string {
  const htmx = dirname(createRequire(import.meta.url).resolve("htmx.org"));
  const library = (file: string) => readFileSync(join(htmx, file), "utf8");
  const own = buildSync({ entryPoints: [views("client.ts")], bundle: true, minify: true, format: "iife", target: "es2020", write: false });
  return [library("htmx.min.js"), library("ext/hx-sse.min.js"), own.outputFiles[0]!.text].join(";\n");
}
