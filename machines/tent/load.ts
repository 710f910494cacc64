import type { ToolItem } from "./tools.ts";
import { KIT_ITEMS, type KitItem } from "./types.ts";

/** Anything on the truck. */
export type LoadItem = KitItem | ToolItem;

/** What the yard says about an item: the fraction to add as spares (0.05 is 5%), and the weight of one, if known. */
export type KitNote = { readonly spare?: number; readonly unitLb?: number };
export type KitCatalog = Readonly<Partial<Record<KitItem, KitNote>>>;

/** One line of the loading list. `lb` is null when the unit weight is unknown; it is never guessed. */
export type LoadLine = {
  readonly item: LoadItem;
  readonly need: number;
  readonly spares: number;
  readonly count: number;
  /** The fraction of spares (0.05 is 5%), and where it comes from: the yard, or the usual figure. */
  readonly share: number;
  readonly shareBy: "yard" | "usual";
  readonly unitLb: number | null;
  readonly lb: number | null;
};

/** Total of the known weights in lb, and the items whose weight is unknown. */
export type LoadWeight = { readonly lb: number; readonly unknown: readonly string[] };

/** Usual spares as a fraction of what the plan needs; the yard's own figure replaces it. Common practice, no source. */
export const USUAL_SPARE: Readonly<Partial<Record<KitItem, number>>> = {
  perimeterStake: 0.05,
  perimeterStrap: 0.05,
  stakePlate: 0.03,
  interiorStake: 0.05,
  interiorStrap: 0.05,
  sidePole: 0.03,
  quarterPole: 0.05,
  polePlate: 0.05,
};

/** Everything in the order it is used on site: the first one used is first here, and is loaded last. */
export const ORDER_ON_SITE: readonly LoadItem[] = [
  "firstAidKit",
  "waterCooler",
  "horn",
  "windMeter",
  "hardHat",
  "whitePaint",
  "tape300",
  "tape200",
  "tape100",
  "pocketTape",
  "layoutPin",
  "stringLine",
  "level",
  "plumbBob",
  "caliper",
  "leanGauge",
  "pullGauge",
  "comeAlong",
  "perimeterStake",
  "stakePlate",
  "perimeterStrap",
  "ballastWeight",
  "stakeDriver",
  "earMuff",
  "goggles",
  "stakeCap",
  "groundCloth",
  "wholeTop",
  "splitEndPiece",
  "endPiece",
  "midPiece",
  "cornerPole",
  "sidePole",
  "footRope",
  "quarterPole",
  "centerPole",
  "polePlate",
  "interiorStake",
  "interiorStrap",
  "strapFlag",
  "wallSet",
  "exitSign",
  "extinguisher",
  "ladder",
  "broom",
  "stakePuller",
  "shovel",
];
/** Whether something is part of the tent. Walls, ground cloths and tools are not: nobody says what they weigh. */
export const isTentPart = (item: string): item is KitItem => (KIT_ITEMS as readonly string[]).includes(item);
/** The parts of a tent in the same order: the yard may say what spares they get and what one weighs. */
export const ORDER_OF_USE: readonly KitItem[] = ORDER_ON_SITE.filter(isTentPart);

/** So many of an item that are needed. */
type Needed = { readonly item: LoadItem; readonly count: number };

/**
 * What is needed, with spares and weights, in order of use. Spares are rounded up to whole items.
 *
 * @example loadOf(plan).find((line) => line.item === "stakePlate").spares // 2
 */
export function loadOf({ kit }: { readonly kit: readonly Needed[] }, catalog: KitCatalog = {}): LoadLine[] {
  const counts = new Map(kit.map(({ item, count }) => [item, count]));
  return ORDER_ON_SITE.flatMap((item): LoadLine[] => {
    const need = counts.get(item) ?? 0;
    if (need === 0) return [];
    const { spare, unitLb = null } = isTentPart(item) ? (catalog[item] ?? {}) : {};
    const share = spare ?? (isTentPart(item) ? (USUAL_SPARE[item] ?? 0) : 0);
    const spares = Math.max(0, Math.ceil(need * share - 1e-9));
    const count = need + spares;
    const lb = unitLb === null ? null : unitLb * count;
    return [{ item, need, spares, count, share, shareBy: spare === undefined ? "usual" : "yard", unitLb, lb }];
  });
}

/**
 * The order for loading the truck: what is used first goes on last, by the tailgate. It all comes back in roughly the same
 * order, so this list also counts the kit back. Common practice, no source.
 *
 * @example loadingOrder(["perimeterStake", "wholeTop", "centerPole"]) // ["centerPole", "wholeTop", "perimeterStake"]
 */
export const loadingOrder = <T>(byUse: readonly T[]): T[] => byUse.toReversed();

/**
 * The weight of a load in lb, and the items of unknown weight that it leaves out.
 *
 * @example weightOf([{ item: "stakePlate", lb: 90 }, { item: "wholeTop", lb: null }]) // { lb: 90, unknown: ["wholeTop"] }
 */
export const weightOf = (lines: readonly { readonly item: string; readonly lb: number | null }[]): LoadWeight => ({
  lb: lines.reduce((sum, { lb }) => sum + (lb ?? 0), 0),
  unknown: lines.filter(({ lb }) => lb === null).map(({ item }) => item),
});
