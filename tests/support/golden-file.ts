import { PROCEDURE } from "../../machines/install/version.ts";

/** Where the record of the present version of the procedure is kept. */
export const GOLDEN = new URL(`../golden/procedure-${PROCEDURE}.jsonl`, import.meta.url);

/** The lines of a golden record as a journal gives them. */
export const goldenLines = (text: string) =>
  text
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as { no: number; hash: string; bytes: string })
    .map((line) => ({ ...line, bytes: new TextEncoder().encode(line.bytes) }));
