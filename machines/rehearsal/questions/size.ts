import { planTent } from "../../tent/plan.ts";
import { checkSpec } from "../../tent/spec.ts";
import type { TentPlan, TentSpec } from "../../tent/types.ts";
import { becauseAt } from "./job-words.ts";
import { type Counted, choice, countSlips, type Maker, type Skills } from "./question.ts";

/** Another width at which people ask what changes, ft. Common practice, no source. */
const OTHER_FT = [-20, 20, -10, 10] as const;

/** A mid piece more, ft: a usual length. Common practice, no source. */
const MID_FT = 20;

/** The same tent so much wider or narrower, or a mid piece longer; `null` where it cannot be built. What was counted in the cloth of this one is left out. */
function other(
  { rings: _, shifted: __, ...spec }: TentSpec,
  { byFt, mid }: { readonly byFt: number; readonly mid: boolean },
): TentPlan | null {
  const widthFt = spec.widthFt + byFt;
  const midsFt = mid && !spec.onePiece ? [...spec.midsFt, MID_FT] : spec.midsFt;
  const longer = mid && spec.onePiece ? MID_FT : 0;
  const lengthFt = spec.onePiece ? Math.max(spec.lengthFt, widthFt) + longer : widthFt + midsFt.reduce((sum, ft) => sum + ft, 0);
  const checked = checkSpec({ ...spec, widthFt, midsFt, lengthFt, leaveOut: [], add: [] });
  return "problems" in checked ? null : planTent(checked.spec);
}

/** The first of other sizes that something is true of: planning one takes some time, so no more are planned than are looked at. */
function firstOther(spec: TentSpec, widths: readonly number[], is: (plan: TentPlan) => boolean): TentPlan | null {
  for (const by of [...widths.map((byFt) => ({ byFt, mid: false })), { byFt: 0, mid: true }]) {
    const plan = other(spec, by);
    if (plan && is(plan)) return plan;
  }
  return null;
}

const OF: Readonly<Record<string, (plan: TentPlan) => number>> = {
  sidePoles: ({ stations }) => stations.length,
  stakes: ({ stations }) => stations.reduce((n, s) => n + s.stakes, 0),
  poles: ({ poles }) => poles.length,
  plates: ({ plates }) => plates.length,
};

/** A count at another size. Slips: this tent's, in proportion to the width, each edge but its corners, another thing's. */
const changed =
  (of: Counted, call: string): Maker =>
  (frozen, random) => {
    const { plan } = frozen;
    const count = OF[of]!;
    const at = firstOther(plan.spec, random.shuffle(OTHER_FT), (o) => count(o) !== count(plan));
    if (!at) return null;
    const n = count(at);
    const slips = [count(plan), Math.round((count(plan) * at.widthFt) / plan.widthFt), n - 4, n + 4, n + (n - count(plan))];
    const made = choice(random, { is: "count", n, of }, countSlips(n, slips, of));
    const params = { widthFt: at.widthFt, lengthFt: at.lengthFt, was: count(plan), of };
    return made && { ask: "size", params, ...made, because: becauseAt(frozen, call) };
  };

/** What changes at another size: both plans are computed. */
export const SIZES: Skills = {
  "size.stakes": ["anchorsSet", changed("stakes", "stakes.corners")],
  "size.around": ["perimeterRaised", changed("sidePoles", "sides.laid")],
  "size.inside": ["interiorRaised", changed("poles", "poles.pinned")],
};
