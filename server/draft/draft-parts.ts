import { BRIEF_PARTS, type PartName } from "../input/brief-parts.ts";
import type { Fields } from "../input/form.ts";
import { parseJson } from "../input/json.ts";

/** Parts of a brief as a draft keeps them: each in a field of its own, as JSON, which no step shows; empty where nothing is entered. */
export type PartFields = { readonly [P in PartName]?: string };

/** The parts of a draft as they were entered, not checked: times as the clock at the site shows them. Absent where nothing was entered. */
export const partsEntered = (f: Fields): { readonly [P in PartName]?: unknown } =>
  Object.fromEntries(BRIEF_PARTS.flatMap((part) => (f[part] ? [[part, parseJson(f[part])]] : [])));

/** A part as its field keeps it. `null`: nothing was entered. */
export const partField = (part: unknown): string => (part === null ? "" : JSON.stringify(part));
