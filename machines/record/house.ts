import { Temporal } from "temporal-polyfill";
import { digest, type Hash, hashOf } from "../digest/digest.ts";
import type { EntryNo, WallTime } from "../install/ids.ts";
import { type JobId, NO_ENTRY } from "./entry.ts";
import type { Line } from "./verify-chain.ts";

/** The last entry of a job at some moment. */
export type Tip = { readonly job: JobId; readonly no: EntryNo; readonly hash: Hash };

/** A day of the server in UTC, as "2026-06-02". */
export type Day = string;

/**
 * One entry of the house stream: where every job stood on a day. Only what changed since the entry before stands in it; `jobs`
 * and `all` are over every job there is.
 */
export type HouseEntry = {
  readonly schema: 1;
  readonly no: EntryNo;
  /** Hash of the previous entry; 64 zeros for the first. */
  readonly prev: Hash;
  readonly at: WallTime;
  readonly day: Day;
  /** Jobs whose last entry is another one than the stream knew, by their ids. */
  readonly tips: readonly Tip[];
  /** Jobs that the stream knew, and that are not there any more. */
  readonly gone: readonly JobId[];
  /** Jobs that are taken away from here on, on purpose: they were kept for as long as they were to be. */
  readonly removed: readonly JobId[];
  readonly jobs: number;
  /** Digest over the last entries of all jobs, by their ids. */
  readonly all: Hash;
};
/** An entry as stored: `bytes` is the canonical JSON (RFC 8785) that was hashed. */
export type HouseSealed = { readonly entry: HouseEntry; readonly bytes: Uint8Array; readonly hash: Hash };

/** What a house stream has come to: its last entry, the last entry of every job that it knows, and the days that it has. */
export type HouseStand = {
  readonly last: { readonly no: EntryNo; readonly hash: Hash } | null;
  readonly known: ReadonlyMap<JobId, Tip>;
  readonly days: ReadonlySet<Day>;
};
export const NO_HOUSE: HouseStand = { last: null, known: new Map(), days: new Set() };

/** The day of a moment, in UTC. */
export const dayOf = (at: WallTime): Day => Temporal.Instant.fromEpochMilliseconds(at).toString().slice(0, 10);

/** Whether any job stands otherwise than the stream knows. */
export const isChanged = ({ known }: HouseStand, tips: readonly Tip[]): boolean =>
  tips.length !== known.size || tips.some(({ job, hash }) => known.get(job)?.hash !== hash);

/**
 * The next entry of a house stream, made from the last entry of every job there is, in any order. `removed` are those among them
 * that are about to be taken away on purpose.
 */
export function houseEntryAfter(
  { last, known }: HouseStand,
  all: readonly Tip[],
  at: WallTime,
  removed: readonly JobId[] = [],
): HouseSealed {
  const tips = all.filter(({ job }) => !removed.includes(job));
  const here = new Set(all.map(({ job }) => job));
  const entry: HouseEntry = {
    schema: 1,
    no: (last?.no ?? 0) + 1,
    prev: last?.hash ?? NO_ENTRY,
    at,
    day: dayOf(at),
    tips: sorted(tips.filter(({ job, hash }) => known.get(job)?.hash !== hash)),
    gone: [...known.keys()].filter((job) => !here.has(job)).sort(),
    removed: [...removed].sort(),
    jobs: tips.length,
    all: digestOver(tips),
  };
  const bytes = digest.bytes(entry);
  return { entry, bytes, hash: hashOf(bytes) };
}

/** What a stream comes to with one more entry. */
export function standAfter({ known, days }: HouseStand, { entry, hash }: HouseSealed): HouseStand {
  const next = new Map(known);
  learn(next, entry);
  return { last: { no: entry.no, hash }, known: next, days: new Set([...days, entry.day]) };
}

function learn(known: Map<JobId, Tip>, { tips, gone, removed }: HouseEntry): void {
  for (const tip of tips) known.set(tip.job, tip);
  for (const job of [...gone, ...removed]) known.delete(job);
}

/** One digest over the last entries of all jobs. */
export const digestOver = (tips: Iterable<Tip>): Hash => digest.of(sorted([...tips]).map(({ job, no, hash }) => [job, no, hash]));

const sorted = (tips: readonly Tip[]): Tip[] =>
  tips.map(({ job, no, hash }) => ({ job, no, hash })).sort((a, b) => (a.job < b.job ? -1 : a.job > b.job ? 1 : 0));

/** Why an entry of the house stream does not fit: as with a job's; `count`, as it says another number of jobs than it comes to. */
export type HouseMismatch = "hash" | "notJson" | "prev" | "gap" | "filed" | "count";
export type House = {
  /** In order, up to the first that does not fit. */
  readonly entries: readonly HouseSealed[];
  /** What the next entry is made from. */
  readonly stand: HouseStand;
  readonly broken: { readonly no: number; readonly why: HouseMismatch } | null;
};

/** Reads a house stream as it lies somewhere, up to the first entry that does not fit its hash, the one before, or what it says itself. */
export function readHouse(lines: readonly Line[]): House {
  const entries: HouseSealed[] = [];
  const known = new Map<JobId, Tip>();
  const days = new Set<Day>();
  // What comes next follows what lies there, whether it fits or not.
  const last = lines.at(-1) ?? null;
  const stand: HouseStand = { last: last && { no: last.no, hash: last.hash }, known, days };
  const broken = (why: HouseMismatch): House => ({ entries, stand, broken: { no: entries.length + 1, why } });
  for (const line of lines) {
    if (hashOf(line.bytes) !== line.hash) return broken("hash");
    const entry = houseEntryIn(line.bytes);
    if (!entry) return broken("notJson");
    if (line.no !== entries.length + 1 || entry.no !== line.no) return broken("gap");
    if (entry.prev !== (entries.at(-1)?.hash ?? NO_ENTRY)) return broken("prev");
    if (line.filed && line.filed.prev !== entry.prev) return broken("filed");
    learn(known, entry);
    days.add(entry.day);
    if (known.size !== entry.jobs) return broken("count");
    // Of the last alone: over all jobs, day by day, it would take the longest of all.
    if (line === last && digestOver(known.values()) !== entry.all) return broken("count");
    entries.push({ entry, bytes: line.bytes, hash: line.hash });
  }
  return { entries, stand, broken: null };
}

/** The entry of a line by itself; `null` where it does not fit its hash, or is none. What came before it may be wrong all the same. */
export const houseEntryOf = ({ bytes, hash }: Line): HouseEntry | null => (hashOf(bytes) === hash ? houseEntryIn(bytes) : null);

/** `null` where the bytes are no entry of a house stream. */
function houseEntryIn(bytes: Uint8Array): HouseEntry | null {
  try {
    const entry = JSON.parse(new TextDecoder().decode(bytes)) as HouseEntry;
    return [entry.tips, entry.gone, entry.removed].every(Array.isArray) && typeof entry.day === "string" ? entry : null;
  } catch {
    return null;
  }
}
