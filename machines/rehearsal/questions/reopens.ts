import type { Question as Asked } from "../../install/script-index.ts";
import { asking } from "./job-words.ts";
import { choice, type Maker, type Shown, type Skills, worded } from "./question.ts";

const gates = (list: readonly Asked[]): Shown[] => list.map((q) => ({ is: "asked", ...worded(q) }));

/** What is asked again after something happened. Slips: what that leaves as it is; none that each new session asks again anyway. */
const reopens =
  (what: string): Maker =>
  (frozen, random) => {
    const all = asking(frozen);
    const is = (q: Asked) => q.gate.reopenedBy.some((by) => by === what);
    const again = all.filter(is);
    if (again.length === 0) return null;
    const right = random.pick(again);
    const made = choice(random, gates([right])[0]!, gates(random.shuffle(all.filter((q) => !is(q) && !q.gate.session && q.gate.check.kind !== "notKnown"))), gates(again)); // biome-ignore format: one line reads best
    return made && { ask: `reopens.${what}`, ...made, because: worded(right) };
  };

export const REOPENS: Skills = {
  "reopens.crew": ["utilitiesMarked", reopens("crew")],
  "reopens.corner": ["anchorsSet", reopens("corner")],
  "reopens.blow": ["tensioned", reopens("blow")],
  "reopens.rain": ["standing", reopens("rain")],
  "reopens.strike": ["struck", reopens("strike")],
};
