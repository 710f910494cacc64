import { currentStep, type Job } from "../install/job.ts";
import { indexOf } from "../install/script-index.ts";
import { kitKey, type Thing } from "../install/thing.ts";
import { thingsOf } from "../install/things-of.ts";
import type { NamedThing } from "../speech/meanings.ts";

/**
 * Which thing of a job is meant by a name. Of several lines called the same, as stakes inside and out: of those that are to come
 * back one that is short, else the one that the next call needs. Where nobody said how many came, all did.
 */
export function thingMeant(job: Job, named: NamedThing, back: boolean): Thing {
  if ("piece" in named) return { is: "piece", id: named.piece };
  const { outOfUse } = job.snapshot.context;
  const has = thingsOf(job.frozen).items;
  const listed = named.items.filter((item) => has.includes(item));
  const short = listed.filter((item) => kitKey(item) in outOfUse);
  const among = back && short.length > 0 ? short : listed;
  const item = among.find((one) => one === neededNext(job, among)) ?? among[0] ?? named.items[0]!;
  const out = outOfUse[kitKey(item)]?.thing;
  return { is: "kit", item, short: named.n ?? (out?.is === "kit" ? out.short : 1) };
}

/** Of some lines the one that the first call from here on needs, if any does. */
function neededNext<I extends Parameters<typeof kitKey>[0]>(job: Job, items: readonly I[]): I | null {
  const { script } = job.frozen;
  const here = indexOf(script).at.get(job.snapshot.context.resumeAt ?? currentStep(job)?.id ?? "") ?? 0;
  for (const { needs } of script.steps.slice(here)) {
    const item = items.find((one) => needs.includes(kitKey(one)));
    if (item !== undefined) return item;
  }
  return null;
}
