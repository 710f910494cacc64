import type { Brief, Person, Role } from "../../machines/install/brief.ts";
import type { Command, Intent } from "../../machines/install/commands.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { type Job, openJob } from "../../machines/install/job.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";

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
export const ON_SITE = 5;
export const people: readonly Person[] = (Object.keys(PEOPLE) as Role[]).map((role) => ({ id: PEOPLE[role], role }));

/** 20×20 ft in one piece: one pole, no seams. Ground of unknown kind, so it is pulled on. */
export const SMALL: SpecInput = { widthFt: 20, lengthFt: 20, onePiece: true, spacingFt: 10, quarterRings: 0, centerPoleFt: 13 };
/** 80×100 ft in five pieces: seams, ridge, quarter poles. */
export const MIDDLE: SpecInput = {
  widthFt: 80,
  lengthFt: 100,
  midsFt: [20],
  splitEnds: true,
  spacingFt: 10,
  quarterRings: 1,
  centerPoleFt: 25,
};

export function briefOf(input: SpecInput, change: (brief: Brief) => Partial<Brief> = () => ({})): Brief {
  const checked = checkSpec(input);
  if ("problems" in checked) throw new Error(JSON.stringify(checked.problems));
  const brief: Brief = {
    title: "Harvest supper",
    zone: "America/Denver",
    tent: checked.spec,
    sheet: {
      document: "TS-20-1",
      stakeKind: "double head",
      stakeDiameterIn: 1,
      stakeLengthIn: 42,
      embedmentIn: null,
      stakeLeanDeg: null,
      soil: "clay",
      pullTestLbf: 900,
      squareInPer50Ft: null,
      sidePoleLeanDeg: null,
      raiseGustMph: null,
      stopGustMph: null,
      interiorOrder: "quartersFirst",
    },
    site: { address: "1 Mill Lane", rallyPoint: "the gate", firstAid: "truck cab", soilKnown: false, overheadKv: [7.2] },
    ticket: {
      number: "A123",
      validFrom: START - DAY,
      validTo: START + 60 * DAY,
      utilities: [
        { kind: "gas", marked: true },
        { kind: "water", marked: false },
      ],
      toleranceIn: 24,
    },
    use: { occupants: 60, permit: "required", fabricCertificate: "required", walls: true, hungLoads: false },
    crew: people,
  };
  return { ...brief, ...change(brief) };
}

/** The brief of the middle tent differs where a brief can: ground known, lines of unknown and very high voltage, nobody knows how many guests. */
export const middleBrief = (): Brief =>
  briefOf(MIDDLE, (b) => ({
    site: { ...b.site, soilKnown: true, overheadKv: [null, 1200] },
    use: { occupants: null, permit: "unknown", fabricCertificate: "notRequired", walls: false, hungLoads: true },
  }));

export const frozenOf = (brief: Brief): Frozen => freeze(brief);
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
  entry,
});
