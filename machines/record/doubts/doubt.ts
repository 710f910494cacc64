import type { EntryNo, PersonId } from "../../install/ids.ts";

/**
 * What a manager should look at, beyond the counts of `findings.ts`: a second look in no time, answers of two people from one
 * phone, measurements too good to be true, the same wind all day, work sooner than it can be done, a bad answer that turned good
 * by itself, "next" pressed again and again,
 * and wind readings of a standing tent that nobody made. In the order in which they are listed.
 */
export const DOUBT_KINDS = [
  "quickSecond",
  "sameDevice",
  "alwaysExact",
  "sameReading",
  "tooFastWalk",
  "tooFastDriving",
  "tooFastReading",
  "tooFastPhase",
  "outOfLimitThen",
  "refusedBeforeAnswer",
  "missedReadings",
] as const;
export type DoubtKind = (typeof DOUBT_KINDS)[number];

/** One thing to look at in a job's record. It says what the record shows, and accuses nobody: each kind has innocent reasons. */
export type Doubt = {
  readonly kind: DoubtKind;
  /** Where: at least one, ascending, and the first hundred of very many. */
  readonly entries: readonly EntryNo[];
  /** The phase in which it began; `MAKING_SAFE` on a way out. */
  readonly phase: string;
  /** Whose answers they are, in order of their first. */
  readonly by: readonly PersonId[];
  /** What its words are made from. Seconds to a tenth, feet and percent whole. */
  readonly facts: Readonly<Record<string, number | string>>;
};

/** Phase of what was said on a way out, from whichever phase it came. */
export const MAKING_SAFE = "makingSafe";

/** Most entries that one doubt names; beyond that it only counts. A design figure: nobody reads more. */
export const MAX_PLACES = 100;

/** Entries of a doubt, whose they are, and how many there were in all. */
export type Places = { readonly entries: readonly EntryNo[]; readonly by: readonly PersonId[]; readonly count: number };

export const NO_PLACES: Places = { entries: [], by: [], count: 0 };

/** With one more. Entries come in ascending order. */
export const withPlace = ({ entries, by, count }: Places, no: EntryNo, ...who: readonly PersonId[]): Places => ({
  entries: entries.length < MAX_PLACES ? [...entries, no] : entries,
  by: withPeople(by, who),
  count: count + 1,
});

/** With people who are not among them yet. */
export const withPeople = (by: readonly PersonId[], more: readonly PersonId[]): readonly PersonId[] => [...new Set([...by, ...more])];

/**
 * Milliseconds as seconds to a tenth, as facts tell them.
 *
 * @example seconds(4260) // 4.3
 */
export const seconds = (ms: number): number => Math.round(ms / 100) / 10;
