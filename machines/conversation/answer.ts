import type { Gate, Answer as Given } from "../install/gates.ts";
import type { Wind } from "../install/state.ts";
import type { EscapeId, PhaseId, Step } from "../install/step.ts";
import type { RightAngle } from "../site/right-angle.ts";
import type { Countable } from "../speech/question.ts";
import type { LoadItem } from "../tent/load.ts";
import type { EdgeName, StationKind } from "../tent/types.ts";

/** What the guide answers to a question, as facts; `views/text` has the sentences. */
export type Answer =
  | { readonly is: "closed" }
  | { readonly is: "call" | "why" | "how"; readonly step: Step }
  | { readonly is: "left" | "howLong"; readonly calls: number; readonly phase: PhaseId | EscapeId; readonly here: number }
  /** `null` after the last call. */
  | { readonly is: "next"; readonly step: Step | null }
  | { readonly is: "piece"; readonly piece: string }
  | { readonly is: "pieces"; readonly lace: string; readonly eyelet: string }
  | { readonly is: "seam"; readonly seam: string }
  /** Seam by seam, whose loops go through whose grommets. */
  | { readonly is: "laced"; readonly seams: readonly { readonly id: string; readonly lace: string; readonly eyelet: string }[] }
  | { readonly is: "noPiece" }
  | { readonly is: "ring"; readonly atFt: number }
  | { readonly is: "noRing" }
  | { readonly is: "count"; readonly n: number; readonly what: Countable; readonly edge: EdgeName | null }
  | { readonly is: "stations"; readonly n: number; readonly kind: StationKind }
  | { readonly is: "each"; readonly n: number; readonly kind: StationKind; readonly each: number; readonly what: "stakes" | "plates" }
  /** So many are asked for at this call; or this call counts none of it. */
  | { readonly is: "hereCount"; readonly n: number }
  | { readonly is: "notHere"; readonly words: string }
  | { readonly is: "cannotCount"; readonly words: string }
  | { readonly is: "place"; readonly id: string; readonly xFt: number; readonly yFt: number }
  | { readonly is: "edge"; readonly edge: EdgeName; readonly lengthFt: number }
  | { readonly is: "noSuchPlace"; readonly words: string }
  /** It belongs to the job, and nobody has told where it is. */
  | { readonly is: "notTold"; readonly items: readonly LoadItem[] }
  /** The longest that a strap spans, from the top of a side pole to its stake on level ground. */
  | { readonly is: "strap"; readonly spanFt: number }
  /** `null` where the brief does not say. */
  | { readonly is: "site"; readonly what: SiteFact; readonly says: string | null }
  | { readonly is: "wind"; readonly wind: Wind | null; readonly minAgo: number }
  /** `null` where nothing is asked that has one. */
  | { readonly is: "limit"; readonly gate: Gate | null }
  /** The last answer, or the one at this call; `null` before the first. */
  | { readonly is: "lastRead" | "whoSaid"; readonly answer: Given | null }
  | { readonly is: "rightAngle"; readonly square: RightAngle; readonly tapeFt: number }
  | { readonly is: "shortTape"; readonly tapeFt: number }
  | { readonly is: "noTape"; readonly words: string };

/** What the brief says of the place, so that everybody can be told. */
export type SiteFact = "firstAid" | "rallyPoint" | "stormShelter" | "address";
