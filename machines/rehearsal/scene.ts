import type { Value } from "../install/gates.ts";
import type { GateId, PersonId, StepId } from "../install/ids.ts";
import type { Thing } from "../install/thing.ts";

/** What can happen in a rehearsal. Each has its places in `situations.ts` and its words in `views/text`. */
export const SITUATIONS = [
  "windUp",
  "squall",
  "breeze",
  "phoneDies",
  "thunder",
  "warning",
  "rain",
  "holdCalled",
  "hurt",
  "rock",
  "softGround",
  "nearLine",
  "bentStakes",
  "leaning",
  "tapeMisread",
  "otherSheet",
  "handMissing",
  "stillUnder",
  "panelWrong",
  "torn",
  "strapOpen",
  "noHat",
  "markGone",
  "short",
  "tooFast",
] as const;
export type SituationId = (typeof SITUATIONS)[number];

/** A wind as it blows: mph, and where from in degrees. */
export type Blowing = { readonly mph: number; readonly gustMph: number; readonly fromDeg: number };

/**
 * What a situation brings. `looks` are what is to be seen at a gate, one after another, each until it was answered so; after
 * the last the gate is in order. `oneShort` is one fewer than were counted in.
 */
export type Brings =
  | { readonly kind: "look"; readonly gate: GateId; readonly looks: readonly Value[] | "oneShort" }
  /** The second person says yes without having looked; what is to be seen is in `looks`. */
  | { readonly kind: "tooFast"; readonly gate: GateId; readonly looks: readonly Value[] }
  /** A wind for so long; where `lostS` is more than 0, the phone was dead for that long when it is seen. */
  | { readonly kind: "wind"; readonly wind: Blowing; readonly forS: number; readonly lostS: number }
  | { readonly kind: "thunder" }
  | { readonly kind: "warning"; readonly forS: number }
  | { readonly kind: "rain" }
  /** Somebody calls a hold, and what it is for lasts so long. */
  | { readonly kind: "hold"; readonly by: PersonId; readonly forS: number }
  /** Somebody is hurt; help has come so long after it was said. */
  | { readonly kind: "hurt"; readonly by: PersonId; readonly forS: number }
  /** A thing is short; what was missing comes so long after it was said. */
  | { readonly kind: "short"; readonly thing: Thing; readonly forS: number };

/** One thing that happens in a rehearsal: what, at which call it begins, and what of it goes into its words. */
export type Scene = {
  readonly id: string;
  readonly is: SituationId;
  readonly at: StepId;
  readonly params: Readonly<Record<string, string | number>>;
  readonly brings: Brings;
};

/** The device of somebody who is played: what they say comes from no phone. */
export const playedOn = (person: PersonId): string => `${PLAYED}${person}`;
const PLAYED = "played-";
/** Whether something was said by the program, for somebody of the made-up crew or for the site. */
export const isPlayed = ({ device }: { readonly device: string }): boolean => device.startsWith(PLAYED);
