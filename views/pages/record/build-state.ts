import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { PHASES } from "../../../machines/install/step.ts";
import { type Flag, type Fold, foldAll, MAKING_SAFE } from "../../../machines/record/findings.ts";
import { isCounted, type KitRow, kitCounts } from "../../../machines/record/kit-counts.ts";
import { duration, record } from "../../text/en/record.ts";
import { roleName } from "../../text/en/roles.ts";
import { placeName, runsOf } from "./lines.ts";
import type { Moment, PhaseRun, RecordState, TimeTaken } from "./state.ts";

/** The whole record of a job in words. Entries that nobody can vouch for are not among those it is given. */
export function buildRecordState(held: LiveJob): RecordState {
  const { job, entries, names, readOnly } = held;
  const { fold, each } = foldAll(entries);
  const local = momentsIn(fold.zone);
  const { phases, phones } = runsOf(held, each, local);
  return {
    job: fold.job,
    title: fold.title,
    size: record.size(fold.widthFt, fold.lengthFt),
    zone: fold.zone,
    fold,
    crew: job.frozen.brief.crew.map((p) => ({ name: names[p.id] ?? p.id, roleName: roleName(p.role) })),
    phones,
    opened: local(fold.openedAt),
    last: local(fold.lastAt),
    entries: entries.length,
    tip: entries.at(-1)!.hash,
    problem: readOnly,
    times: timesOf(fold),
    kit: kitOf(held),
    phases,
  };
}

/** The kit as it was counted, by answers that the entries given vouch for. */
export function kitOf({ job, entries }: Pick<LiveJob, "job" | "entries">): readonly KitRow[] {
  const vouched = Object.entries(job.snapshot.context.answers).filter(([, answer]) => answer.entry <= entries.length);
  const rows = kitCounts(job.frozen.script, Object.fromEntries(vouched));
  return isCounted(rows) ? rows : [];
}

/** How long each phase took, in the order of a raise; making safe after them. */
export const timesOf = ({ phaseMs }: Pick<Fold, "phaseMs">): TimeTaken[] =>
  [...PHASES, MAKING_SAFE].flatMap((phase) => {
    const ms = phaseMs[phase];
    return ms === undefined ? [] : [{ phase, name: placeName(phase), ms, text: duration(ms) }];
  });

/** Only the entries with one of these marks, under their calls; calls and phases without any are left out. */
export const onlyMarked = (phases: readonly PhaseRun[], show: readonly Flag[]): PhaseRun[] =>
  phases.flatMap((phase) => {
    const calls = phase.calls.flatMap((call) => {
      const lines = call.lines.filter(({ flags }) => flags.some((m) => show.includes(m)));
      return lines.length === 0 ? [] : [{ ...call, lines }];
    });
    return calls.length === 0 ? [] : [{ ...phase, calls }];
  });

/** Moments as a clock at the site shows them, with the seconds. One formatter for all: making one takes longer than using it. */
function momentsIn(timeZone: string): (at: number) => Moment {
  const format = new Intl.DateTimeFormat("en-GB", {
    timeZone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    second: "2-digit",
    hourCycle: "h23",
  });
  return (at) => {
    const part = Object.fromEntries(format.formatToParts(at).map(({ type, value }) => [type, value]));
    return {
      utc: new Date(at).toISOString(),
      local: `${part.year}-${part.month}-${part.day} ${part.hour}:${part.minute}:${part.second}`,
    };
  };
}
