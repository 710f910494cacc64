import type { Intent } from "../install/commands.ts";
import { named, type Unnamed } from "../install/found.ts";
import { foundIn } from "../install/found-in.ts";
import type { Frozen } from "../install/step.ts";
import { BURIED_KINDS, pointAt, THING_KINDS } from "../site/model.ts";
import type { SpokenFound } from "../speech/meanings.ts";

/** The command that puts what was found into a job, under a name of the program's. */
export function foundIntent(frozen: Frozen, found: Unnamed): Extract<Intent, { type: "found" }> {
  const what = named(frozen.brief.siteModel, found);
  return { type: "found", what, to: foundIn(frozen, what) };
}

/** What was found, as it was said: where it was laid a tape to, and nothing else of it is known. */
export function foundMeant({ kind, kv, points: told }: SpokenFound): Unnamed {
  const points = told.map(pointAt);
  const buried = BURIED_KINDS.find((one) => one === kind);
  if (buried) return { is: "buried", line: { kind: buried, told: "found", widthIn: null, toleranceIn: null, errorFt: 0, points } };
  const thing = THING_KINDS.find((one) => one === kind);
  if (thing) return { is: "thing", thing: { kind: thing, errorFt: 0, shape: { is: "path", points } } };
  return { is: "overhead", line: { kv, lowestFt: null, errorFt: 0, points } };
}
