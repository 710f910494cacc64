import { Hono } from "hono";
import { manifest } from "../../views/manifest.ts";

/** What a phone asks for to install the guide. It asks without cookies: in the language of its browser. */
export const manifestRoutes = () =>
  new Hono().get("/manifest.webmanifest", (c) =>
    c.body(JSON.stringify(manifest(c.get("words"))), 200, {
      "content-type": "application/manifest+json; charset=utf-8",
      "cache-control": "private, max-age=86400",
    }),
  );
