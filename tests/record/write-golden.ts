/** Records a whole job again under the present version of the procedure: `npx tsx tests/record/write-golden.ts`. */
import { writeFileSync } from "node:fs";
import { GOLDEN, goldenLines, recordGolden } from "../support/golden.ts";

const text = await recordGolden();
writeFileSync(GOLDEN, text);
console.log(`${goldenLines(text).length} entries`);
