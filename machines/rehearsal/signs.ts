import type { Gate, Value } from "../install/gates.ts";
import type { Instant } from "../install/ids.ts";
import { attentionState, missingNow, questionAt } from "../install/job.ts";
import { indexOf } from "../install/script-index.ts";
import { keyOf } from "../install/thing.ts";
import type { Blowing, Scene } from "./scene.ts";
import { begunIn, blowing, lasts, type Stand, seenAt } from "./stand.ts";
import { untold } from "./untold.ts";

/** What is to be seen or heard of a scene: that it is so; that it goes on, though it was told; that it is over. */
export type Sign = { readonly scene: Scene; readonly is: "new" | "on" | "over" };

/** All that is to be seen and heard on the site at a moment, besides what is asked: what began last first. */
export function signsAt(stand: Stand, at: Instant): Sign[] {
  const hidden = new Set(untold(stand, at).map(({ scene }) => scene.id));
  const { begun } = stand.world;
  const newestFirst = begunIn(stand).sort((a, b) => begun[b.id]! - begun[a.id]!);
  return newestFirst.flatMap((scene): Sign[] => {
    const is = hidden.has(scene.id) ? "new" : signOf(stand, scene, at);
    return is ? [{ scene, is }] : [];
  });
}

function signOf(stand: Stand, scene: Scene, at: Instant): Sign["is"] | null {
  const { job, world } = stand;
  const { id, brings } = scene;
  const isHeld = attentionState(job) !== "working";
  switch (brings.kind) {
    case "wind":
      if (!lasts(stand, scene, at) || blowing(stand, at).scene !== scene) return null;
      return (job.snapshot.context.wind?.takenAt ?? 0) < world.begun[id]! ? "new" : "on";
    case "warning":
      return lasts(stand, scene, at) ? "on" : null;
    case "hold":
      if (!world.said[id]) return null;
      return lasts(stand, scene, at) ? "on" : isHeld ? "over" : null;
    case "hurt":
      if (world.told[id] === undefined) return null;
      return lasts(stand, scene, at) ? "on" : isHeld ? "over" : null;
    case "short":
      if (!(keyOf(brings.thing) in job.snapshot.context.outOfUse)) return null;
      return lasts(stand, scene, at) ? "on" : "over";
    case "look":
    case "tooFast": {
      const left = brings.looks === "oneShort" ? 1 : brings.looks.length;
      const isSeen = brings.kind === "look" ? isAsked(stand, brings.gate, at) : world.said[id] === true;
      return isSeen && (world.looked[brings.gate] ?? 0) < left ? "new" : null;
    }
    default:
      return null;
  }
}

/** Whether a gate is asked or was answered: what is to be seen there is in front of somebody. */
const isAsked = ({ job }: Stand, gate: string, at: Instant): boolean =>
  questionAt(job, at)?.gate.id === gate || job.snapshot.context.answers[gate] !== undefined;

/** What is to be seen at what is asked at a moment: the answer as it is, or the wind; `null` where nothing is asked that can be looked at. */
export function lookAt(stand: Stand, at: Instant): { readonly gate: Gate; readonly value: Value } | { readonly wind: Blowing } | null {
  const missing = missingNow(stand.job, at);
  const gate =
    missing?.why === "gate" ? indexOf(stand.job.frozen.script).gates.get(missing.gate) : (questionAt(stand.job, at)?.gate ?? null);
  if (!gate || gate.check.kind === "quiet" || gate.check.kind === "notKnown") return null;
  return gate.check.kind === "wind" ? { wind: blowing(stand, at).wind } : { gate, value: seenAt(stand, gate, at) };
}
