import type { ReadOnly } from "../../../machines/conversation/live-job.ts";
import { MAX_WORK_GAP_MS } from "../../../machines/record/work-time.ts";
import type { Forecast, PhaseTime } from "../../../machines/time/forecast.ts";
import { PRIOR } from "../../../machines/time/learning.ts";
import type { Words } from "../../text/words.ts";
import { clockAt } from "./line.ts";
import type { PhaseRow, TimeState } from "./state.ts";

/** Fewer finished jobs than this are thin: the page says so. Common practice, no source. */
const ENOUGH_JOBS = 5;
/** Minutes of work that one day holds. Common practice, no source. */
const DAY_MIN = 600;

export type Told = {
  readonly job: string;
  readonly title: string;
  readonly zone: string;
  readonly rehearsal: boolean;
  /** Why nobody can vouch for the whole record. */
  readonly readOnly: ReadOnly | null;
  readonly forecast: Forecast | null;
  readonly now: number;
};

/** A forecast in words. */
export function buildTimeState({ job, title, zone, rehearsal, readOnly: unsound, forecast, now }: Told, words: Words): TimeState {
  const { time } = words;
  const readOnly = unsound && words.notRecordedText(unsound);
  const utc = (at: number) => new Date(at).toISOString();
  const finish = readOnly ? null : (forecast?.finish ?? null);
  return {
    job,
    title,
    zone,
    rehearsal,
    at: utc(now),
    stands: forecast?.stage ?? null,
    held: forecast?.held ?? false,
    people: forecast?.people ?? null,
    onBrief: forecast?.work.people ?? null,
    ...(readOnly ? line(time.readOnly(readOnly)) : forecast ? topOf(forecast, zone, now, rehearsal, words) : line(time.notCounted)),
    caveat: forecast?.left && !readOnly ? caveatOf(forecast.jobs, words) : null,
    jobs: forecast?.jobs ?? 0,
    leftMin: readOnly ? null : (forecast?.left ?? null),
    finish: finish && { low: utc(finish.low), likely: utc(finish.likely), high: utc(finish.high) },
    phases: forecast?.phases.map((phase) => rowOf(phase, words)) ?? [],
    assumed: time.assumed(PRIOR.jobs, MAX_WORK_GAP_MS / 60_000),
  };
}

type Top = Pick<TimeState, "lead" | "headline" | "between" | "notes">;
const line = (headline: string, ...notes: string[]): Top => ({ lead: null, headline, between: null, notes });

function topOf(told: Forecast, zone: string, now: number, rehearsal: boolean, words: Words): Top {
  const { about, phaseName, time } = words;
  if (told.stage === "makingSafe") return line(time.makingSafe);
  if (told.stage === "closed") return line(time.closed(about(told.spentMin)));
  if (told.tooFew.length > 0) {
    const needs = told.tooFew.map(({ phase, minPeople }) => time.needs(phaseName(phase), minPeople)).join(", ");
    return line(time.tooFew(told.people, needs), time.notSafety);
  }
  if (!told.left) return line(time.notCounted);
  const lead = told.held ? time.held : told.stage === "standing" ? time.stands : null;
  const [low, likely, high] = [about(told.left.low), about(told.left.likely), about(told.left.high)];
  if (!told.finish) {
    const whole = told.covers === "strike" ? time.strike : time.raise;
    const notes = [...(rehearsal ? [time.rehearsal] : []), ...(told.left.likely > DAY_MIN ? [time.long] : [])];
    return { lead, headline: whole(likely), between: time.between(low, high), notes };
  }
  const clock = clockAt(zone, now, words);
  return {
    lead,
    headline: time.likely(told.covers === "strike" ? time.struck : time.raised, clock.short(told.finish.likely)),
    between: time.between(clock.short(told.finish.low), clock.short(told.finish.high)),
    notes: [time.left(likely), time.zone(zone), ...(clock.today(told.finish.high) ? [] : [time.pastToday])],
  };
}

const caveatOf = (jobs: number, { time }: Words): string =>
  jobs === 0 ? time.none : jobs < ENOUGH_JOBS ? time.thin(jobs) : time.rests(jobs);

function rowOf({ phase, is, estimate, factor, whole, spentMin, left, overdue }: PhaseTime, { phaseName, time }: Words): PhaseRow {
  const timed = estimate.is === "estimate";
  const { likely, low, high, jobs, leftOut } = factor;
  return {
    phase,
    name: phaseName(phase),
    is,
    people: estimate.people,
    estimateMin: timed ? estimate.minutes : null,
    least: timed ? null : estimate.minPeople,
    restsOn: timed ? [...estimate.parts.map((part) => time.part(part)), time.fixed(estimate.fixedMinutes)] : [],
    factor: { likely, low, high, jobs, leftOut },
    wholeMin: whole,
    spentMin,
    leftMin: is === "now" ? left : null,
    overdue,
  };
}
