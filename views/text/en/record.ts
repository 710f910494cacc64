import type { CommandSource } from "../../../machines/install/commands.ts";
import type { Flag } from "../../../machines/record/findings.ts";

const MARK: Readonly<Record<Flag, string>> = {
  refused: "Refused",
  waived: "Left out",
  outOfLimit: "Out of limits",
  paper: "Paper instead",
  takenBack: "Thunder taken back",
  wentBack: "Gone back over",
  amended: "Plan changed",
  clockJumped: "Clock jumped",
  loosened: "Limits looser",
};
export const markName = (mark: Flag): string => MARK[mark];

const SOURCE: Readonly<Record<CommandSource, string>> = {
  press: "pressed",
  typed: "typed",
  office: "sent by an office script",
  talk: "heard with Talk held",
  wake: "heard after the wake word",
  open: "heard by an open microphone",
};
export const sourceName = (source: CommandSource): string => SOURCE[source];

/** A length of time, to the two largest units that matter. */
export function duration(ms: number): string {
  const s = Math.round(ms / 1000);
  if (s < 60) return `${s} s`;
  const min = Math.round(s / 60);
  if (min < 60) return `${min} min`;
  if (min < 24 * 60) return [`${Math.floor(min / 60)} h`, ...(min % 60 ? [`${min % 60} min`] : [])].join(" ");
  const h = Math.round(min / 60);
  return [`${Math.floor(h / 24)} d`, ...(h % 24 ? [`${h % 24} h`] : [])].join(" ");
}

/** The record of one job. */
export const record = {
  of: (title: string) => `The record, ${title}`,
  link: "The record",
  photoHash: "Hash of the photo",
  planOf: (no: number) => `The plan of entry ${no}`,
  findings: "What to look at",
  rehearsal: "REHEARSAL: nothing was at stake",
  crew: "Crew",
  person: (name: string, role: string) => `${name}, ${role}`,
  opened: "Opened",
  lastEntry: "Last entry",
  zone: (zone: string) => `Times are local to the site, ${zone}.`,
  spoken: "Spoken words are those heard on the phone of the one who is named. That does not prove who spoke.",
  phones: "Phones",
  phone: (n: number) => `phone ${n}`,
  office: "office",
  firstUsed: (phone: string, name: string) => `${phone}: first used by ${name}`,
  phoneOf: (phone: string, name: string) => `${phone} (${name})`,
  times: "Time taken",
  toldApart: "Look for",
  count: (mark: string, count: number) => `${mark}: ${count}`,
  show: "Show only these",
  showAll: "Show all entries",
  showing: (shown: number, all: number, marks: string) => `Showing ${shown} of ${all} entries: ${marks}.`,
  noSuch: (names: string, known: readonly string[]) =>
    `"${names}" is nothing to look for. All entries are shown. Choose from: ${known.join(", ")}.`,
  none: "No entry of that kind.",
  holds: (entries: number) =>
    `${entries === 1 ? "The one entry checks out" : `All ${entries} entries check out`}: the chain is whole, and a replay gives the recorded states.`,
  breaks: (why: string, no: number) =>
    `${why} It and what follows are not shown: nobody can vouch for them. The ${no === 1 ? "one entry" : `${no} entries`} before it hold.`,
  lastHash: "Hash of the last entry",
  compare: "Compare it with a copy that was kept elsewhere: entries cut off at the end show in nothing else.",
  entries: (n: number) => (n === 1 ? "1 entry" : `${n} entries`),
  openedLine: "Job opened",
  closedCall: "The job is closed.",
  papers: "Papers in place of a limit",
  paper: (document: string, by: string, dated: string) => `Paper ${document} from ${by}, dated ${dated}`,
  shownBy: (name: string, no: number) => `Shown by ${name}, entry ${no}`,
  seenBy: (name: string, no: number) => `Seen by ${name}, entry ${no}`,
  notSeen: "NOT SEEN by a second person: it opened nothing",
  stillHere: "The guide stands here now.",
  heard: (words: string) => `"${words}"`,
  taken: (words: string) => `taken as: ${words}`,
  confirms: (no: number, what: string) => `Correct: ${what} (read back in entry ${no})`,
  drops: (no: number) => `Wrong: what was read back in entry ${no} is dropped`,
  readBack: (what: string) => `${what}, read back and not taken yet`,
  agrees: (no: number) => `Agreed to the change put forward in entry ${no}`,
  disagrees: (no: number) => `Not agreed to the change put forward in entry ${no}`,
  because: (what: string, why: string) => `${what}, because ${why}`,
  asCsv: "As a table (CSV)",
  asJson: "As data (JSON)",
  columns: [
    "entry",
    "local time",
    "zone",
    "UTC",
    "phase",
    "call",
    "who",
    "role",
    "phone",
    "first used by",
    "source",
    "heard",
    "taken as",
    "reply",
    "marks",
    "photo",
    "hash",
  ],
} as const;

/** All jobs, for whoever oversees them. */
export const atAGlance = {
  title: "All jobs at a glance",
  intro: "How often something stands out in each job, and how long each phase took. Press a count to read those entries.",
  job: "Job",
  jobs: "Jobs",
  all: "All together",
  sum: (jobs: number) => (jobs === 1 ? "1 job" : `${jobs} jobs`),
  none: "No job to look at yet.",
  phase: "Stands at",
  times: "Time taken",
  took: (phase: string, time: string) => `${phase}: ${time}`,
  these: (count: number, mark: string, title: string) => `${count}, ${mark}: ${title}`,
  rehearsals: "Rehearsals",
  notCounted: "Nothing was at stake here. They are in none of the counts above.",
  unreadable: "Record cannot be read.",
  cannotRead: (job: string) =>
    `The first entry of job ${job} is not as it was written. Put your last copy of the data file in its place; check that copy first: npm run verify -- FILE.`,
  mismatch: (no: number) => `Entry ${no} does not fit the chain. It and what follows are not counted.`,
  findings: "What to look at",
  home: "Job list",
  asJson: "As data (JSON)",
} as const;
