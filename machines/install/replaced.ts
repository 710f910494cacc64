import type { SiteModel } from "../site/model.ts";
import type { StakeName } from "../site/stand.ts";
import type { KitItem, Station, TentPlan } from "../tent/types.ts";

/** The stakes of a site that an engineer's anchor takes the place of. */
export const replacedIn = ({ fixes = [] }: Pick<SiteModel, "fixes">): StakeName[] =>
  fixes.flatMap((fix) => (fix.is === "engineeredAnchor" ? [fix.stake] : []));

/**
 * The plan without the stakes that anchors replace: they are not driven, counted, brought or pulled. Their plates stay in the plan,
 * marked `replaced`: the anchor is set there, and the strap runs to it. The same plan if none is replaced.
 */
export function withReplaced(plan: TentPlan, replaced: readonly StakeName[]): TentPlan {
  if (replaced.length === 0) return plan;
  const gone = replaced.flatMap((name) => (name.is === "plate" ? [{ station: name.station, stakes: stakesAt(plan, name) }] : []));
  const stations = plan.stations.map((station): Station => {
    const here = gone.filter((one) => one.station === station.id);
    return { ...station, plates: station.plates - here.length, stakes: station.stakes - sum(here) };
  });
  const nth = new Map<string, number>();
  const plates = plan.plates.map((plate) => {
    const no = (nth.get(plate.station) ?? 0) + 1;
    nth.set(plate.station, no);
    const isGone = replaced.some((name) => name.is === "plate" && name.station === plate.station && name.plate === no);
    return isGone ? { ...plate, replaced: true as const } : plate;
  });
  const less: Partial<Record<KitItem, number>> = {
    perimeterStake: sum(gone),
    stakePlate: gone.length,
    interiorStake: replaced.length - gone.length,
  };
  const kit = plan.kit.map((line) => ({ ...line, count: line.count - (less[line.item] ?? 0) })).filter(({ count }) => count > 0);
  return { ...plan, stations, plates, kit };
}

const sum = (gone: readonly { readonly stakes: number }[]): number => gone.reduce((n, { stakes }) => n + stakes, 0);

/** The stakes of a plate, by its number at its station. */
const stakesAt = ({ plates }: TentPlan, { station, plate }: Extract<StakeName, { is: "plate" }>): number =>
  plates.filter((p) => p.station === station)[plate - 1]!.stakes;

/** The replaced ones at some stations or poles by their codes, as they stand in a call: all of a station by its id, one plate of several as `A.2`. */
export function replacedAt(replaced: readonly StakeName[], { stations }: Pick<TentPlan, "stations">, at: (id: string) => boolean): string {
  const codes = replaced
    .filter((name) => at(name.is === "plate" ? name.station : name.pole))
    .map((name) => {
      if (name.is === "tie") return name.pole;
      return stations.find(({ id }) => id === name.station)?.plates === 0 ? name.station : `${name.station}.${name.plate}`;
    });
  return [...new Set(codes)].join(" ");
}
