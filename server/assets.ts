import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { serveStatic } from "@hono/node-server/serve-static";
import { buildSync } from "esbuild";
import { Hono } from "hono";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** What pages load: our style and icon, our browser code bundled once, and htmx from its package. */
export function createAssets() {
  const htmx = dirname(createRequire(import.meta.url).resolve("htmx.org"));
  const client = buildSync({
    entryPoints: [here("../views/client/main.ts")],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2020",
    write: false,
  }).outputFiles[0]!.text;
  const css = readFileSync(here("../views/assets/ridgecall.css"), "utf8");
  const icon = readFileSync(here("../views/assets/icon.svg"), "utf8");
  const text = (body: string, type: string) => () =>
    new Response(body, { headers: { "content-type": `${type}; charset=utf-8`, "cache-control": "no-cache" } });
  return new Hono()
    .get("/assets/client.js", text(client, "text/javascript"))
    .get("/assets/ridgecall.css", text(css, "text/css"))
    .get("/assets/icon.svg", text(icon, "image/svg+xml"))
    .get("/favicon.ico", text(icon, "image/svg+xml"))
    .use("/htmx/*", serveStatic({ root: htmx, rewriteRequestPath: (path) => path.slice("/htmx".length) }));
}
