import type { Intent } from "../install/commands.ts";
import type { Instant } from "../install/ids.ts";
import { attentionState } from "../install/job.ts";
import type { JobState } from "../install/state.ts";
import { keyOf } from "../install/thing.ts";
import { AGREED, agreedMph, thundery, warned, worstMph } from "../install/weather.ts";
import type { Blowing, Scene } from "./scene.ts";
import { begunIn, blowing, lasts, type Stand } from "./stand.ts";

/** Something that is so on the site and the guide does not know: the scene that it is of, and how it is told. */
export type Untold = { readonly scene: Scene; readonly tell: Intent };

/** Words of somebody who is hurt, and of what a thing is short for, where nobody typed any: the scene's id, told again by the views. */
const because = ({ is }: Scene): string => is;

/** All that is so on the site at a moment and the guide does not know, in the order in which it began. */
export function untold(stand: Stand, at: Instant): Untold[] {
  return begunIn(stand).flatMap((scene) => {
    const tell = tellingOf(stand, scene, at);
    return tell ? [{ scene, tell }] : [];
  });
}

function tellingOf(stand: Stand, scene: Scene, at: Instant): Intent | null {
  const { brings } = scene;
  const { job, world } = stand;
  const state = job.snapshot.context;
  switch (brings.kind) {
    case "wind": {
      const { wind, scene: of } = blowing(stand, at);
      return of === scene && isWorse(wind, state, job.frozen.limits.insideGustMph.is) ? windReading(wind, at) : null;
    }
    case "thunder": {
      const heardAt = world.begun[scene.id]!;
      const counts = thundery({ thunderAt: heardAt, limits: state.limits }, at);
      return counts && world.told[scene.id] === undefined ? { type: "reading", reading: { kind: "thunder", takenAt: at } } : null;
    }
    case "warning":
      return lasts(stand, scene, at) && !warned(state) ? { type: "reading", reading: { kind: "warning", takenAt: at } } : null;
    case "rain":
      return world.told[scene.id] === undefined ? { type: "reading", reading: { kind: "rain", takenAt: at } } : null;
    case "hurt":
      return world.told[scene.id] === undefined && attentionState(job) !== "held" ? { type: "hurt", words: because(scene) } : null;
    case "short":
      return world.told[scene.id] === undefined && !(keyOf(brings.thing) in state.outOfUse)
        ? { type: "outOfUse", thing: brings.thing, because: because(scene) }
        : null;
    // What is looked at is told where it is asked: no screen tells it at any other call.
    default:
      return null;
  }
}

/** A wind, as it is reported at a moment. */
export const windReading = ({ mph, gustMph, fromDeg }: Blowing, at: Instant): Intent => ({
  type: "reading",
  reading: { kind: "wind", mph, gustMph, fromDeg, takenAt: at, place: null },
});

/** Whether a wind is over a limit that the last reading is under. */
export function isWorse(wind: Blowing, state: JobState, insideMph: number): boolean {
  const agreed = Object.values(AGREED).flatMap((gate) => agreedMph(state, gate) ?? []);
  const limits = [state.limits.raiseGustMph, state.limits.stopGustMph, insideMph, ...agreed];
  const known = state.wind ? worstMph(state.wind) : 0;
  return limits.some((limit) => known < limit && worstMph(wind) >= limit);
}
