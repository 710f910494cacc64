import type { PersonId } from "../../install/ids.ts";
import type { CommandEntry } from "../entry.ts";
import type { Fold } from "../findings.ts";
import { dayAt } from "./day.ts";
import { sizeOf } from "./finding.ts";

/**
 * A number of a job for whoever oversees many. `job`: that there is one, by the size of its tent, on the day it was opened.
 * `time`: seconds in a phase, to two figures, once the job has gone on from it. `refusals`: how often "next" was refused before
 * a gate had its good answer, in a phase.
 */
export type Measure = {
  readonly what: "job" | "time" | "refusals";
  /** Names it within its job, for good. */
  readonly key: string;
  /** The phase, or the size. */
  readonly name: string;
  readonly n: number;
  /** At the site, 2026-06-01. */
  readonly day: string;
  readonly lead: PersonId | null;
  readonly size: string;
};

/**
 * A time to two figures: so few different ones can be counted one by one, however many jobs there are. Half a figure is 5% at
 * most.
 *
 * @example twoFigures(4321) // 4300
 */
export function twoFigures(n: number): number {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, n))) - 1);
  return Math.round(n / unit) * unit;
}

/** That there is a job. */
export const jobMeasure = (fold: Fold): Measure => ({
  what: "job",
  key: "",
  name: sizeOf(fold),
  n: 0,
  day: dayAt(fold.openedAt, fold.zone),
  lead: fold.glance.lead,
  size: sizeOf(fold),
});

type Ended = { readonly gate: string; readonly phase: string; readonly count: number };

/** What an entry changes of a job's numbers. `ended` are the gates that were answered by it, after refusals. */
export function measuresAfter(entry: CommandEntry, [before, after]: readonly [Fold, Fold], ended: readonly Ended[]): Measure[] {
  const isOther = before.glance.lead !== after.glance.lead || sizeOf(before) !== sizeOf(after);
  const isOver = before.phase !== after.phase;
  if (!isOther && !isOver && ended.length === 0) return [];
  const { lead } = after.glance;
  const common = { day: dayAt(entry.wall, after.zone), lead, size: sizeOf(after) };
  const { phase } = before;
  return [
    ...(isOther ? [jobMeasure(after)] : []),
    ...(isOver ? [{ what: "time", key: phase, name: phase, n: twoFigures((after.phaseMs[phase] ?? 0) / 1000), ...common } as const] : []),
    ...ended.map(({ gate, phase: name, count }) => ({ what: "refusals", key: `${entry.no} ${gate}`, name, n: count, ...common }) as const),
  ];
}
