import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Value } from "../../machines/install/gates.ts";
import { foldName } from "../../machines/install/person-name.ts";
import { Problem, type Sentence } from "./problem.ts";

/** The parts of a name by their letters and digits, without accents: "Tobías," and "tobias" are one. */
const parts = (name: string): string[] =>
  foldName(name)
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .match(/[\p{L}\p{N}]+/gu) ?? [];
/** Whether one name may be the other, said longer or shorter: "Ines", "Ines Ahmed", "engineer Ines". */
const mayBeTheSame = (one: string, other: string): boolean => {
  const [a, b] = [parts(one), parts(other)];
  return a.every((part) => b.includes(part)) || b.every((part) => a.includes(part));
};

/**
 * Throws a Problem where a paper comes from somebody of the job, present or former: a crew's own paper is no paper. Made here,
 * as names are not in the chain.
 */
export function refuseOwnPaper(value: Value, names: LiveJob["names"]): void {
  if (value.kind !== "paper") return;
  const own = Object.values(names).find((name) => mayBeTheSame(name, value.by));
  if (own === undefined) return;
  const sentence: Sentence = (w) => w.errors.ownPaper(own);
  throw new Problem(422, sentence, { "value.by": sentence });
}
