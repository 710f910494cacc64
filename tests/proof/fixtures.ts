import type { Brief, Person, Role } from "../../machines/install/brief.ts";
import type { Command, Intent } from "../../machines/install/commands.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { type Job, openJob } from "../../machines/install/job.ts";
import type { Frozen } from "../../machines/install/step.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { briefFor, type Changes, type WholeBrief } from "../support/briefs.ts";
import { eighty, twenty } from "../tent/tents.ts";

export const SECOND = 1000;
export const MINUTE = 60 * SECOND;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;
export const START = Date.UTC(2026, 5, 1, 12);

/** Who is on the job: one of each role. Five of them stand in the toolbox talk. */
export const PEOPLE = {
  lead: "lena",
  deputy: "david",
  competent: "cora",
  crew: "will",
  trainee: "tom",
  manager: "mia",
  watcher: "wanda",
  siteOwner: "otis",
} as const satisfies Record<Role, string>;
export const people: readonly Person[] = (Object.keys(PEOPLE) as Role[]).map((role) => ({ id: PEOPLE[role], role }));

/** One pole, no seams. Ground of unknown kind, so it is pulled on. */
export const SMALL = twenty;
/** Five pieces: seams, ridge, quarter poles. */
export const MIDDLE = eighty;

export type Changed = Changes;

/** The job that is explored: the one that tests are about, with one of each role on it and more that is asked. */
export function briefOf(input: SpecInput, { sheet, site, ticket, use, crew = people }: Changes = {}): WholeBrief {
  return briefFor(input, {
    sheet: { embedmentIn: null, pullTestLbf: 900, raiseGustMph: null, stopGustMph: null, ...sheet },
    site: { soilKnown: false, overheadKv: [7.2], ...site },
    ticket: { validFrom: START - DAY, validTo: START + 60 * DAY, utilities: UTILITIES, ...ticket },
    use: { occupants: 60, ...use },
    crew,
  });
}
const UTILITIES: WholeBrief["ticket"]["utilities"] = [
  { kind: "gas", marked: true },
  { kind: "water", marked: false },
];

/** The brief of the middle tent differs where a brief can: ground known, lines of unknown and very high voltage, nobody knows how many guests. */
export const middleBrief = (): WholeBrief =>
  briefOf(MIDDLE, {
    site: { soilKnown: true, overheadKv: [null, 1200] },
    use: { occupants: null, permit: "unknown", fabricCertificate: "notRequired", walls: false, hungLoads: true },
  });

const frozen = new Map<string, Frozen>();
/** The same brief is frozen once: the chart of a frozen job takes longer to make than most tests to run. */
export function frozenOf(brief: Brief): Frozen {
  const text = JSON.stringify(brief);
  const known = frozen.get(text) ?? freeze(brief);
  frozen.set(text, known);
  return known;
}
export const opened = (brief: Brief): Job => openJob(frozenOf(brief), START);

/** A command as the server would hand it on. */
export const commandOf = (
  ask: Intent,
  at: number,
  entry: number,
  seen: number,
  role: Role = "lead",
  by: string = PEOPLE[role],
): Command => ({
  ...ask,
  key: `k${entry}`,
  seen,
  source: "press",
  heard: null,
  by,
  role,
  device: `phone of ${by}`,
  at,
  wall: at,
  doubtMs: 0,
  entry,
});
