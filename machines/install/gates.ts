import type { Source } from "../figures/limit-source.ts";
import type { Role } from "./brief.ts";
import type { FigureLimit } from "./checks/figures.ts";
import type { Check, Value } from "./checks/registry.ts";
import type { Unit } from "./checks/units.ts";
import type { FactName } from "./facts.ts";
import type { DeviceId, EntryNo, GateId, Instant, PersonId } from "./ids.ts";

export type { Source } from "../figures/limit-source.ts";
export type { Check, Value } from "./checks/registry.ts";
export type { Unit } from "./checks/units.ts";

/**
 * Whose paper a gate takes instead of the limit. It is an answer, in the record under its own name, and no waiver: it
 * counts once a second competent person has seen it.
 */
export type Paper = "engineer" | "lineOwner" | "utilityOwner" | "siteOwner" | "fireOfficial";

/** The parts of a job whose amendment reopens a gate. */
export type Aspect =
  | "pieces"
  | "seams"
  | "poles"
  | "stations"
  | "anchors"
  | "sheet"
  | "site"
  | "neighbors"
  | "engineered"
  | "anchorage"
  | "places"
  | "ticket"
  | "use"
  | "crew"
  | "weather";

/** What happens on a site and reopens gates: the strike begins, everybody left and came back, rain, wind at the stop level, a corner mark moved. */
export const HAPPENINGS = ["strike", "clearing", "rain", "blow", "corner"] as const;
export type Happening = (typeof HAPPENINGS)[number];

/** A check that must be answered before the guide goes on. Declared once; guard, tile, typed words and record all read this. */
export type Gate = {
  readonly id: GateId;
  readonly hard: boolean;
  readonly check: Check;
  readonly source: Source;
  readonly roles: readonly Role[];
  /** The gate whose answer must come from somebody else. */
  readonly secondPersonTo: GateId | null;
  /** How long an answer stays good; `null` until something reopens it. Going back over a gate always reopens it. */
  readonly validForS: number | null;
  /** Asked again once `afterS` seconds have passed since `after` was answered, where it was answered before that. */
  readonly recheck?: { readonly after: GateId; readonly afterS: number };
  /** Asked only once something has happened that reopens it. */
  readonly dormant?: true;
  /** Good only while the crew keeps at it: after a long silence it is asked again. */
  readonly session: boolean;
  /** About something that is over once it was answered, such as how many went under: no amendment asks it again. */
  readonly past: boolean;
  /** Asked every day: a good answer does not move the job on. */
  readonly stays: boolean;
  readonly reopenedBy: readonly (Aspect | Happening)[];
  readonly paper: Paper | null;
};

export type Answer = {
  readonly gate: GateId;
  readonly value: Value;
  readonly by: PersonId;
  readonly device: DeviceId;
  readonly at: Instant;
  readonly entry: EntryNo;
  /** Who looked at it besides: what a paper wants before it counts. Absent where nobody did. */
  readonly seen?: Seen;
  /** `JobState.doubtMs` when it was given; absent when none. */
  readonly doubtMs?: number;
  /** A corner mark has to move, and the lengths have not come out square since. */
  readonly moved?: true;
};
export type Seen = { readonly by: PersonId; readonly device: DeviceId; readonly entry: EntryNo };

/** Who may answer what a life can hang on: wind, anchors, overhead lines, who is under. */
export const COMPETENT: readonly Role[] = ["lead", "deputy", "competent"];
export const CREW: readonly Role[] = [...COMPETENT, "crew"];
export const PRACTICE: Source = "practice";
export const SHEET: Source = "sheet";
export const BRIEF: Source = "brief";

/** A gate before its call gives it its id. */
export type GateDraft = Omit<Gate, "id">;

/** A hard gate for the whole crew, good until reopened, unless the declaration says otherwise. */
export const gate = (check: Check, declared: Partial<Omit<GateDraft, "check">> = {}): GateDraft => ({
  check,
  hard: true,
  source: PRACTICE,
  roles: CREW,
  secondPersonTo: null,
  validForS: null,
  session: false,
  past: false,
  stays: false,
  reopenedBy: [],
  paper: null,
  ...declared,
});

export const yes: Check = { kind: "yesNo", good: true };
export const exactly = (n: number): Check => ({ kind: "count", from: n, to: n });
export const atLeast = (n: number): Check => ({ kind: "count", from: n, to: null });
export const noneOf: Check = exactly(0);
export const measure = (unit: Unit, from: number | null, to: number | null, noneIsGood = false): Check => ({
  kind: "measure",
  unit,
  from,
  to,
  noneIsGood,
});
/** Several figures by name, asked in the order in which they stand here. */
export const figures = (unit: Unit | "count", want: Readonly<Record<string, FigureLimit>>): Check => ({
  kind: "figures",
  unit,
  names: Object.keys(want),
  want,
});
/** Several counts that must be exact, by name. */
export const exactlyEach = (counts: Readonly<Record<string, number>>): Check =>
  figures("count", Object.fromEntries(Object.entries(counts).map(([name, n]) => [name, { from: n, to: n }])));
/** Several measurements within the same limits, by name. */
export const measures = (unit: Unit, names: readonly string[], from: number | null, to: number | null): Check =>
  figures(unit, Object.fromEntries(names.map((name) => [name, { from, to }])));
export const each = (names: readonly string[]): Check => ({ kind: "each", names });
export const document = (expected: string | null): Check => ({ kind: "document", expected, validFrom: null, validTo: null });
/** A gate of a call that needs what nobody knows yet, declared otherwise as the one that it stands for. */
export const unknownGate = (facts: readonly FactName[], declared: Partial<Omit<GateDraft, "check">>): GateDraft =>
  gate({ kind: "notKnown", facts }, { source: BRIEF, roles: COMPETENT, ...declared });
