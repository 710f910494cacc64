import type { CommandSource } from "../../../machines/install/commands.ts";
import type { PhotoFacts } from "../../../machines/install/photo.ts";
import type { Flag, Fold } from "../../../machines/record/findings.ts";
import type { KitRow } from "../../../machines/record/kit-counts.ts";

/** A job's record in words, by phase, call and time: what the page, its table and its data are made from. */
export type RecordState = {
  readonly job: string;
  readonly title: string;
  readonly size: string;
  readonly zone: string;
  readonly fold: Fold;
  readonly crew: readonly { readonly name: string; readonly roleName: string }[];
  readonly phones: readonly Phone[];
  readonly opened: Moment;
  readonly last: Moment;
  readonly entries: number;
  /** The hash of the last entry that is vouched for. */
  readonly tip: string;
  /** Why the record is not whole, in one sentence; `null` where it is. */
  readonly problem: string | null;
  readonly times: readonly TimeTaken[];
  /** What of the kit went out and came back; empty where nobody counted any of it. */
  readonly kit: readonly KitRow[];
  /** Papers that were shown in place of a limit, in the order of the record. */
  readonly papers: readonly PaperShown[];
  readonly phases: readonly PhaseRun[];
};

/** A paper in place of a limit: for which question, whose, who showed it and who else saw it; `null` where nobody did. */
export type PaperShown = {
  readonly ask: string;
  readonly by: string;
  readonly document: string;
  readonly dated: string;
  readonly shown: Look;
  readonly seen: Look | null;
};
type Look = { readonly no: number; readonly who: string };

export type Phone = { readonly label: string; readonly firstBy: string };
export type TimeTaken = { readonly phase: string; readonly name: string; readonly ms: number; readonly text: string };
export type Moment = { readonly utc: string; readonly local: string };

/** The guide's stay in one phase; a phase that is gone back to comes again. */
export type PhaseRun = { readonly phase: string; readonly name: string; readonly calls: readonly CallRun[] };
/** The guide's stay at one call, with all that was said there. */
export type CallRun = { readonly step: string; readonly say: string; readonly lines: readonly RecordLine[] };

export type RecordLine = {
  readonly no: number;
  readonly time: Moment;
  readonly who: string | null;
  readonly roleName: string | null;
  readonly phone: Phone | null;
  readonly source: CommandSource | null;
  /** The exact words that came in; `null` where something was pressed. */
  readonly heard: string | null;
  /** What was pressed, or what the words were taken as. */
  readonly taken: string;
  readonly reply: string;
  /** The photo that the entry names, with what it is of besides the call; `null` where it names none that was kept. */
  readonly photo: (PhotoFacts & { readonly of: string | null }) | null;
  /** Whether the entry holds a plan: the opening, and every change that was put forward. */
  readonly holdsPlan: boolean;
  readonly flags: readonly Flag[];
  readonly hash: string;
};
