import type { GateId, WallTime } from "../ids.ts";
import type { Expected } from "./expected.ts";
import type { TileInput } from "./tile-input.ts";
import type { Unbelievable, ValueForm } from "./value-form.ts";

type Kinded = { readonly kind: string };
/** Numbers by the name of what was measured or counted. */
export type Parts = Readonly<Record<string, number>>;

/**
 * All there is to know of one kind of check. `C` is what a gate declares, `V` what answers it, and `F` what an answer comes
 * to where that is more than its value. `compared` is always the answer of the gate that `comparesWith` names: undefined
 * where it names none, or where that one was not answered with values of this kind.
 */
export type CheckKind<C extends Kinded, V extends Kinded = never, F extends Kinded = never> = {
  readonly kind: C["kind"];
  /** Answered by a person; or by the last wind reading, by time or by a change of the plan, and then never by hand. */
  readonly answeredBy: "person" | "windReading" | "time" | "amendment";
  /** The kinds of value that it takes. Empty where only a paper or a reading opens it. */
  readonly values: readonly ValueForm<V>[];
  /** Whether a value of one of these kinds can be an answer at all: in its unit, whole, of a thing that is on the list. */
  readonly accepts: (check: C, value: V, compared: V | undefined) => boolean;
  /** The first number of it that nobody can mean at this check, where that says more than its unit does; `null` if every one is plausible. */
  readonly beyond: (check: C, value: V) => Unbelievable | null;
  readonly meetsLimit: (check: C, value: V, compared: V | undefined) => boolean;
  /** Answered in parts, from several people: what is newly said stands over what was said before. `null` where it is not. */
  readonly parts: null | {
    readonly of: (value: V) => Parts;
    readonly merge: (before: V, value: V) => V;
    /** Whether there is enough of it to be judged. */
    readonly isComplete: (check: C, value: V, compared: V | undefined) => boolean;
    readonly wanted: (check: C, compared: V | undefined) => Parts;
  };
  /** The gate whose answer this one is held against. */
  readonly comparesWith: (check: C) => GateId | null;
  /** Whether a good answer holds by the calendar, for kinds that have dates of their own. */
  readonly inForce: (check: C, at: WallTime) => "early" | "stale" | "yes";
  /** The check as far as an amendment that changes it asks again. */
  readonly question: (check: C) => unknown;
  /** Whether a good answer has nothing more to be said to it: only then does it go on by itself. */
  readonly isSettled: (check: C, value: V) => boolean;
  readonly finding: (check: C, value: V, compared: V | undefined) => F | null;
  /** What its tile shows to answer with; `given` is the answer so far. */
  readonly tile: (check: C, given: V | undefined) => TileInput<V>;
  /** What is expected to be said to it. */
  readonly expects: (check: C) => Expected;
};

/** What a kind does where it says nothing else: answered whole, by a person, compared with nothing, in force for good. */
export const DEFAULTS = {
  answeredBy: "person",
  parts: null,
  accepts: () => true,
  beyond: () => null,
  comparesWith: () => null,
  inForce: (): "yes" => "yes",
  question: (check: unknown) => check,
  isSettled: () => true,
  finding: () => null,
} as const;
