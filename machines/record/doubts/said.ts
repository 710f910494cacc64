import type { Command, Did } from "../../install/commands.ts";
import type { GateId } from "../../install/ids.ts";
import { indexOf } from "../../install/script-index.ts";
import type { Frozen, Step } from "../../install/step.ts";
import { effectiveCommandBy } from "../effective-command.ts";
import type { EntryLookup } from "../entries.ts";
import type { CommandEntry } from "../entry.ts";
import { frozenAfter, frozenIn } from "../in-force.ts";
import { type Answered, answerIn, type First } from "./answered.ts";
import { type Course, courseAfter } from "./course.ts";

/** A second person's word: to an answer, a paper, or a change of the plan. */
export type Second = { readonly to: "answer" | "paper" | "change"; readonly gate: GateId | null; readonly first: First };

/** One entry as the kinds of doubt look at it. */
export type Said = {
  readonly entry: CommandEntry;
  /** As it counts: a "correct" is what it confirms. */
  readonly command: Command;
  /** What was done by it, one after the other; empty where it was refused. */
  readonly did: readonly Did[];
  /** What was in force when it was said. */
  readonly frozen: Frozen;
  /** The call that it was said at; `null` on a way out, and once the job is closed. */
  readonly call: Step | null;
  readonly answered: Answered | null;
  readonly second: Second | null;
  readonly before: Course;
  readonly after: Course;
};

/** An entry with all that doubts need to know of it. `earlier` looks up the entries before it. */
export function saidBy(before: Course, entry: CommandEntry, earlier: EntryLookup): Said {
  const { outcome } = entry;
  const command = effectiveCommandBy(entry, earlier);
  const frozen = frozenIn(before.frozenAt, earlier);
  const { script } = frozen;
  const answered = answerIn({ entry, command }, { script, counted: before.counted, earlier });
  const inForce = frozenIn(frozenAfter(before.frozenAt, entry), earlier);
  return {
    entry,
    command,
    did: "refused" in outcome ? [] : outcome.and === undefined ? [outcome.did] : [outcome.did, outcome.and],
    frozen,
    call: script.steps[indexOf(script).at.get(before.step) ?? -1] ?? null,
    answered,
    second: "refused" in outcome ? null : secondIn(command, { before, answered, earlier }),
    before,
    after: courseAfter(before, { entry, answered, frozen: inForce }),
  };
}

/** Whether it answered the gate of the call that it was said at. */
export const isOwn = ({ answered, call }: Pick<Said, "answered" | "call">): boolean =>
  answered !== null && call?.gate?.id === answered.gate.id;

type Known = Pick<Said, "before" | "answered"> & { readonly earlier: EntryLookup };

function secondIn(command: Command, known: Known): Second | null {
  if (command.type === "agree") return agreed(command.target, known);
  if (command.type !== "answer") return null;
  const { before, answered } = known;
  if (!answered) {
    // Taken, and no answer of its own: a look at the paper that was shown.
    const shown = before.papers[command.gate];
    return shown ? { to: "paper", gate: command.gate, first: shown } : null;
  }
  if (answered.is !== "good") return null;
  const { id, secondPersonTo } = answered.gate;
  const first = before.firsts[secondPersonTo ?? ""];
  return first && first.by !== command.by ? { to: "answer", gate: id, first } : null;
}

function agreed(target: number, { earlier }: Known): Second | null {
  const asked = earlier(target);
  if (asked?.kind !== "command") return null;
  const { no, at, command } = asked;
  return { to: "change", gate: null, first: { no, said: at, by: command.by, device: command.device } };
}
