import type { EntryNo, GateId, Instant, StepId, WallTime } from "../../install/ids.ts";
import { indexOf } from "../../install/script-index.ts";
import type { Frozen } from "../../install/step.ts";
import { clockJump } from "../clock-jump.ts";
import type { CommandEntry, Opening } from "../entry.ts";
import { frozenAfter } from "../in-force.ts";
import { type Answered, type Counted, comparedIn, type First } from "./answered.ts";
import { MAKING_SAFE } from "./doubt.ts";

/** A moment of the record: an entry and its time. */
export type Mark = { readonly no: EntryNo; readonly at: Instant };

/** How far a record has come, as every kind of doubt needs to know it. Plain JSON. */
export type Course = {
  readonly no: EntryNo;
  readonly at: Instant;
  readonly wall: WallTime;
  /** The opening, or the amendment, whose script is in force. */
  readonly frozenAt: EntryNo;
  readonly phase: string;
  readonly step: StepId;
  /** When the guide came to this call. */
  readonly stepFrom: Mark;
  /** Whether that was for the first time: gone back over, a call is done again in no time, and truly so. */
  readonly isNew: boolean;
  /** The latest call of the script that the guide ever came to. */
  readonly furthest: StepId;
  /** When the question that is open now was put. */
  readonly askedFrom: Mark;
  /** What was said to be asked at this call besides its own gate; `null` where nothing was. */
  readonly asks: GateId | null;
  /** The last entry before which time may not have passed, or a clock was set; 0 where none was. */
  readonly inDoubt: EntryNo;
  /** Latest good answers at gates that two people answer. */
  readonly firsts: Readonly<Record<GateId, First>>;
  /** Latest papers shown. */
  readonly papers: Readonly<Record<GateId, First>>;
  readonly counted: Counted;
};

/** The course of a job that was just opened. */
export function openCourse({ no, at, wall, phase, step }: Opening): Course {
  const here = { no, at };
  return {
    no,
    at,
    wall,
    frozenAt: no,
    phase,
    step,
    stepFrom: here,
    isNew: true,
    furthest: step,
    askedFrom: here,
    asks: null,
    inDoubt: 0,
    firsts: {},
    papers: {},
    counted: {},
  };
}

/** Whether all of the time since a moment surely passed, by a clock that nobody set. */
export const isSure = ({ inDoubt }: Course, { no }: Pick<Mark, "no">): boolean => inDoubt <= no;

/** The phase as doubts name it: making safe is one of its own. */
export const phaseOf = ({ phase, step }: Pick<Course, "phase" | "step">, { script }: Frozen): string =>
  phase === "closed" || indexOf(script).at.has(step) ? phase : MAKING_SAFE;

type Next = { readonly entry: CommandEntry; readonly answered: Answered | null; readonly frozen: Frozen };

/** The course with one more entry. `frozen` is what is in force after it. */
export function courseAfter(before: Course, { entry, answered, frozen }: Next): Course {
  const { no, wall, phase, step, command } = entry;
  const at = Math.max(before.at, entry.at);
  const here = { no, at };
  const came = step !== before.step;
  const asks = askedBy(entry);
  const isInDoubt = command.doubtMs > 0 || clockJump(before, command) !== null;
  return {
    ...before,
    no,
    at,
    wall,
    phase,
    frozenAt: frozenAfter(before.frozenAt, entry),
    ...(came ? { step, stepFrom: here, ...arrival(before, step, frozen) } : {}),
    askedFrom: came || (asks !== null && "did" in entry.outcome) ? here : before.askedFrom,
    asks: asks ?? (came || answered?.gate.id === before.asks ? null : before.asks),
    inDoubt: isInDoubt ? no : before.inDoubt,
    ...(answered ? answersAfter(before, answered, frozen) : {}),
  };
}

/** A call of a way out is never new: there people run first, and read later. */
function arrival({ furthest }: Course, step: StepId, { script }: Frozen): Pick<Course, "isNew" | "furthest"> {
  const { at } = indexOf(script);
  const [here, far] = [at.get(step), at.get(furthest)];
  if (here === undefined) return { isNew: false, furthest };
  // What was farthest may be gone from an amended script: then nothing up to here is new.
  const isNew = far !== undefined && here > far;
  return { isNew, furthest: isNew || far === undefined ? step : furthest };
}

/** The gate that an entry was told to be missing. */
function askedBy({ outcome }: CommandEntry): GateId | null {
  const missing = "did" in outcome ? outcome.asks : outcome.refused.find((reason) => reason.why === "gate");
  return missing?.gate ?? null;
}

function answersAfter(
  { firsts, papers, counted }: Course,
  { gate: { id }, is, value, first }: Answered,
  { script }: Frozen,
): Partial<Course> {
  return {
    ...(is === "paper" ? { papers: { ...papers, [id]: first } } : {}),
    ...(is === "good" && indexOf(script).pairs.has(id) ? { firsts: { ...firsts, [id]: first } } : {}),
    ...(comparedIn(script).has(id) ? { counted: { ...counted, [id]: { value } } } : {}),
  };
}
