import type { Clearance, NeighborClearances, SiteClearances } from "../site/clearances.ts";
import type { Neighbor, Term } from "../site/rules.ts";
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
      // From the line's outer edge to the stake: what a tape says that is laid on the ground.
      const { clearFt, wantedFt } = apart(worst, "tolerance");
      return { kind: from.line.kind, id: from.line.id, of: stationsIn(stakes, plan), ...inInches(clearFt, wantedFt) };
    }
    case "overhead":
      return { kind: "overhead", id: from.line.id, of: names.flatMap((name) => (name.is === "pole" ? [name.id] : [])), ...inFeet(worst) };
    case "thing":
      return { kind: from.thing.kind, id: from.thing.id, of: [], ...inFeet(worst) };
    case "ground":
      return { kind: "ground", id: null, of: [], ...inFeet(worst) };
  }
}

/** A distance without all terms but one, and that one. */
function apart({ distanceFt, terms }: Clearance, by: Term["term"]) {
  const others = terms.reduce((sum, { term, ft }) => sum + (term === by ? 0 : (ft ?? 0)), 0);
  return { clearFt: distanceFt - others, wantedFt: terms.find(({ term }) => term === by)?.ft ?? 0 };
}

/** Never kinder than it is: what there is rounded down, what is wanted rounded up. On the grid, so that it is the same on every machine. */
const inInches = (clearFt: number, wantedFt: number) =>
  ({ distance: Math.max(0, Math.floor(toGrid(clearFt * 12))), wanted: Math.ceil(toGrid(wantedFt * 12)), unit: "in" }) as const;
const inFeet = ({ distanceFt, terms }: Clearance) => {
  const wantedFt = terms.reduce((sum, { ft }) => sum + (ft ?? 0), 0);
  return { distance: Math.floor(toGrid(distanceFt)), wanted: Math.ceil(toGrid(wantedFt)), unit: "ft" } as const;
};

/** How far the nearest stakes of a line are from its outer edge as worked out, in, rounded down; and which they are. */
export function nearestOf(
  { nearest }: NeighborClearances,
  plan: Stations,
): { readonly of: readonly string[]; readonly distanceIn: number } {
  const stakes = nearest.flatMap(({ of }) => (of.is === "plate" || of.is === "tie" ? [of] : []));
  return { of: stationsIn(stakes, plan, true), distanceIn: nearest[0] ? inInches(apart(nearest[0], "tolerance").clearFt, 0).distance : 0 };
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
