import type { BriefInput } from "./input/brief.ts";

/** A brief of which nothing is unknown. */
export type WholeInput = BriefInput & { readonly [P in "sheet" | "ticket"]: NonNullable<BriefInput[P]> };

/** The key that the demo job is opened with: there is one in each data file. */
export const DEMO_KEY = "demo-job-1";

/** An invented job: no such place, people or paper. The ticket is valid around the day it is opened. */
export function demoBrief(today: string, until: string): WholeInput {
  return {
    title: "Demo: harvest supper, lower meadow (invented)",
    zone: "America/Chicago",
    tent: {
      widthFt: 80,
      lengthFt: 100,
      midsFt: [20],
      onePiece: false,
      splitEnds: true,
      spacingFt: 10,
      quarterRings: 1,
      centerPoleFt: 26,
      sidePoleFt: 8,
      setbackFt: 6,
    },
    sheet: {
      document: "RC-80100 rev C",
      stakeKind: "steel pin",
      stakeDiameterIn: 1,
      stakeLengthIn: 42,
      embedmentIn: 36,
      stakeLeanDeg: null,
      soil: "firm loam",
      pullTestLbf: null,
      squareInPer50Ft: null,
      sidePoleLeanDeg: null,
      raiseGustMph: 20,
      stopGustMph: 25,
      insideGustMph: null,
      interiorOrder: "quartersFirst",
      interiorTies: "byLine",
    },
    site: {
      address: "Lower meadow, gate 3, Tansy Lane",
      rallyPoint: "gate 3, by the road",
      stormShelter: "the brick barn",
      firstAid: "green box, truck cab",
      soilKnown: true,
      overheadKv: [],
    },
    ticket: {
      number: "LT-2041",
      validFrom: today,
      validTo: until,
      toleranceIn: 24,
      utilities: [
        { kind: "electric", marked: false },
        { kind: "gas", marked: true },
        { kind: "water", marked: true },
        { kind: "communication", marked: false },
      ],
    },
    use: { occupants: 320, permit: "required", fabricCertificate: "required", walls: true, hungLoads: false },
    crew: [
      { name: "Ines", role: "lead" },
      { name: "Tobias", role: "deputy" },
      { name: "Maren", role: "competent" },
      { name: "Jory", role: "crew" },
      { name: "Pia", role: "crew" },
      { name: "Odd", role: "trainee" },
      { name: "Lasse", role: "manager" },
    ],
  };
}
