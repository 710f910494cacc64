import type { StepId } from "../install/ids.ts";
import { indexOf } from "../install/script-index.ts";
import type { Script, Step } from "../install/step.ts";
import { keyOf, type Thing } from "../install/thing.ts";

/** What waits for a thing: laying, one of its seams, raising (and going under), or a call named by its words. */
export type Stop =
  | { readonly is: "laying" | "raising" | "driving" | "strapping" }
  | { readonly is: "seam"; readonly seam: string }
  | { readonly is: "call"; readonly call: Pick<Step, "wordsKey" | "params"> };

/** What waits for a thing from a call on, in the order in which it comes. Empty where nothing is left that needs it. */
export function stopsOf(script: Script, from: StepId, thing: Thing): Stop[] {
  const key = keyOf(thing);
  const here = indexOf(script).at.get(from) ?? 0;
  const stops = script.steps.slice(here + 1).flatMap((step) => (step.needs.includes(key) ? [stopOf(step)] : []));
  return [...new Map(stops.map((stop) => [JSON.stringify(stop), stop])).values()];
}

function stopOf({ work, id, wordsKey, params }: Step): Stop {
  if (params.seam !== undefined) return { is: "seam", seam: String(params.seam) };
  if (wordsKey === "lay.piece") return { is: "laying" };
  if (work === "lift" || work === "under") return { is: "raising" };
  if (work === "driving") return { is: "driving" };
  return id.startsWith("straps.") ? { is: "strapping" } : { is: "call", call: { wordsKey, params } };
}
