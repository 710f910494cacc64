import { digest } from "../digest/digest.ts";
import { type Capacity, capacityOf, MIN_FACTOR_OF_SAFETY } from "../loads/capacity.ts";
import { EXPOSURES } from "../loads/pressure.ts";
import { USUAL_AT_PLATE } from "../loads/stakes.ts";
import { anchorFactsOf } from "./anchor-facts.ts";
import type { Anchorage } from "./anchorage.ts";
import type { Brief } from "./brief.ts";

type Screened = Pick<Brief, "anchorage" | "sheet" | "use">;

/** What of a ground decides what a stake may be counted for. */
const OF_GROUND = ["material", "soil", "groundState", "pulls", "rainSincePulls"] as const satisfies readonly (keyof Anchorage)[];

/**
 * What a change makes kinder for the anchors, by its field in the brief: less wind, a more sheltered site, ground or pulls that let a stake
 * count for more. What is no longer told is kinder too, as it is taken at its kindest then. No paper governs it: a second person looks.
 */
export function looserAnchorage(from: Screened, to: Screened): string[] {
  const [was, is] = [from.anchorage, to.anchorage];
  if (was === undefined || digest.of(was) === digest.of(is ?? null)) return [];
  // Not screened any more: all that was told goes.
  const fields = is === undefined ? told(was) : [...looserLoad(was, is), ...looserGround(from, was, is), ...looserRest(was, is)];
  return fields.map((field) => `anchorage.${field}`);
}

const told = (was: Anchorage): string[] =>
  Object.entries(was).flatMap(([key, value]) => (value === null || typeof value === "object" ? [] : [key])).concat(was.pulls.length > 0 ? ["pulls"] : []); // biome-ignore format: one line reads best

function looserLoad(was: Anchorage, is: Anchorage): string[] {
  const wind = (a: Anchorage) => a.gustMph ?? 0;
  const shelter = (a: Anchorage) => (a.exposure === null ? -1 : EXPOSURES.indexOf(a.exposure));
  const blocked = (a: Anchorage) => (a.underRoof === "obstructed" ? 1 : 0);
  return [
    ...(wind(is) < wind(was) ? ["gustMph"] : []),
    ...(shelter(is) < shelter(was) ? ["exposure"] : []),
    ...((is.elevationFt ?? 0) > (was.elevationFt ?? 0) ? ["elevationFt"] : []),
    ...(blocked(is) < blocked(was) ? ["underRoof"] : []),
  ];
}

/** Each change of the ground by itself; where only all of them together are kinder, all of them. */
function looserGround(from: Screened, was: Anchorage, is: Anchorage): string[] {
  const capacity = (anchorage: Anchorage): Capacity => {
    const { stake, ground } = anchorFactsOf({ ...from, anchorage });
    return capacityOf(stake, ground);
  };
  const changed = OF_GROUND.filter((field) => digest.of(was[field]) !== digest.of(is[field]));
  const before = capacity(was);
  const alone = changed.filter((field) => isKinder(before, capacity({ ...was, [field]: is[field] })));
  return alone.length === 0 && isKinder(before, capacity(is)) ? changed : alone;
}

/** What is refused holds nothing; what has no ceiling may hold anything. */
const ceiling = ({ by, atMostLbf }: Capacity): number => (by === "refused" ? 0 : (atMostLbf ?? Number.POSITIVE_INFINITY));
const isKinder = (was: Capacity, is: Capacity): boolean =>
  ceiling(is) > ceiling(was) || (is.safeLbf !== null && is.safeLbf > (was.safeLbf ?? 0));

function looserRest(was: Anchorage, is: Anchorage): string[] {
  const factor = (a: Anchorage) => a.factorOfSafety ?? MIN_FACTOR_OF_SAFETY;
  const friction = (a: Anchorage) => a.friction?.coefficient ?? Number.POSITIVE_INFINITY;
  const allowed = (a: Anchorage, kind: keyof Anchorage["sheetAllows"]) => a.sheetAllows[kind] ?? USUAL_AT_PLATE;
  const allows = (["corner", "seamEnd", "side"] as const).filter((kind) => allowed(is, kind) > allowed(was, kind));
  return [
    ...(factor(is) < factor(was) ? ["factorOfSafety"] : []),
    ...(was.friction && friction(is) > friction(was) ? ["friction.coefficient"] : []),
    ...allows.map((kind) => `sheetAllows.${kind}`),
  ];
}
