import type { Taping } from "../site/lengths.ts";
import type { Corner, Point } from "../tent/types.ts";
import type { Role } from "./brief.ts";
import type { DeviceId, EntryNo, GateId, Instant, PersonId } from "./ids.ts";

/** Where a limit comes from. A figure from memory may shut a gate, and never opens one. */
export type Source =
  | { readonly title: string; readonly section: string }
  | "common practice, no source"
  | "from memory"
  | "this tent's sheet"
  | "this job's brief";

/** Whose paper a gate takes instead of the limit. It is an answer, in the record under its own name, and no waiver. */
export type Paper = "engineer" | "lineOwner" | "utilityOwner" | "siteOwner" | "fireOfficial";

export type Unit = "in" | "ft" | "deg" | "lbf" | "turns";

/** The kind of answer that a gate takes, with its limit. */
export type Check =
  | { readonly kind: "yesNo"; readonly good: boolean }
  | { readonly kind: "count"; readonly from: number; readonly to: number | null }
  /** A count that must equal another gate's: those who went under, coming out again. */
  | { readonly kind: "sameCount"; readonly as: GateId }
  | {
      readonly kind: "measure";
      readonly unit: Unit;
      readonly from: number | null;
      readonly to: number | null;
      readonly noneIsGood: boolean;
    }
  /**
   * Lengths in feet between the four corner marks, at least five of AB BC CD DA AC BD, said in any order and over several
   * answers. Judged together: the figure that fits them against the one that is wanted.
   */
  | {
      readonly kind: "square";
      readonly want: Readonly<Record<Corner, Point>>;
      readonly inPer50Ft: number;
      readonly taping: Taping;
    }
  /**
   * Counts of several things by name, in any order and over several answers. At least so many of each; or, where `as`
   * names a gate, exactly as many as were counted there.
   */
  | { readonly kind: "counts"; readonly want: Readonly<Record<string, number>>; readonly as: GateId | null }
  /** A paper named by its number. `expected` is the one this job is for. */
  | { readonly kind: "document"; readonly expected: string | null; readonly validFrom: Instant | null; readonly validTo: Instant | null }
  /** The latest wind reading is fresh and workable; never answered by hand. */
  | { readonly kind: "wind" }
  /** No figure exists to judge by: only the named paper opens it. */
  | { readonly kind: "paperOnly" };

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

export type Value =
  | { readonly kind: "yesNo"; readonly yes: boolean }
  | { readonly kind: "count"; readonly n: number }
  | { readonly kind: "measure"; readonly n: number; readonly unit: Unit }
  | { readonly kind: "none" }
  | { readonly kind: "unknown" }
  | { readonly kind: "lengths"; readonly ft: Readonly<Record<string, number>> }
  | { readonly kind: "counts"; readonly n: Readonly<Record<string, number>> }
  | { readonly kind: "document"; readonly named: string }
  | { readonly kind: "paper"; readonly by: string; readonly document: string };

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
export const PRACTICE: Source = "common practice, no source";
export const SHEET: Source = "this tent's sheet";
export const BRIEF: Source = "this job's brief";

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
