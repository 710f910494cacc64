import type { Job } from "../install/job.ts";
import { workAheadOf } from "../install/job.ts";
import { asSeries, windsAnd } from "../install/recent-winds.ts";
import { indexOf } from "../install/script-index.ts";
import type { WindRead } from "../install/state.ts";
import { gustAllowed } from "../install/status.ts";
import { effectiveCommandBy } from "../record/effective-command.ts";
import { lookupIn } from "../record/entries.ts";
import { type WindTrend, windTrend } from "../weather/trend.ts";
import type { LiveJob } from "./live-job.ts";

/** What is older than this is no part of a trend, ms; and no more entries than these are looked through. */
const BACK_MS = 60 * 60_000;
const MAX_ENTRIES = 400;

/** Where the wind of a job is going, toward the limit in force of the work ahead. It warns, and never says that there is time. */
export function trendNow({ job, entries, now: { at } }: Pick<LiveJob, "job" | "entries" | "now">): WindTrend {
  return windTrend({ readings: asSeries(windsOf(entries, at)), at, ...aheadOf(job, at) });
}

/** The gust that the next work is allowed, and how long a reading is good for there; else what nothing is raised at. */
function aheadOf(job: Job, at: number): { readonly limitMph: number; readonly goodForS: number } {
  const { context } = job.snapshot;
  const { raiseGustMph, windOtherwiseS } = context.limits;
  const work = workAheadOf(job, at);
  for (const { gate } of (work && indexOf(job.frozen.script).over.get(work)) ?? [])
    if (gate.check.kind === "wind") return { limitMph: gustAllowed(gate.check, context), goodForS: gate.validForS ?? windOtherwiseS };
  return { limitMph: raiseGustMph, goodForS: windOtherwiseS };
}

/** The winds that the record has of the last hour, oldest first: those that counted, confirmed where they were spoken. */
function windsOf(entries: LiveJob["entries"], at: number): readonly WindRead[] {
  const lookup = lookupIn(entries);
  const readings = [];
  for (let n = entries.length - 1; n >= Math.max(0, entries.length - MAX_ENTRIES); n--) {
    const entry = entries.at(n)?.entry;
    if (entry?.kind !== "command" || at - entry.at > BACK_MS) break;
    const command = effectiveCommandBy(entry, lookup);
    if ("did" in entry.outcome && command.type === "reading") readings.push(command.reading);
  }
  return readings.reverse().reduce<readonly WindRead[]>((winds, reading) => windsAnd(winds, reading), []);
}
