import type { LoadItem } from "../tent/load.ts";

/** What can be out of use: a piece of cloth, or so many of a line of the kit that are short. */
export type Thing = { readonly is: "piece"; readonly id: string } | { readonly is: "kit"; readonly item: LoadItem; readonly short: number };

/** So many of a thing can be short. */
export const SHORT_BOUNDS = { from: 1, to: 10_000 } as const;

export const pieceKey = (id: string): string => `piece.${id}`;
export const kitKey = (item: LoadItem): string => `kit.${item}`;

/**
 * The name that a thing goes by in state and script, however many are short.
 *
 * @example keyOf({ is: "piece", id: "mid-1" }) // "piece.mid-1"
 */
export const keyOf = (thing: Thing): string => (thing.is === "piece" ? pieceKey(thing.id) : kitKey(thing.item));
