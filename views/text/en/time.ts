import type { PartTime } from "../../../machines/time/estimate.ts";
import type { PhaseStatus } from "../../../machines/time/job-stage.ts";

const THINGS: Readonly<Record<string, (n: number) => string>> = {
  whiteLine: (n) => `${n} ft of white line`,
  marking: (n) => `${n} stations to mark`,
  spreading: (n) => `${n} plates to lay out`,
  driving: (n) => `${n} stakes to drive`,
  pullTests: (n) => `${n} pull tests`,
  laying: (n) => `${n} sq ft of cloth to lay`,
  lacing: (n) => `${n} ft of seam to lace`,
  strapping: (n) => `${n} corners and seam ends to strap`,
  threading: (n) => `${n} straps to thread`,
  layingSidePoles: (n) => `${n} side poles to lay out`,
  sidePoles: (n) => `${n} side poles to stand`,
  wrapping: (n) => `${n} straps to pull through and wrap`,
  layingQuarters: (n) => `${n} quarter poles to carry in and pin`,
  layingCenters: (n) => `${n} center poles to carry in and pin`,
  quarterPoles: (n) => `${n} quarter poles to raise`,
  centerPoles: (n) => `${n} center poles to raise`,
  tensioning: (n) => `${n} straps to tension, twice round`,
  tyingQuarters: (n) => `${n} quarter poles to tie down`,
  tyingCenters: (n) => `${n} center poles to tie down`,
  walking: (n) => `${n} stations to walk`,
  walls: (n) => `${n} ft of wall to hang`,
  wallsDown: (n) => `${n} ft of wall to take down`,
  easing: (n) => `${n} straps to ease`,
  quarterPolesDown: (n) => `${n} quarter poles to lower`,
  centerPolesDown: (n) => `${n} center poles to lower`,
  sidePolesDown: (n) => `${n} side poles to take down`,
  unlacing: (n) => `${n} ft of seam to unlace`,
  folding: (n) => `${n} sq ft of cloth to fold`,
  pulling: (n) => `${n} stakes to pull`,
};
const IS: Readonly<Record<PhaseStatus, string>> = { done: "Done", now: "Under way", later: "To come", skipped: "Left out" };
export const phaseIsName = (is: PhaseStatus): string => IS[is];

const people = (n: number) => (n === 1 ? "1 person" : `${n} people`);
const jobs = (n: number) => (n === 1 ? "1 finished job" : `${n} finished jobs`);
const short = (n: number) => String(Math.round(n * 100) / 100);

/** Minutes as people say them: to the minute under half an hour, then to five. */
export function about(minutes: number): string {
  const m = minutes < 29.5 ? Math.round(minutes) : Math.round(minutes / 5) * 5;
  if (m < 60) return `${m} min`;
  return m % 60 === 0 ? `${m / 60} h` : `${Math.floor(m / 60)} h ${m % 60} min`;
}

