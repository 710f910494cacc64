import { isComplete, meetsLimit, mergeAnswers } from "../install/checks/any-check.ts";
import type { Command, Intent } from "../install/commands.ts";
import type { Gate, Value } from "../install/gates.ts";
import type { Instant } from "../install/ids.ts";
import { type Job, missingNow } from "../install/job.ts";
import type { Outcome, Refusal } from "../install/refusals.ts";
import { indexOf } from "../install/script-index.ts";
import { keyOf } from "../install/thing.ts";
import { AGREED } from "../install/weather.ts";
import { agrees } from "./same-value.ts";
import type { Blowing, Scene } from "./scene.ts";
import { afterIntent, contradicted, isHeldFor, shadowOf } from "./shadow.ts";
import { begunIn, blowing, lasts, type Stand, seenAt } from "./stand.ts";
import { isWorse, untold } from "./untold.ts";

/** What was to be seen where something else was said: at a gate, or of the wind. */
export type Seen = { readonly gate: string; readonly value: Value } | { readonly wind: Blowing } | null;

/**
 * What is to be said of what the lead did. `caught`: the guide refused it. `unsafe`: the guide took it, and would not have, had it
 * been told what was to be seen; `reasons` is why not. `untrue`: it says other than what was to be seen, which was in order too.
 * `cautious`: it says that something is wrong where nothing is, or something else, and only stops.
 */
export type Verdict =
  | { readonly is: "safe" }
  | { readonly is: "caught"; readonly reasons: readonly Refusal[] }
  | { readonly is: "unsafe"; readonly reasons: readonly Refusal[]; readonly seen: Seen; readonly scenes: readonly string[] }
  | { readonly is: "untrue" | "cautious"; readonly seen: Seen; readonly scenes: readonly string[] };

const SAFE: Verdict = { is: "safe" };

/** A command of the lead's, as it counts, judged on the rehearsal as it stood before. */
export function judgeMove(stand: Stand, command: Command, outcome: Outcome): Verdict {
  if ("refused" in outcome) return { is: "caught", reasons: outcome.refused };
  const { at } = command;
  const said = saidFalsely(stand, command, at);
  if (said) return said;
  // Where the wind was asked, a true reading leads on by itself: nobody is blamed for telling it.
  if (command.type === "reading") return SAFE;
  const moves = outcome.did === "moved" || outcome.did === "goingOn" || outcome.did === "closed" || outcome.and !== undefined;
  return moves ? movedOn(stand, command, at) : SAFE;
}

function saidFalsely(stand: Stand, command: Command, at: Instant): Verdict | null {
  switch (command.type) {
    case "answer":
      return answeredFalsely(stand, indexOf(stand.job.frozen.script).gates.get(command.gate)!, command.value, at);
    case "reading": {
      const { reading } = command;
      if (reading.kind === "noThunder") return thunderUnsaid(stand, at);
      if (reading.kind !== "wind") return null;
      const { wind, scene } = blowing(stand, at);
      const told = { ...stand.job.snapshot.context, wind: { ...reading } };
      if (!isWorse(wind, told, stand.job.frozen.limits.insideGustMph.is)) return null;
      return { is: "unsafe", reasons: [], seen: { wind }, scenes: idsOf(scene ? [scene] : []) };
    }
    case "carryOn":
      return isHeldFor(stand, at) ? unsafe([{ why: "held", by: stand.job.snapshot.context.heldBy }], holding(stand, at)) : null;
    case "backInUse": {
      const out = begunIn(stand).filter(
        (scene) => scene.brings.kind === "short" && keyOf(scene.brings.thing) === keyOf(command.thing) && lasts(stand, scene, at),
      );
      return out.length > 0 ? unsafe([], out) : null;
    }
    default:
      return null;
  }
}

/** What is agreed on and how many go under are the lead's to say: nothing is to be seen there. */
const isDecided = ({ script }: Job["frozen"], gate: Gate): boolean =>
  (Object.values(AGREED) as readonly string[]).includes(gate.id) || indexOf(script).under.some(({ into }) => into === gate.id);

function answeredFalsely(stand: Stand, gate: Gate, value: Value, at: Instant): Verdict | null {
  if (isDecided(stand.job.frozen, gate)) return null;
  const seen = seenAt(stand, gate, at);
  if (agrees(value, seen)) return null;
  const state = stand.job.snapshot.context;
  const found: Seen = { gate: gate.id, value: seen };
  const of = begunIn(stand).filter(({ brings }) => "gate" in brings && brings.gate === gate.id);
  const scenes = idsOf(of);
  const total = mergeAnswers(gate.check, state.answers[gate.id]?.value, value);
  if (isComplete(gate.check, total, state) && !meetsLimit(gate.check, total, state)) return { is: "cautious", seen: found, scenes };
  return meetsLimit(gate.check, seen, state) ? { is: "untrue", seen: found, scenes } : { is: "unsafe", reasons: [], seen: found, scenes };
}

/** There was thunder; nobody takes it back. */
function thunderUnsaid(stand: Stand, at: Instant): Verdict | null {
  const heard = begunIn(stand).filter(({ id, brings }) => {
    const told = stand.world.told[id];
    return brings.kind === "thunder" && told !== undefined && at - told < stand.job.snapshot.context.limits.thunderS * 1000;
  });
  return heard.length > 0 ? unsafe([], heard) : null;
}

/** On, with the guide not knowing: asked of the job as it would stand had it known. */
function movedOn(stand: Stand, command: Command, at: Instant): Verdict {
  const [hidden, wrong, held] = [untold(stand, at), contradicted(stand, at), isHeldFor(stand, at)];
  if (hidden.length === 0 && wrong.length === 0 && !held) return SAFE;
  // What the way back needs first is answered, and that leads on by itself: nobody is blamed for answering it truly.
  const isCondition = command.type === "answer" && indexOf(stand.job.frozen.script).conditions.has(command.gate);
  if (isCondition && hidden.length === 0 && !held) return SAFE;
  const [after, outcome] = afterIntent(shadowOf(stand, at), intentOf(command), at);
  if ("did" in outcome && (command.type === "next" || outcome.and !== undefined)) return SAFE;
  const missing = missingNow(after, at);
  const reasons = "refused" in outcome ? outcome.refused : missing ? [missing] : [];
  const scenes = [
    ...hidden.map(({ scene }) => scene),
    ...begunIn(stand).filter(({ brings }) => "gate" in brings && wrong.some(({ gate }) => gate === brings.gate)),
    ...(held ? holding(stand, at) : []),
  ];
  return unsafe(reasons, scenes);
}

const holding = (stand: Stand, at: Instant): Scene[] =>
  begunIn(stand).filter((scene) => (scene.brings.kind === "hold" || scene.brings.kind === "hurt") && lasts(stand, scene, at));

/** What is asked for, without who, when and where from. */
const intentOf = ({
  at: _at,
  wall: _wall,
  doubtMs: _doubt,
  key: _key,
  seen: _seen,
  source: _source,
  heard: _heard,
  by: _by,
  role: _role,
  device: _device,
  entry: _entry,
  ...intent
}: Command): Intent => intent as Intent;

const idsOf = (scenes: readonly Scene[]): string[] => [...new Set(scenes.map(({ id }) => id))];
const unsafe = (reasons: readonly Refusal[], scenes: readonly Scene[]): Verdict => ({
  is: "unsafe",
  reasons,
  seen: null,
  scenes: idsOf(scenes),
});
