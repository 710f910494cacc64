import { houseHolds } from "../../machines/record/verify-house.ts";
import { copying, verify } from "../terminal.ts";
import { holds, type Terminal } from "../verify-records.ts";
import type { WholeCopy } from "./whole-copy.ts";

/** Whether every job in a copy holds, with what stands beside it, and is as its house stream says. */
export const allHold = ({ jobs, house }: WholeCopy): boolean => jobs.every(holds) && houseHolds(house);

/** Prints a line for each job in a copy: title, entries, last hash, and whether it holds; and one for the house stream where there is one. */
export function printJobs({ jobs, house }: WholeCopy, { print }: Terminal): void {
  for (const job of jobs) print(verify.job(job));
  const titles = new Map(jobs.map(({ job, verdict }) => [job, verdict.title]));
  if (house.last !== null || house.broken !== null) print(verify.house(house, (job) => titles.get(job) ?? null));
}

/** Prints where a copy lies now, how many jobs and entries it has, and how long it is in bytes. */
export function printMade({ jobs, bytes }: WholeCopy, file: string, { print }: Terminal): void {
  print(copying.made(file, { jobs: jobs.length, entries: jobs.reduce((sum, { verdict }) => sum + verdict.entries, 0), bytes }));
}
