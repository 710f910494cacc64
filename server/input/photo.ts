import * as v from "valibot";
import { shortText } from "../../machines/install/checks/value-form.ts";
import { MAX_PHOTO_TEXT } from "../../machines/install/photo.ts";
import type { Fields } from "./form.ts";
import { Problem, type Sentence } from "./problem.ts";
import { AROUND, read } from "./say.ts";
import { noFields, strict } from "./strict.ts";
import { VALUE_ERRORS } from "./value-errors.ts";

const text = (max: number) => shortText(max, VALUE_ERRORS);
const form = strict({ ...AROUND, seen: v.optional(AROUND.seen, 0), gate: v.nullable(text(80)), text: v.nullable(text(MAX_PHOTO_TEXT)) });

/** What comes along with a photo: who, under which key, what it is of, what it shows. */
export type PhotoForm = v.InferOutput<typeof form>;

/** The fields of a form around a photo; its file is read elsewhere. Throws a Problem that names each field that is wrong. */
export function readPhotoForm({ seen, gate, text, ...fields }: Fields): PhotoForm {
  const wrong = noFields<Sentence>();
  const given = { ...fields, gate: gate?.trim() || null, text: text?.trim() || null, ...(seen ? { seen: Number(seen) } : {}) };
  const said = read(form, given, wrong);
  if (!said) throw new Problem(422, (w) => w.errors.bodyShape, wrong);
  return said;
}
