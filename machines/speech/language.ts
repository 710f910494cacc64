import type { Listening } from "./listening.ts";
import type { Meaning } from "./meanings.ts";
import type { Quantity } from "./quantity.ts";
import type { Sayable } from "./sayable.ts";

/** What a language must provide for speech. Each language has its own folder: `en/`. */
export type Language = {
  /** The meaning of words where a job stands. How strictly spoken words are taken is decided in `hear`. */
  readonly understand: (words: string, listening: Listening) => Meaning;
  /** Whether the words as a whole are a hold. */
  readonly isHold: (words: string) => boolean;
  /** Whether a hold word occurs in a longer sentence. */
  readonly holdsInside: (words: string) => boolean;
  /** Whether the words are a command or a question and nothing else: through an open microphone only that counts. */
  readonly isBare: (words: string) => boolean;
  /** Whether the words are a name of the wind scale and nothing else: people say "a gentle breeze" of any. */
  readonly isBareLook: (words: string) => boolean;
  /** Replies to a read-back: yes, no, and anything that begins with no. Takes words as `plain` returns them. */
  readonly isYes: (words: string) => boolean;
  readonly isNo: (words: string) => boolean;
  readonly beginsWithNo: (words: string) => boolean;
  /** What is said after a yes to a read-back; `null` where the words do not begin with one, or nothing follows. */
  readonly afterYes: (words: string) => string | null;
  /** What may be said where a job stands. */
  readonly sayableAt: (listening: Listening) => Sayable;
  /** Every plausible reading of a whole text as one quantity; empty if there is none. */
  readonly readQuantity: (text: string) => readonly Quantity[];
};
