import type { EdgeName, StationKind } from "../tent/types.ts";

/** What a plan can count. `sidePoles` are all that stand round the edge. */
export type Countable = "stakes" | "plates" | "straps" | "rings" | "quarterPoles" | "centerPoles" | "sidePoles" | "pieces" | "seams";

/** What a crew asks. It is answered and not recorded. `words` are the asker's own, for an answer that has to say them back. */
export type Question =
  | { readonly asks: "again" }
  | { readonly asks: "why" }
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
  /** With a tape of so many feet; `null` where none was named, `unknown` where what was named is no length. */
  | { readonly asks: "rightAngle"; readonly tapeFt: number | "unknown" | null; readonly words: string };
