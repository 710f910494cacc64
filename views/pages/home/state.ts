import type { WallTime } from "../../../machines/install/ids.ts";
import type { Wind } from "../../../machines/install/state.ts";
import type { Weather } from "../../../machines/install/weather.ts";
import type { Flag } from "../../../machines/record/findings.ts";

/** What the weather of a listed job allows, by the last that was said of it. */
export type WeatherListed = {
  readonly is: Weather;
  readonly zone: string;
  readonly wind: Wind | null;
  readonly stops: { readonly lightningUntil: WallTime | null; readonly warning: boolean };
};

/** One job as the list shows it, in words; the same facts go out as JSON. Times are wall times in ms. */
export type ListedJob = {
  readonly id: string;
  readonly title: string;
  readonly size: string;
  readonly address: string;
  readonly phase: string;
  readonly phaseName: string;
  /** What is worked toward, named as what it will be until it is. */
  readonly toward: string;
  readonly entries: number;
  readonly rehearsal: boolean;
  /** Whether its last entry is of this day, in the zone of its site. */
  readonly today: boolean;
  readonly lead: string | null;
  /** `null` where the job is closed: nothing is waited for. */
  readonly weather: {
    readonly is: Weather;
    readonly words: string;
    /** The last wind with its time on the site's clock. */
    readonly reading: string | null;
    readonly readAt: WallTime | null;
  } | null;
  readonly last: { readonly at: WallTime; readonly clock: string; readonly by: string | null; readonly said: string };
  readonly hurt: boolean;
  readonly held: boolean;
  /** How many entries' marks stand out in all, and of each kind, the gravest first. */
  readonly findings: number;
  readonly marks: readonly { readonly mark: Flag; readonly name: string; readonly count: number }[];
  /** The first entry that does not fit the chain. */
  readonly mismatch: number | null;
};

/** The list as it was asked for; `q` is what was looked for, "" where nothing was. */
export type HomeState = { readonly q: string; readonly jobs: readonly ListedJob[] };
