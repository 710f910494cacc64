import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import { Hono } from "hono";
import { STYLESHEETS } from "../views/stylesheets.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * What pages load: our styles and icon, and one script: htmx, its extension for live screens, our own browser code. In one
 * file, because htmx starts in the task after its own: an extension that is still on its way by then is never applied,
 * and the screen would not follow.
 */
export function createAssets() {
  const htmx = dirname(createRequire(import.meta.url).resolve("htmx.org"));
  const library = (file: string) => readFileSync(join(htmx, file), "utf8");
  const client = buildSync({
    entryPoints: [here("../views/client.ts")],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2020",
    write: false,
  }).outputFiles[0]!.text;
  const icon = readFileSync(here("../views/assets/icon.svg"), "utf8");
  const text = (body: string, type: string) => () =>
    new Response(body, { headers: { "content-type": `${type}; charset=utf-8`, "cache-control": "no-cache" } });
  const assets = new Hono()
    .get("/assets/client.js", text([library("htmx.min.js"), library("ext/hx-sse.min.js"), client].join(";\n"), "text/javascript"))
    .get("/assets/icon.svg", text(icon, "image/svg+xml"))
    .get("/favicon.ico", text(icon, "image/svg+xml"));
  for (const [name, files] of Object.entries(STYLESHEETS))
    assets.get(`/assets/${name}.css`, text(files.map((file) => readFileSync(here(`../views/${file}`), "utf8")).join(""), "text/css"));
  return assets;
}
