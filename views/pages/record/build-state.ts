import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { PHASES } from "../../../machines/install/step.ts";
import { type Flag, type Fold, foldAll, MAKING_SAFE } from "../../../machines/record/findings.ts";
import { isCounted, type KitRow, kitCounts } from "../../../machines/record/kit-counts.ts";
import type { Words } from "../../text/words.ts";
import { placeName, runsOf } from "./lines.ts";
import { papersOf } from "./papers.ts";
import type { Moment, PhaseRun, RecordState, TimeTaken } from "./state.ts";

/** The whole record of a job in words. Entries that nobody can vouch for are not among those it is given. */
export function buildRecordState(live: LiveJob, words: Words): RecordState {
  const { job, entries, names, readOnly } = live;
  const { fold, each } = foldAll(entries);
  const local = (at: number): Moment => ({ utc: new Date(at).toISOString(), local: words.when.second(fold.zone, at) });
  const { phases, phones } = runsOf(live, each, local, words);
  return {
    job: fold.job,
    title: fold.title,
    size: words.page.size(fold.widthFt, fold.lengthFt),
    zone: fold.zone,
    fold,
    crew: job.frozen.brief.crew.map((p) => ({ name: names[p.id] ?? p.id, roleName: words.roleName(p.role) })),
    phones,
    opened: local(fold.openedAt),
    last: local(fold.lastWall),
    entries: entries.length,
    tip: entries.at(-1)!.hash,
    problem: readOnly && words.notRecordedText(readOnly),
    times: timesOf(fold, words),
    kit: kitOf(live),
    papers: papersOf(live, words),
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
export const timesOf = ({ phaseMs }: Pick<Fold, "phaseMs">, words: Words): TimeTaken[] =>
  [...PHASES, MAKING_SAFE].flatMap((phase) => {
    const ms = phaseMs[phase];
    return ms === undefined ? [] : [{ phase, name: placeName(phase, words), ms, text: words.duration(ms) }];
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
