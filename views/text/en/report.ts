import type { UtilityKind } from "../../../machines/install/brief.ts";
import type { Paper } from "../../pages/layout/state.ts";
import { choices } from "./brief.ts";
import { number, utilityName } from "./names.ts";

/** Entries of a finding that are told by number. */
const MAX_ENTRIES = 12;

/** The printable report of a job. */
export const report = {
  of: (title: string) => `Report: ${title}`,
  link: "Report to print",
  papers: { a4: "A4", letter: "Letter" } satisfies Record<Paper, string>,
  choose: "Paper",
  print: "Print this page, or save it as a PDF. It is the record as it stands now.",
  times: (opened: string, last: string, made: string) => `Opened ${opened}, last entry ${last}, as it stood ${made}.`,
  zone: (zone: string) => `All times are local to the site, ${zone}.`,
  standsAt: (phase: string) => `Stands at: ${phase}`,
  whole: (entries: number) => `From a record of ${entries === 1 ? "1 entry" : `${entries} entries`}, which hang together.`,

  facts: "The job and its papers",
  /** A fact of a brief. */
  value: (is: string | number | boolean | null): string => {
    if (is === null || is === "") return "not known";
    if (typeof is === "boolean") return is ? "yes" : "no";
    return typeof is === "number" ? number(is) : (choices[is] ?? is);
  },
  overhead: "Wires overhead",
  wires: (kv: readonly (number | null)[]): string =>
    kv.length === 0 ? "none" : kv.map((one) => (one === null ? "voltage not known" : `${number(one)} kV`)).join(", "),
  paper: "Paper",
  none: "none yet",
  utilities: "Utilities",
  utility: (kind: UtilityKind, marked: boolean | "unanswered") =>
    `${utilityName(kind)} ${marked === "unanswered" ? "no answer yet" : marked ? "marked" : "nothing here"}`,
  limits: "Wind limits in force",
  limit: (is: number, source: string) => `${number(is)} mph (${source})`,
  plan: "The plan in brief",
  drawing: "The layout",

  people: "People",
  wasOn: "was on it",
  erased: (person: string) => `${person} (name erased)`,

  gates: "What was asked, and answered",
  gatesTold: "In the order of the phases. The last answer is the one that counts. Who says who spoke: the phone it came from.",
  columns: { question: "Asked", good: "Good is", answer: "Answered", who: "Who, when, entry" },
  second: "second person",
  soft: "can be left out with a reason",
  noAnswer: "No answer",
  by: ({ who, time, no }: { readonly who: string; readonly time: string; readonly no: number }) => `${who}, ${time}, entry ${no}`,
  seen: (word: string) => `Paper also seen by ${word}`,
  notSeen: "Paper NOT SEEN by a second person",
  waived: (because: string) => `Left out, because ${because}`,
  kitCounted: (lines: number) => `${lines === 1 ? "1 line" : `${lines} lines`} counted; see the kit`,
  asListed: "as listed",
  conditions: "While the work went on",
  earlierPlan: "Asked under an earlier plan",
  ahead: (phases: readonly string[]) => `Not come to yet: ${phases.join(", ")}.`,

  readings: "Weather readings",
  reading: (text: string, place: string | null) => (place === null ? text : `${text}, read ${place}`),
  noReadings: "None was taken.",
  refused: "refused",

  findings: "What stands out",
  noFindings: "Nothing.",
  inEntries: (entries: readonly number[]) =>
    `${entries.length === 1 ? "Entry" : "Entries"} ${entries.slice(0, MAX_ENTRIES).join(", ")}${entries.length > MAX_ENTRIES ? ` and ${entries.length - MAX_ENTRIES} more` : ""}`,

  proof: "What it can be checked by",
  check: 'Later anybody can type a digest at the job\'s page "Check a digest from paper".',

  signed: "Signed",
  signs: ["Lead: name, signature, date", "Customer or their person: name, signature, date"],
  cautions: "What this report is not",
  cautionTexts: [
    "It shows what was asked and answered. It does not show that an answer was true.",
    "Load and anchor results are a screening check. They never pass an anchorage: the sheet met in the soil it names does, or pull tests on site.",
    "The tent's sheet and the maker's manual come first, then the local code, locate law, the fire official and the owners of lines. Questions of strength are a licensed engineer's.",
    'Figures without a published source are marked "common practice, no source".',
  ],
} as const;
