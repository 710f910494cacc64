import { FLAGS, type Flag, type Fold } from "../../../machines/record/findings.ts";
import type { Words } from "../../text/words.ts";
import { timesOf } from "../record/build-state.ts";
import { placeName } from "../record/lines.ts";
import type { TimeTaken } from "../record/state.ts";

type Counts = Fold["counts"];
/** One job as a manager sees it from afar. */
export type JobFindings = {
  readonly job: string;
  readonly title: string;
  readonly size: string;
  readonly phase: string;
  readonly phaseName: string;
  readonly entries: number;
  readonly lastHash: string;
  readonly openedAt: number;
  readonly lastAt: number;
  readonly counts: Counts;
  readonly times: readonly TimeTaken[];
  /** The first entry that does not fit the chain; what follows is not counted. */
  readonly mismatch: number | null;
};
export type AtAGlance = {
  readonly jobs: readonly JobFindings[];
  readonly together: { readonly jobs: number; readonly entries: number; readonly counts: Counts; readonly times: readonly TimeTaken[] };
  /** Nothing was at stake: listed, and in no count. */
  readonly rehearsals: readonly JobFindings[];
  readonly unreadable: readonly string[];
};
/** What is kept of a job; its fold is null where its entries cannot be read. */
type Kept = { readonly job: string; readonly entries: number; readonly tip: string; readonly fold: Fold | null };

/** All jobs from what is kept of them, with their sums. */
export function buildAtAGlance(kept: readonly Kept[], words: Words): AtAGlance {
  const read = kept.flatMap((k) => (k.fold ? [{ rehearsal: k.fold.rehearsal, fold: k.fold, found: jobOf(k, k.fold, words) }] : []));
  const real = read.filter((r) => !r.rehearsal);
  const jobs = real.map((r) => r.found);
  return {
    jobs,
    together: {
      jobs: jobs.length,
      entries: jobs.reduce((sum, j) => sum + j.entries, 0),
      counts: Object.fromEntries(FLAGS.map((mark: Flag) => [mark, jobs.reduce((sum, j) => sum + j.counts[mark], 0)])) as Counts,
      times: timesOf({ phaseMs: summed(real.map((r) => r.fold.phaseMs)) }, words),
    },
    rehearsals: read.filter((r) => r.rehearsal).map((r) => r.found),
    unreadable: kept.filter((k) => k.fold === null).map((k) => k.job),
  };
}

const jobOf = ({ entries, tip }: Kept, fold: Fold, words: Words): JobFindings => ({
  job: fold.job,
  title: fold.title,
  size: words.page.size(fold.widthFt, fold.lengthFt),
  phase: fold.phase,
  phaseName: placeName(fold.phase, words),
  entries,
  lastHash: tip,
  openedAt: fold.openedAt,
  lastAt: fold.lastWall,
  counts: fold.counts,
  times: timesOf(fold, words),
  mismatch: fold.mismatch,
});

function summed(all: readonly Readonly<Record<string, number>>[]): Record<string, number> {
  const sum: Record<string, number> = {};
  for (const one of all) for (const [phase, ms] of Object.entries(one)) sum[phase] = (sum[phase] ?? 0) + ms;
  return sum;
}
