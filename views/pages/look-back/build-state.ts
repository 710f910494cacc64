import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { stepsIn } from "../../../machines/install/job.ts";
import type { Refusal } from "../../../machines/install/refusals.ts";
import { indexOf } from "../../../machines/install/script-index.ts";
import { type LookBack, lookBack, type Moment, type SaidThen } from "../../../machines/rehearsal/look-back.ts";
import { askText, callText, reasonText, sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import type { LookBackState, MomentState, SaidState } from "./state.ts";

type Told = { readonly live: LiveJob; readonly words: Words };

/** A rehearsal gone over, in words. Throws where it is none that answers back. */
export function lookBackState(told: Told, from: LookBackState["from"], isGone: boolean): LookBackState {
  const { live, words } = told;
  const { brief } = live.job.frozen;
  const { practice } = brief;
  if (!practice) throw new Error("a real job is not gone over as a rehearsal");
  const { rehearsal } = words;
  const gone = lookBack(live.entries);
  return {
    job: live.entries.at(0)!.entry.job,
    title: brief.title,
    seed: practice.seed,
    way: rehearsal.ways[practice.way].name,
    trouble: rehearsal.troubles[practice.trouble],
    from,
    isGone,
    score: scoreText(gone, words),
    moments: gone.moments.map((moment) => momentState(moment, told)),
  };
}

function scoreText({ score: { of, safe, unsafe, untrue, caught } }: LookBack, { rehearsal: { gone } }: Words): string[] {
  const some = (n: number, text: (n: number) => string) => (n > 0 ? [text(n)] : []);
  return [gone.score(safe, of), ...some(unsafe, gone.unsafe), ...some(untrue, gone.untrue), ...some(caught, gone.caught)];
}

function momentState({ scene, at, step, said, went }: Moment, told: Told): MomentState {
  const { live, words } = told;
  const { rehearsal } = words;
  const name = (id: string) => live.names[id] ?? id;
  const gate = said.flatMap(({ verdict }) => ("reasons" in verdict ? gatesOf(verdict.reasons) : []))[0] ?? gateOf(scene);
  const question = gate === undefined ? undefined : indexOf(live.job.frozen.script).questions.get(gate);
  return {
    title: scene ? rehearsal.situation(scene.is) : rehearsal.gone.besides,
    went,
    clock: clockOf(at, told),
    call: callAt(step, told),
    seen: scene && rehearsal.sign({ scene, is: "new" }, name),
    said: said.map((one) => saidState(one, told)),
    cost: scene ? rehearsal.cost(scene.is) : question ? callText(question, words).wrong : "",
  };
}

const gatesOf = (reasons: readonly Refusal[]): string[] =>
  reasons.flatMap((reason) => ("gate" in reason && reason.gate !== undefined ? [reason.gate] : []));
const gateOf = (scene: Moment["scene"]): string | undefined => (scene && "gate" in scene.brings ? scene.brings.gate : undefined);

function saidState({ no, at, step, command, verdict, right }: SaidThen, told: Told): SaidState {
  const { words } = told;
  const { rehearsal } = words;
  const seen = "seen" in verdict ? verdict.seen : null;
  return {
    no,
    clock: clockOf(at, told),
    call: callAt(step, told),
    said: saidTo(command, told),
    is: verdict.is,
    seen: seen && ("wind" in seen ? rehearsal.meter(seen.wind) : rehearsal.look(seen.value)),
    right: right && rehearsal.move(right),
    why: "reasons" in verdict ? verdict.reasons.map((refusal) => whyText(refusal, told)) : [],
  };
}

/** What was said, an answer with what it was to. */
function saidTo(command: SaidThen["command"], { live, words }: Told): string {
  const question = command.type === "answer" ? indexOf(live.job.frozen.script).questions.get(command.gate) : undefined;
  return [question && askText(question, words), words.saidText(command)].filter(Boolean).join(" ");
}

/** Why the guide would not have gone on, as it says it. */
function whyText(refusal: Refusal, { live, words }: Told): string {
  const { frozen } = live.job;
  const question = "gate" in refusal && refusal.gate !== undefined ? (indexOf(frozen.script).questions.get(refusal.gate) ?? null) : null;
  const reason = { refusal, question, value: null, finding: null, inHand: false, wind: null };
  return reasonText(reason, { name: (id) => live.names[id] ?? id, zone: frozen.brief.zone }, words);
}

/** Job time as the wall of a made-up day shows it: that of the entry at it, or near it. */
function clockOf(at: number, { live, words }: Told): string {
  const { wall, at: now } = live.now;
  return words.when.clock(live.job.frozen.brief.zone, wall - (now - at));
}

function callAt(step: string, { live, words }: Told): string {
  const call = stepsIn(live.job.frozen.script).byId.get(step);
  return call ? sayText(call, words) : "";
}
