import type { Intent } from "../install/commands.ts";
import type { Instant } from "../install/ids.ts";
import { attentionState, currentStep, leafOf, missingNow } from "../install/job.ts";
import { peopleUnder } from "../install/missing.ts";
import type { Missing } from "../install/refusals.ts";
import { indexOf } from "../install/script-index.ts";
import { ESCAPES } from "../install/step.ts";
import { keyOf } from "../install/thing.ts";
import { WARNING, weatherAt } from "../install/weather.ts";
import { afterIntent, contradicted, isHeldFor } from "./shadow.ts";
import { begunIn, blowing, lasts, overAt, type Stand, seenAt } from "./stand.ts";
import { isWorse, untold, windReading } from "./untold.ts";

/** What a lead does: says something, or lets so many seconds go by. */
export type Move = Intent | { readonly type: "wait"; readonly seconds: number };

/** What became of somebody who was hurt, as the record has it. */
const LOOKED_AFTER = "looked after";
/** The least that is waited: a minute. */
const MIN_WAIT_S = 60;

/**
 * What is right at a moment: tell what is to be seen, get people out where all stops, look again where a yes cannot be true, wait
 * where only time helps, answer what is asked as it is, else go on. `null` where the job is closed, or asks what nobody knows.
 */
export function rightMove(stand: Stand, at: Instant): Move | null {
  const { job } = stand;
  const leaf = leafOf(job);
  if (!leaf) return null;
  const [first] = untold(stand, at);
  if (first) return first.tell;
  const state = job.snapshot.context;
  // Before any hold is waited out: the way out is open while the work is held, too.
  const isOnWayOut = (ESCAPES as readonly string[]).includes(leaf.phase);
  if (!isOnWayOut && weatherAt(state, at) === "stop" && peopleUnder(job.frozen.script, state)) return { type: "makeSafe", because: null };
  const heldFor = isHeldFor(stand, at);
  if (attentionState(job) !== "working")
    return heldFor ? waitFor(stand, at) : { type: "carryOn", became: state.hurt ? LOOKED_AFTER : null };
  if (heldFor) return { type: "hold" };
  const back = contradicted(stand, at).length > 0 ? goBack(stand, at) : null;
  if (back) return back;
  const missing = missingNow(job, at);
  return missing ? toMissing(stand, missing, at) : { type: "next" };
}

/** Back to where somebody has to look again, or what that needs first; `null` where the chart leads nowhere back. */
function goBack(stand: Stand, at: Instant): Move | null {
  const [, outcome] = afterIntent(stand.job, { type: "back" }, at);
  if ("did" in outcome) return { type: "back" };
  const [why] = outcome.refused;
  return why?.why === "gate" || why?.why === "outOfUse" ? toMissing(stand, why, at) : null;
}

/** What brings what is missing. */
function toMissing(stand: Stand, missing: Missing, at: Instant): Move | null {
  const { job } = stand;
  if (missing.why === "outOfUse") {
    const back = begunIn(stand).find(
      (scene) => scene.brings.kind === "short" && missing.keys.includes(keyOf(scene.brings.thing)) && !lasts(stand, scene, at),
    );
    return back?.brings.kind === "short" ? { type: "backInUse", thing: back.brings.thing, because: "came" } : waitFor(stand, at);
  }
  if (missing.why !== "gate") return waitFor(stand, at);
  const gate = indexOf(job.frozen.script).gates.get(missing.gate)!;
  if (gate.check.kind === "notKnown") return null;
  if (gate.check.kind === "quiet" || missing.status === "early") return waitFor(stand, at);
  if (gate.check.kind === "wind") {
    const { wind } = blowing(stand, at);
    const tooMuch = isWorse(wind, { ...job.snapshot.context, wind: null }, job.frozen.limits.insideGustMph.is);
    return tooMuch ? waitFor(stand, at) : windReading(wind, at);
  }
  const value = seenAt(stand, gate, at);
  if (gate.id === WARNING && value.kind === "yesNo" && !value.yes) return waitFor(stand, at);
  // The second look is somebody else's; they take their time.
  if (gate.secondPersonTo !== null && missing.status !== "samePerson" && isLeads(stand, gate.secondPersonTo))
    return { type: "wait", seconds: MIN_WAIT_S };
  return { type: "answer", gate: gate.id, value };
}

const isLeads = ({ job }: Stand, gate: string): boolean => {
  const lead = job.frozen.brief.crew.find(({ role }) => role === "lead");
  return job.snapshot.context.answers[gate]?.by === lead?.id;
};

/** Until the first of what goes on is over: what blows, what was called, what comes, and the quiet after thunder. */
export function waitFor({ job, ...site }: Stand, at: Instant): Move {
  const stand = { job, ...site };
  const { thunderAt, limits } = job.snapshot.context;
  const quiet = thunderAt === null ? [] : [thunderAt + limits.thunderS * 1000];
  const over = begunIn(stand).flatMap((scene) => overAt(stand, scene) ?? []);
  const next = [...over, ...quiet].filter((ends) => ends > at);
  const seconds = next.length === 0 ? MIN_WAIT_S : Math.ceil((Math.min(...next) - at) / 1000);
  return { type: "wait", seconds: Math.max(MIN_WAIT_S, seconds) };
}

/** Where a rehearsal stands, as the call's id; `closed` where nothing is asked any more. */
export const callOf = ({ job }: Pick<Stand, "job">): string => currentStep(job)?.id ?? "closed";
