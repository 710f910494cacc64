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
  size: (widthFt: number, lengthFt: number) => `${widthFt} × ${lengthFt} ft`,
} as const;

/** The list of jobs. */
export const home = {
  jobs: "Jobs",
  tents: "Tents",
  intro: "A step guide for the crew that puts up a sectional pole tent, watches it while it stands, and takes it down.",
  defers: "It defers to the tent's sheet, the maker's manual, locate law, the local code, the fire official and a licensed engineer.",
  open: "Open a job",
  rehearsals: "Rehearsals",
} as const;

/** A job's plan at a glance. */
export const plan = {
  pieces: "Pieces, in laying order",
  drawing: "Drawing",
  kit: "Kit",
} as const;

/** The page for a request that cannot be answered as it came. */
export const problem = {
  title: "Fix these",
  beside: (field: string, wrong: string) => `${field}: ${wrong}`,
} as const;
