import type { Taping } from "../site/lengths.ts";
import type { Brief, Sheet } from "./brief.ts";
import { BRIEF, PRACTICE, SHEET, type Source } from "./gates.ts";
import { overheadLinesOf } from "./overhead-lines.ts";
import { EXITS, type Exits, exitsFor, OVERHEAD, overheadClearanceFt, SEPARATION } from "./published-limits.ts";

/** A figure that answers or conditions are judged by, and where it comes from. */
export type Limit<T = number> = { readonly is: T; readonly source: Source };
const practice = <T>(is: T): Limit<T> => ({ is, source: PRACTICE });

type Range = { readonly from: number; readonly to: number };

/** What holds where neither sheet nor brief says otherwise. The only place of each: forms, edges and texts read it here. */
export const DEFAULTS = {
  /** Gust from which nothing is raised, mph. The sheet governs; no published limit for raising was found. */
  raiseGustMph: practice(20),
  /** Gust from which nothing new is lifted or lowered and nobody goes under, mph. */
  stopGustMph: practice(25),
  /** Gust at which nobody stays inside, mph; above 38 a tent is no refuge whatever its sheet says. A design default. */
  insideGustMph: practice(30),
  /** Gust at which walls are off, mph. An example event plan has them down within 10 minutes at 25. */
  wallsGustMph: practice(25),
  /** How long a wind reading is good for while poles go up or come down, s: 10 minutes. */
  windLiftingS: practice(600),
  /** The same for everything else, s: 30 minutes. */
  windOtherwiseS: practice(1800),
  /** How long work stays stopped after the last thunder, s: 30 minutes. */
  thunderS: { is: 1800, source: { title: "US National Weather Service", section: "lightning safety: 30 minutes after the last thunder" } },
  /** How long a look at the weather warnings is good for, s: an hour. */
  warningS: practice(3600),
  /** How long a talk and a count of the crew are good for, s: a working day of 14 hours. */
  dayS: practice(14 * 3600),
  /** How long nothing may be said before what was checked for this session is asked again, s: 2 hours. */
  sessionS: practice(7200),
  /** How long a walk round the standing tent is good for, s: every day, and after every blow. */
  walkS: practice(24 * 3600),
  /** How long after the last round the straps are gone over again, s: webbing gives most in its first hour. */
  recheckS: practice(3600),
  /** How long a "correct" counts after what it confirms was read back, s: long enough to hear it out and answer. */
  readBackS: practice(20),
  /** Squaring tolerance in inches for every 50 ft of the length measured. A design default. */
  squareInPer50Ft: practice(1),
  /** Five lengths fix four marks. A reading is off by 1/4 in at 100 ft. One set of six good lengths in a thousand leaves more over than 3.29. */
  taping: practice({ minLengths: 5, sdInAt100Ft: 0.25, maxMisfit: 3.29 }),
  /** Stake off plumb, away from the tent, degrees. Two public manuals differ by 30: the sheet rules, and without one the steeper. */
  stakeLeanDeg: {
    is: { from: 0, to: 15 },
    source: { title: "NAVEDTRA 14251, picket holdfasts", section: "15° from vertical, away from the pull" },
  },
  /** What a stake may have lost of its nominal diameter to wear and mill, in, and of its length: embedment is what counts. */
  stakeWearIn: practice(1 / 16),
  stakeShortIn: practice(1),
  /** From the tent, ropes included, to buildings, other tents, parked vehicles and engines, ft. */
  separationFt: { is: 20, source: SEPARATION },
  /** What may show of a stake above ground, in. */
  maxShowingIn: practice(6),
  /** Side pole off plumb, degrees. 1° is 1 5/8 in over 8 ft. */
  sidePoleLeanDeg: practice(1),
  /** Turns of strap on a ratchet's spindle before it takes load. */
  minTurns: practice(2),
  /** From a mark to the nearest stake, in; the stricter one unless local law says otherwise. */
  toleranceIn: {
    is: 24,
    source: {
      title: "One-call tolerance zones, 18 to 24 in by state; the stricter 24 in unless local law says otherwise",
      section: "Colorado 811 and California as published",
    },
  },
  /** Occupants from whom on exit signs are wanted. */
  exitSignsFrom: {
    is: 50,
    source: { title: "Fire code as cities adopt it for tents", section: "exit signs, occupant load of 50 or more" },
  },
  /** Longest walk to an extinguisher, ft. */
  extinguisherFt: { is: 75, source: { title: "City fire rules for tents", section: "extinguisher within 75 ft of travel" } },
} as const satisfies Record<string, Limit<number | Range | Taping>>;

