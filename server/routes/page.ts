import type { Context } from "hono";
import { type Child, jsx } from "hono/jsx";
import { Assets, plainPaths, Thunder, Trials } from "../../views/parts/asset-paths.ts";
import { ThunderElsewhere } from "../../views/parts/thunder-elsewhere.tsx";

/** A whole page, with the names of what it loads. Without a doctype a browser falls back to old rules. */
export async function page(c: Context, node: Child): Promise<string> {
  // What is answered before anybody asked who comes is no page of a job.
  const trials = c.get("visitor")?.mode === "trials";
  const thunder = (await c.get("lightning")?.()) ?? null;
  const elsewhere = (await c.get("thunderElsewhere")?.()) ?? [];
  const told = jsx(ThunderElsewhere.Provider, { value: elsewhere }, jsx(Thunder.Provider, { value: thunder }, node));
  const inside = jsx(Trials.Provider, { value: trials }, told);
  const whole = jsx(Assets.Provider, { value: c.get("assets") ?? plainPaths }, inside);
  return `<!DOCTYPE html>${await whole.toString()}`;
}
