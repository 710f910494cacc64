import { digest } from "../digest/digest.ts";
import { EMPTY_SITE, type SiteModel } from "../site/model.ts";
import { toGrid } from "../tent/grid.ts";
import { looserNeighbors } from "./looser-site.ts";
import type { Frozen } from "./step.ts";

type How = "added" | "gone" | "moved" | "changed";

/** What an amendment changes of a site. `looser` where the tent keeps less clear of it than before. */
export type SiteChange =
  /** A line or a thing, by its name and kind: `overhead`, a kind of buried line, a kind of thing. */
  | { readonly what: "neighbor"; readonly kind: string; readonly id: string; readonly how: How; readonly looser?: true }
  | { readonly what: "area"; readonly which: "ground" | "ticketArea" | "slope"; readonly how: How; readonly looser?: true }
  /** Where corner A is to stand: how far from where it was, ft, and how the baseline A–B turns, degrees clockwise. */
  | { readonly what: "place"; readonly byFt: number; readonly turnedDeg: number }
  /** What is done about a stake: its station's plates slide, or an engineer's anchor in its place. */
  | { readonly what: "slide"; readonly station: string; readonly byFt: number }
  | { readonly what: "anchor"; readonly stake: string; readonly how: How; readonly looser?: true };

/** All that differs of a site, what is looser first, then where the tent stands. Empty where nothing does. */
export function siteChangesOf(from: Frozen, to: Frozen): SiteChange[] {
  const [was, is] = [from.brief.siteModel ?? EMPTY_SITE, to.brief.siteModel ?? EMPTY_SITE];
  if (digest.of(was) === digest.of(is)) return [];
  const looser = new Set(looserNeighbors(from, to).map(({ field, id }) => `${field} ${id}`));
  const marked = <C extends SiteChange>(key: string, change: C): C => (looser.has(key) ? { ...change, looser: true } : change);
  const lists = [
    ...listed(was.buried, is.buried, ({ kind }) => kind).map((change) => marked(`buried ${change.id}`, change)),
    ...listed(was.overhead, is.overhead, () => "overhead").map((change) => marked(`overhead ${change.id}`, change)),
    ...listed(was.things, is.things, ({ kind }) => kind).map((change) => marked(`things ${change.id}`, change)),
  ];
  const areas = (["ground", "ticketArea", "slope"] as const).flatMap((which): SiteChange[] => {
    const how = howOf(was[which], is[which]);
    return how === null ? [] : [marked(`${which} ${which}`, { what: "area", which, how })];
  });
  const all: SiteChange[] = [...placed(was, is), ...lists, ...areas, ...fixed(was, is).map((c) => (c.what === "anchor" ? marked(`fixes ${c.stake}`, c) : c))]; // biome-ignore format: one line reads best
  const isLooser = (change: SiteChange) => "looser" in change && change.looser === true;
  return [...all.filter(isLooser), ...all.filter((change) => !isLooser(change))];
}

type Named = { readonly id: string };
function listed<T extends Named>(was: readonly T[], is: readonly T[], kindOf: (one: T) => string) {
  const ids = [...new Set([...was, ...is].map(({ id }) => id))];
  return ids.flatMap((id) => {
    const [before, after] = [was, is].map((all) => all.find((one) => one.id === id));
    const how = howOf(before ?? null, after ?? null);
    return how === null ? [] : [{ what: "neighbor", kind: kindOf((after ?? before)!), id, how } as const];
  });
}

/** Points alone differ: it moved. */
function howOf(before: object | null, after: object | null): How | null {
  if (digest.of(before) === digest.of(after)) return null;
  if (before === null || after === null) return before === null ? "added" : "gone";
  const rest = ({ points: _, shape: _s, corners: _c, ...others }: Record<string, unknown>) => digest.of(others);
  return rest(before as Record<string, unknown>) === rest(after as Record<string, unknown>) ? "moved" : "changed";
}

function placed(was: SiteModel, is: SiteModel): SiteChange[] {
  const at = ({ wanted }: SiteModel) => wanted ?? { cornerA: { xFt: 0, yFt: 0 }, headingDeg: 0 };
  const [before, after] = [at(was), at(is)];
  const byFt = toGrid(Math.hypot(after.cornerA.xFt - before.cornerA.xFt, after.cornerA.yFt - before.cornerA.yFt));
  const turnedDeg = toGrid(((((after.headingDeg - before.headingDeg) % 360) + 540) % 360) - 180);
  return byFt === 0 && turnedDeg === 0 ? [] : [{ what: "place", byFt, turnedDeg }];
}

function fixed({ fixes: was = [] }: SiteModel, { fixes: is = [] }: SiteModel): (SiteChange & { what: "slide" | "anchor" })[] {
  const slide = (all: NonNullable<SiteModel["fixes"]>) =>
    new Map(all.flatMap((f) => (f.is === "slide" ? [[f.station, f.byFt] as const] : [])));
  const anchors = (all: NonNullable<SiteModel["fixes"]>) => new Set(all.flatMap((f) => (f.is === "engineeredAnchor" ? [f.stake.is === "plate" ? `${f.stake.station}.${f.stake.plate}` : f.stake.pole] : []))); // biome-ignore format: one line reads best
  const [slidBefore, slidAfter, before, after] = [slide(was), slide(is), anchors(was), anchors(is)];
  return [
    ...[...new Set([...slidBefore.keys(), ...slidAfter.keys()])].flatMap((station) => {
      const byFt = toGrid((slidAfter.get(station) ?? 0) - (slidBefore.get(station) ?? 0));
      return byFt === 0 ? [] : [{ what: "slide", station, byFt } as const];
    }),
    ...[...after].filter((stake) => !before.has(stake)).map((stake) => ({ what: "anchor", stake, how: "added" }) as const),
    ...[...before].filter((stake) => !after.has(stake)).map((stake) => ({ what: "anchor", stake, how: "gone" }) as const),
  ];
}
