/** Breaks the procedure in every way that a slip of the hand could, and shows that the proof notices: `npm run mutate`. */
import { explore } from "./explore.ts";
import { briefOf, frozenOf, middleBrief, SMALL } from "./fixtures.ts";
import { gateMutants, guardMutants, type Mutant } from "./mutants.ts";

const small = frozenOf(briefOf(SMALL));
const mutants: Mutant[] = [...gateMutants(small), ...gateMutants(frozenOf(middleBrief())), ...guardMutants(explore(small))];
for (const { name, caughtBy } of mutants) console.log(`${name.padEnd(44)} ${caughtBy ? `caught by ${caughtBy}` : "SURVIVED"}`);

const survived = mutants.filter((m) => !m.caughtBy).length;
console.log(`${mutants.length - survived} caught, ${survived} survived`);
process.exitCode = survived > 0 ? 1 : 0;
