import type { GateId, WallTime } from "../ids.ts";
import type { Parts } from "./check-kind.ts";
import { isWholePaper } from "./common-values.ts";
import type { Expected } from "./expected.ts";
import { type Check, type Finding, kindOf, ownValue, type Value } from "./registry.ts";
import type { TileInput } from "./tile-input.ts";
import type { Unbelievable } from "./value-form.ts";

/** The answers that a check may be held against: of a job's state nothing else is asked for. */
export type Given = { readonly answers: Readonly<Record<GateId, { readonly value: Value }>> };

/** The answer that a check is held against, where there is one. */
function comparedTo(check: Check, { answers }: Given): Value | undefined {
  const gate = comparesWith(check);
  return gate === null ? undefined : ownValue(check, answers[gate]?.value);
}

/** The gate whose answer a check is held against; `null` where it stands alone. */
export const comparesWith = (check: Check): GateId | null => kindOf(check).comparesWith(check);

/** Whether a gate takes this kind of answer at all. One that reads the last reading takes none by hand. */
export function accepts({ check, paper }: { check: Check; paper: string | null }, value: Value, given: Given): boolean {
  if (value.kind === "paper") return paper !== null;
  if (value.kind === "unknown") return kindOf(check).answeredBy === "person";
  return ownValue(check, value) !== undefined && kindOf(check).accepts(check, value, comparedTo(check, given));
}

/** The first number of an answer that nobody can mean at this check; `null` if every one is plausible. */
export const beyond = (check: Check, value: Value): Unbelievable | null =>
  ownValue(check, value) === undefined ? null : kindOf(check).beyond(check, value);

/** The only place where a value meets a limit. */
export function meetsLimit(check: Check, value: Value, given: Given): boolean {
  if (value.kind === "paper") return isWholePaper(value);
  return ownValue(check, value) !== undefined && kindOf(check).meetsLimit(check, value, comparedTo(check, given));
}

/** Whether what a good answer names holds by the calendar. A paper that stands in for it bears the day it was made on, and no end. */
export const inForce = (check: Check, value: Value, at: WallTime): "early" | "stale" | "yes" =>
  ownValue(check, value) === undefined ? "yes" : kindOf(check).inForce(check, at);

/** Whether there is enough of an answer to be judged. */
export function isComplete(check: Check, value: Value, given: Given): boolean {
  const { parts } = kindOf(check);
  return parts === null || ownValue(check, value) === undefined || parts.isComplete(check, value, comparedTo(check, given));
}

/** Gates that are answered in parts: what is said is put together. */
export const isCumulative = (check: Check): boolean => kindOf(check).parts !== null;

/**
 * An answer as it counts at a gate that is answered in parts: what is newly said, over what was said before. Anywhere
 * else, and where the earlier answer was "not known" or a paper, it is what was said.
 */
export function mergeAnswers(check: Check, before: Value | undefined, value: Value): Value {
  const { parts } = kindOf(check);
  const earlier = ownValue(check, before);
  return parts === null || earlier === undefined || ownValue(check, value) === undefined ? value : parts.merge(earlier, value);
}

/** What was answered part by part. Empty where a check is not answered so, or was not yet. */
export function givenParts(check: Check, value: Value | undefined): Parts {
  const read = ownValue(check, value);
  return read === undefined ? {} : (kindOf(check).parts?.of(read) ?? {});
}

/** What is wanted of each part. Empty where a check is not answered in parts. */
export const wantedParts = (check: Check, given: Given): Parts => kindOf(check).parts?.wanted(check, comparedTo(check, given)) ?? {};

/** Whether a good answer has nothing more to be said to it. A paper that stands in for one has not. */
export const isSettled = (check: Check, value: Value): boolean =>
  ownValue(check, value) === undefined || kindOf(check).isSettled(check, value);

/** What an answer comes to, where that is more than its value; `null` where it is not. */
export const finding = (check: Check, value: Value, given: Given): Finding | null =>
  ownValue(check, value) === undefined ? null : kindOf(check).finding(check, value, comparedTo(check, given));

/** What a gate's tile has to answer with. */
export const tileInput = (check: Check, value: Value | undefined): TileInput<Value> => kindOf(check).tile(check, ownValue(check, value));

/** What a gate waits to be told. */
export const expected = (check: Check): Expected => kindOf(check).expects(check);
