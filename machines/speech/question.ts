import type { EdgeName, StationKind } from "../tent/types.ts";

/** What a plan can count. `sidePoles` are all poles around the perimeter. */
export type Countable = "stakes" | "plates" | "straps" | "rings" | "quarterPoles" | "centerPoles" | "sidePoles" | "pieces" | "seams";

/** A question from the crew. It is answered but not recorded. `words` are the asker's own, for answers that repeat them. */
export type Question =
  | { readonly asks: "again" }
  | { readonly asks: "why" }
  /** How this call is done well. */
  | { readonly asks: "how" }
  | { readonly asks: "whatsLeft" }
  | { readonly asks: "whereNext" }
  | { readonly asks: "whichPiece" }
  | { readonly asks: "howFarToTheRing" }
  | {
      readonly asks: "howMany";
      readonly what: Countable | null;
      readonly edge: EdgeName | null;
      readonly kind: StationKind | null;
      readonly words: string;
    }
  | { readonly asks: "where"; readonly places: readonly string[]; readonly words: string }
  /** `tapeFt` is `null` if no tape was named, and `unknown` if what was named is not a length. */
  | { readonly asks: "rightAngle"; readonly tapeFt: number | "unknown" | null; readonly words: string };
