import type { Frozen } from "../../machines/install/step.ts";
import { type Entry, type JobId, keyOf, NO_ENTRY, type Sealed, seal } from "../../machines/record/entry.ts";
import type { Stored } from "../../server/journal/journal.ts";

/** A job in name and size only, with no calls: a journal, a chain and a fold look at no more of it. */
const frozen = (title: string) =>
  ({
    procedure: "test",
    brief: { title, zone: "America/Denver", site: { address: "" }, crew: [] },
    plan: { widthFt: 40, lengthFt: 80 },
    script: { steps: [], escapes: {}, conditions: [] },
    limits: { raiseGustMph: {}, stopGustMph: {}, windOtherwiseS: {}, thunderS: {}, sessionS: {} },
  }) as unknown as Frozen;
const here = { phase: "utilitiesMarked", step: "sheet.atHand" };

/** The first entry of a job. */
export const openingLine = (job: JobId, key = `${job}-key-1`): Sealed =>
  seal({ kind: "opening", job, no: 1, prev: NO_ENTRY, key, at: 0, wall: 0, ...here, opened: frozen(`Tent of ${job}`) } as unknown as Entry);

/** An entry that follows another. What it gives away from the true one (`job`, `no`, `prev`, key) makes it misfit. */
export function lineAfter(before: Sealed, key?: string, wrong: Partial<Pick<Entry, "job" | "no" | "prev">> = {}): Sealed {
  const time = before.entry.at + 1000;
  const at = { at: time, wall: time, ...here, job: before.entry.job, no: before.entry.no + 1, prev: before.hash, ...wrong };
  const command = { type: "note", text: `stake ${at.no} is in`, key: key ?? `${at.job}-key-${at.no}`, at: time, wall: time, doubtMs: 0 };
  return seal({ kind: "command", ...at, command, outcome: { did: "noted" } } as unknown as Entry);
}

/** A job's record of so many entries that hangs together. */
export function chainOf(job: JobId, length: number): Sealed[] {
  const lines = [openingLine(job)];
  while (lines.length < length) lines.push(lineAfter(lines.at(-1)!));
  return lines;
}

/** A record as a journal gives it back. */
export const asStored = (lines: readonly Sealed[]): Stored[] =>
  lines.map(({ entry, hash, bytes }) => ({ no: entry.no, hash, bytes, filed: { prev: entry.prev, key: keyOf(entry) } }));
