import { tooManyIn } from "../site/read-site.ts";
import { applyAmendment } from "./amend.ts";
import { beyond, isSettled } from "./checks/any-check.ts";
import { unbelievable } from "./checks/values.ts";
import type { Command, Did } from "./commands.ts";
import { forgotten } from "./facts.ts";
import { onlyAdds } from "./found.ts";
import { withLead } from "./hand-over.ts";
import type { PersonId } from "./ids.ts";
import type { Job } from "./job.ts";
import { currentStep, missingNow } from "./job.ts";
import { looserRefusals } from "./looser.ts";
import { isDatedAhead } from "./paper.ts";
import type { Done, Missing, Outcome, Refusal } from "./refusals.ts";
import { indexOf } from "./script-index.ts";
import { keyOf } from "./thing.ts";
import { hasThing, thingsOf } from "./things-of.ts";
import { transition } from "./transition.ts";
import { weatherAt } from "./weather.ts";

/** Commands that mean something only against what the screen was showing. A hold, a reading or a note always counts. */
const REVISION_BOUND: ReadonlySet<Command["type"]> = new Set(["next", "back", "carryOn", "answer", "waive", "standDown", "backInUse"]);

/**
 * The one outcome of a command, at a job whose clock was set. A good answer to what was asked also does what its giver's own
 * "next" would. Throws where the chart does not answer exactly once: that is a mistake in the chart.
 */
export function judge(job: Job, command: Command): [Job, Outcome] {
  const { revision } = job.snapshot.context;
  // No screen has shown what is not there yet: to take such a number for new would let everything through, at once and twice.
  if (REVISION_BOUND.has(command.type) && command.seen >= command.entry)
    return [job, { refused: [{ why: "notThereYet", seen: command.seen, last: command.entry - 1 }] }];
  if (REVISION_BOUND.has(command.type) && command.seen < revision) return [job, { refused: [{ why: "movedOn", revision }] }];
  const gate = "gate" in command ? command.gate : null;
  if (gate !== null && !indexOf(job.frozen.script).gates.has(gate)) return [job, { refused: [{ why: "noSuchGate", gate }] }];
  const noSuch = noSuchThing(job, command);
  if (noSuch) return [job, { refused: [noSuch] }];
  const [after, outcome] = inChart(job, command);
  if ("refused" in outcome) return [after, outcome];
  if (command.type === "amend") {
    const facts = forgotten(job.frozen.brief, command.to.brief);
    if (facts.length > 0) return [job, { refused: [{ why: "forgets", facts }] }];
    const looser = looserRefusals(job.frozen, command.to);
    if (looser.length > 0) return [job, { refused: looser }];
  }
  const full = command.type === "found" ? tooManyIn(command.to.brief.siteModel) : null;
  if (full) return [job, { refused: [{ why: "siteFull", most: full.limit! }] }];
  if (command.type === "found" && !onlyAdds(job.frozen, command.to, command.what)) return [job, { refused: [{ why: "notOnlyFound" }] }];
  if (command.type === "answer") {
    const { check } = indexOf(job.frozen.script).gates.get(command.gate)!;
    const odd = unbelievable(command.value) ?? beyond(check, command.value);
    if (odd) return [job, { refused: [{ why: "unbelievable", gate: command.gate, ...odd }] }];
    const { value } = command;
    if (value.kind === "paper" && isDatedAhead(value, job.frozen.brief.zone, command.wall))
      return [job, { refused: [{ why: "datedAhead", gate: command.gate, dated: value.dated }] }];
  }
  const done = withLeft(withTotal(outcome, command, after), command, after);
  const before = missingNow(job, command.at);
  const asks = missingNow(after, command.at);
  if (!endsStop(job, after) && answers(command, before, asks, after)) {
    const [gone, next] = inChart(after, { ...command, type: "next" } as Command);
    if ("did" in next) return [gone, { ...done, and: next.did }];
  }
  if (what(before) === what(asks)) return [after, done];
  const told = asks && (command.type === "answer" || command.type === "reading") ? { ...done, asks } : done;
  return [withNewQuestion(after, command), told];
}

