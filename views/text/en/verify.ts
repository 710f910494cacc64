import type { BesideProblem, BesideVerdict } from "../../../machines/record/verify-beside.ts";
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

type Told = { readonly job: string; readonly verdict: Verdict; readonly beside: BesideVerdict | null };

function besideText(problem: BesideProblem): string {
  switch (problem.is) {
    case "nameChanged":
      return `the name of ${problem.person} is not the one that was written`;
    case "stranger":
      return `${oneLine(problem.person)} has a name and is in no entry`;
    case "marks":
      return `the marks of entry ${problem.no} are not what it comes to`;
    case "findings":
      return "the findings are not what the entries come to";
    case "kit":
      return "the kit is not what was counted";
  }
}

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
  job({ job, verdict: { title, entries, tip, mismatch }, beside }: Told): string {
    const what = `${oneLine(title ?? `Job ${job}`)}: ${entries === 1 ? "1 entry" : `${entries} entries`}`;
    const { problems = [], erased = 0 } = beside ?? {};
    const names = erased === 0 ? "" : ` (${erased === 1 ? "1 name" : `${erased} names`} erased)`;
    if (problems.length > 0) return `${what}, last hash ${tip}, does not hold: ${problems.map(besideText).join("; ")}.`;
    if (mismatch === null) return `${what}, last hash ${tip}, holds${names}.`;
    const good = tip === null ? "no entry before it" : `last hash before it ${tip}`;
    return `${what}, does not hold: entry ${mismatch.no} ${WHY[mismatch.why]} (${good}).`;
  },
} as const;

/** A title is a person's words: no line breaks, and nothing that moves a terminal's cursor. */
const oneLine = (text: string) => text.replaceAll(/[\p{Cc}\p{Cf}\s]+/gu, " ").trim();
