import { workOf } from "../../install/quantities.ts";
import { type Frozen, PHASES, type PhaseId } from "../../install/step.ts";
import { isSure, type Mark } from "./course.ts";
import { type Doubt, seconds, withPeople } from "./doubt.ts";
import { isTimed, phaseMs } from "./fastest.ts";
import type { Said } from "./said.ts";
import type { Found, Watch } from "./watch.ts";

/** When the guide first came to a phase, whether it did so at its first call, and who did something in it. */
type Stay = { readonly from: Mark; readonly isWhole: boolean; readonly by: Doubt["by"] };
type State = Found & { readonly stays: Readonly<Record<string, Stay>> };

/** A whole phase over in a small part of the time it takes. One that was stood down into is not whole, and never judged. */
export const tooFastPhase: Watch<State> = {
  kind: "tooFastPhase",
  open: { found: [], stays: {} },
  add: (state, said) => {
    const stays = staysAfter(state.stays, said);
    const doubt = doubtIn(stays, said);
    return { stays, found: doubt ? [...state.found, doubt] : state.found };
  },
  doubts: ({ found }) => found,
};

function staysAfter(stays: State["stays"], { before, after, frozen, did, command }: Said): State["stays"] {
  // The first phase began with the opening.
  const begun = stays[before.phase] ?? { from: before.stepFrom, isWhole: isFirst(before.step, before.phase, frozen), by: [] };
  const known = { ...stays, [before.phase]: did.length > 0 ? { ...begun, by: withPeople(begun.by, [command.by]) } : begun };
  const stoodDown = did.includes("standingDown");
  if (after.phase === before.phase) return stoodDown ? { ...known, [after.phase]: { ...begun, isWhole: false } } : known;
  const come = known[after.phase] ?? { from: after.stepFrom, isWhole: isFirst(after.step, after.phase, frozen), by: [] };
  return { ...known, [after.phase]: stoodDown ? { ...come, isWhole: false } : come };
}

const isFirst = (step: string, phase: string, { script }: Frozen): boolean => script.steps.find((s) => s.phase === phase)?.id === step;

/** Judged when a phase is left for the first time, to a later one or by closing the job. */
function doubtIn(stays: State["stays"], { before, after, did, frozen, entry }: Said): Doubt | null {
  const [from, to] = [PHASES.indexOf(before.phase as PhaseId), PHASES.indexOf(after.phase as PhaseId)];
  const isOver =
    after.phase === "closed" ? did.includes("closed") && before.phase === "struck" : after.isNew && did.includes("moved") && to > from;
  const { phase } = before;
  const stay = stays[phase];
  if (!isOver || !isTimed(phase) || !stay?.isWhole || !isSure(after, stay.from)) return null;
  const work = workOf(frozen);
  const minMs = work ? phaseMs(phase, work) : 0;
  const ms = after.at - stay.from.at;
  if (!work || ms >= minMs) return null;
  const facts = { seconds: seconds(ms), minSeconds: seconds(minMs), calls: work.calls[phase], people: work.people };
  return { kind: "tooFastPhase", entries: [stay.from.no, entry.no], phase, by: stay.by, facts };
}
