import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { serveStatic } from "@hono/node-server/serve-static";
import { type Context, Hono, type MiddlewareHandler } from "hono";
import { accepts } from "hono/accepts";
import { etag } from "hono/etag";
import type { AssetPaths } from "../views/parts/asset-paths.ts";
import { type Built, builtAssets } from "./build-assets.ts";
import { earAssets } from "./voice/ear-assets.ts";

declare module "hono" {
  interface ContextVariableMap {
    /** Where the page that answers a request finds what it loads; unset where nobody serves it. */
    assets: AssetPaths | undefined;
  }
}

const NEVER_CHANGES = "public, max-age=31536000, immutable";
const ASK_EACH_TIME = "no-cache";
const FOR_A_DAY = "public, max-age=86400";
const ICON = "/assets/icon.svg";
/** A plain name, with or without the hash of a version before its ending. */
const FILE = /^([\w-]+)(?:\.([\da-f]{12}))?\.(css|js)$/;

/**
 * What pages load. Styles and script have a hash of what is in them in their names, and are kept for good; under a plain name,
 * or the hash of another version, there is what is current. Icons are files as they lie.
 */
export function createAssets(): Hono {
  const built = builtAssets();
  const paths: AssetPaths = (name) => `/assets/${name.replace(/\.\w+$/, `.${built(name)!.hash}$&`)}`;
  const zipped = new Map<Built, Uint8Array<ArrayBuffer>>();
  const zip = (asset: Built) => {
    const body = zipped.get(asset) ?? new Uint8Array(gzipSync(asset.text, { level: 9 }));
    zipped.set(asset, body);
    return body;
  };
  const app = new Hono();
  app.use(async (c, next) => {
    c.set("assets", paths);
    await next();
  });
  app.use("/assets/*", etag());
  app.get("/assets/:icon{icon[\\w-]*\\.(?:svg|png)}", keptForADay, serveStatic({ root: views }));
  app.get("/favicon.ico", keptForADay, serveStatic({ root: views, rewriteRequestPath: () => ICON }));
  app.route("/", earAssets(takesGzip));
  app.get("/assets/:file", async (c, next) => {
    const [, plain, hash, ending] = FILE.exec(c.req.param("file")) ?? [];
    const name = `${plain}.${ending}`;
    const asset = built(name);
    if (!asset) return next();
    const headers = headersOf(asset, hash === asset.hash);
    return takesGzip(c) ? c.body(zip(asset), 200, { ...headers, "content-encoding": "gzip" }) : c.body(asset.text, 200, headers);
  });
  return app;
}

const views = fileURLToPath(new URL("../views", import.meta.url));

const headersOf = ({ type, hash }: Built, kept: boolean) => ({
  "content-type": type,
  "cache-control": kept ? NEVER_CHANGES : ASK_EACH_TIME,
  // Weak: the same for a text and for what it is compressed to.
  etag: `W/"${hash}"`,
  vary: "accept-encoding",
});

const takesGzip = (c: Context): boolean =>
  accepts(c, {
    header: "Accept-Encoding",
    supports: ["gzip", "identity"],
    default: "identity",
    match: (asked) => {
      const gzip = asked.find(({ type }) => type === "gzip") ?? asked.find(({ type }) => type === "*");
      return gzip && gzip.q > 0 ? "gzip" : "identity";
    },
  }) === "gzip";

const keptForADay: MiddlewareHandler = async (c, next) => {
  await next();
  if (c.res.ok) c.header("cache-control", FOR_A_DAY);
};
