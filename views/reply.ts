import type { Job } from "../machines/install/job.ts";
import type { Refusal } from "../machines/install/refusals.ts";
import type { Step } from "../machines/install/script.ts";
import type { JobState } from "../machines/install/state.ts";
import { status } from "../machines/install/status.ts";
import { countedAs } from "../machines/record/counted.ts";
import type { Said, Sealed } from "../machines/record/entry.ts";
import type { Reason } from "./guide-state.ts";
import { calls } from "./text/en/calls.ts";
import { limitText, valueText } from "./text/en/limits.ts";
import { didText, readBackText, refusalText } from "./text/en/refusals.ts";
import { askText } from "./text/en/said.ts";
import type { CallWords } from "./text/en/words.ts";

/** A job with its record and its people, as the server holds it. */
export type Held = {
  readonly job: Job;
  readonly entries: readonly Sealed[];
  readonly names: Readonly<Record<string, string>>;
  readonly readOnly: string | null;
};

/** The words of a call. */
export const words = (step: Step): CallWords => calls[step.call] ?? { say: () => step.id, why: "", wrong: "", well: "" };

/** Why something was refused, each with what to do. `answers` are those that stood then. */
function reasonsFor(refused: readonly Refusal[], job: Job, answers: JobState["answers"], name: (id: string) => string): Reason[] {
  return refused.map((refusal) => {
    const id = "gate" in refusal ? refusal.gate : null;
    const step = id === null ? null : (allGates(job).get(id) ?? null);
    const answer = id === null ? undefined : answers[id];
    const about = {
      ask: step ? (words(step).ask?.(step.of) ?? null) : null,
      ifNot: step ? (words(step).ifNot ?? null) : null,
      limit: step?.gate ? limitText(step.gate) : null,
      value: answer ? valueText(answer.value) : null,
      name,
    };
    return {
      ...("gate" in refusal ? { gate: refusal.gate } : {}),
      ...("status" in refusal ? { status: refusal.status } : {}),
      why: refusal.why,
      text: refusalText(refusal, about),
    };
  });
}

/**
 * What the guide says back to one entry, and the reasons where it refused. Told from the entry itself, so that it is the
 * same when a key is sent again later. An answer out of limits is taken down, and said to be so at once.
 */
export function replyTo(entry: Said, { job, entries }: Held, name: (id: string) => string): { reply: string; reasons: Reason[] } {
  const { outcome } = entry;
  const command = countedAs(entry, entries);
  const { context } = job.snapshot;
  const stood = Object.fromEntries(Object.entries(context.answers).filter(([, a]) => a.entry <= entry.no));
  const joined = (reasons: Reason[]) => reasons.map((r) => r.text).join(" ");
  if ("refused" in outcome) {
    const reasons = reasonsFor(outcome.refused, job, stood, name);
    return { reply: joined(reasons), reasons };
  }
  const said = command.type === "readBack" ? command.ask : command;
  const step = said.type === "answer" ? allGates(job).get(said.gate) : undefined;
  const gate = step?.gate;
  const did = { reply: didText(outcome.did), reasons: [] };
  if (!gate || said.type !== "answer") return command.type === "readBack" ? { ...did, reply: readBackText(askText(command.ask)) } : did;
  const { by, device, at } = command;
  const answers = { ...stood, [gate.id]: { gate: gate.id, value: said.value, by, device, at, entry: entry.no } };
  const is = status(gate, { ...context, answers, waived: {}, lastAt: at }, at);
  const good = is === "good" || is === "waived";
  if (command.type === "readBack")
    return { ...did, reply: readBackText(valueText(said.value), words(step!).ask?.(step!.of), good ? undefined : limitText(gate)) };
  return good ? did : { reply: joined(reasonsFor([{ why: "gate", gate: gate.id, status: is }], job, answers, name)), reasons: [] };
}

const allGates = ({ frozen }: Job) =>
  new Map([...frozen.script.steps, ...Object.values(frozen.script.ways).flat()].flatMap((s) => (s.gate ? [[s.gate.id, s] as const] : [])));
