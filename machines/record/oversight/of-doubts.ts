import { DOUBT_KINDS, type Doubt, type DoubtKind } from "../doubts/doubt.ts";
import type { DoubtState } from "../doubts/doubts.ts";
import { watchOf } from "../doubts/registry.ts";
import { type Finding, type FindingName, namingEntry } from "./finding.ts";
import { commonTo, type Seen, wordedIn } from "./said-then.ts";

type Changed = { readonly put: readonly Finding[]; readonly gone: readonly FindingName[] };

/** What an entry changed of the doubts: those that are new or otherwise now, and those that there are no longer. */
export function doubtsChanged(was: DoubtState, is: DoubtState, seen: Seen): Changed {
  const changes = DOUBT_KINDS.map((kind) => changesOf(kind, was, is));
  return {
    put: changes.flatMap(({ put }) => put.map((doubt) => findingOf(doubt, seen))),
    gone: changes.flatMap(({ gone }) => gone.map((doubt) => ({ kind: doubt.kind, entry: namingEntry(doubt) }))),
  };
}

const NO_CHANGE = { put: [], gone: [] };

/** Of one kind. What is kept stays the same object where nothing of it changed. */
function changesOf(kind: DoubtKind, was: DoubtState, is: DoubtState): { readonly put: readonly Doubt[]; readonly gone: readonly Doubt[] } {
  if (was.kept[kind] === is.kept[kind]) return NO_CHANGE;
  const { doubts } = watchOf(kind);
  const [before, now] = [doubts(was.kept[kind]), doubts(is.kept[kind])];
  if (before === now) return NO_CHANGE;
  const known = new Map(before.map((doubt) => [namingEntry(doubt), doubt]));
  const left = new Set(now.map(namingEntry));
  return {
    put: now.filter((doubt) => isOther(known.get(namingEntry(doubt)), doubt)),
    gone: before.filter((doubt) => !left.has(namingEntry(doubt))),
  };
}

/** Some are rebuilt each time they are asked for. */
const isOther = (was: Doubt | undefined, is: Doubt): boolean => was !== is && JSON.stringify(was) !== JSON.stringify(is);

function findingOf(doubt: Doubt, seen: Seen): Finding {
  const { kind, entries, phase, by, facts } = doubt;
  const about = facts.gate ?? facts.call;
  const asks = about === undefined ? null : wordedIn(seen.script, String(about));
  return { kind, ...commonTo(namingEntry(doubt), seen), entries, phase, by, asks, facts };
}
