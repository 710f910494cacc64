import { comparesWith, isComplete, meetsLimit } from "../install/checks/any-check.ts";
import type { Answer, Gate } from "../install/gates.ts";
import type { EntryNo, GateId, Instant, StepId, WallTime } from "../install/ids.ts";
import { everythingLooser } from "../install/looser-site.ts";
import { indexOf } from "../install/script-index.ts";
import type { Frozen } from "../install/step.ts";
import { clockJump } from "./clock-jump.ts";
import { answerValue, effectiveCommandBy } from "./effective-command.ts";
import { type Entries, type EntryLookup, lookupIn } from "./entries.ts";
import type { CommandEntry, Entry, JobId, Opening } from "./entry.ts";
import { type Glance, glanceAfter, openGlance } from "./glance.ts";
import { frozenAfter, frozenIn } from "./in-force.ts";
import { addWorkTime, startWorkTime, timeSince, type WorkTime } from "./work-time.ts";

/**
 * What a manager reviews: refusals, waivers, answers out of limits, papers shown in place of a limit, thunder that was taken back,
 * steps back, amendments, those that make a limit looser, and a clock that was set.
 */
export const FLAGS = ["refused", "waived", "outOfLimit", "paper", "takenBack", "wentBack", "amended", "loosened", "clockJumped"] as const;
export type Flag = (typeof FLAGS)[number];

/** Version of the folding rules. A fold of another version is rebuilt from the entries. */
export const FOLD_VERSION = 8;
/** Phase of a job that is making safe, from whichever phase it came. Its time is counted separately. */
export const MAKING_SAFE = "makingSafe";

/** Summary of a job for whoever oversees many. Plain JSON, derived from the entries, which are the record. */
export type Fold = {
  readonly job: JobId;
  /** The last entry folded in. */
  readonly no: EntryNo;
  readonly title: string;
  readonly widthFt: number;
  readonly lengthFt: number;
  readonly zone: string;
  /** As opened; an amendment cannot take a job out of the counts. */
  readonly rehearsal: boolean;
  readonly openedAt: WallTime;
  readonly lastAt: Instant;
  readonly lastWall: WallTime;
  readonly phase: string;
  readonly phaseMs: Readonly<Record<string, number>>;
  /** The part of that time that was work, and the work there is to do. */
  readonly worked: WorkTime;
  readonly counts: Readonly<Record<Flag, number>>;
  /** The opening, or the amendment, whose script is in force. */
  readonly frozenAt: EntryNo;
  /** The latest answers that a later count has to match. */
  readonly counted: Readonly<Record<GateId, Answer>>;
  /** The first entry that does not fit the chain; nothing from there on is folded in. */
  readonly mismatch: EntryNo | null;
  /** What a list of jobs says of it. */
  readonly glance: Glance;
};
export type Folded = { readonly fold: Fold; readonly flags: readonly Flag[] };

/** The fold of the opening entry alone. */
export function openFold(entry: Opening): Fold {
  return {
    job: entry.job,
    no: entry.no,
    ...headlineOf(entry.opened),
    rehearsal: (entry.opened.brief as { rehearsal?: unknown }).rehearsal === true,
    openedAt: entry.wall,
    lastAt: entry.at,
    lastWall: entry.wall,
    phase: entry.phase,
    phaseMs: {},
    worked: startWorkTime(entry),
    counts: Object.fromEntries(FLAGS.map((flag) => [flag, 0])) as Fold["counts"],
    frozenAt: entry.no,
    counted: {},
    mismatch: null,
    glance: openGlance(entry.opened),
  };
}

/** The fold with one more entry, and the flags of that entry. `earlier` looks up the entries before it. */
export function foldIn(fold: Fold, entry: CommandEntry, earlier: EntryLookup): Folded {
  const jumped = clockJump({ at: fold.lastAt, wall: fold.lastWall }, entry.command) !== null;
  const flags = [...flagsOf(fold, entry, earlier), ...(jumped ? (["clockJumped"] as const) : [])];
  const frozenAt = frozenAfter(fold.frozenAt, entry);
  const frozen = frozenIn(frozenAt, earlier);
  const spent = timeSince(fold, entry);
  const phase = phaseAfter(entry, frozen);
  const changed = frozenAt === fold.frozenAt ? null : frozen;
  return {
    flags,
    fold: {
      ...fold,
      no: entry.no,
      ...(changed ? headlineOf(changed) : {}),
      lastAt: Math.max(fold.lastAt, entry.at),
      lastWall: entry.wall,
      phase,
      phaseMs: fold.phase === "closed" ? fold.phaseMs : { ...fold.phaseMs, [fold.phase]: (fold.phaseMs[fold.phase] ?? 0) + spent },
      counts: flags.length === 0 ? fold.counts : addFlags(fold.counts, flags),
      worked: addWorkTime(fold, entry, phase, changed),
      frozenAt,
      counted: countsAfter(fold, entry, earlier),
      glance: glanceAfter(fold.glance, entry, changed, earlier),
    },
  };
}

/**
 * Folds a whole record, with the flags of each entry. `mismatch` is the first line that was left out because it does not fit
 * the chain. Throws if the first entry is not an opening, or another one is.
 */
