import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Value } from "../../machines/install/gates.ts";
import { foldName } from "../../machines/install/person-name.ts";
import { Problem, type Sentence } from "./problem.ts";

/** A name by its letters and digits: "Tobias," and "tobias" are one. */
const letters = (name: string): string => (foldName(name).match(/[\p{L}\p{N}]+/gu) ?? []).join(" ");

/**
 * Throws a Problem where a paper comes from somebody of the job, present or former: a crew's own paper is no paper. Made here,
 * as names are not in the chain.
 */
export function refuseOwnPaper(value: Value, names: LiveJob["names"]): void {
  if (value.kind !== "paper") return;
  const own = Object.values(names).find((name) => letters(name) === letters(value.by));
  if (own === undefined) return;
  const sentence: Sentence = (w) => w.errors.ownPaper(own);
  throw new Problem(422, sentence, { "value.by": sentence });
}
