import type { LoadItem } from "../../tent/load.ts";
import type { TentPlan } from "../../tent/types.ts";
import { kitKey, pieceKey } from "../thing.ts";

/** The keys of lines of the kit, as a call names what it needs. */
export const kitLines = (...items: readonly LoadItem[]): string[] => items.map(kitKey);

/** What is driven with, beside the stakes. */
export const DRIVING = kitLines("stakeDriver", "earMuff", "goggles");

/** Whatever goes up: all of the cloth, all that holds it down, and a hat for everybody near it. */
export const toRaise = ({ pieces }: TentPlan): string[] => [
  ...pieces.map((p) => pieceKey(p.id)),
  ...kitLines("perimeterStake", "stakePlate", "perimeterStrap", "hardHat"),
];
