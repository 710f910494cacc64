/** Records a whole job again under the present version of the procedure: `npx tsx tests/record/write-golden.ts`. */
import { writeFileSync } from "node:fs";
import { recordGolden } from "../support/golden.ts";
import { GOLDEN, goldenLines } from "../support/golden-file.ts";

const text = await recordGolden();
writeFileSync(GOLDEN, text);
console.log(`${goldenLines(text).length} entries`);
