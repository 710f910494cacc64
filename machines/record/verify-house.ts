import type { Hash } from "../digest/digest.ts";
import type { EntryNo } from "../install/ids.ts";
import type { JobId } from "./entry.ts";
import { type Day, type House, type HouseMismatch, type HouseSealed, readHouse } from "./house.ts";
import type { Line } from "./verify-chain.ts";

/** What there is of a job: how many entries, and the hash of each by its number. */
export type KeptOf = { readonly entries: number; readonly hashAt: (no: EntryNo) => Hash | null };
/** Looks up what there is of a job; `null` where there is no such job. */
export type Kept = (job: JobId) => KeptOf | null;

/** What the house stream says of a job on a day: so many entries, and up to there it is as it was. */
export type SaidOf = { readonly no: EntryNo; readonly day: Day };

/**
 * What is wrong with a job by the house stream, which says `said` of it: its end is missing, and `has` entries are left; it was
 * rewritten; it is gone. `agrees` is the last that the stream says and that still is so.
 */
export type HouseProblem = {
  readonly is: "cutOff" | "rewritten" | "gone";
  readonly job: JobId;
  readonly said: SaidOf;
  readonly has: number;
  readonly agrees: SaidOf | null;
};
export type HouseVerdict = {
  /** Entries of the stream that hang together. */
  readonly entries: number;
  readonly last: { readonly no: EntryNo; readonly day: Day; readonly hash: Hash } | null;
  readonly broken: { readonly no: number; readonly why: HouseMismatch } | null;
  /** One for each job at most, in the order of the stream. */
  readonly problems: readonly HouseProblem[];
  /** Up to where each job is as the stream says. */
  readonly agrees: ReadonlyMap<JobId, SaidOf>;
  /** Jobs that are there no more, as the stream said beforehand that they would be taken away on purpose. */
  readonly removed: readonly { readonly job: JobId; readonly day: Day }[];
};

/** Whether a house stream holds, and every job it speaks of is as it says. */
export const houseHolds = ({ broken, problems }: HouseVerdict): boolean => broken === null && problems.length === 0;

/**
 * Checks a house stream, and every job against all that it ever said of it. What was recorded after its last entry it does not
 * know: that end could be missing, and its own last entries as well.
 */
export const verifyHouse = (lines: readonly Line[], kept: Kept): HouseVerdict => compareWithHouse(readHouse(lines), kept);

/** The same of a stream that was read. `only` is the one job that is asked about. */
export function compareWithHouse({ entries, broken }: House, kept: Kept, only?: JobId): HouseVerdict {
  const last = entries.at(-1);
  const agrees = new Map<JobId, SaidOf>();
  const problems = new Map<JobId, HouseProblem>();
  const removals = new Map(entries.flatMap(({ entry: { removed, day } }) => removed.map((job) => [job, day] as const)));
  const removed: { job: JobId; day: Day }[] = [];
  for (const [job, said] of statements(entries, only)) {
    const found = kept(job);
    const day = removals.get(job);
    if (found === null && day !== undefined) {
      removed.push({ job, day });
      continue;
    }
    for (const { no, hash, day } of said) {
      if (found?.hashAt(no) === hash) {
        // What comes after an entry that was rewritten does not make it whole.
        if (!problems.has(job)) agrees.set(job, { no, day });
        continue;
      }
      const has = found?.entries ?? 0;
      const is = found === null ? "gone" : no > has ? "cutOff" : "rewritten";
      if (problems.get(job)?.is === "rewritten") continue;
      problems.set(job, { is, job, said: { no, day }, has, agrees: agrees.get(job) ?? null });
    }
  }
  return {
    entries: entries.length,
    last: last ? { no: last.entry.no, day: last.entry.day, hash: last.hash } : null,
    broken,
    problems: [...problems.values()],
    agrees,
    removed,
  };
}

type Statement = { readonly no: EntryNo; readonly hash: Hash; readonly day: Day };

/** All that was ever said, by job, in order. */
function statements(entries: readonly HouseSealed[], only: JobId | undefined): ReadonlyMap<JobId, readonly Statement[]> {
  const all = new Map<JobId, Statement[]>();
  for (const { entry } of entries)
    for (const { job, no, hash } of entry.tips) {
      if (only !== undefined && job !== only) continue;
      const said = all.get(job) ?? [];
      if (said.length === 0) all.set(job, said);
      said.push({ no, hash, day: entry.day });
    }
  return all;
}
