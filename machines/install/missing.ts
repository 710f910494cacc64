import { noWorkInAir } from "./air.ts";
import type { Instant, StepId } from "./ids.ts";
import { isLeftOut } from "./neighbors.ts";
import { missingAs, reopened } from "./open-again.ts";
import { lackedBy } from "./out-of-use.ts";
import type { Missing } from "./refusals.ts";
import { indexOf } from "./script-index.ts";
import type { JobState } from "./state.ts";
import { answerStatus, isPassed, status } from "./status.ts";
import type { EscapeId, Script, Step, Work } from "./step.ts";
import { tooLong } from "./time-left.ts";
import { wallTime } from "./wall-time.ts";
import { WARNING } from "./weather.ts";

/** Whether somebody was counted under the cloth and not out again: nothing but what finishes that is asked. */
export const peopleUnder = (script: Script, state: JobState): boolean =>
  indexOf(script).under.some(({ into, out }) => state.answers[into] !== undefined && !isPassed(answerStatus(out, state)));

/** The call a job stands at: where the chart is, or one that an amendment put behind it and that is being done. */
export const callAt = (script: Script, step: Step, { doing }: JobState): Step =>
  doing === null || !indexOf(script).at.has(step.id) ? step : script.steps[indexOf(script).at.get(doing)!]!;

/** Whether "next" leads to a call that an amendment put behind the job, or on from one. With people under, they wait. */
export const toAdded = (script: Script, step: Step, state: JobState): boolean =>
  indexOf(script).at.has(step.id) && (state.doing !== null || (state.added.length > 0 && !peopleUnder(script, state)));

/** The call that "next" leads to from where the chart is; `null` where it closes the job. */
export function following(script: Script, step: Step, state: JobState): Step | null {
  const { at } = indexOf(script);
  const call = (id: StepId | null | undefined) => script.steps[at.get(id ?? "") ?? -1] ?? null;
  const here = at.get(step.id);
  if (here === undefined) {
    const way = script.escapes[step.phase as EscapeId];
    return way[way.indexOf(step) + 1] ?? call(state.resumeAt);
  }
  if (toAdded(script, step, state)) return call(state.added[state.doing === null ? 0 : 1] ?? step.id);
  let next = here + 1;
  while (script.steps[next] && isLeftOut(script.steps[next]!, state)) next++;
  return script.steps[next] ?? null;
}

/**
 * The first thing that is missing where a job stands: what "next" asks for. With nobody under and no load up: gates of earlier
 * calls that were reopened, the call's own gate, and what the work of the next call needs. Else: the call's own gate, and
 * what the next call needs, which for a call that finishes is nothing. A thing out of use comes before conditions: however long
 * it takes to mend, they are fresh then. Guard, reply, tile, speech and record read this.
 */
export function asked(script: Script, step: Step, state: JobState, at: Instant): Missing | null {
  const call = callAt(script, step, state);
  // Where calls were put behind the job, its own comes after them.
  const waits = state.doing === null && toAdded(script, step, state);
  const own = waits ? null : ownMissing(script, call, state, at);
  const again = peopleUnder(script, state) || loadUp(script, call) ? null : reopened(script, call, state, at);
  return again ?? own ?? entry(script, following(script, step, state), state, at);
}

/** Calls whose answer is the work itself: going under, and the walk around a tent in use. Their conditions are asked first. */
const ANSWER_IS_WORK: ReadonlySet<Work | null> = new Set(["under", "use"]);

function ownMissing(script: Script, call: Step, state: JobState, at: Instant): Missing | null {
  const { gate } = call;
  const missing = gate && missingAs("here", gate, status(gate, state, at), state);
  if (!missing) return null;
  return (ANSWER_IS_WORK.has(call.work) && entry(script, call, state, at)) || missing;
}

/** The work that conditions are asked before: this call's, where its answer is the work and still to come, else the next one's. */
export function workAhead(script: Script, step: Step, state: JobState, at: Instant): Work | null {
  const call = callAt(script, step, state);
  const waits = state.doing === null && toAdded(script, step, state);
  const isIt = !waits && call.gate !== null && ANSWER_IS_WORK.has(call.work) && !isPassed(status(call.gate, state, at));
  return isIt ? call.work : (following(script, step, state)?.work ?? null);
}

/** Whether something is up and not yet secured: inside a block of calls that is redone as one, past its first and before its last. */
function loadUp(script: Script, { id, resumeFrom }: Step): boolean {
  const after = script.steps[(indexOf(script).at.get(id) ?? Number.NaN) + 1];
  return resumeFrom !== null && resumeFrom !== id && after?.resumeFrom === resumeFrom;
}

/** What a call needs and does not have: things, and conditions of its work. */
export function entry(
  script: Script,
  call: Pick<Step, "id" | "phase" | "work" | "needs"> | null,
  state: JobState,
  at: Instant,
): Missing | null {
  if (call === null) return null;
  const lacked = lackedBy(call, state);
  if (lacked || call.work === null) return lacked;
  const late = tooLong(script, call, state, at);
  // A warning is asked, as somebody may say that it is over.
  if (late && late.because !== "warning") return { why: "tooLong", ...late };
  const past = call.work === "use" ? pastHour(script, state, at) : null;
  if (past) return past;
  for (const { gate, notIn } of indexOf(script).over.get(call.work) ?? []) {
    if (notIn === call.phase) continue;
    const missing = missingAs("before", gate, status(gate, state, at), state);
    if (missing) return late && gate.id === WARNING ? { ...missing, tooLong: late } : missing;
  }
  // Last: thunder and wind are the graver, and are told first.
  return noWorkInAir(state, call.work);
}

/** The hour by which nobody is inside, once it has come and until the wind that it is for is over. */
function pastHour({ watch }: Script, state: JobState, at: Instant): Missing | null {
  const { clearBy = null, to = 0 } = watch?.forecast ?? {};
  const now = wallTime(at, state);
  return clearBy !== null && now >= clearBy && now < to ? { why: "pastHour", clearBy } : null;
}
