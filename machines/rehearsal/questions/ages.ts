import { asking, becauseAt, gateOf } from "./job-words.ts";
import { choice, type Maker, type Shown, type Skills } from "./question.ts";

/** How long an answer stays good. Slips: the other ages of this job, half of it, twice. */
const age =
  (id: string): Maker =>
  (frozen, random) => {
    const s = id === "thunder" ? frozen.limits.thunderS.is : gateOf(frozen, id)?.validForS;
    if (s === null || s === undefined) return null;
    const shown = (of: number): Shown => ({ is: "time", s: of });
    const ages = asking(frozen).flatMap(({ gate }) => (gate.validForS === null ? [] : [gate.validForS]));
    const made = choice(random, shown(s), [...random.shuffle([...new Set(ages)]), s * 2, s / 2].map(shown));
    return made && { ask: `age.${id}`, ...made, because: becauseAt(frozen, id) };
  };

export const AGES: Skills = {
  "age.talk": ["utilitiesMarked", age("talk.headcount")],
  "age.wind.cloth": ["sectionsJoined", age("wind.cloth")],
  "age.wind.lift": ["interiorRaised", age("wind.lift")],
  "age.warning": ["perimeterRaised", age("warning")],
  "age.thunder": ["tensioned", age("thunder")],
  "age.watch": ["standing", age("watch")],
};
