import type { StepId } from "../install/ids.ts";
import type { Practice, Trouble } from "../install/practice.ts";
import { type Frozen, PHASES, type Step } from "../install/step.ts";
import { keyOf } from "../install/thing.ts";
import { type Scene, SITUATIONS, type SituationId } from "./scene.ts";
import { type Seeded, seeded } from "./seeded.ts";
import { MAKES, type Made } from "./situations.ts";

/** One thing goes wrong in so many calls. Common practice, no source. */
const CALLS_FOR_ONE: Readonly<Record<Exclude<Trouble, "none">, number>> = { some: 12, several: 6 };

/** What every rehearsal with center poles has, in the middle of them. */
const IN_THE_MIDDLE: SituationId = "squall";

const known = new WeakMap<Frozen, readonly Scene[]>();
/** All that happens in a rehearsal, from its seed: the same for the same one. Empty where it is none, or a calm one. */
export function storyOf(frozen: Frozen): readonly Scene[] {
  const before = known.get(frozen);
  if (before) return before;
  const { practice } = frozen.brief;
  const made = practice && practice.trouble !== "none" ? written(frozen, practice, CALLS_FOR_ONE[practice.trouble]) : [];
  known.set(frozen, made);
  return made;
}

function written(frozen: Frozen, { seed, from, trouble }: Practice, callsForOne: number): Scene[] {
  const { steps } = frozen.script;
  const first = Math.max(
    0,
    steps.findIndex(({ id }) => id === from),
  );
  const ahead = steps.slice(first);
  const random = seeded(seed, "story");
  const cast = createCast(frozen, seed);
  const centers = ahead.filter(({ wordsKey }) => wordsKey === "lift.center");
  const middle = centers[Math.floor(centers.length / 2)];
  if (middle) cast.put(IN_THE_MIDDLE, middle);
  // Where several go wrong at once, somebody is hurt or stops the work in the squall as well.
  if (middle && trouble === "several") cast.put(random.pick(["holdCalled", "hurt"] as const), middle);
  for (const phase of PHASES) {
    const calls = ahead.filter((step) => step.phase === phase);
    for (let n = 0; n < Math.ceil(calls.length / callsForOne); n++) cast.putAny(random.shuffle(calls), random);
  }
  return cast.scenes;
}

/** The gate or the thing that is about; `null` where it is about neither. */
function aboutOf({ brings }: Made): string | null {
  if ("gate" in brings) return brings.gate;
  return "thing" in brings ? keyOf(brings.thing) : null;
}

/** Puts scenes on calls: no gate and no thing twice, and what has not happened yet before what has. */
function createCast(frozen: Frozen, seed: number) {
  const { steps } = frozen.script;
  const scenes: Scene[] = [];
  const abouts = new Set<string>();
  const taken = new Set<StepId>();
  const times = new Map<SituationId, number>();

  function put(is: SituationId, step: Step): boolean {
    const next = steps[steps.indexOf(step) + 1];
    if (!MAKES[is].fits(step, next)) return false;
    const made: Made | null = MAKES[is].make(frozen, step, seeded(seed, is, step.id));
    if (!made) return false;
    const about = aboutOf(made);
    if (about !== null && abouts.has(about)) return false;
    if (about !== null) abouts.add(about);
    taken.add(step.id);
    times.set(is, (times.get(is) ?? 0) + 1);
    scenes.push({ id: `${is}.${scenes.length + 1}`, is, at: step.id, ...made });
    return true;
  }

  /** One at the first of these calls where any can begin, of those that happened least. */
  function putAny(calls: readonly Step[], random: Seeded): void {
    for (const step of calls) {
      if (taken.has(step.id)) continue;
      const least = random.shuffle(SITUATIONS).sort((a, b) => (times.get(a) ?? 0) - (times.get(b) ?? 0));
      if (least.some((is) => put(is, step))) return;
    }
  }
  return { scenes, put, putAny };
}
