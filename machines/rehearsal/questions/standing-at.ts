import type { Role } from "../../install/brief.ts";
import type { Command, Intent } from "../../install/commands.ts";
import { decide } from "../../install/decide.ts";
import type { Answer } from "../../install/gates.ts";
import type { Instant, PersonId } from "../../install/ids.ts";
import { type Job, openJob } from "../../install/job.ts";
import type { Refusal } from "../../install/refusals.ts";
import { stateKey } from "../../install/state-key.ts";
import type { Frozen, Step } from "../../install/step.ts";
import { orderly } from "../orderly.ts";

/** A day on which a made-up job happens: only what lies between two moments of it counts. */
export const NOON: Instant = Date.UTC(2020, 5, 2, 12);
/** The last entry of a made-up job that was put somewhere. */
const LAST = 10;

/** A made-up job that stands at a call with all before it answered well, and all that work needs; nobody was there. */
export function standingAt(frozen: Frozen, step: Step): Job {
  const opened = openJob(frozen, NOON);
  const { context, value } = opened.snapshot;
  const before = frozen.script.steps.slice(0, frozen.script.steps.indexOf(step));
  const gates = [...before.flatMap(({ gate }) => (gate ? [gate] : [])), ...frozen.script.conditions.map(({ gate }) => gate)];
  const answers: Record<string, Answer> = {};
  for (const gate of gates) {
    if (gate.check.kind === "wind" || gate.check.kind === "quiet" || gate.dormant || answers[gate.id]) continue;
    const by = gate.secondPersonTo === null ? "first" : "second";
    answers[gate.id] = { gate: gate.id, value: orderly(gate, { answers }, 0), by, device: by, at: NOON, entry: 1 };
  }
  const wind = { mph: 4, gustMph: 6, fromDeg: null, takenAt: NOON };
  const procedure = { [step.phase]: stateKey(step.id) };
  const snapshot = opened.machine.resolveState({
    value: { ...(value as object), procedure } as typeof value,
    context: { ...context, answers, wind, site: step.site, revision: LAST },
  });
  return { ...opened, snapshot };
}

/** What somebody asks of a made-up job, `afterS` seconds after noon; `seen` where their screen showed an older entry. */
export type Act = {
  readonly intent: Intent;
  readonly role: Role;
  readonly by?: PersonId;
  readonly afterS?: number;
  readonly seen?: number;
};

/** Asks one thing after another, through the program's own rules; what the last was refused for, or `null` where it was not. */
export function refusalOf(job: Job, acts: readonly Act[]): Refusal | null {
  let now = job;
  let refused: readonly Refusal[] = [];
  for (const [i, { intent, role, by = role, afterS = 60, seen }] of acts.entries()) {
    const at = NOON + afterS * 1000 + i;
    const asked = {
      key: `act-${i}`,
      seen: seen ?? now.snapshot.context.revision,
      source: "press",
      heard: null,
      device: by,
      entry: LAST + 1 + i,
      at,
      wall: at,
      doubtMs: 0,
    } as const;
    const [after, outcome] = decide(now, { ...intent, ...asked, by, role } as Command);
    now = after;
    refused = "refused" in outcome ? outcome.refused : [];
  }
  return refused[0] ?? null;
}
