import type { Verdict } from "../../../machines/record/verify-job.ts";

const WHY: Readonly<Record<NonNullable<Verdict["mismatch"]>["why"], string>> = {
  hash: "is not as it was written",
  notJson: "is not an entry",
  prev: "does not follow the one before it",
  gap: "is missing, or stands in the wrong place",
  job: "is of another job",
  replay: "does not replay to what was recorded",
  opening: "does not open a job",
};

/** What `npm run verify` says: a line for each job, or one sentence why nothing could be read. */
export const verify = {
  usage: "Name one file: npm run verify -- FILE (a data file, or a record.json that was exported).",
  missing: (file: string, why: string) => `${file} cannot be read (${why}); check the path.`,
  notAFile: (file: string) => `${file} is not a file; name a data file, or a record.json that was exported.`,
  empty: (file: string) => `${file} is empty; take another copy.`,
  inUse: (file: string) => `${file} is in use; stop the server that holds it, or verify a copy or an export.`,
  neither: (file: string) => `${file} is neither a data file nor a record that was exported; name one of those.`,
  noRecord: (file: string) => `${file} is JSON, but not a record that was exported: it has no job with a list of entries.`,
  noJobs: (file: string) => `${file} holds no job yet.`,
  job(job: string, { title, entries, tip, mismatch }: Verdict): string {
    const what = `${oneLine(title ?? `Job ${job}`)}: ${entries === 1 ? "1 entry" : `${entries} entries`}`;
    if (mismatch === null) return `${what}, last hash ${tip}, holds.`;
    const good = tip === null ? "no entry before it" : `last hash before it ${tip}`;
    return `${what}, does not hold: entry ${mismatch.no} ${WHY[mismatch.why]} (${good}).`;
  },
} as const;

/** A title is a person's words: no line breaks, and nothing that moves a terminal's cursor. */
const oneLine = (text: string) => text.replaceAll(/[\p{Cc}\p{Cf}\s]+/gu, " ").trim();
