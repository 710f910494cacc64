import { digest } from "../digest/digest.ts";
import type { SiteClearances } from "../site/clearances.ts";
import { EMPTY_SITE, type SiteModel } from "../site/model.ts";
import { SAME_FT } from "../site/rules.ts";
import { type Looser, looserIn } from "./looser.ts";
import { placeOf, siteClearances } from "./site-clearances.ts";
import type { Frozen } from "./step.ts";

/** A line, a thing or an area of a site that is not kept clear of as it was, by its name; the field that it stands under. */
export type LooserNeighbor = { readonly field: "buried" | "overhead" | "things" | "ground" | "ticketArea" | "fixes"; readonly id: string };

/**
 * What a change of the site keeps less clear of: a line or thing that is gone, lies farther from the tent as it is to stand, or
 * wants less distance; ground that reaches farther; an anchor in place of a stake that stood in a zone. It is a correction of what
 * was entered, which a lead and a second person may make: no paper governs it, and it is shown first.
 */
export function looserNeighbors(from: Frozen, to: Frozen): LooserNeighbor[] {
  const [was, is] = [from.brief.siteModel, to.brief.siteModel ?? EMPTY_SITE];
  if (!was || digest.of(was) === digest.of(is)) return [];
  const place = placeOf(to.plan, is);
  // Both as if no stake was replaced, about the tent as it is to stand.
  const spare = (site: SiteModel) => sparesOf(siteClearances(to.plan, { ...site, fixes: [] }, to.limits, place));
  const [before, after] = [spare(was), spare(is)];
  const neighbors = [...before].flatMap(([key, { neighbor, spareFt }]) => {
    const now = after.get(key);
    return now === undefined || now.spareFt > spareFt + SAME_FT ? [neighbor] : [];
  });
  return [...neighbors, ...looserArea(was, is), ...newAnchors(was, is)];
}

/**
 * Everything that a change makes looser, what is kept less clear of included. Distances are worked out for it: what is replayed
 * asks `looserIn`, as no paper governs them.
 */
export function everythingLooser(from: Frozen, to: Frozen): Looser[] {
  const looser = looserIn(from, to);
  const fields = [...new Set(looserNeighbors(from, to).map(({ field }) => `siteModel.${field}`))];
  return [
    ...looser,
    ...fields.filter((field) => !looser.some((one) => one.field === field)).map((field): Looser => ({ field, paper: null })),
  ];
}

type Spare = { readonly neighbor: LooserNeighbor; readonly spareFt: number };

/** What is left over between the tent and each neighbor, by its name. */
function sparesOf({ neighbors }: SiteClearances): Map<string, Spare> {
  return new Map(
    neighbors.map(({ from, nearest }): [string, Spare] => {
      const [worst] = nearest;
      const spareFt = worst ? worst.distanceFt - worst.terms.reduce((sum, { ft }) => sum + (ft ?? 0), 0) : Number.POSITIVE_INFINITY;
      const neighbor: LooserNeighbor =
        from.is === "buried"
          ? { field: "buried", id: from.line.id }
          : from.is === "overhead"
            ? { field: "overhead", id: from.line.id }
            : from.is === "thing"
              ? { field: "things", id: from.thing.id }
              : { field: "ground", id: "ground" };
      return [`${neighbor.field} ${neighbor.id}`, { neighbor, spareFt }];
    }),
  );
}

/** Another area that the ticket is said to name, or none any more: what stands outside it may be asked no longer. */
const looserArea = (was: SiteModel, is: SiteModel): LooserNeighbor[] =>
  was.ticketArea !== null && digest.of(was.ticketArea) !== digest.of(is.ticketArea) ? [{ field: "ticketArea", id: "ticketArea" }] : [];

const newAnchors = (was: SiteModel, is: SiteModel): LooserNeighbor[] => {
  const before = new Set((was.fixes ?? []).map((fix) => digest.of(fix)));
  return (is.fixes ?? []).flatMap((fix) =>
    fix.is === "engineeredAnchor" && !before.has(digest.of(fix))
      ? [{ field: "fixes", id: fix.stake.is === "plate" ? `${fix.stake.station}.${fix.stake.plate}` : fix.stake.pole } as const]
      : [],
  );
};
