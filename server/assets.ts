import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import { Hono } from "hono";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * What pages load: our style and icon, and one script: htmx, its extension for live screens, our own browser code. In one
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
  const css = readFileSync(here("../views/parts/style.css"), "utf8");
  const recordCss = readFileSync(here("../views/pages/record/style.css"), "utf8");
  const timeCss = readFileSync(here("../views/pages/time/style.css"), "utf8");
  const tentsCss = readFileSync(here("../views/pages/tents/style.css"), "utf8");
  const layoutCss = readFileSync(here("../views/pages/layout/style.css"), "utf8");
  const truckCss = readFileSync(here("../views/pages/truck/style.css"), "utf8");
  const icon = readFileSync(here("../views/assets/icon.svg"), "utf8");
  const text = (body: string, type: string) => () =>
    new Response(body, { headers: { "content-type": `${type}; charset=utf-8`, "cache-control": "no-cache" } });
  return new Hono()
    .get("/assets/client.js", text([library("htmx.min.js"), library("ext/hx-sse.min.js"), client].join(";\n"), "text/javascript"))
    .get("/assets/ridgecall.css", text(css, "text/css"))
    .get("/assets/record.css", text(recordCss, "text/css"))
    .get("/assets/time.css", text(timeCss, "text/css"))
    .get("/assets/tents.css", text(tentsCss, "text/css"))
    .get("/assets/layout.css", text(layoutCss, "text/css"))
    .get("/assets/truck.css", text(truckCss, "text/css"))
    .get("/assets/icon.svg", text(icon, "image/svg+xml"))
    .get("/favicon.ico", text(icon, "image/svg+xml"));
}
