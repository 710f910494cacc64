import type { Brief } from "./brief.ts";

/** An overhead line that a job keeps clear of. `name`: as it was entered on the site; `null` where only its voltage was told. */
export type ListedLine = { readonly name: string | null; readonly kv: number | null };

/**
 * The overhead lines of a job from the one place where each was told: those that were entered on the site take the place of the
 * brief's voltages. A voltage of the brief that no entered line has stays on the list, before the others: one line that was
 * entered does not take another off.
 */
export function overheadLinesOf({ site, siteModel }: Pick<Brief, "site" | "siteModel">): ListedLine[] {
  const entered = (siteModel?.overhead ?? []).map(({ id, kv }): ListedLine => ({ name: id, kv }));
  const left = entered.map(({ kv }) => kv);
  const others = site.overheadKv.filter((kv) => {
    const at = left.indexOf(kv);
    if (at < 0) return true;
    left.splice(at, 1);
    return false;
  });
  return [...others.map((kv): ListedLine => ({ name: null, kv })), ...entered];
}
