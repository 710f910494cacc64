import { readFileSync, statSync } from "node:fs";
import type { JobId } from "../machines/record/entry.ts";
import { type Beside, type BesideVerdict, verifyBeside } from "../machines/record/verify-beside.ts";
import { type Line, lineOf, type Verdict, verifyJob } from "../machines/record/verify-job.ts";
import { header, inUse, whatIsWrong } from "./journal/check-file.ts";
import { eachJobIn } from "./journal/read-file.ts";
import { verify } from "./terminal.ts";

/** Nothing could be read; the message is one sentence. */
class Unreadable extends Error {}

/** Where a terminal's lines go. */
export type Terminal = { readonly print: (line: string) => void; readonly complain: (line: string) => void };

/**
 * Verifies a data file or an exported record, and changes neither: a line for each job. 0 where all hold, 1 where one does
 * not, 2 where the file cannot be read.
 */
export function verifyRecords(names: readonly string[], terminal: Terminal): 0 | 1 | 2 {
  try {
    return verifyNamed(names, terminal.print);
  } catch (error) {
    const reason = error instanceof Unreadable ? error.message : verify.missing(String(names[0]), (error as Error).message.split(", ")[0]!);
    terminal.complain(reason);
    return 2;
  }
}

function verifyNamed([file, ...more]: readonly string[], print: Terminal["print"]): 0 | 1 {
  if (file === undefined || more.length > 0) throw new Unreadable(verify.usage);
  let whole = true;
  let jobs = 0;
  const tell = (told: JobVerdict) => {
    jobs++;
    whole &&= holds(told);
    print(verify.job(told));
  };
  look(file);
  if (isSqlite(file)) verifyFile(file, tell);
  else verifyExport(file, tell);
  if (jobs === 0) print(verify.noJobs(file));
  return whole ? 0 : 1;
}

function look(file: string) {
  const stat = statSync(file);
  if (!stat.isFile()) throw new Unreadable(verify.notAFile(file));
  if (stat.size === 0) throw new Unreadable(verify.empty(file));
}

const isSqlite = (file: string) => header(file) === "SQLite format 3\0";

function verifyFile(file: string, tell: (told: JobVerdict) => void) {
  if (inUse(file)) throw new Unreadable(verify.inUse(file));
  const problem = whatIsWrong(file, "reading");
  if (problem) throw new Unreadable(problem);
  for (const told of verifyJobsIn(file)) tell(told);
}

/** A job, what comes of verifying its entries, and where those hold what comes of comparing what stands beside them. */
export type JobVerdict = { readonly job: JobId; readonly verdict: Verdict; readonly beside: BesideVerdict | null };

/** Whether a job holds, and all that stands beside it. */
export const holds = ({ verdict, beside }: JobVerdict): boolean => verdict.mismatch === null && (beside?.problems.length ?? 0) === 0;

function verdictOn(job: JobId, lines: readonly Line[], beside: Beside): JobVerdict {
  const verdict = verifyJob(job, lines);
  return { job, verdict, beside: verdict.mismatch === null ? verifyBeside(lines, beside) : null };
}

/** Verifies each job of a sound data file that nobody holds, the oldest first. Changes no byte of it. */
export function verifyJobsIn(file: string): JobVerdict[] {
  const verdicts: JobVerdict[] = [];
  eachJobIn(file, ({ job, lines, people }) => verdicts.push(verdictOn(job, lines, people ? { people } : {})));
  return verdicts;
}

function verifyExport(file: string, tell: (told: JobVerdict) => void) {
  const record = parsed(file);
  if (typeof record !== "object" || record === null) throw new Unreadable(verify.noRecord(file));
  const { job, entries, people, findings, kit } = record as Readonly<Record<string, unknown>>;
  if (typeof job !== "string" || !Array.isArray(entries) || entries.length === 0) throw new Unreadable(verify.noRecord(file));
  const marks = entries.map((entry) => (Object(entry) as { marks?: unknown }).marks);
  tell(verdictOn(job, entries.map(lineOf), { people, marks, findings, kit }));
}

function parsed(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, "utf8").replace(/^\uFEFF/, ""));
  } catch (error) {
    if (error instanceof SyntaxError) throw new Unreadable(verify.neither(file));
    throw error;
  }
}