/** What is missing by its name: as long as that is the same, nothing else is asked. */
const what = (missing: Missing | null): string | null =>
  missing && (missing.gate ?? ("keys" in missing ? `out of use: ${missing.keys.join()}` : missing.why));

/** A piece or a kit line that the plan does not have, with what there is. */
function noSuchThing(job: Job, command: Command): Refusal | null {
  if (command.type !== "outOfUse" && command.type !== "backInUse") return null;
  const { thing } = command;
  const things = thingsOf(job.frozen);
  if (hasThing(things, thing)) return null;
  return { why: "noSuchThing", thing, has: thing.is === "piece" ? things.pieces : things.items };
}

/** With how many are still short after some came. */
function withLeft(done: Done, command: Command, { snapshot }: Job): Done {
  const left = command.type === "backInUse" ? snapshot.context.outOfUse[keyOf(command.thing)]?.thing : undefined;
  return left?.is === "kit" ? { ...done, left: left.short } : done;
}

/** With what an answer in parts came to: later, nobody has to put it together again. */
function withTotal(done: Done, command: Command, { snapshot }: Job): Done {
  if (command.type !== "answer" || done.did !== "answered") return done;
  const total = snapshot.context.answers[command.gate]!.value;
  return total === command.value ? done : { ...done, total };
}

/** What ends a stop goes nowhere by itself: somebody looks up first. */
const endsStop = (before: Job, after: Job): boolean => {
  const [was, is] = [before, after].map(({ snapshot: { context } }) => weatherAt(context, after.snapshot.context.lastAt));
  return was === "stop" && is !== "stop";
};

/**
 * Whether a command answered what was asked, and well. Nothing said in passing goes on; nor does anything at a call that asks
 * nothing itself, as nobody has said that it is done.
 */
function answers(command: Command, missing: Missing | null, asks: Missing | null, after: Job): boolean {
  const question = missing?.gate;
  if ((command.type !== "answer" && command.type !== "reading") || question === undefined || asks?.gate === question) return false;
  const { frozen, snapshot } = after;
  const { check } = indexOf(frozen.script).gates.get(question)!;
  const own = currentStep(after)?.gate;
  if (!own || own.stays) return false;
  if (command.type === "answer") return command.gate === question && isSettled(check, snapshot.context.answers[question]!.value);
  return command.reading.kind === "wind" && check.kind === "wind";
}

/** What a screen showed before is out of date. */
const withNewQuestion = (job: Job, { at, entry }: Command): Job => ({
  ...job,
  snapshot: transition(job.machine, job.snapshot, { type: "questionChanged", at, entry })[0],
});

/** The chart's outcome. */
function inChart(job: Job, command: Command): [Job, Outcome] {
  const [after, effects] = transition(job.machine, job.snapshot, command);
  const outcomes = effects.flatMap(({ type, params }): Outcome[] => {
    if (type === "did") return [{ did: (params as { what: Did }).what }];
    return type === "refuse" ? [{ refused: (params as { reasons: Refusal[] }).reasons }] : [];
  });
  const [outcome] = outcomes;
  if (outcomes.length !== 1 || !outcome) throw new Error(`"${command.type}" got ${outcomes.length} outcomes, wanted exactly one`);
  const next: Job = { ...job, snapshot: after, proposed: proposedBy(command, outcome, job) };
  if ("refused" in outcome) return [next, outcome];
  if (outcome.did === "amended") return [applyAmendment(next, job.proposed!, command.entry), outcome];
  if (outcome.did === "found" && command.type === "found") return [applyAmendment(next, command.to, command.entry), outcome];
  return [outcome.did === "tookLead" ? ledBy(next, command.by) : next, outcome];
}

/** Under another lead, and otherwise as it stands: the same calls, answered as they are. */
const ledBy = (job: Job, lead: PersonId): Job => ({ ...job, frozen: { ...job.frozen, brief: withLead(job.frozen.brief, lead) } });

function proposedBy(command: Command, outcome: Outcome, job: Job): Job["proposed"] {
  if (!("did" in outcome)) return job.proposed;
  if (command.type === "amend") return command.to;
  return ["amended", "discarded", "tookLead", "found"].includes(outcome.did) ? null : job.proposed;
}
