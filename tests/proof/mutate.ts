/** Breaks the procedure in every way that a slip of the hand could, and shows that the proof notices: `npm run mutate`. */
import { openJob } from "../../machines/install/job.ts";
import { briefOf, frozenOf, middleBrief, SMALL, START } from "./fixtures.ts";
import { gateMutants, guardMutant, guardsOf, type Mutant } from "./mutants.ts";

const small = frozenOf(briefOf(SMALL));
const mutants: Mutant[] = [];
const show = (mutant: Mutant) => {
  mutants.push(mutant);
  console.log(`${mutant.name.padEnd(44)} ${mutant.caughtBy ? `caught by ${mutant.caughtBy}` : "SURVIVED"}`);
};
for (const mutant of [...gateMutants(small), ...gateMutants(frozenOf(middleBrief()))]) show(mutant);
for (const guard of guardsOf(openJob(small, START).machine)) for (const says of [true, false]) show(guardMutant(small, guard, says));

const survived = mutants.filter((m) => !m.caughtBy).length;
console.log(`${mutants.length - survived} caught, ${survived} survived`);
process.exitCode = survived > 0 ? 1 : 0;
