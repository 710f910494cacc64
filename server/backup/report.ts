import { copying, verify } from "../terminal.ts";
import { holds, type Terminal } from "../verify-records.ts";
import type { WholeCopy } from "./whole-copy.ts";

/** Whether every job in a copy holds, with what stands beside it. */
export const allHold = ({ jobs }: WholeCopy): boolean => jobs.every(holds);

/** Prints a line for each job in a copy: title, entries, last hash, and whether it holds. */
export function printJobs({ jobs }: WholeCopy, { print }: Terminal): void {
  for (const job of jobs) print(verify.job(job));
}

/** Prints where a copy lies now, how many jobs and entries it has, and how long it is in bytes. */
export function printMade({ jobs, bytes }: WholeCopy, file: string, { print }: Terminal): void {
  print(copying.made(file, { jobs: jobs.length, entries: jobs.reduce((sum, { verdict }) => sum + verdict.entries, 0), bytes }));
}
