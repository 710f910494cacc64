import { attentionState, type Job } from "../../machines/install/job.ts";
import type { Step } from "../../machines/install/step.ts";
import { SECOND } from "./fixtures.ts";
import type { Memory } from "./invariants.ts";
import { callOf, stands, type Tent, thunderNear, windIs } from "./tent.ts";

/** A job reached, with what is remembered by hand beside it, and the command that led there. */
export type Node = { readonly job: Job; readonly memory: Memory; readonly entry: number; readonly from: Node | null; readonly by: string };

/** How the own gate of a call stands; that of wind is judged with the weather. */
export const answerIs = (tent: Tent, job: Job, id: string) =>
  tent.rows.get(id)?.wind ? "open" : stands(tent, job, id, job.snapshot.context.lastAt + SECOND);

/** How many things in a state are out of the ordinary. */
export function strangeness(tent: Tent, { job }: Node): number {
  const now = job.snapshot.context.lastAt + SECOND;
  const call = callOf(tent, job);
  if (!call) return 0;
  const held = attentionState(job) !== "working";
  const odd = ["bad", "old", "samePerson"].includes(answerIs(tent, job, call.id));
  const weather = Number(windIs(job, now) !== "calm") + Number(thunderNear(job, now));
  return Number(held) + weather + Number(odd) + Number(!tent.place.has(call.id));
}

/** Two jobs are the same state when they agree on this. */
export function stateKey(tent: Tent, node: Node): string {
  const { job, memory } = node;
  const { context, value } = job.snapshot;
  const now = context.lastAt + SECOND;
  const call = callOf(tent, job);
  const { weather, attention } = value as { weather: string; attention: string };
  const straight = strangeness(tent, node) <= 1;
  const left =
    context.resumeAt === null || straight ? context.resumeAt : tent.frozen.script.steps.find((s) => s.id === context.resumeAt)!.phase;
  const remembered = memory.resumeAt === context.resumeAt && memory.site === context.site && memory.began === context.startedFrom;
  const answer = call && context.answers[call.id]?.value.kind === "unknown" ? "unknown" : "";
  const waived = call && context.waived[call.id] ? "waived" : "";
  const phase = call && context.resumeAt === null ? (hardOf(tent)[call.phase] ?? []) : [];
  // Gates before this call by what is wrong with them; those after it by what is still answered.
  const here = call ? (tent.place.get(call.id) ?? 0) : 0;
  const odd = phase.flatMap((s) => {
    const is = answerIs(tent, job, s.id);
    const usual = s.id === call!.id || tent.rows.get(s.id)!.goodForMin || is === (tent.place.get(s.id)! < here ? "good" : "open");
    return usual ? [] : [`${s.id}=${is}`];
  });
  return [
    call?.id ?? "closed",
    weather,
    attention,
    left,
    context.startedFrom,
    context.site,
    call ? answerIs(tent, job, call.id) + answer + waived : "",
    windIs(job, now),
    thunderNear(job, now),
    odd.join(),
    remembered || JSON.stringify(memory),
  ].join("|");
}

const hardSteps = new WeakMap<Tent, Readonly<Record<string, readonly Step[]>>>();

/** The calls of each phase that have a hard gate. */
function hardOf(tent: Tent): Readonly<Record<string, readonly Step[]>> {
  const known = hardSteps.get(tent);
  if (known) return known;
  const hard = tent.frozen.script.steps.filter((s) => tent.rows.get(s.id)?.hard);
  const byPhase = Object.fromEntries(hard.map(({ phase }) => [phase, hard.filter((s) => s.phase === phase)]));
  hardSteps.set(tent, byPhase);
  return byPhase;
}
