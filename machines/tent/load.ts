import type { KitItem, TentPlan } from "./types.ts";

/** What the yard says of an item: the share that goes along as spares (0.05 is 5 %), and what one weighs, where known. */
export type KitNote = { readonly spare?: number; readonly unitLb?: number };
export type KitCatalog = Readonly<Partial<Record<KitItem, KitNote>>>;

/** One line of the loading list. `lb` is null where no unit weight is known: it is never guessed. */
export type LoadLine = {
  readonly item: KitItem;
  readonly need: number;
  readonly spares: number;
  readonly count: number;
  /** The share of spares (0.05 is 5 %), and who says so: the yard, or what is usual. */
  readonly share: number;
  readonly shareBy: "yard" | "usual";
  readonly unitLb: number | null;
  readonly lb: number | null;
};

/** What a load weighs as far as it is known, in lb, and the things whose weight nobody has given. */
export type LoadWeight = { readonly lb: number; readonly unknown: readonly string[] };

/** Spares that usually go along, as a share of what the plan needs. Common practice, no source: the yard's own figure replaces it. */
export const USUAL_SPARE: Readonly<Partial<Record<KitItem, number>>> = {
  perimeterStake: 0.05,
  perimeterStrap: 0.05,
  stakePlate: 0.03,
  interiorStake: 0.05,
  interiorStrap: 0.05,
  sidePole: 0.03,
};

/** The order in which things are used on the site: what comes first stands first, and is loaded last. */
export const ORDER_OF_USE: readonly KitItem[] = [
  "perimeterStake",
  "stakePlate",
  "perimeterStrap",
  "wholeTop",
  "splitEndPiece",
  "endPiece",
  "midPiece",
  "cornerPole",
  "sidePole",
  "quarterPole",
  "centerPole",
  "polePlate",
  "interiorStake",
  "interiorStrap",
];

/** The kit with its spares and weights in the order of use. Spares are rounded up to whole ones. */
export function loadOf({ kit }: Pick<TentPlan, "kit">, catalog: KitCatalog = {}): LoadLine[] {
  return ORDER_OF_USE.flatMap((item): LoadLine[] => {
    const need = kit.find((line) => line.item === item)?.count ?? 0;
    if (need === 0) return [];
    const { spare, unitLb = null } = catalog[item] ?? {};
    const share = spare ?? USUAL_SPARE[item] ?? 0;
    const spares = Math.max(0, Math.ceil(need * share - 1e-9));
    const count = need + spares;
    const lb = unitLb === null ? null : unitLb * count;
    return [{ item, need, spares, count, share, shareBy: spare === undefined ? "usual" : "yard", unitLb, lb }];
  });
}

/**
 * The order in which a truck is loaded: used first goes on last, by the tailgate. It is also roughly the order in which a
 * tent comes down again, so the same list counts the kit back. Common practice, no source.
 */
export const loadingOrder = <T>(byUse: readonly T[]): T[] => byUse.toReversed();

/** The weight of a load, with what is not known of it. */
export const weightOf = (lines: readonly { readonly item: string; readonly lb: number | null }[]): LoadWeight => ({
  lb: lines.reduce((sum, { lb }) => sum + (lb ?? 0), 0),
  unknown: lines.filter(({ lb }) => lb === null).map(({ item }) => item),
});
