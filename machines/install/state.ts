import type { ColdAir, HotAir } from "../weather/air.ts";
import type { WarningReading } from "./commands.ts";
import type { Answer, Happening } from "./gates.ts";
import type { EntryNo, GateId, Instant, PersonId, StepId } from "./ids.ts";
import type { SiteState } from "./step.ts";
import type { Thing } from "./thing.ts";

export type Wind = {
  readonly mph: number;
  readonly gustMph: number | null;
  /** Where it blows from, in degrees from north, clockwise; `null` where nobody said. */
  readonly fromDeg: number | null;
  readonly takenAt: Instant;
};

/** A wind as a trend is seen from it. `onlyWatched`: by whoever watches the standing tent, who may clear nothing with it; absent where not. */
export type WindRead = Pick<Wind, "mph" | "gustMph" | "takenAt"> & { readonly onlyWatched?: true };

export type WeatherLimits = {
  readonly raiseGustMph: number;
  readonly stopGustMph: number;
  readonly windOtherwiseS: number;
  readonly thunderS: number;
  readonly sessionS: number;
};

/** What asked for an answer again: something that happened, an amendment, or going back. */
export type Reopened = { readonly by: Happening | "amendment" | "back"; readonly entry: EntryNo };

/** A thing that is out of use: why, and who said so in which entry. */
export type OutOfUse = { readonly thing: Thing; readonly because: string; readonly by: PersonId; readonly entry: EntryNo };

/** The chart's context. With the chart's value it is all there is to a job's state. */
export type JobState = {
  /** The last entry that changed what "next" would mean. */
  readonly revision: EntryNo;
  /** Time of the last entry. A clock behind it makes every timed answer stale. */
  readonly lastAt: Instant;
  /** How far the wall clock is ahead of the job's own time: dates of papers are the calendar's, and are held against that. */
  readonly wallAheadMs: number;
  /** Total time so far that may never have passed, because a clock was set; absent when none. */
  readonly doubtMs?: number;
  readonly heldBy: PersonId | null;
  /** Somebody is hurt, and it is not settled yet. */
  readonly hurt: { readonly by: PersonId; readonly at: Instant; readonly entry: EntryNo } | null;
  /** What the weather is judged by, from the limits that the job was frozen with. */
  readonly limits: WeatherLimits;
  readonly site: SiteState;
  /** Since when the crew has kept at it: the first entry after a long silence. */
  readonly sessionAt: Instant;
  /** Where this run of calls began: the first call, or where a job was stood down to. */
  readonly startedFrom: StepId;
  /** While making safe: where going on starts again. */
  readonly resumeAt: StepId | null;
  readonly answers: Readonly<Record<GateId, Answer>>;
  readonly waived: Readonly<Record<GateId, { readonly because: string; readonly by: PersonId; readonly entry: EntryNo }>>;
  /** Gates that were answered once, and must be again. */
  readonly reopened: Readonly<Record<GateId, Reopened>>;
  /** Calls that an amendment put behind where the job stands, still to be done, in order. */
  readonly added: readonly StepId[];
  /** The first of them while it is being done; `null` at the job's own call. */
  readonly doing: StepId | null;
  /** What is out of use, by its key: what needs it waits. */
  readonly outOfUse: Readonly<Record<string, OutOfUse>>;
  readonly wind: Wind | null;
  readonly thunderAt: Instant | null;
  /** Those before it that would stop work as well, oldest first: where the last one was none, they count again. Absent when none. */
  readonly thunderBefore?: readonly Instant[] | undefined;
  /** The winds of the last hour; kept only where a plan of the standing tent is judged by them. */
  readonly winds?: readonly WindRead[];
  /** The last wind that whoever watches the standing tent read, by its plan; absent where none was. */
  readonly watched?: Pick<Wind, "mph" | "gustMph" | "takenAt">;
  /** How far the thunder at that moment was, s from flash to bang; absent where no thunder was counted. */
  readonly flash?: { readonly at: Instant; readonly seconds: number };
  /** The last of the air that was told, each with its time; absent where it never was. */
  readonly heat?: HotAir & { readonly takenAt: Instant };
  readonly cold?: ColdAir & { readonly takenAt: Instant };
  /** The warnings that stop work now, as they were read out, oldest first; absent where none had a word. */
  readonly warnings?: readonly Omit<WarningReading, "kind">[] | undefined;
  readonly proposed: { readonly entry: EntryNo; readonly by: PersonId; readonly because: string } | null;
};
