import type { Fields } from "../input/form.ts";
import { parseJson } from "../input/json.ts";

/** The field of a draft that has what its anchors are screened by, as JSON: no form of a step shows it. */
export const ANCHORAGE_FIELD = "anchorage";

/** The same as it was told; absent where nobody told anything. */
export function anchorageTold(f: Fields): { readonly anchorage?: unknown } {
  const text = f[ANCHORAGE_FIELD];
  return text === undefined || text === "" ? {} : { anchorage: parseJson(text) };
}
