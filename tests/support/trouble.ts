import type { Thing } from "../../machines/install/thing.ts";
import { briefOf, MIDDLE } from "../proof/fixtures.ts";
import { Crew } from "./crew.ts";

export const piece = (id: string): Thing => ({ is: "piece", id });
export const short = (n: number, item = "perimeterStrap"): Thing => ({ is: "kit", item, short: n }) as Thing;
export const out = (thing: Thing, because = "torn at a ring") => ({ type: "outOfUse", thing, because }) as const;
export const back = (thing: Thing, because = "mended") => ({ type: "backInUse", thing, because }) as const;
export const lacks = (...keys: string[]) => ({ refused: [{ why: "outOfUse", keys }] });
/** Ends, two to a side, with one mid between: seams R-DA, S1, S2, R-BC. */
export const crewAt = (call: string) => new Crew(briefOf(MIDDLE, { site: { soilKnown: true } })).goTo(call);
