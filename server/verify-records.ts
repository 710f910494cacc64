import { readFileSync, statSync } from "node:fs";
import { lineOf, type Verdict, verifyJob } from "../machines/record/verify-job.ts";
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
  const tell = (job: string, verdict: Verdict) => {
    jobs++;
    whole &&= verdict.mismatch === null;
    print(verify.job(job, verdict));
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

function verifyFile(file: string, tell: (job: string, verdict: Verdict) => void) {
  if (inUse(file)) throw new Unreadable(verify.inUse(file));
  const problem = whatIsWrong(file, "reading");
  if (problem) throw new Unreadable(problem);
  eachJobIn(file, (job, lines) => tell(job, verifyJob(job, lines)));
}

function verifyExport(file: string, tell: (job: string, verdict: Verdict) => void) {
  const record = parsed(file);
  if (typeof record !== "object" || record === null) throw new Unreadable(verify.noRecord(file));
  const { job, entries } = record as { job?: unknown; entries?: unknown };
  if (typeof job !== "string" || !Array.isArray(entries) || entries.length === 0) throw new Unreadable(verify.noRecord(file));
  tell(job, verifyJob(job, entries.map(lineOf)));
}

function parsed(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, "utf8").replace(/^\uFEFF/, ""));
  } catch (error) {
    if (error instanceof SyntaxError) throw new Unreadable(verify.neither(file));
    throw error;
  }
}
