import type { PhaseProgress } from "../../../machines/rehearsal/progress.ts";
import type { Lacking } from "../../../machines/rehearsal/ready.ts";
import type { Because, QuestionTexts } from "./shown.ts";

/** A rehearsal in a list, in words. */
export type RehearsalLine = { readonly when: string; readonly what: string; readonly went: string; readonly to: string | null };

/** How far somebody is: phase by phase, what the rule still wants, and the rehearsals there were. */
export type Standing = {
  readonly progress: readonly PhaseProgress[];
  readonly lacking: readonly Lacking[];
  readonly rehearsals: readonly RehearsalLine[];
};

/** What somebody finds today: how many items are to go over and how many new ones there are; or when the next is. */
export type Today = {
  readonly due: number;
  readonly fresh: number;
  readonly nextDay: string | null;
  /** A round that still goes on. */
  readonly going: string | null;
};

export type LearnState = { readonly today: Today; readonly standing: Standing };

/** A place to be pointed at on the plan, by its number. */
export type Place = { readonly id: string; readonly no: number; readonly xFt: number; readonly yFt: number };

/** A question on its page: `so` is what was pressed of an order, or pointed at. */
export type Asking = {
  readonly round: string;
  /** From 0. */
  readonly no: number;
  readonly of: number;
  readonly kind: "one" | "order" | "place";
  readonly texts: QuestionTexts;
  readonly places: readonly Place[];
  readonly so: readonly string[];
  readonly shown: string;
};

/** How it was answered, and why it is so. */
export type Told = Omit<Asking, "so"> & {
  readonly given: readonly string[];
  readonly right: readonly string[];
  readonly isRight: boolean;
  readonly because: Because | null;
  /** The first drawing of the hand work that belongs to it. */
  readonly hands: string | null;
  readonly isLast: boolean;
};

/** A round at its end. */
export type Ended = { readonly right: number; readonly of: number; readonly missed: boolean };

/** A question beside the guide, as it is read, with what names it. */
export type AsideState = {
  readonly id: string;
  readonly shown: string;
  readonly texts: QuestionTexts;
};
