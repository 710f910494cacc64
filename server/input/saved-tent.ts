import { nearestName } from "../../machines/lookup/nearest.ts";
import type { KitCatalog } from "../../machines/tent/load.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { TentSpec } from "../../machines/tent/types.ts";
import type { Fields } from "./form.ts";
import { parseJson } from "./json.ts";
import { kitFromForm, readKit } from "./kit.ts";
import { Problem, type Sentence } from "./problem.ts";
import { noFields } from "./strict.ts";
import { tentFromForm, unknownFields } from "./tent.ts";

/** A tent for the list: a name, a spec that can be planned, and the yard's notes on its kit or `null`. */
export type NamedTent = { readonly name: string; readonly spec: TentSpec; readonly kit: KitCatalog | null };

/** What a tent of the list says, so that it can be given back as it was taken. */
const KNOWN = ["name", "spec", "kit", "id", "version", "example", "counts"];
const MAX_NAME = 80;
export const noTentGiven: Sentence = (w) => w.errors.noTentGiven;
/** Anything that is no line of text: a name stands in lists and sentences. */
const CONTROLS = /\p{Cc}/u;

/** A tent from outside, `{ name, spec, kit? }`, or a Problem that names every field that is wrong. */
export function readNamedTent(input: unknown): NamedTent {
  if (typeof input !== "object" || input === null || Array.isArray(input)) throw new Problem(422, noTentGiven, { spec: noTentGiven });
  const { name, spec, kit } = input as Record<string, unknown>;
  const problems = noFields<Sentence>();
  for (const field of Object.keys(input).filter((f) => !KNOWN.includes(f)))
    problems[field] = (w) => w.errors.notKnown(field, nearestName(field, KNOWN), KNOWN);
  const named = typeof name === "string" ? name.normalize("NFC").replaceAll(/\s+/g, " ").trim() : "";
  if (named === "")
    problems.name = (w) => (typeof name === "string" || name === undefined || name === null ? w.errors.noName : w.errors.nameNotText(name));
  else if ([...named].length > MAX_NAME) problems.name = (w) => w.errors.nameTooLong([...named].length, MAX_NAME);
  else if (CONTROLS.test(named)) problems.name = (w) => w.errors.nameNotText(named);
  const checked = typeof spec === "object" && spec !== null && !Array.isArray(spec) ? checkSpec(spec) : null;
  if (checked === null) problems.spec = noTentGiven;
  else if ("problems" in checked) for (const p of checked.problems) problems[`spec.${p.field}`] ??= (w) => w.errors.tent(p);
  if (checked !== null) for (const [field, why] of unknownFields(spec as object)) problems[`spec.${field}`] = why;
  const read = readKit(kit);
  if ("problems" in read) Object.assign(problems, read.problems);
  if (checked === null || "problems" in checked || "problems" in read || Object.keys(problems).length > 0)
    throw new Problem(422, (w) => w.errors.tentRefused, problems);
  return { name: named, spec: checked.spec, kit: read.kit ?? null };
}

/** The form of a tent for the list, as `readNamedTent` takes it. */
export const namedTentFromForm = (f: Fields) => ({ name: f.name ?? "", spec: tentFromForm(f), kit: kitFromForm(f) ?? null });

/** A pasted text as JSON; an empty name beside it leaves the name that is in it. Throws a Problem. */
export function pastedTent(text: string, name: string): unknown {
  let read: unknown;
  try {
    read = parseJson(text);
  } catch {
    const notJson: Sentence = (w) => w.errors.pastedNotJson(text.trim());
    throw new Problem(422, notJson, { json: notJson });
  }
  return name.trim() !== "" && typeof read === "object" && read !== null && !Array.isArray(read) ? { ...read, name } : read;
}
