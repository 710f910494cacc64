import type { BuriedKind } from "../../../machines/site/model.ts";

/**
 * The published color of each kind of buried line, by name; shades are ours. They appear only where buried lines are meant, and
 * never alone: each line has its letter. Source: APWA Uniform Color Code, colors by ANSI Z535.1.
 */
export const UTILITY_COLOR: Readonly<Record<BuriedKind, string>> = {
  electric: "#d3202b",
  gas: "#f5c400",
  communication: "#f47b0b",
  water: "#1769c9",
  sewer: "#16863a",
  reclaimedWater: "#8033a8",
  survey: "#f58fba",
  excavation: "#ffffff",
};
