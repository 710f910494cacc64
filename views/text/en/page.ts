import { own } from "../../../machines/lookup/own.ts";

/** What several pages say. */
export const page = {
  name: "Ridgecall",
  guide: "Back to the call",
  home: "All jobs",
  plan: "The plan",
  record: "Record it",
  because: "Because",
  who: "Who holds this screen?",
  you: (name: string, role: string) => `${name}, ${role}`,
  rehearsal: "REHEARSAL",
  notReal: "Rehearsal: nothing here is a real tent, and nothing in it counts.",
  trials: "TRIALS",
  trialsTold: "Trial server: anybody answers as anybody here. Nothing on it is a real job.",
  size: (widthFt: number, lengthFt: number) => `${widthFt} × ${lengthFt} ft`,
} as const;

/** The header of a wide screen: the ways between pages. */
export const header = {
  site: "Pages",
  job: "This job",
  home: "Jobs",
  tents: "Tents",
  findings: "Findings",
  office: "Office",
  guide: "Guide",
  plan: "Plan",
  layout: "Layout",
  truck: "Truck",
  time: "Time",
  record: "Record",
} as const;

/** The list of jobs. */
export const home = {
  jobs: "Jobs",
  tents: "Tents",
  intro: "A step guide for the crew that puts up a sectional pole tent, watches it while it stands, and takes it down.",
  defers: "It defers to the tent's sheet, the maker's manual, locate law, the local code, the fire official and a licensed engineer.",
  open: "Open a job",
  rehearsals: "Rehearsals",
  find: "Find a job by tent, place or lead",
  findIt: "Find",
  found: (n: number, q: string) => `${n === 0 ? "No job" : n === 1 ? "1 job" : `${n} jobs`} for "${q}".`,
  showAll: "Show all jobs",
  none: "No job yet.",
  today: "Today",
  before: "Before today",
  columns: {
    tent: "Tent",
    where: "Where",
    phase: "Phase",
    lead: "Lead",
    weather: "Weather",
    lastWord: "Last word",
    standsOut: "Stands out",
  },
  noLead: "Nobody",
  heard: (words: string) => `"${words}"`,
  refused: (said: string) => `Refused: ${said}`,
  opened: "Job opened",
  hurt: "SOMEBODY HURT",
  held: "ON HOLD",
  mismatch: (no: number) => `Entry ${no} does not fit`,
  /** The gravest mark, and how many others. */
  mark: (mark: string, count: number) => `${mark}: ${count}`,
  more: (count: number) => `${count} more`,
  moreOf: (count: number, title: string) => `${count} more that stand out: ${title}`,
  nothing: "Nothing",
  closed: "Closed",
} as const;

/** A job's plan at a glance. */
export const plan = {
  pieces: "Pieces, in laying order",
  drawing: "Drawing",
  kit: "Kit",
} as const;

/** The page for a request that cannot be answered as it came. */
/** Fields of what a crew puts in, as their forms call them. */
const PUT_IN: Readonly<Record<string, string>> = {
  mph: "Wind",
  gustMph: "Gust",
  fromDeg: "From",
  heightFt: "Height",
  look: "What the wind does",
  air: "Air temperature",
  airF: "Air temperature",
  humidity: "Humidity",
  windMph: "Wind",
};
export const problem = {
  title: "Fix these",
  beside: (field: string, wrong: string) => `${own(PUT_IN, field) ?? field}: ${wrong}`,
} as const;
