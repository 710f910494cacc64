import type { Gate, Value } from "../install/gates.ts";
import type { Instant } from "../install/ids.ts";
import type { Job } from "../install/job.ts";
import type { Frozen } from "../install/step.ts";
import { WARNING, worstMph } from "../install/weather.ts";
import { countedAt, orderly } from "./orderly.ts";
import type { Blowing, Scene } from "./scene.ts";
import { seeded } from "./seeded.ts";
import type { World } from "./world.ts";

/** A rehearsal as it stands: the job as the guide knows it, and the site as it is. */
export type Stand = { readonly job: Job; readonly world: World; readonly scenes: readonly Scene[]; readonly seed: number };

/** The scenes that have begun. */
export const begunIn = ({ scenes, world }: Pick<Stand, "scenes" | "world">): Scene[] =>
  scenes.filter(({ id }) => world.begun[id] !== undefined);

/** When what a scene brings is over by itself; `null` where it never is, or only so long after it was told. */
export function overAt({ world }: Pick<Stand, "world">, { id, brings }: Scene): Instant | null {
  const [begun, told] = [world.begun[id], world.told[id]];
  switch (brings.kind) {
    case "wind":
    case "warning":
    case "hold":
      return begun === undefined ? null : begun + brings.forS * 1000;
    case "hurt":
    case "short":
      return told === undefined ? null : told + brings.forS * 1000;
    default:
      return null;
  }
}

/** Whether what a scene brings is still so at a moment. */
export function lasts(stand: Pick<Stand, "world">, scene: Scene, at: Instant): boolean {
  const over = overAt(stand, scene);
  return stand.world.begun[scene.id] !== undefined && (over === null || at < over);
}

const breezes = new WeakMap<Frozen, Blowing>();
/** What blows where nothing has got up: a breeze well under every limit of this job. */
export function breeze({ job: { frozen }, seed }: Pick<Stand, "job" | "seed">): Blowing {
  const known = breezes.get(frozen) ?? breezeOf(frozen, seed);
  breezes.set(frozen, known);
  return known;
}

function breezeOf(frozen: Frozen, seed: number): Blowing {
  const { raiseGustMph, stopGustMph, insideGustMph } = frozen.limits;
  const lowest = Math.min(raiseGustMph.is, stopGustMph.is, insideGustMph.is);
  const random = seeded(seed, "breeze");
  const gustMph = Math.max(1, Math.floor((lowest * random.int(35, 60)) / 100));
  return { mph: Math.max(0, gustMph - random.int(1, 4)), gustMph, fromDeg: random.int(0, 35) * 10 };
}

/** The wind on the site at a moment, the worst of what has got up, and the scene that it is of; `null` where it is of none. */
export function blowing(stand: Stand, at: Instant): { readonly wind: Blowing; readonly scene: Scene | null } {
  const up = begunIn(stand).flatMap((scene) =>
    scene.brings.kind === "wind" && lasts(stand, scene, at) ? [{ wind: scene.brings.wind, scene: scene as Scene | null }] : [],
  );
  return [...up, { wind: breeze(stand), scene: null }].reduce((a, b) => (worstMph(b.wind) > worstMph(a.wind) ? b : a));
}

/** What is to be seen at a gate at a moment. */
export function seenAt(stand: Stand, gate: Gate, at: Instant): Value {
  for (const scene of begunIn(stand)) {
    const { brings } = scene;
    if (brings.kind === "warning" && gate.id === WARNING && lasts(stand, scene, at)) return { kind: "yesNo", yes: false };
    if ((brings.kind !== "look" && brings.kind !== "tooFast") || brings.gate !== gate.id) continue;
    const n = stand.world.looked[gate.id] ?? 0;
    if (brings.looks === "oneShort" && n === 0) return { kind: "count", n: beforeOne(gate, stand) };
    const look = brings.looks === "oneShort" ? undefined : brings.looks[n];
    if (look) return look;
  }
  return orderly(gate, stand.job.snapshot.context, stand.seed);
}

const beforeOne = ({ check }: Gate, { job }: Stand): number =>
  Math.max(0, (check.kind === "sameCount" ? countedAt(check.as, job.snapshot.context) : 0) - 1);
