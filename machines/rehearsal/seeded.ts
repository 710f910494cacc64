import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";
import { digest } from "../digest/digest.ts";

/** A stream of choices that is the same each time it is asked for by the same seed and labels. */
export type Seeded = {
  /** A whole number, both ends included. */
  readonly int: (from: number, to: number) => number;
  /** One of a list. Throws on an empty one. */
  readonly pick: <T>(list: readonly T[]) => T;
  /** A copy in another order (Fisher–Yates). */
  readonly shuffle: <T>(list: readonly T[]) => T[];
};

const WORDS = 4;
/** The four words of 32 bits that a generator begins from. All but never all zero, which it could not leave. */
const stateOf = (seed: number, labels: readonly string[]): number[] =>
  digest
    .of({ seed, labels })
    .match(/.{8}/g)!
    .slice(0, WORDS)
    .map((word) => Number.parseInt(word, 16) | 0);

/**
 * The stream of a seed under some labels. Each list of labels has a stream of its own, so that what is drawn for one thing
 * changes nothing for another. Throws on a seed that is no finite number.
 */
export function seeded(seed: number, ...labels: string[]): Seeded {
  const rng = xoroshiro128plusFromState(stateOf(seed, labels));
  const int = (from: number, to: number): number => uniformInt(rng, from, to);
  return {
    int,
    pick: (list) => {
      if (list.length === 0) throw new Error("nothing to pick from");
      return list[int(0, list.length - 1)]!;
    },
    shuffle: (list) => {
      const mixed = [...list];
      for (let i = mixed.length - 1; i > 0; i--) {
        const j = int(0, i);
        [mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
      }
      return mixed;
    },
  };
}
