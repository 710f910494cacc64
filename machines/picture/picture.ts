import type { ReadingRow } from "../install/checks/tile-input.ts";
import type { LengthName, Marks, Squared } from "../site/squaring.ts";
import type { EdgeName } from "../tent/types.ts";
import type { Mark } from "./mark.ts";

/** What is drawn with a call: where in the tent it is, what four marks come to, or what the wind is. Data, no drawing. */
export type Picture = PlanPicture | SquarePicture | WindPicture;

export type PlanPicture = {
  readonly kind: "plan";
  /** The things that the call is about; none where there is nothing to point at. */
  readonly about: readonly Mark[];
  /** Things of the same kind that were done before, in the order of the calls. */
  readonly done: readonly Mark[];
  /** The things that come after. */
  readonly next: readonly Mark[];
  /** Where the last reading has the wind from, in degrees of the compass, where the call depends on it and it is known. */
  readonly windFromDeg?: number;
  /** The call asks how many there are: nothing is drawn that could be counted. */
  readonly counts: boolean;
};

export type SquarePicture = {
  readonly kind: "square";
  /** Where the marks are wanted, in the frame of `toBaselineFrame`. */
  readonly want: Marks;
  /** Each length, wanted and as read, in the order of `LENGTHS`. */
  readonly lengths: readonly ReadingRow[];
  /** The one to tape now. */
  readonly next: LengthName;
  /** What the readings come to; `null` before the first. */
  readonly found: Squared | null;
};

export type WindPicture = { readonly kind: "wind"; readonly facts: WindFacts };

/** A gust at which something stops: raising, all of it, and what was agreed with the customer's person; `most` is what may be agreed. */
export type GustLimit = { readonly is: "raise" | "stop" | "evacuate" | "walls" | "most"; readonly mph: number };

/** The last wind reading, and what it is held against. Speeds in mph, directions in degrees clockwise. */
export type WindFacts = {
  readonly reading: {
    readonly mph: number;
    readonly gustMph: number | null;
    readonly fromDeg: number | null;
    readonly minAgo: number;
  } | null;
  /** `over`: at or above `belowMph`. It stays so however old it is. */
  readonly is: "none" | "over" | "stale" | "noGust" | "good";
  /** What a gust has to be under for what comes next. */
  readonly belowMph: number;
  readonly limits: readonly GustLimit[];
  readonly windward: readonly EdgeName[];
  /** Compass bearing of A to B; `null` where nobody took it. */
  readonly baselineBearingDeg: number | null;
  readonly widthFt: number;
  readonly lengthFt: number;
};
