import type { WallTime } from "../install/ids.ts";
import { PHASES, type PhaseId } from "../install/step.ts";
import type { Item } from "./questions/items.ts";
import { type Card, type Standing, standing } from "./repetition.ts";

/** How much of a phase somebody knows today: items by how they stand. */
export type PhaseProgress = { readonly phase: PhaseId; readonly of: number } & { readonly [S in Standing]: number };

/** Phase by phase, of these items. A phase that none is of is left out. */
export function progressOf(items: readonly Item[], cards: ReadonlyMap<string, Card>, at: WallTime): PhaseProgress[] {
  return PHASES.flatMap((phase) => {
    const stands = items.filter((item) => item.phase === phase).map(({ id }) => standing(cards.get(id) ?? null, at));
    const how = (is: Standing) => stands.filter((one) => one === is).length;
    return stands.length === 0 ? [] : [{ phase, of: stands.length, known: how("known"), begun: how("begun"), new: how("new") }];
  });
}
