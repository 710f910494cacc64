import type { TentPlan } from "../tent/types.ts";
import { badSlides, type StakeFix } from "./fixes.ts";
import type { SiteProblem, SiteProblemCode } from "./site-limits.ts";
import { type StakeName, standingOf } from "./stand.ts";

/** What is wrong with what is to be done about the stakes of a tent: a stake that it does not have, or plates that slide too far. */
export function problemsOfFixes(plan: TentPlan, fixes: readonly StakeFix[]): SiteProblem[] {
  const has = new Set(standingOf(plan).stakes.map(({ name }) => codeOf(name)));
  const bad = new Set(badSlides(plan, new Map(fixes.flatMap((fix) => (fix.is === "slide" ? [[fix.station, fix.byFt] as const] : [])))));
  const wrong = (i: number, code: SiteProblemCode, value: string | number): SiteProblem => ({ path: `fixes.${i}`, code, value, limit: code === "slidesTooFar" ? plan.spec.spacingFt : null }); // biome-ignore format: one line reads best
  return fixes.flatMap((fix, i) => {
    if (fix.is === "slide") return bad.has(fix.station) ? [wrong(i, "slidesTooFar", fix.station)] : [];
    return has.has(codeOf(fix.stake)) ? [] : [wrong(i, "noSuchStake", codeOf(fix.stake))];
  });
}

const codeOf = (name: StakeName): string => (name.is === "plate" ? `${name.station}.${name.plate}` : name.pole);
