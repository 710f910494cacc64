import type { Trouble } from "../../machines/install/practice.ts";
import { EXAMPLES } from "../../machines/tent/examples.ts";
import { errs } from "./errs.ts";
import { mistakeIn } from "./oracle.ts";
import { doesRight, play, practiceOf, type Said } from "./play.ts";

/** The tents that are rehearsed: most of them small, as each seed plays a whole job twice. */
const SMALL = EXAMPLES.slice(0, 4);
const LARGER = EXAMPLES.slice(4, 8);
const ONE_LARGER_IN = 20;

const tentFor = (seed: number) => {
  const among = seed % ONE_LARGER_IN === 0 ? LARGER : SMALL;
  return among[Math.floor(seed / 4) % among.length]!.spec;
};
const troubleFor = (seed: number): Trouble => (seed % 3 === 0 ? "some" : "several");

export type Played = { readonly seed: number; readonly trouble: string };

/** Plays a seed twice, once by who does what is right and once by who errs: all that is wrong with how it was judged. */
export function wrongIn(seed: number): string[] {
  const frozen = practiceOf(tentFor(seed), { seed, trouble: troubleFor(seed) });
  const right = play(frozen, doesRight);
  const erring = play(frozen, errs(seed));
  return [
    ...(right.closed ? [] : [`${seed}: the right player never got to the end`]),
    ...(Object.keys(right.stand.world.begun).length === right.stand.scenes.length ? [] : [`${seed}: not all of its scenes began`]),
    ...right.said.flatMap((said) => faultOf(seed, said)),
    ...(erring.closed ? [] : [`${seed}: the erring player got stuck`]),
    ...erring.said.flatMap((said) => missed(seed, said)),
  ];
}

/** What was refused, or held against somebody who did what is right. */
function faultOf(seed: number, { command, outcome, verdict }: Said): string[] {
  if ("refused" in outcome) return [`${seed}: ${command.type} was refused: ${JSON.stringify(outcome.refused)}`];
  return verdict && verdict.is !== "safe" ? [`${seed}: ${command.type} was found ${verdict.is}: ${JSON.stringify(verdict)}`] : [];
}

/** A mistake that was not found, or is not explained. */
function missed(seed: number, said: Said): string[] {
  const { command, verdict } = said;
  if (!verdict) return [];
  const mistake = mistakeIn(said);
  if (mistake && verdict.is !== "unsafe") return [`${seed}: ${mistake}, by ${command.type}, was found ${verdict.is}`];
  if (verdict.is !== "unsafe" && verdict.is !== "untrue") return [];
  const explained = verdict.scenes.length > 0 || verdict.seen !== null || ("reasons" in verdict && verdict.reasons.length > 0);
  return explained ? [] : [`${seed}: ${command.type} was found ${verdict.is}, and nothing says why`];
}

/** How many of what an erring player did was found, by what it was found. */
export function found(seed: number): Readonly<Record<string, number>> {
  const { said } = play(practiceOf(tentFor(seed), { seed, trouble: "several" }), errs(seed));
  const counts: Record<string, number> = {};
  for (const { verdict } of said) if (verdict) counts[verdict.is] = (counts[verdict.is] ?? 0) + 1;
  return counts;
}
