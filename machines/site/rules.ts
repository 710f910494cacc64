import type { Source } from "../figures/limit-source.ts";
import { APART_KINDS, type BuriedLine, type OverheadLine, type SiteModel, type Thing } from "./model.ts";
import type { Pole, Stakes } from "./stand.ts";

type Figure = { readonly is: number; readonly source: Source };

/** The figures that clearances are judged by, as data; `clearanceRules` of machines/install/site-rules.ts makes them of a job's limits. */
export type ClearanceRules = {
  /** From the outer edge of a buried line, in; and the least that any law allows. */
  readonly toleranceIn: Figure;
  readonly minToleranceIn: number;
  /** Along the ground, beyond a pole's own length, ft, by the name of the line. `null` or absent: only the line's owner knows. */
  readonly overheadFt: Readonly<Record<string, number | null>>;
  readonly overheadSource: Source;
  /** From ropes and cloth, ft. */
  readonly separationFt: Figure;
};

/** One of the figures that a wanted distance is added up from. */
export type Term = {
  readonly term: "tolerance" | "halfWidth" | "entryError" | "reach" | "poleLength" | "lineClearance" | "separation";
  /** `null`: not known, and then the sum is not. */
  readonly ft: number | null;
  readonly source: Source;
};

/** How far a line's zone reaches from the line that was entered, without the reach of a stake. */
export function zoneTerms(line: BuriedLine, { toleranceIn, minToleranceIn }: ClearanceRules): readonly Term[] {
  const own = line.toleranceIn;
  const ruleIn = Math.max(toleranceIn.is, minToleranceIn);
  const zone = own !== null && own > ruleIn ? { in: own, source: "brief" as const } : { in: ruleIn, source: toleranceIn.source };
  return [
    { term: "tolerance", ft: zone.in / 12, source: zone.source },
    // A width that is not marked adds nothing: the zone is then measured from the mark, as one-call rules have it.
    { term: "halfWidth", ft: (line.widthIn ?? 0) / 24, source: "brief" },
    { term: "entryError", ft: line.errorFt, source: "brief" },
  ];
}

/** How far a pole without length would have to be from a wire. */
export const wireTerms = ({ id, errorFt }: OverheadLine, { overheadFt, overheadSource }: ClearanceRules): readonly Term[] => [
  { term: "lineClearance", ft: Object.hasOwn(overheadFt, id) ? overheadFt[id]! : null, source: overheadSource },
  { term: "entryError", ft: errorFt, source: "brief" },
];

/** How far ropes and cloth have to be from a thing; from what only stands in the way, clear of it. */
export const thingTerms = ({ kind, errorFt }: Thing, { separationFt }: ClearanceRules): readonly Term[] => [
  { term: "separation", ft: isKeptApart(kind) ? separationFt.is : 0, source: isKeptApart(kind) ? separationFt.source : "practice" },
  { term: "entryError", ft: errorFt, source: "brief" },
];
const isKeptApart = (kind: Thing["kind"]): boolean => APART_KINDS.some((other) => other === kind);

/** What a stake adds: it may be driven that much nearer than its mark. */
export const reachTerm = ({ reachFt }: Pick<Stakes, "reachFt">): Term => ({ term: "reach", ft: reachFt, source: "practice" });
/** What a pole adds: falling, it reaches as far as it is long. */
export const poleTerm = ({ lengthFt }: Pick<Pole, "lengthFt">): Term => ({ term: "poleLength", ft: lengthFt, source: "sheet" });

/**
 * The sum of some terms in feet; `null` where one of them is not known.
 *
 * @example sumFt([{ term: "poleLength", ft: 32, source: "sheet" }, { term: "lineClearance", ft: 10, source: "memory" }]) // 42
 */
export const sumFt = (terms: readonly Term[]): number | null =>
  terms.reduce((sum: number | null, { ft }) => (sum === null || ft === null ? null : sum + ft), 0);

/** The sum of those that are known. */
export const knownFt = (terms: readonly Term[]): number => terms.reduce((sum, { ft }) => sum + (ft ?? 0), 0);

/** Distances in feet that differ by less are taken for the same. */
export const SAME_FT = 1e-6;

/**
 * Whether a distance is short of what is wanted, in feet.
 *
 * @example isShort(38, 42) // true
 */
export const isShort = (distanceFt: number, wantedFt: number): boolean => distanceFt < wantedFt - SAME_FT;

/** The lines and things of a site that something has to be clear of. */
export type Neighbor =
  | { readonly is: "buried"; readonly line: BuriedLine }
  | { readonly is: "overhead"; readonly line: OverheadLine }
  | { readonly is: "thing"; readonly thing: Thing }
  | { readonly is: "ground" };

/** All of them, in the order that they were told in. */
export const neighborsOf = ({ buried, overhead, things, ground }: SiteModel): Neighbor[] => [
  ...buried.map((line): Neighbor => ({ is: "buried", line })),
  ...overhead.map((line): Neighbor => ({ is: "overhead", line })),
  ...things.map((thing): Neighbor => ({ is: "thing", thing })),
  ...(ground ? [{ is: "ground" } as const] : []),
];
