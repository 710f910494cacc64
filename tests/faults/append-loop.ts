import type { Sealed } from "../../machines/record/entry.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { lineAfter, openingLine } from "../support/entries.ts";
import { named } from "../support/people.ts";

/**
 * Appends entries to a data file until it is killed: `append-loop.ts FILE`. Says the number and hash of each once the
 * journal has taken it, and only then makes the next. Goes on where the file left off.
 */
const journal = openJournal(process.argv[2]!);
// Waits until it is taken: a full pipe keeps a line for later, and a loop that never rests would leave it unsaid for good.
const said = ({ entry, hash }: Sealed) => new Promise((written) => process.stdout.write(`${entry.no} ${hash}\n`, written));

let last = verifyChain(await journal.read("job-1")).entries.at(-1);
if (!last) {
  last = openingLine("job-1");
  await journal.open(last, named({ p1: "Ines" }));
  await said(last);
}
for (;;) {
  last = lineAfter(last);
  await journal.append(last);
  await said(last);
}