export function foldAll(entries: Entries, mismatch: EntryNo | null = null): Folded & { readonly each: readonly (readonly Flag[])[] } {
  const [first, ...rest] = entries;
  if (first?.entry.kind !== "opening") throw new Error("the record does not begin with an opening; give all entries from the first");
  const earlier: EntryLookup = lookupIn(entries);
  let folded: Folded = { fold: openFold(first.entry), flags: [] };
  const each = [folded.flags];
  for (const { entry } of rest) {
    if (entry.kind !== "command") throw new Error(`entry ${entry.no} opens the job again; a record has one opening`);
    folded = foldIn(folded.fold, entry, earlier);
    each.push(folded.flags);
  }
  return { ...folded, fold: { ...folded.fold, mismatch }, each };
}

/** The phase after an entry, with making safe as a phase of its own. */
export function phaseAfter({ phase, step }: Pick<Entry, "phase" | "step">, frozen: Frozen): string {
  if (phase === "ground" || phase === "up") return MAKING_SAFE;
  return phase === "standing" && rulesOf(frozen).ways.has(step) ? MAKING_SAFE : phase;
}

function flagsOf(fold: Fold, entry: CommandEntry, earlier: EntryLookup): Flag[] {
  const { outcome } = entry;
  if ("refused" in outcome) return ["refused"];
  switch (outcome.did) {
    case "waived":
      return ["waived"];
    case "read":
      return takesThunderBack(entry, earlier) ? ["takenBack"] : [];
    case "wentBack":
      return ["wentBack"];
    case "amended":
      return loosens(fold, entry, earlier) ? ["amended", "loosened"] : ["amended"];
    case "answered":
      return [
        ...(isWithinLimits(fold, entry, earlier) ? [] : ["outOfLimit" as const]),
        ...(showsPaper(entry, earlier) ? ["paper" as const] : []),
      ];
    default:
      return [];
  }
}

/** Whether an amendment that was agreed to makes a limit looser than it was. */
const loosens = ({ frozenAt }: Fold, entry: CommandEntry, earlier: EntryLookup): boolean =>
  everythingLooser(frozenIn(frozenAt, earlier), frozenIn(frozenAfter(frozenAt, entry), earlier)).length > 0;

/** Whether a paper was shown: a finding from then on, seen by a second person or not. */
function showsPaper(entry: CommandEntry, earlier: EntryLookup): boolean {
  const command = effectiveCommandBy(entry, earlier);
  return command.type === "answer" && command.value.kind === "paper";
}

/** Whether thunder was taken back: what had stopped work counts no more, on somebody's word. */
function takesThunderBack(entry: CommandEntry, earlier: EntryLookup): boolean {
  const command = effectiveCommandBy(entry, earlier);
  return command.type === "reading" && command.reading.kind === "noThunder";
}

/** Whether an accepted answer is within its gate's limits. One that moved on was: nothing else goes on by itself. */
function isWithinLimits(fold: Fold, entry: CommandEntry, earlier: EntryLookup): boolean {
  const command = effectiveCommandBy(entry, earlier);
  if (command.type !== "answer" || ("did" in entry.outcome && entry.outcome.and !== undefined)) return true;
  const frozen = frozenIn(fold.frozenAt, earlier);
  const gate = rulesOf(frozen).gates.get(command.gate);
  if (!gate || command.value.kind === "unknown") return false;
  const value = answerValue(entry, earlier) ?? command.value;
  const given = { answers: fold.counted };
  return !isComplete(gate.check, value, given) || meetsLimit(gate.check, value, given);
}

function countsAfter(fold: Fold, entry: CommandEntry, earlier: EntryLookup): Fold["counted"] {
  if (!("did" in entry.outcome) || entry.outcome.did !== "answered") return fold.counted;
  const command = effectiveCommandBy(entry, earlier);
  const { compared } = rulesOf(frozenIn(fold.frozenAt, earlier));
  if (command.type !== "answer" || !compared.has(command.gate)) return fold.counted;
  const { gate, by, device, at } = command;
  const value = answerValue(entry, earlier) ?? command.value;
  return { ...fold.counted, [gate]: { gate, value, by, device, at, entry: entry.no } };
}

type Rules = {
  readonly gates: ReadonlyMap<GateId, Gate>;
  readonly ways: ReadonlySet<StepId>;
  /** Gates whose counts a later gate has to match. */
  readonly compared: ReadonlySet<GateId>;
};
const rulesCache = new WeakMap<Frozen, Rules>();
function rulesOf(frozen: Frozen): Rules {
  const before = rulesCache.get(frozen);
  if (before) return before;
  const { gates } = indexOf(frozen.script);
  const rules: Rules = {
    gates,
    ways: new Set(Object.values(frozen.script.escapes).flatMap((way) => way.map((s) => s.id))),
    compared: new Set([...gates.values()].flatMap(({ check }) => comparesWith(check) ?? [])),
  };
  rulesCache.set(frozen, rules);
  return rules;
}

const headlineOf = ({ brief, plan }: Frozen) => ({ title: brief.title, zone: brief.zone, widthFt: plan.widthFt, lengthFt: plan.lengthFt });
function addFlags(counts: Fold["counts"], marks: readonly Flag[]): Fold["counts"] {
  const sum = { ...counts };
  for (const mark of marks) sum[mark]++;
  return sum;
}