/** The least that one-call laws want between a mark and a stake, in: Colorado and Pennsylvania as read, Texas and Ohio from memory. The law of the place prevails. */
export const MIN_TOLERANCE_IN = 18;

/**
 * Gusts that no sheet raises a limit beyond, mph: for raising, for lowering, and for people inside. The last is where trade
 * guidance says that a tent stops being a refuge (30 to 38); the others are design figures that leave a step to the next.
 */
export const MAX_GUST_MPH = { raiseGustMph: 25, stopGustMph: 30, insideGustMph: 38 } as const;

/** Every figure that a job is judged by, whole in the entry that opens or amends it: a later default changes no job. */
export type Limits = { readonly [K in keyof typeof DEFAULTS]: Limit<Widened<(typeof DEFAULTS)[K]["is"]>> } & {
  /** Clearance from each overhead line of the brief, ft; one of unknown voltage where it lists none. `null`: ask the line's owner. */
  readonly overheadFt: Limit<readonly (number | null)[]>;
  /** `null`: not known how many, or off the table: ask the fire official. */
  readonly exits: Limit<Exits | null>;
};
type Widened<T> = T extends number ? number : { readonly [K in keyof T]: number };

/** The limits of a job as its brief, its sheet and today's defaults give them, each with its source. */
export function limitsFor(brief: Brief): Limits {
  const { sheet, ticket, use } = brief;
  const overhead = overheadLinesOf(brief).map(({ kv }) => kv);
  const bySheet = <T>(figure: T | null, usual: Limit<T>): Limit<T> => (figure === null ? usual : { is: figure, source: SHEET });
  return {
    ...DEFAULTS,
    ...gustLimits(sheet),
    squareInPer50Ft: bySheet(sheet?.squareInPer50Ft ?? null, DEFAULTS.squareInPer50Ft),
    stakeLeanDeg: bySheet<Range>(sheet?.stakeLeanDeg ?? null, DEFAULTS.stakeLeanDeg),
    maxShowingIn: bySheet(sheet && showingBy(sheet), DEFAULTS.maxShowingIn),
    sidePoleLeanDeg: bySheet(sheet?.sidePoleLeanDeg ?? null, DEFAULTS.sidePoleLeanDeg),
    toleranceIn:
      ticket === null || ticket.toleranceIn === DEFAULTS.toleranceIn.is ? DEFAULTS.toleranceIn : { is: ticket.toleranceIn, source: BRIEF },
    overheadFt: { is: (overhead.length > 0 ? overhead : [null]).map(overheadClearanceFt), source: OVERHEAD },
    exits: { is: use.occupants === null ? null : exitsFor(use.occupants), source: EXITS },
  };
}

/** The wind limits, whatever brings them: a form, a script, or the brief of an old record. */
export function gustLimits(sheet: Pick<Sheet, keyof typeof MAX_GUST_MPH> | null): Pick<Limits, keyof typeof MAX_GUST_MPH> {
  const gust = (key: keyof typeof MAX_GUST_MPH): Limit => {
    const figure = sheet?.[key] ?? null;
    if (figure === null) return DEFAULTS[key];
    return figure > MAX_GUST_MPH[key] ? practice(MAX_GUST_MPH[key]) : { is: figure, source: SHEET };
  };
  return { raiseGustMph: gust("raiseGustMph"), stopGustMph: gust("stopGustMph"), insideGustMph: gust("insideGustMph") };
}

/** What the sheet's embedment leaves to show, in, and never more than the default. `null` where it gives none. */
const showingBy = ({ stakeLengthIn, embedmentIn }: Sheet): number | null =>
  embedmentIn === null ? null : Math.min(DEFAULTS.maxShowingIn.is, stakeLengthIn - embedmentIn);
