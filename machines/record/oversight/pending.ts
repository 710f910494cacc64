import type { Did } from "../../install/commands.ts";
import type { GateId } from "../../install/ids.ts";
import { indexOf } from "../../install/script-index.ts";
import { without } from "../../lookup/without.ts";
import { answerIn } from "../doubts/answered.ts";
import { MAX_PLACES, withPeople } from "../doubts/doubt.ts";
import { effectiveCommandBy } from "../effective-command.ts";
import type { Finding, Followed } from "./finding.ts";
import { commonTo, type Seen, wordedIn } from "./said-then.ts";

type Of<K extends Finding["kind"]> = Extract<Finding, { kind: K }>;

/** Findings that what comes later adds something to. Plain JSON. */
export type Pending = {
  /** Answers out of their limit, and papers that nobody else has seen, by their gates. */
  readonly out: Readonly<Record<GateId, Of<"outOfLimit">>>;
  readonly papers: Readonly<Record<GateId, Of<"paper">>>;
  /** What went stale in this phase, by its gate, and which of it is so now. */
  readonly stale: Readonly<Record<GateId, Of<"stale">>>;
  readonly staleNow: readonly GateId[];
  /** The steps back that were taken last, as long as nothing else was done. */
  readonly back: Of<"wentBack"> | null;
};
export const NOTHING_PENDING: Pending = { out: {}, papers: {}, stale: {}, staleNow: [], back: null };

type After = { readonly pending: Pending; readonly put: readonly Finding[] };

/** What an entry adds to findings that were made before, and those of its own that later ones may add to. */
export function pendingAfter(before: Pending, found: readonly Finding[], seen: Seen): After {
  const out = followed(before, seen);
  const paper = lookedAt(before, seen);
  const stale = staleAfter(before, seen);
  const back = backAfter(before, seen);
  const gate = gateOf(seen);
  const made = <K extends Finding["kind"]>(kind: K) => found.find((f): f is Of<K> => f.kind === kind);
  const [bad, shown] = [made("outOfLimit"), made("paper")];
  return {
    pending: {
      out: { ...(out ? without(before.out, [gate!]) : before.out), ...(bad && gate !== null ? { [gate]: bad } : {}) },
      papers: { ...(paper ? without(before.papers, [gate!]) : before.papers), ...(shown && gate !== null ? { [gate]: shown } : {}) },
      stale: stale.of,
      staleNow: stale.now,
      back: back ?? (isDone(seen) ? null : before.back),
    },
    put: [out, paper, stale.put, back].filter((f) => f !== null),
  };
}

const didOf = ({ entry: { outcome } }: Seen): readonly Did[] =>
  "refused" in outcome ? [] : outcome.and === undefined ? [outcome.did] : [outcome.did, outcome.and];
const isDone = (seen: Seen): boolean => didOf(seen).length > 0;

/** The gate that an entry answered or waived; `null` where it did neither. */
function gateOf(seen: Seen): GateId | null {
  const command = effectiveCommandBy(seen.entry, seen.earlier);
  const did = didOf(seen);
  const isTaken = did.includes("answered") || did.includes("waived") || did.includes("seen");
  return isTaken && (command.type === "answer" || command.type === "waive") ? command.gate : null;
}

/** What was out of its limit, with what came next at its gate. Part of an answer is nothing yet. */
function followed({ out }: Pending, seen: Seen): Of<"outOfLimit"> | null {
  const gate = gateOf(seen);
  const bad = gate !== null && Object.hasOwn(out, gate) ? out[gate] : undefined;
  if (!bad) return null;
  const {
    entry,
    script,
    folds: [{ counted }],
    earlier,
  } = seen;
  const command = effectiveCommandBy(entry, earlier);
  const answered = answerIn({ entry, command }, { script, counted, earlier });
  const is = didOf(seen).includes("waived") ? "waived" : (answered?.is ?? "part");
  if (is === "part") return null;
  const ms = Math.max(0, entry.at - (earlier(bad.entry)?.at ?? entry.at));
  const next: Followed = { is, value: is === "paper" ? null : (answered?.value ?? null), no: entry.no, ms };
  return { ...bad, facts: { ...bad.facts, followed: next } };
}

function lookedAt({ papers }: Pending, seen: Seen): Of<"paper"> | null {
  const gate = gateOf(seen);
  const shown = gate !== null && didOf(seen).includes("seen") && Object.hasOwn(papers, gate) ? papers[gate] : undefined;
  return shown ? { ...shown, facts: { ...shown.facts, seen: seen.entry.no } } : null;
}

type Stale = { readonly of: Pending["stale"]; readonly now: Pending["staleNow"]; readonly put: Of<"stale"> | null };

/** What the guide said had grown too old, once each time until it is answered again. */
function staleAfter({ stale, staleNow }: Pending, seen: Seen): Stale {
  const {
    entry,
    folds: [before, after],
    script,
  } = seen;
  const fresh = staleNow.filter((gate) => !isFreshNow(gate, seen));
  const of = before.phase === after.phase ? stale : {};
  const told = "refused" in entry.outcome ? entry.outcome.refused.find(({ why }) => why === "gate") : entry.outcome.asks;
  if (told?.why !== "gate" || (told.status !== "stale" && told.status !== "recheckDue")) return { of, now: fresh, put: null };
  const { gate } = told;
  if (fresh.includes(gate)) return { of, now: fresh, put: null };
  const was = Object.hasOwn(of, gate) ? of[gate] : undefined;
  const { by, no } = { by: entry.command.by, no: entry.no };
  const put: Of<"stale"> = was
    ? { ...was, entries: [...was.entries, no].slice(0, MAX_PLACES), by: withPeople(was.by, [by]), facts: { count: was.facts.count + 1 } }
    : {
        kind: "stale",
        ...commonTo(no, seen),
        entries: [no],
        phase: after.phase,
        by: [by],
        asks: wordedIn(script, gate),
        facts: { count: 1 },
      };
  return { of: { ...of, [gate]: put }, now: [...fresh, gate], put };
}

/** Whether a gate was answered again. A wind is by a reading. */
function isFreshNow(gate: GateId, seen: Seen): boolean {
  const { entry, earlier, script } = seen;
  if (gateOf(seen) === gate) return true;
  const command = effectiveCommandBy(entry, earlier);
  if (command.type !== "reading" || command.reading.kind !== "wind" || !didOf(seen).includes("read")) return false;
  return indexOf(script).gates.get(gate)?.check.kind === "wind";
}

function backAfter({ back }: Pending, seen: Seen): Of<"wentBack"> | null {
  const { entry, flags, script } = seen;
  if (!flags.includes("wentBack")) return null;
  const {
    no,
    command: { by },
  } = entry;
  const asks = wordedIn(script, entry.step);
  if (back)
    return {
      ...back,
      entries: [...back.entries, no].slice(0, MAX_PLACES),
      by: withPeople(back.by, [by]),
      asks,
      facts: { count: back.facts.count + 1 },
    };
  return { kind: "wentBack", ...commonTo(no, seen), entries: [no], phase: seen.folds[0].phase, by: [by], asks, facts: { count: 1 } };
}
