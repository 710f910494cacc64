import type { Role } from "./brief.ts";
import type { Check, Value } from "./checks/registry.ts";
import type { Unit } from "./checks/units.ts";
import type { DeviceId, EntryNo, GateId, Instant, PersonId } from "./ids.ts";

export type { Check, Value } from "./checks/registry.ts";
export type { Unit } from "./checks/units.ts";

/**
 * Where a limit comes from: what was published, or, in code, common practice without a source, memory, the tent's sheet, the
 * job's brief. A figure from memory may shut a gate, and never opens one.
 */
export type Source = { readonly title: string; readonly section: string } | "practice" | "memory" | "sheet" | "brief";

/** Whose paper a gate takes instead of the limit. It is an answer, in the record under its own name, and no waiver. */
export type Paper = "engineer" | "lineOwner" | "utilityOwner" | "siteOwner" | "fireOfficial";

/** The parts of a job whose amendment reopens a gate. */
export type Aspect = "pieces" | "seams" | "poles" | "stations" | "anchors" | "sheet" | "site" | "ticket" | "use" | "crew";

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
  readonly reopenedBy: readonly Aspect[];
  readonly paper: Paper | null;
};

export type Answer = {
  readonly gate: GateId;
  readonly value: Value;
  readonly by: PersonId;
  readonly device: DeviceId;
  readonly at: Instant;
  readonly entry: EntryNo;
};

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
export const document = (expected: string | null): Check => ({ kind: "document", expected, validFrom: null, validTo: null });
