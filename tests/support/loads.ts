import type { AnchorFacts } from "../../machines/loads/facts.ts";
import type { Ground, Pull, Stake } from "../../machines/loads/ground.ts";

/** The pin that the design loads of section 4c are for. */
export const steelPin: Stake = { diameterIn: 1, lengthIn: 48, embeddedIn: 36, material: "steel" };

export const alongStrap = (lbf: number, softestSpot = false): Pull => ({ lbf, direction: "alongStrap", softestSpot });

/** Undisturbed average clay that nobody has pulled on, except for what is said. */
export const ground = (changes: Partial<Ground> = {}): Ground => ({
  soil: "clayAverage",
  state: "undisturbed",
  pulls: [],
  rainSincePulls: false,
  factorOfSafety: null,
  ...changes,
});

/** Good pulls, the lowest of which is this many lbf. */
export const pulled = (lowestLbf: number): Ground =>
  ground({ pulls: [alongStrap(lowestLbf * 2), alongStrap(lowestLbf * 1.5), alongStrap(lowestLbf, true)] });

/** An open tent in open country at a gust of 40 mph of which everything is known, except for what is said. */
export const facts = (changes: Partial<AnchorFacts> = {}): AnchorFacts => ({
  walls: false,
  wind: { gustMph: 40, exposure: "C", elevationFt: 0 },
  underRoof: "clear",
  stake: steelPin,
  ground: ground(),
  sheetAllows: { corner: null, seamEnd: null, side: null },
  driven: [],
  ...changes,
});
