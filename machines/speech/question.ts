import type { LoadItem } from "../tent/load.ts";
import type { EdgeName, StationKind } from "../tent/types.ts";

/** What a plan can count. `sidePoles` are all poles around the perimeter, `stations` the marks that they stand at. */
export type Countable =
  | "stakes"
  | "plates"
  | "straps"
  | "rings"
  | "quarterPoles"
  | "centerPoles"
  | "sidePoles"
  | "stations"
  | "pieces"
  | "seams";

/** What is asked in a fixed number of ways, and answered from the call, the job or its brief. */
export const FIXED_QUESTIONS = [
  "again",
  "why",
  /** How this call is done well. */
  "how",
  "whatsLeft",
  "howLong",
  "whereNext",
  "whichPiece",
  /** Whose loops go through whose grommets. */
  "laceSide",
  "strapLength",
  "howFarToTheRing",
  "whatsTheWind",
  /** What the gate takes as good. */
  "whatsTheLimit",
  "lastRead",
  "whoSaid",
  "firstAid",
  "rallyPoint",
  "stormShelter",
  "address",
] as const;
export type FixedQuestion = (typeof FIXED_QUESTIONS)[number];

/** A question from the crew. It is answered but not recorded. `words` are the asker's own, for answers that repeat them. */
export type Question =
  | { readonly asks: FixedQuestion }
  | {
      readonly asks: "howMany";
      readonly what: Countable | null;
      readonly edge: EdgeName | null;
      readonly kind: StationKind | null;
      /** Of this call, and not of the whole tent. */
      readonly here: boolean;
      readonly words: string;
    }
  /** `items` is what of the truck goes by the name that was said. */
  | { readonly asks: "where"; readonly places: readonly string[]; readonly items: readonly LoadItem[]; readonly words: string }
  /** `tapeFt` is `null` if no tape was named, and `unknown` if what was named is not a length. */
  | { readonly asks: "rightAngle"; readonly tapeFt: number | "unknown" | null; readonly words: string };
