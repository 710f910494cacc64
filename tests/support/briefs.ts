import type { Brief } from "../../machines/install/brief.ts";
import { freeze } from "../../machines/install/freeze.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";

const START = Date.UTC(2026, 5, 2, 12);
const DAY = 24 * 3_600_000;

/** What of a brief is changed: whole parts, or single facts of a part. */
export type Changes = { readonly [P in "sheet" | "site" | "ticket" | "use"]?: Partial<Brief[P]> };

/** An invented job for a tent: ground, lines and papers known, and nothing unusual, except for what is changed. */
export function briefFor(input: SpecInput, changes: Changes = {}): Brief {
  const checked = checkSpec(input);
  if ("problems" in checked) throw new Error(JSON.stringify(checked.problems));
  return {
    title: "Barn dance",
    zone: "America/Denver",
    tent: checked.spec,
    sheet: {
      document: "TS-1",
      stakeKind: "double head",
      stakeDiameterIn: 1,
      stakeLengthIn: 42,
      embedmentIn: 36,
      stakeLeanDeg: null,
      soil: "clay",
      pullTestLbf: null,
      squareInPer50Ft: null,
      sidePoleLeanDeg: null,
      raiseGustMph: null,
      stopGustMph: null,
      interiorOrder: "quartersFirst",
      ...changes.sheet,
    },
    site: { address: "1 Mill Lane", rallyPoint: "the gate", firstAid: "truck cab", soilKnown: true, overheadKv: [], ...changes.site },
    ticket: {
      number: "A123",
      validFrom: START - DAY,
      validTo: START + 10 * DAY,
      utilities: [
        { kind: "gas", marked: true },
        { kind: "reclaimedWater", marked: false },
      ],
      toleranceIn: 24,
      ...changes.ticket,
    },
    use: { occupants: 60, permit: "required", fabricCertificate: "required", walls: true, hungLoads: false, ...changes.use },
    crew: [
      { id: "lena", role: "lead" },
      { id: "cora", role: "competent" },
      { id: "will", role: "crew" },
    ],
  };
}

export const frozenFor = (input: SpecInput, changes: Changes = {}): Frozen => freeze(briefFor(input, changes));
