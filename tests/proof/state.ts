import { attentionState, type Job } from "../../machines/install/job.ts";
import { SECOND } from "./fixtures.ts";
import type { ConditionRow } from "./gates.table.ts";
import type { Memory } from "./invariants.ts";
import { nextCall, recheckBehind } from "./missing.ts";
import { callOf, conditionIs, conditionsAt, leftOut, stands, type Tent, thunderNear, unsettled, warned, windIs } from "./tent.ts";

/** A job reached, with what is remembered by hand beside it, and the command that led there. */
export type Node = { readonly job: Job; readonly memory: Memory; readonly entry: number; readonly from: Node | null; readonly by: string };

const at = (job: Job) => job.snapshot.context.lastAt + SECOND;

/** How the own gate of a call stands. */
export const answerIs = (tent: Tent, { job, memory }: Pick<Node, "job" | "memory">, id: string) =>
  stands(tent, job, id, at(job), memory.since);

/** Conditions of this call's work and the next one's. */
export function conditionsHere(tent: Tent, { job, memory }: Pick<Node, "job" | "memory">): readonly ConditionRow[] {
  const call = callOf(tent, job);
  const next = nextCall(tent, job, memory);
  // Where a strike was begun in the middle, "back" must not lead to the call before it.
  const before = call && call.id === memory.began ? tent.order[(tent.place.get(call.id) ?? 0) - 1] : undefined;
  const byTent = here.get(tent) ?? new Map<string, readonly ConditionRow[]>();
  here.set(tent, byTent);
  const key = `${call?.id} ${next} ${before}`;
  const known = byTent.get(key);
  if (known) return known;
  const rows = [...new Set([call?.id, next, before].flatMap((id) => (id ? conditionsAt(tent, id) : [])))];
  byTent.set(key, rows);
  return rows;
}
const here = new WeakMap<Tent, Map<string, readonly ConditionRow[]>>();

/** The wind, where some work here looks at it; elsewhere only whether it stops all. */
function windHere(tent: Tent, node: Pick<Node, "job" | "memory">): string {
  const is = windIs(node.job, at(node.job));
  if (is === "stop" || conditionsHere(tent, node).some(({ below }) => below !== undefined)) return is;
  return "calm";
}

/** Those of them, apart from wind and thunder, that are not good. */
function conditionsAmiss(tent: Tent, node: Pick<Node, "job" | "memory">): string[] {
  const { job, memory } = node;
  return conditionsHere(tent, node).flatMap((row) => {
    const { gate, below } = row;
    if (gate === "thunder" || below !== undefined || conditionIs(tent, job, row, at(job), memory.since) === "good") return [];
    const is = stands(tent, job, gate, at(job), memory.since);
    return is === "good" ? [] : [`${gate}=${is}`];
  });
}

/** Gates of this run before a call that were opened again, conditions aside. */
function reopened(tent: Tent, { job, memory }: Pick<Node, "job" | "memory">): string[] {
  const call = callOf(tent, job);
  const here = call && tent.place.get(call.id);
  if (here === null || here === undefined) return [];
  const from = tent.place.get(memory.began) ?? 0;
  const { waived } = job.snapshot.context;
  const open: string[] = [];
  for (const { gate, at: place, is } of unsettled(tent, job)) {
    if (place >= here) break;
    if (place >= from && !(is === "open" && (waived[gate] || leftOut(gate, job)))) open.push(`${gate}=${is}`);
  }
  const due = recheckBehind(tent, job, memory, call!.id, at(job));
  return due ? [...open, `${due}=due again`] : open;
}

/** How many things in a state are out of the ordinary. It is asked for several times of each. */
export function strangeness(tent: Tent, node: Pick<Node, "job" | "memory">): number {
  const is = strange.get(node) ?? strangenessOf(tent, node);
  strange.set(node, is);
  return is;
}
const strange = new WeakMap<object, number>();

function strangenessOf(tent: Tent, node: Pick<Node, "job" | "memory">): number {
  const { job } = node;
  const call = callOf(tent, job);
  if (!call) return 0;
  const held = attentionState(job) !== "working";
  const odd = ["bad", "old", "samePerson", "unseen"].includes(answerIs(tent, node, call.id));
  // One that nobody has asked yet is in order, unless its call is behind; one that is dormant has then been woken.
  const dormant = (gate: string) => conditionsHere(tent, node).some((row) => row.gate === gate && row.dormant);
  const behind = (gate: string) => dormant(gate) || (tent.place.get(gate) ?? Number.POSITIVE_INFINITY) < (tent.place.get(call.id) ?? 0);
  const amiss = conditionsAmiss(tent, node).filter((is) => !is.endsWith("=open") || behind(is.slice(0, -"=open".length)));
  const wind = windHere(tent, node) !== "calm";
  const stops =
    Number(wind) +
    Number(thunderNear(job, at(job))) +
    Number(amiss.length > 0 || warned(job)) +
    Number(Object.keys(job.snapshot.context.outOfUse).length > 0);
  return Number(held) + stops + Number(odd) + Number(!tent.place.has(call.id)) + Number(reopened(tent, node).length > 0);
}

/** Whether lines stand in a strike: all, some or none of them. */
function standing(tent: Tent, { job }: Node): string {
  const lowered = tent.order.filter((id) => id.startsWith("lower."));
  const never = lowered.filter((id) => leftOut(id, job));
  return never.length === 0 ? "all" : never.length === lowered.length ? "none" : "some";
}

/** Two jobs are the same state when they agree on this. */
export function stateKey(tent: Tent, node: Node): string {
  const { job, memory } = node;
  const { context, value } = job.snapshot;
  const call = callOf(tent, job);
  const { attention } = value as { attention: string };
  if (!call) return `closed|${attention}`;
  const straight = strangeness(tent, node) <= 1;
  const left =
    context.resumeAt === null || straight ? context.resumeAt : tent.frozen.script.steps.find((s) => s.id === context.resumeAt)!.phase;
  const remembered = memory.resumeAt === context.resumeAt && memory.site === context.site && memory.began === context.startedFrom;
  const answer = call && context.answers[call.id]?.value.kind === "unknown" ? "unknown" : "";
  const waived = call && context.waived[call.id] ? "waived" : "";
  // Gates after this call by what is still answered: in its phase.
  const here = call ? (tent.place.get(call.id) ?? 0) : 0;
  const ahead =
    call && context.resumeAt === null
      ? (tent.gatesIn.get(call.phase) ?? []).flatMap(({ gate, at: place }) => {
          if (place <= here) return [];
          const is = answerIs(tent, node, gate);
          return is === "open" ? [] : [`${gate}=${is}`];
        })
      : [];
  return [
    call?.id ?? "closed",
    attention,
    left,
    context.startedFrom,
    context.site,
    call ? answerIs(tent, node, call.id) + answer + waived : "",
    windHere(tent, node),
    thunderNear(job, at(job)),
    warned(job),
    context.hurt !== null,
    Object.keys(context.outOfUse).join(),
    memory.under ?? "",
    conditionsAmiss(tent, node).join(),
    reopened(tent, node).join(),
    call.phase === "struck" ? standing(tent, node) : "",
    ahead.join(),
    remembered || [memory.site, memory.began, memory.resumeAt].join(),
  ].join("|");
}
