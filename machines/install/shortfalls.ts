import type { Clearance, NeighborClearances, SiteClearances } from "../site/clearances.ts";
import { knownFt, type Neighbor } from "../site/rules.ts";
import type { StakeName } from "../site/stand.ts";
import { toGrid } from "../tent/grid.ts";
import type { TentPlan } from "../tent/types.ts";
import type { Shortfall } from "./checks/computed.ts";

type Stations = Pick<TentPlan, "stations">;

/** What is too near, by what is looked at: stakes and buried lines, poles and wires, ropes and cloth, stakes outside the ticket's area. */
export type Shortfalls = {
  readonly stakes: readonly Shortfall[];
  readonly poles: readonly Shortfall[];
  readonly cloth: readonly Shortfall[];
  readonly ticket: readonly Shortfall[];
};

/** What of a tent is too near to something, the worst first in each list. */
export function shortfallsOf({ neighbors, leavesTicket }: SiteClearances, plan: Stations): Shortfalls {
  const of = (...kinds: readonly Neighbor["is"][]) =>
    neighbors
      .filter(({ from, short }) => short.length > 0 && kinds.includes(from.is))
      .map((one) => shortfallOf(one, plan))
      .sort((a, b) => (a.distance ?? 0) - (a.wanted ?? 0) - ((b.distance ?? 0) - (b.wanted ?? 0)));
  const outside = (leavesTicket ?? []).length === 0 ? [] : [{ kind: "ticketArea", id: null, of: stationsIn(leavesTicket!, plan), distance: null, wanted: null, unit: "ft" } as const]; // biome-ignore format: one line reads best
  return { stakes: of("buried"), poles: of("overhead"), cloth: of("thing", "ground"), ticket: outside };
}

function shortfallOf({ from, short }: NeighborClearances, plan: Stations): Shortfall {
  const names = short.map(({ of }) => of);
  const worst = short[0]!;
  switch (from.is) {
    case "buried": {
      const stakes = names.filter((name): name is StakeName => name.is === "plate" || name.is === "tie");
      return { kind: from.line.kind, id: from.line.id, of: stationsIn(stakes, plan), ...inInches(worst) };
    }
    case "overhead":
      return { kind: "overhead", id: from.line.id, of: names.flatMap((name) => (name.is === "pole" ? [name.id] : [])), ...inFeet(worst) };
    case "thing":
      return { kind: from.thing.kind, id: from.thing.id, of: [], ...inFeet(worst) };
    case "ground":
      return { kind: "ground", id: null, of: [], ...inFeet(worst) };
  }
}

/** Never kinder than it is: what there is rounded down, what is needed rounded up. On the grid, so that it is the same on every machine. */
const inInches = ({ distanceFt, terms }: Clearance) =>
  ({ distance: Math.floor(toGrid(distanceFt * 12)), wanted: Math.ceil(toGrid(knownFt(terms) * 12)), unit: "in" }) as const;
const inFeet = ({ distanceFt, terms }: Clearance) => {
  return { distance: Math.floor(toGrid(distanceFt)), wanted: Math.ceil(toGrid(knownFt(terms))), unit: "ft" } as const;
};

/**
 * The stakes of a line that the crew measures: which they are, what a tape from the line to the nearest mark should say, in, rounded
 * down, and what it has to say, rounded up: zone, half the line's width, and how far from its mark a stake may go in. Whoever tapes
 * it sees where the line is: how far off it was entered is not in it.
 */
export function nearestOf(
  { nearest }: NeighborClearances,
  plan: Stations,
): { readonly of: readonly string[]; readonly distanceIn: number; readonly neededIn: number } {
  // biome-ignore format: one line reads best
  const stakes = nearest.flatMap(({ of }) => (of.is === "plate" || of.is === "tie" ? [of] : []));
  const needed = nearest.map(({ terms }) => knownFt(terms.filter(({ term }) => term !== "entryError")));
  return {
    of: stationsIn(stakes, plan, true),
    distanceIn: nearest[0] ? inInches(nearest[0]).distance : 0,
    neededIn: Math.ceil(toGrid(Math.max(0, ...needed) * 12)),
  };
}

/** Stakes by where they are: a station whose plates are all meant by its id, one plate of several as `A.2`, a tie by its pole. */
export function stationsIn(stakes: readonly StakeName[], { stations }: Stations, whole = false): string[] {
  const plates = (id: string) => stations.find((s) => s.id === id)?.plates ?? 1;
  const meant = (id: string) => stakes.filter((s) => s.is === "plate" && s.station === id).length;
  const codes = stakes.map((s) =>
    s.is === "tie" ? s.pole : whole || meant(s.station) === plates(s.station) ? s.station : `${s.station}.${s.plate}`,
  );
  return [...new Set(codes)];
}
