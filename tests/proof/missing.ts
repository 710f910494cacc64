import type { Job } from "../../machines/install/job.ts";
import type { Step } from "../../machines/install/step.ts";
import type { Memory } from "./invariants.ts";
import {
  answered,
  callOf,
  isRecheckDue,
  lacking,
  leftOut,
  outOf,
  sidesLoose,
  stands,
  type Tent,
  thunderNear,
  unsettled,
  warned,
  workStops,
} from "./tent.ts";

/** The first gate of this run before a call that is open again. Those that are conditions are asked before their work. */
export function firstOpen(tent: Tent, job: Job, { began }: Memory, before: string): string | null {
  const [from, to] = [tent.place.get(began) ?? 0, tent.place.get(before) ?? 0];
  const { waived } = job.snapshot.context;
  const skipped = (gate: string) => leftOut(gate, job) || (waived[gate] !== undefined && !tent.rows.get(gate)!.hard);
  for (const { gate, at } of unsettled(tent, job)) {
    if (at >= to) break;
    if (at >= from && !skipped(gate)) return gate;
  }
  return null;
}

/** What was answered early and is asked again by now, behind the call; not where the tent comes down next. */
export function recheckBehind(tent: Tent, job: Job, { began }: Memory, before: string, now: number): string | null {
  const [from, to] = [tent.place.get(began) ?? 0, tent.place.get(before) ?? 0];
  if (before === "watch.end") return null;
  const behind = (gate: string) => tent.place.get(gate)! >= from && tent.place.get(gate)! < to;
  return tent.recheck.find((gate) => behind(gate) && isRecheckDue(tent, job, gate, now)) ?? null;
}

/** The call that "next" leads to, by the order of calls and the memory of where a way out goes on. */
export function nextCall(tent: Tent, job: Job, { resumeAt }: Memory): string | null {
  const call = callOf(tent, job);
  if (!call) return null;
  const place = tent.place.get(call.id);
  if (place !== undefined) return tent.order.slice(place + 1).find((id) => !leftOut(id, job)) ?? null;
  const way = tent.frozen.script.escapes[call.phase as "up"];
  return way[way.indexOf(call) + 1]?.id ?? resumeAt;
}

/**
 * The first thing that is missing, by the tables and not by the chart: with nobody under, what was opened again, the call's own
 * gate, and what the next call's work needs; with people under, the last two.
 */
export function missingByHand(tent: Tent, job: Job, memory: Memory, at: number): string | null {
  // Dozens of commands are tried on one state, most of them at the same moment.
  const before = known.get(job) ?? new Map<string, string | null>();
  known.set(job, before);
  const key = `${at} ${memory.since} ${memory.under} ${memory.began} ${memory.resumeAt}`;
  const found = before.get(key);
  if (found !== undefined) return found;
  const missing = missingAt(tent, job, memory, at);
  before.set(key, missing);
  return missing;
}
const known = new WeakMap<Job, Map<string, string | null>>();

/** What was opened again behind a call; on a way out, its own count. */
function reopened(tent: Tent, job: Job, memory: Memory, call: Step, at: number): string | null {
  if (tent.place.has(call.id)) return firstOpen(tent, job, memory, call.id) ?? recheckBehind(tent, job, memory, call.id, at);
  const counted = `safe.${call.phase}.headcount`;
  return call.id === `safe.${call.phase}.looked` && answered(tent, job, counted) !== "good" ? counted : null;
}

/** What stops all. */
function stops(job: Job, at: number): string | null {
  if (!workStops(job, at)) return null;
  return thunderNear(job, at) ? "thunder" : warned(job) ? "warning" : "wind.lower";
}

function missingAt(tent: Tent, job: Job, memory: Memory, at: number): string | null {
  const call = callOf(tent, job);
  if (!call) return null;
  const again = memory.under === null && !sidesLoose(tent, call.id) ? reopened(tent, job, memory, call, at) : null;
  if (again) return (tent.place.has(call.id) && stops(job, at)) || again;
  const row = tent.rows.get(call.id);
  if (row && stands(tent, job, row.gate, at, memory.since) !== "good" && (row.hard || !job.snapshot.context.waived[row.gate])) {
    const isWork = ["under", "use"].includes(tent.work.get(call.id) ?? "");
    return (isWork && lacking(tent, job, call.id, at, memory.since)) || row.gate;
  }
  const to = nextCall(tent, job, memory);
  return to === null ? null : lacking(tent, job, to, at, memory.since);
}

/** Who is under after a count in or out. */
export function underAfter(tent: Tent, after: Job, under: string | null): string | null {
  if (under !== null) return answered(tent, after, outOf(under)) === "good" ? null : under;
  const block = tent.block.get(callOf(tent, after)?.id ?? "");
  if (block === undefined || after.snapshot.context.answers[block] === undefined) return null;
  return answered(tent, after, outOf(block)) === "good" ? null : block;
}
