import type { Context } from "hono";
import { parseJson } from "../input/json.ts";
import { Problem } from "../input/problem.ts";

export const wantsJson = (c: Context): boolean =>
  c.req.path.endsWith(".json") || (c.req.header("content-type") ?? "").includes("application/json");

/** The body as JSON, or a Problem. */
export async function jsonBody(c: Context): Promise<unknown> {
  try {
    return parseJson(await c.req.text());
  } catch {
    throw new Problem(400, (w) => w.errors.notJson);
  }
}

/** A form's fields as text, or a Problem. */
export async function formBody(c: Context): Promise<Record<string, string>> {
  const type = c.req.header("content-type") ?? "";
  if (!type.includes("form")) throw new Problem(415, (w) => w.errors.notAForm);
  if (type.startsWith("application/x-www-form-urlencoded")) return Object.fromEntries(new URLSearchParams(await c.req.text()));
  const body = await c.req.parseBody();
  return Object.fromEntries(Object.entries(body).flatMap(([k, v]) => (typeof v === "string" ? [[k, v]] : [])));
}
