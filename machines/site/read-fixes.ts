import type { TentPlan } from "../tent/types.ts";
import { badSlides, type StakeFix } from "./fixes.ts";
import type { SiteProblem, SiteProblemCode } from "./site-limits.ts";
import { type StakeName, standingOf } from "./stand.ts";

/**
 * What is wrong with what is to be done about the stakes of a tent: a stake that it does not have, one that is named twice, or plates
 * that slide too far. Each stake has one fix, with all of its lines: its calls are answered once.
 */
export function problemsOfFixes(plan: TentPlan, fixes: readonly StakeFix[]): SiteProblem[] {
  const has = new Set(standingOf(plan).stakes.map(({ name }) => codeOf(name)));
  const bad = new Set(badSlides(plan, new Map(fixes.flatMap((fix) => (fix.is === "slide" ? [[fix.station, fix.byFt] as const] : [])))));
  const wrong = (i: number, code: SiteProblemCode, value: string | number): SiteProblem => ({ path: `fixes.${i}`, code, value, limit: code === "slidesTooFar" ? plan.spec.spacingFt : null }); // biome-ignore format: one line reads best
  const seen = new Set<string>();
  return fixes.flatMap((fix, i) => {
    const of = fix.is === "slide" ? fix.station : codeOf(fix.stake);
    if (seen.has(`${fix.is} ${of}`)) return [wrong(i, "stakeTwice", of)];
    seen.add(`${fix.is} ${of}`);
    if (fix.is === "slide") return bad.has(fix.station) ? [wrong(i, "slidesTooFar", fix.station)] : [];
    return has.has(of) ? [] : [wrong(i, "noSuchStake", of)];
  });
}

const codeOf = (name: StakeName): string => (name.is === "plate" ? `${name.station}.${name.plate}` : name.pole);
