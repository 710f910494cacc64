import type { Step } from "../install/step.ts";
import type { Meaning } from "./meanings.ts";
import type { Quantity } from "./quantity.ts";

/** What a language has to know to be spoken to. Each lies in a folder of its own: `en/`. */
export type Language = {
  /** What words mean at a call. How strictly they are taken when they are spoken is another matter: `hear`. */
  readonly understand: (words: string, step: Step | null) => Meaning;
  /** Whether words are a hold as a whole. */
  readonly isHold: (words: string) => boolean;
  /** Whether a hold word stands in a longer sentence. */
  readonly holdsInside: (words: string) => boolean;
  /** Said to what was read back: yes, no, and anything that begins with a no. Words as `plain` leaves them. */
  readonly isYes: (words: string) => boolean;
  readonly isNo: (words: string) => boolean;
  readonly beginsWithNo: (words: string) => boolean;
  /** Every sensible reading of a whole text as one quantity; empty where it is none. */
  readonly readQuantity: (text: string) => readonly Quantity[];
};
