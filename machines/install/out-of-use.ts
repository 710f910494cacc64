import { without } from "../lookup/without.ts";
import type { Command } from "./commands.ts";
import type { MissingThing } from "./refusals.ts";
import type { JobState } from "./state.ts";
import type { Step } from "./step.ts";
import { keyOf } from "./thing.ts";

/** What a call needs and does not have: its pieces and kit lines that are out of use. `null` if there are none. */
export function lackedBy({ needs }: Pick<Step, "needs">, { outOfUse }: Pick<JobState, "outOfUse">): MissingThing | null {
  const keys = needs.filter((key) => key in outOfUse);
  if (keys.length === 0) return null;
  return { why: "outOfUse", keys, things: keys.map((key) => ({ thing: outOfUse[key]!.thing, because: outOfUse[key]!.because })) };
}

/** With a thing out of use. A second report never makes fewer of it short: that is for whoever may put it back. */
export function takenOut(state: JobState, { thing, because, by, entry }: Extract<Command, { type: "outOfUse" }>): JobState["outOfUse"] {
  const key = keyOf(thing);
  const before = state.outOfUse[key]?.thing;
  const more = thing.is === "kit" && before?.is === "kit" ? { ...thing, short: Math.max(thing.short, before.short) } : thing;
  return { ...state.outOfUse, [key]: { thing: more, because, by, entry } };
}

/** With a thing back: a piece whole, of a kit line as many as came. */
export function putBack(state: JobState, { thing }: Extract<Command, { type: "backInUse" }>): JobState["outOfUse"] {
  const key = keyOf(thing);
  const out = state.outOfUse[key];
  const left = thing.is === "kit" && out?.thing.is === "kit" ? out.thing.short - thing.short : 0;
  if (out?.thing.is !== "kit" || left <= 0) return without(state.outOfUse, [key]);
  return { ...state.outOfUse, [key]: { ...out, thing: { ...out.thing, short: left } } };
}
