import { addDoubts, answeredAfterRefusals, DOUBTS_VERSION, type DoubtState, openDoubts } from "../doubts/doubts.ts";
import { type Entries, type EntryLookup, lookupIn } from "../entries.ts";
import type { Opening } from "../entry.ts";
import { type Fold, foldIn, openFold } from "../findings.ts";
import { frozenIn } from "../in-force.ts";
import type { Finding, FindingName } from "./finding.ts";
import { jobMeasure, type Measure, measuresAfter } from "./measure.ts";
import { doubtsChanged } from "./of-doubts.ts";
import { findingsOfFlags } from "./of-flags.ts";
import { findingsOfSite } from "./of-site.ts";
import { NOTHING_PENDING, type Pending, pendingAfter } from "./pending.ts";
import type { Flagged, Seen } from "./said-then.ts";

/** Version of the rules of findings, with those of doubts. What another version found is found again. */
export const OVERSIGHT_VERSION = 2000 + DOUBTS_VERSION;

/** What is kept of a job to find more from its next entry. Plain JSON, derived from the entries. */
export type OversightState = { readonly doubts: DoubtState; readonly pending: Pending };
/** What an entry changes: findings that are new or otherwise now, those that there are no longer, numbers likewise. */
export type Overseen = {
  readonly state: OversightState;
  readonly put: readonly Finding[];
  readonly gone: readonly FindingName[];
  readonly measures: readonly Measure[];
};

/** What there is of the opening entry alone. A rehearsal has no findings and no numbers, ever: nothing is at stake. */
export function openOversight(opening: Opening): Overseen {
  const doubts = openDoubts(opening);
  const measures = doubts.rehearsal ? [] : [jobMeasure(openFold(opening))];
  return { state: { doubts, pending: NOTHING_PENDING }, put: [], gone: [], measures };
}

/** With one more entry. `earlier` looks up the entries before it. */
export function addOversight({ doubts, pending }: OversightState, flagged: Flagged, earlier: EntryLookup): Overseen {
  if (doubts.rehearsal) return { state: { doubts, pending }, put: [], gone: [], measures: [] };
  const { entry, folds } = flagged;
  const seen: Seen = { ...flagged, script: frozenIn(folds[0].frozenAt, earlier).script, earlier };
  const after = addDoubts(doubts, entry, earlier);
  const changed = doubtsChanged(doubts, after, seen);
  const found = [...findingsOfFlags(seen), ...findingsOfSite(seen)];
  const later = pendingAfter(pending, found, seen);
  return {
    state: { doubts: after, pending: later.pending },
    put: [...changed.put, ...found, ...later.put],
    gone: changed.gone,
    measures: measuresAfter(entry, folds, answeredAfterRefusals(doubts, after)),
  };
}

/** What a whole record comes to: its state, its findings in the order in which they were first found, and its numbers. */
export type OverseenJob = {
  readonly fold: Fold;
  readonly state: OversightState;
  readonly findings: readonly Finding[];
  readonly measures: readonly Measure[];
};

const nameOf = ({ kind, entry }: FindingName): string => `${kind} ${entry}`;
const nameOfMeasure = ({ what, key }: Measure): string => `${what} ${key}`;

/** Oversees a whole record. Throws if the first entry is not an opening, or another one is. */
export function overseeAll(entries: Entries): OverseenJob {
  const [first, ...rest] = entries;
  if (first?.entry.kind !== "opening") throw new Error("the record does not begin with an opening; give all entries from the first");
  const earlier: EntryLookup = lookupIn(entries);
  let fold = openFold(first.entry);
  let { state, measures: opening } = openOversight(first.entry);
  const findings = new Map<string, Finding>();
  const measures = new Map(opening.map((m) => [nameOfMeasure(m), m]));
  for (const { entry } of rest) {
    if (entry.kind !== "command") throw new Error(`entry ${entry.no} opens the job again; a record has one opening`);
    const next = foldIn(fold, entry, earlier);
    const overseen = addOversight(state, { entry, flags: next.flags, folds: [fold, next.fold] }, earlier);
    for (const finding of overseen.put) findings.set(nameOf(finding), finding);
    for (const name of overseen.gone) findings.delete(nameOf(name));
    for (const measure of overseen.measures) measures.set(nameOfMeasure(measure), measure);
    ({ fold } = next);
    ({ state } = overseen);
  }
  return { fold, state, findings: [...findings.values()], measures: [...measures.values()] };
}
