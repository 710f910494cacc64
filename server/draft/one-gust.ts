import type { Fields } from "../input/form.ts";
import { typed } from "../input/typed.ts";

/** The one gust that is asked for, and the other one that it means too. */
export const ONE_GUST = { asked: "sheet.raiseGustMph", meant: "sheet.stopGustMph" } as const;

/** Where one gust is told it is the sheet's lowest: it stops raising, and all other lifting and lowering with it. */
export function bothGusts(f: Fields): Fields {
  const asked = f[ONE_GUST.asked] ?? "";
  return typeof typed(asked, "mph") === "number" && !f[ONE_GUST.meant] ? { [ONE_GUST.meant]: asked } : {};
}
