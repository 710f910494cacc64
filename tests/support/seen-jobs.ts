import { readFileSync } from "node:fs";
import { type Entry, NO_ENTRY, type Sealed, seal } from "../../machines/record/entry.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { GOLDEN, goldenLines } from "./golden-file.ts";
import { named } from "./people.ts";

const DAY = 24 * 3_600_000;
let golden: readonly Entry[] | null = null;
const goldenEntries = (): readonly Entry[] =>
  (golden ??= goldenLines(readFileSync(GOLDEN, "utf8")).map(({ bytes }) => JSON.parse(new TextDecoder().decode(bytes)) as Entry));

type Otherwise = { readonly days?: number; readonly lengthFt?: number; readonly rehearsal?: true; readonly entries?: number };

/** The golden record as that of another job: so many days later, of another length, a rehearsal, or only its first entries. */
export function recordOf(job: string, { days = 0, lengthFt, rehearsal, entries = 110 }: Otherwise = {}): Sealed[] {
  const lines: Sealed[] = [];
  for (const entry of goldenEntries().slice(0, entries)) {
    const wall = entry.wall + days * DAY;
    const line = { ...entry, job, prev: lines.at(-1)?.hash ?? NO_ENTRY, wall };
    if (line.kind === "command") {
      lines.push(seal({ ...line, command: { ...line.command, wall: line.command.wall + days * DAY } }));
      continue;
    }
    const { brief, plan } = line.opened;
    const opened = {
      ...line.opened,
      brief: { ...brief, title: `Job ${job}`, ...(rehearsal === undefined ? {} : { rehearsal }) },
      plan: { ...plan, ...(lengthFt === undefined ? {} : { lengthFt }) },
    };
    lines.push(seal({ ...line, key: `open-${job}`, opened }));
  }
  return lines;
}

/** Puts a record into a journal, entry by entry, with the names of its people. */
export async function keep(journal: Journal, lines: readonly Sealed[], names: Readonly<Record<string, string>> = {}): Promise<void> {
  const [opening, ...rest] = lines;
  await journal.open(opening!, named(names));
  for (const line of rest) await journal.append(line);
}