/** The page of crew and time. */
export const time = {
  title: "Crew and time",
  of: (title: string) => `Crew and time: ${title}`,
  link: "Crew and time",
  likely: (what: string, at: string) => `${what} ${at}`,
  raised: "Likely done",
  struck: "Likely all down",
  between: (low: string, high: string) => `between ${low} and ${high}`,
  raise: (work: string) => `About ${work} to raise it`,
  strike: (work: string) => `About ${work} to take it down`,
  stands: "The tent stands.",
  held: "HELD. If work went on this minute:",
  makingSafe: "Making safe. A finish is told again when the work goes on.",
  closed: (work: string) => `The job is closed. The guide counted ${work} of work.`,
  tooFew: (n: number, phases: string) => `No time can be told with ${people(n)}: ${phases}.`,
  needs: (phase: string, least: number) => `"${phase}" takes at least ${least}`,
  notSafety: "That is a figure for time. How many people a lift needs is on the sheet, and the lead's to say.",
  notCounted: "The plan of this job cannot be counted, so no time can be told.",
  readOnly: (why: string) => `${why} No finish is told.`,
  rehearsal: "What the real job would take. A rehearsal itself is not timed.",
  zone: (zone: string) => `Times are local to the site, ${zone}.`,
  left: (work: string) => `${work} of work left.`,
  long: "More than a day's work. Nights not included.",
  pastToday: "It may run past today. Nights not included: count the hours you have left.",
  with: (n: number) => `With ${people(n)} on site.`,
  whatIf: (n: number, own: number) => `What if: with ${people(n)}. The brief has ${own}.`,
  none: "Based on assumed figures, on none of your own jobs yet. A rough guess.",
  thin: (n: number) => `Rests on ${jobs(n)}; take it as a guess.`,
  rests: (n: number) => `Rests on ${jobs(n)}.`,
  eight: "Eight in ten jobs land in that range, if the assumptions below hold.",
  line: (what: string, low: string, high: string) => `${what} (${low} to ${high})`,
  crew: "Another crew",
  ask: "How many people on site?",
  ask1: "1 to 60",
  workOut: "Work it out",
  own: (n: number) => `With the crew on the brief (${n})`,
  badPeople: (said: string) => `"${said.slice(0, 20)}" is not a crew. Give a whole number of people from 1 to 60.`,
  phases: "Phase by phase",
  columns: { phase: "Phase", whole: "Takes", spent: "Spent so far", left: "Left", estimate: "Assumed", factor: "Your own jobs" },
  range: (likely: string, low: string, high: string) => `${likely} (${low} to ${high})`,
  notWith: (n: number, least: number) => `Not with ${people(n)}: at least ${least}`,
  overdue: "longer than nine in ten",
  spent: (work: string) => work,
  nothing: "none",
  fixed: (minutes: number) => `talks, papers, checks, walking, the truck: ${about(minutes)}`,
  part: ({ key, count, minutesEach, by, people: at, teams, minutes }: PartTime) => {
    const things = (THINGS[key] ?? ((count: number) => `${count} of ${key}`))(Math.round(count));
    if (by === "hand") return `${things} × ${short(minutesEach)} person-min, ${at} at it: ${about(minutes)}`;
    return `${things} × ${short(minutesEach)} min, ${teams === 1 ? `a team of ${at}` : `${teams} teams of ${at}`}: ${about(minutes)}`;
  },
  restsOn: (minutes: string) => `${minutes}: what it rests on`,
  times: (factor: number, low: number, high: number) => `× ${factor.toFixed(2)} (${low.toFixed(2)} to ${high.toFixed(2)})`,
  fromJobs: (n: number) => (n === 0 ? "no finished job yet" : `from ${jobs(n)}`),
  leftOut: (n: number) => `${n} more left out: not timed`,
  all: "all of it",
  assumptions: "What is assumed",
  assumed: (prior: number, gapMin: number): readonly string[] => [
    "The assumed figures are common practice, no source: a practiced crew, level ground, fair weather, one or two powered stake drivers. Your own finished jobs put them right.",
    "Everybody on the brief who stands in the toolbox talk works from the first call to the last.",
    "A finish is the work that is left, from now on without a stop. Nights, and waiting for weather, papers or trucks, come on top.",
    `Work is the time between two words to the guide. A gap over ${gapMin} min is not work, nor is time held; a meal shorter than that counts.`,
    `Your jobs are compared with the assumed figures phase by phase: the middle of the ratios, drawn toward 1 as if ${prior === 1 ? "one job" : `${prior} jobs`} had gone exactly as assumed. One wild job is kept from ruling it.`,
    "Only real jobs that were handed over or closed count, and only phases that were finished. Rehearsals, this job itself, and records that do not hang together never do.",
    "A phase that took under a sixth of the assumed time, or over six times it, was not timed as it was done: pressed through afterward, or left open. It is left out.",
    "A phase under way is judged by the calls gone past and the time they took. What is overdue is given more time, not none.",
    "Overruns are longer than savings: the whole is likely to take a little more than its phases added up.",
    "With more people than can get at the work, nothing gets faster.",
  ],
  asJson: "As data (JSON)",
} as const;
