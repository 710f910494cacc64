import { planTent } from "../../machines/tent/plan.ts";
import type { TentSpec } from "../../machines/tent/types.ts";
import type { EndsAsked } from "../../views/pages/draft/state.ts";
import type { Fields } from "../input/form.ts";
import { readTentForm } from "../input/tent.ts";
import { sheetDigest } from "./fill.ts";

/** Said of a tent that was told by its size: its ends are as that size usually has them, and nobody looked yet. */
export const ASSUMED_ENDS = "assumed.ends";
/** What a press says of the ends. */
const ENDS: Readonly<Record<string, string>> = { split: "yes", whole: "no" };

const specOf = (f: Fields): TentSpec | null => {
  const read = readTentForm(f);
  return "spec" in read ? read.spec : null;
};

/** Names a drawing, so that a form can tell which one stood on its page. Its ends are asked beside it: either way it is this one. */
export function drawnOf(f: Fields): string | null {
  const spec = specOf(f);
  return spec && sheetDigest({ ...spec, splitEnds: false });
}

/** What is asked of the ends of a tent that was told by its size: how many pieces it has either way. `null` where they are known. */
export function endsAsked(f: Fields): EndsAsked | null {
  const spec = specOf(f);
  if (!spec || spec.onePiece || f[ASSUMED_ENDS] !== "yes") return null;
  const pieces = (splitEnds: boolean) => planTent({ ...spec, splitEnds }).pieces.length;
  return { split: pieces(true), whole: pieces(false) };
}

/** What was pressed of the ends, over what a draft says of its tent. One that is in one piece has none. */
export function withEnds(fields: Fields, ends: string | undefined): Fields {
  const said = Object.hasOwn(ENDS, ends ?? "") ? ENDS[ends!] : undefined;
  return said === undefined || fields["tent.onePiece"] !== "no" ? fields : { ...fields, "tent.splitEnds": said, [ASSUMED_ENDS]: "" };
}

/** Whether a tent has to be looked at before one goes on: its ends are open, or it was typed and stood on no page yet as it is now. */
export function isToBeSeen(f: Fields, form: Fields): boolean {
  const isTyped = Object.keys(form).some((name) => /^tent\./.test(name) && form[name] !== (form[`was.${name}`] ?? ""));
  return endsAsked(f) !== null || (isTyped && form.drawn !== drawnOf(f));
}
