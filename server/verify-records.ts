import { readFileSync, statSync } from "node:fs";
import { parseArgs } from "node:util";
import { type Comparison, comparison } from "../machines/record/compare-digest.ts";
import type { JobId } from "../machines/record/entry.ts";
import { verifyFollowUps } from "../machines/record/follow-up.ts";
import { readHouse } from "../machines/record/house.ts";
import { type Beside, type BesideVerdict, verifyBeside } from "../machines/record/verify-beside.ts";
import { compareWithHouse, type HouseVerdict, houseHolds } from "../machines/record/verify-house.ts";
import { type Line, lineOf, type Verdict, verifyJob } from "../machines/record/verify-job.ts";
import { header, inUse, whatIsWrong } from "./journal/check-file.ts";
import { eachJobIn, followUpsInFile, houseInFile } from "./journal/read-file.ts";
import { verify } from "./terminal.ts";

/** Nothing could be read; the message is one sentence. */
class Unreadable extends Error {}

/** Where a terminal's lines go. */
export type Terminal = { readonly print: (line: string) => void; readonly complain: (line: string) => void };

/**
 * Verifies a data file or an exported record, and changes neither: a line for each job, one for the house stream, what all this
 * cannot show, one for what a manager said of findings, and what a digest from paper comes to (`--digest`). 0 where all hold, 1 where something does not, 2 where the file
 * cannot be read.
 */
export function verifyRecords(args: readonly string[], terminal: Terminal): 0 | 1 | 2 {
  const asked = argumentsIn(args);
  if (asked === null) {
    terminal.complain(verify.usage);
    return 2;
  }
  try {
    return verifyNamed(asked, terminal.print);
  } catch (error) {
    const reason = error instanceof Unreadable ? error.message : verify.missing(asked.file, (error as Error).message.split(", ")[0]!);
    terminal.complain(reason);
    return 2;
  }
}

type Asked = { readonly file: string; readonly digest: string | null };

/** One file, and a digest where one is to be compared; `null` for anything else. */
function argumentsIn(args: readonly string[]): Asked | null {
  try {
    const { positionals, values } = parseArgs({ args: [...args], options: { digest: { type: "string" } }, allowPositionals: true });
    const [file, ...more] = positionals;
    return file === undefined || more.length > 0 ? null : { file, digest: values.digest ?? null };
  } catch {
    return null;
  }
}

function verifyNamed({ file, digest }: Asked, print: Terminal["print"]): 0 | 1 {
  const compared = comparison(digest);
  const titles = new Map<JobId, string | null>();
  let whole = true;
  const tell: Tell = (told, lines) => {
    titles.set(told.job, told.verdict.title);
    whole &&= holds(told);
    print(verify.job(told));
    const { title, entries, mismatch } = told.verdict;
    // What does not fit vouches for nothing.
    const hashes = lines.slice(0, mismatch ? mismatch.no - 1 : entries).map(({ hash }) => hash);
    compared.job({ title, hashes, entries });
  };
  look(file);
  const house = isSqlite(file) ? verifyFile(file, tell, compared) : null;
  if (!house) verifyExport(file, tell);
  if (titles.size === 0) print(verify.noJobs(file));
  if (house && (titles.size > 0 || house.entries > 0)) {
    whole &&= houseHolds(house);
    print(verify.house(house, (job) => titles.get(job) ?? null));
    print(verify.cannotShow(house.last?.day ?? null));
  }
  if (house) whole = followUpsHold(file, print) && whole;
  const found = compared.found();
  if (found) print(verify.digest(found));
  return whole && (found === null || found.is === "same") ? 0 : 1;
}

/** Whether the stream of follow-ups holds; a line for it where there are any. */
function followUpsHold(file: string, print: Terminal["print"]): boolean {
  const verdict = verifyFollowUps(followUpsInFile(file));
  if (verdict.entries > 0) print(verify.followUps(verdict));
  return verdict.mismatch === null;
}

function look(file: string) {
  const stat = statSync(file);
  if (!stat.isFile()) throw new Unreadable(verify.notAFile(file));
  if (stat.size === 0) throw new Unreadable(verify.empty(file));
}

const isSqlite = (file: string) => header(file) === "SQLite format 3\0";

type Tell = (told: JobVerdict, lines: readonly Line[]) => void;

/** What comes of verifying the house stream, once that of each job was told. */
function verifyFile(file: string, tell: Tell, compared: Comparison): HouseVerdict {
  if (inUse(file)) throw new Unreadable(verify.inUse(file));
  const problem = whatIsWrong(file, "reading");
  if (problem) throw new Unreadable(problem);
  verifyJobsIn(file, tell);
  return verifyHouseIn(file, compared);
}

/** Verifies the house stream of a sound data file that nobody holds, and every job that it speaks of. Changes no byte of it. */
export const verifyHouseIn = (file: string, compared?: Comparison): HouseVerdict =>
  houseInFile(file, (lines, kept) => {
    const house = readHouse(lines);
    compared?.house(house.entries);
    return compareWithHouse(house, kept);
  });

/**
 * A job, what comes of verifying its entries, and where those hold what comes of comparing what stands beside them. `said` is what
 * an export says itself is wrong with its job: what followed is not in it.
 */
export type JobVerdict = {
  readonly job: JobId;
  readonly verdict: Verdict;
  readonly beside: BesideVerdict | null;
  readonly said?: string;
};

/** Whether a job holds, and all that stands beside it. */
export const holds = ({ verdict, beside, said }: JobVerdict): boolean =>
  verdict.mismatch === null && (beside?.problems.length ?? 0) === 0 && said === undefined;

function verdictOn(job: JobId, lines: readonly Line[], beside: Beside): JobVerdict {
  const verdict = verifyJob(job, lines);
  return { job, verdict, beside: verdict.mismatch === null ? verifyBeside(lines, beside) : null };
}

/** Verifies each job of a sound data file that nobody holds, the oldest first. Changes no byte of it. */
export function verifyJobsIn(file: string, tell?: Tell): JobVerdict[] {
  const verdicts: JobVerdict[] = [];
  eachJobIn(file, ({ job, lines, people, photos }) => {
    const told = verdictOn(job, lines, { ...(people ? { people } : {}), ...(photos ? { photos } : {}) });
    verdicts.push(told);
    tell?.(told, lines);
  });
  return verdicts;
}

function verifyExport(file: string, tell: Tell) {
  const record = parsed(file);
  if (typeof record !== "object" || record === null) throw new Unreadable(verify.noRecord(file));
  const { job, entries, people, findings, kit, problem } = record as Readonly<Record<string, unknown>>;
  if (typeof job !== "string" || !Array.isArray(entries) || entries.length === 0) throw new Unreadable(verify.noRecord(file));
  const marks = entries.map((entry) => (Object(entry) as { marks?: unknown }).marks);
  const lines = entries.map(lineOf);
  const told = verdictOn(job, lines, { people, marks, findings, kit });
  tell(typeof problem === "string" ? { ...told, said: problem } : told, lines);
}

function parsed(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, "utf8").replace(/^\uFEFF/, ""));
  } catch (error) {
    if (error instanceof SyntaxError) throw new Unreadable(verify.neither(file));
    throw error;
  }
}
