import { phaseName } from "./roles.ts";

const count = (n: number, one: string, more = `${one}s`): string => `${n} ${n === 1 ? one : more}`;

/** Learning: what to do today, a round of questions, how far somebody is, and the rule of "ready to lead". */
export const learn = {
  title: "Learning",
  way: "Learning",
  today: "Today",
  who: "Say who you are first. What you learn is kept under your name.",
  whoWay: "Who are you?",
  due: (due: number, fresh: number) =>
    [due > 0 ? `${count(due, "question")} to go over.` : "", fresh > 0 ? `${fresh} new.` : ""].filter((part) => part !== "").join(" "),
  takes: (minutes: number) => `${count(minutes, "minute")} at most. Stop whenever you want.`,
  begin: "Ask me",
  goOn: "Go on asking",
  nothing: "Nothing to go over right now.",
  nextAt: (day: string) => `Next on ${day}.`,
  rehearse: "Rehearse this job",
  handWork: "Drawings of the hand work",
  back: "To learning",

  // A round.
  question: (no: number, of: number) => `Question ${no} of ${of}`,
  right: "Right.",
  wrong: "No.",
  rightIs: "Right is:",
  rightOrder: "The right order:",
  marked: (no: number) => `The right place is ${no} on the drawing.`,
  why: "Why",
  goesWrong: "What goes wrong",
  next: "Next question",
  showHands: "How the hands do it",
  showLayout: "The layout sheet",
  startOver: "Start over",
  pickFirst: "Which comes first?",
  pickNext: "Which comes next?",
  drawing: "This tent from above, with places to point at",
  drawnPlace: (no: number) => `Place ${no}`,
  pointed: (no: number) => `You pointed at ${no}.`,
  point: (no: number) => `It's ${no}`,
  over: "That's it for now.",
  tally: (right: number, of: number) => `${right} of ${of} right at the first try.`,
  comesBack: "What you missed comes back tomorrow.",

  // What cannot be done.
  tooLate: "That round was over before this answer. It doesn't count, and nothing is lost. Begin another one.",
  noRound: "There's no such round on this job. Maybe the job was taken away. Begin another one.",
  otherPhone: "That round is somebody else's. Begin your own.",
  otherAnswer: "That question was answered on another phone. Your next one is here.",
  notHere: "A rehearsal asks no questions of its own. Open learning on the real job.",
  noOption: "That's none of the answers. Press one of them.",
  changed: "The job was changed since, and this can't be asked any more. Begin another round.",

  // How far somebody is.
  progress: "How far you are",
  progressOf: (name: string) => `How far ${name} is`,
  phase: (phase: string) => phaseName(phase),
  stands: (known: number, begun: number, fresh: number) => `${known} known today, ${begun} begun, ${fresh} new`,
  barTold: (phase: string, known: number, of: number) => `${phaseName(phase)}: ${known} of ${of} known today`,
  knownMeans: (days: number, percent: number) =>
    `Known: right on ${days} different days since it was last missed, and at least ${percent}% sure to be remembered today. Common practice, no source.`,
  onThisTent: "Counted over what can be asked about this tent.",
  onAnyTent: "Counted over all there is to ask about any tent.",

  // Ready to lead.
  ready: "Ready to lead, on paper",
  rule: (percent: number, rehearsals: number, days: number) =>
    `The rule: in every phase ${percent}% known today, and ${rehearsals} whole rehearsals led with several troubles, each different, in the last ${days} days, with no unsafe moment. Common practice, no source.`,
  meets: "Everything the rule asks is there.",
  missing: "Still missing:",
  lacksPhase: (phase: string, known: number, wanted: number, of: number) =>
    `${phaseName(phase)}: ${known} of ${of} known, ${wanted} wanted.`,
  lacksRehearsals: (led: number, wanted: number) =>
    led === 0 ? `${count(wanted, "rehearsal")} to lead, with several troubles and nothing unsafe.` : `${count(wanted - led, "rehearsal")} more to lead, with several troubles and nothing unsafe.`, // biome-ignore format: one line reads best
  employer:
    "No page makes a lead. The employer names a competent person, the law of the place decides, and a lead rides along the first time.",

  // Rehearsals.
  rehearsals: "Rehearsals",
  noRehearsals: "None yet.",
  wayOf: { walk: "walked", lead: "led" },
  troubleOf: { none: "no trouble", some: "some trouble", several: "several troubles" },
  notOver: "not finished",
  went: (moments: number, unsafe: number, whole: boolean) =>
    `${whole ? "gone through to the end" : "stopped early"}, ${count(moments, "moment")}, ${unsafe === 0 ? "none unsafe" : `${unsafe} unsafe`}`,
  jobGone: "That job is gone.",

  // For the office.
  learning: "Who learns",
  learningTold: "Everybody who ever answered a question or led a rehearsal. An erased name takes all of it along.",
  nobody: "Nobody yet.",

  // For a trainee on a job.
  youWatch: "You watch this one. Hold is yours, like everybody's.",
  aside: "A question for you",
  asideTold: "It moves nothing on the job.",
  asideGone: "The job moved on, and that question with it. Look at the call.",
} as const;
