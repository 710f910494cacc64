import type { Context } from "hono";
import { parseJson } from "../input/json.ts";
import { Problem } from "../input/problem.ts";

export const wantsJson = (c: Context): boolean =>
  c.req.path.endsWith(".json") || (c.req.header("content-type") ?? "").includes("application/json");

/** A site of as many stretches as one may have, with all else of a brief, has half as many: each that is wrong is told, and that takes a while. */
const MAX_VALUES = 25_000;

/** The body as JSON, or a Problem. */
export async function jsonBody(c: Context): Promise<unknown> {
  const text = await c.req.text();
  if (text.split(",").length > MAX_VALUES) throw new Problem(413, (w) => w.errors.tooManyValues(MAX_VALUES));
  try {
    return parseJson(text);
  } catch {
    throw new Problem(400, (w) => w.errors.notJson);
  }
}

/** What a page sends its forms as. */
const FORMS = ["application/x-www-form-urlencoded", "multipart/form-data"];

/** A form's fields as text: of a field that comes twice the last counts, and a file is none. Throws a Problem where it cannot be read. */
export const formBody = async (c: Context): Promise<Record<string, string>> => textsIn(await parsedForm(c));

/** The same with one file, by the name of its field; `null` where none was picked. */
export async function formWithFile(c: Context, name: string): Promise<{ fields: Record<string, string>; file: File | null }> {
  const body = await parsedForm(c);
  const file = body[name];
  // A browser sends an empty one without a name where nobody picked any.
  const isPicked = file instanceof File && (file.size > 0 || file.name !== "");
  return { fields: textsIn(body), file: isPicked ? file : null };
}

type Body = Awaited<ReturnType<Context["req"]["parseBody"]>>;
const textsIn = (body: Body): Record<string, string> =>
  Object.fromEntries(Object.entries(body).filter((field): field is [string, string] => typeof field[1] === "string"));

async function parsedForm(c: Context): Promise<Body> {
  const [type = ""] = (c.req.header("content-type") ?? "").split(";");
  if (!FORMS.includes(type.trim().toLowerCase())) throw new Problem(415, (w) => w.errors.notAForm);
  return c.req.parseBody().catch(() => {
    throw new Problem(400, (w) => w.errors.brokenForm);
  });
}
