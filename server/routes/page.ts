import type { Context } from "hono";
import { type Child, jsx } from "hono/jsx";
import { Assets, plainPaths } from "../../views/parts/asset-paths.ts";

/** A whole page, with the names of what it loads. Without a doctype a browser falls back to old rules. */
export const page = async (c: Context, node: Child): Promise<string> =>
  `<!DOCTYPE html>${await jsx(Assets.Provider, { value: c.get("assets") ?? plainPaths }, node).toString()}`;
