/**
 * What a screening comes to. There is no word for "good" on purpose: `notShort` says that nothing was found, and opens no gate. Only the
 * tent's sheet met in soil of the kind it names, or pulls on the site, do that.
 */
export type Verdict = "short" | "notKnown" | "notShort";

/** Why something is not known, or short without a figure. */
export type Reason =
  // of the load
  | "walled"
  | "wallsNotTold"
  | "gustNotTold"
  | "exposureNotTold"
  | "underRoofNotTold"
  | "roofSlopeNotPublished"
  // of the ground
  | "stakeNotTold"
  | "materialNotTold"
  | "embeddedNotTold"
  | "soilNotTold"
  | "groundStateNotTold"
  /** Saturated, frozen or dug ground: no figure is for that. */
  | "groundStateNotPublished"
  /** No figure for this stake in this soil at this depth. */
  | "noFigure"
  /** The figure is for a pull sideways and not for one that lifts as well, as every strap does. */
  | "sidewaysOnly"
  /** Sand lets bare stakes go. */
  | "bareStakesInSand"
  // of the pulls
  | "fewerThanThreePulls"
  | "softestSpotNotPulled"
  | "rainSincePulls"
  | "rainSincePullsNotTold"
  // of the stakes of a plate
  /** More than the sheet allows there: the rest is not counted. */
  | "stakesNotAllowed"
  /** More than is usual, and nobody told what the sheet allows: the rest is not counted. */
  | "stakesAllowedNotTold"
  // of a ballast
  | "frictionNotKnown";

/** What to do where it is not known, or short. */
export type Instead = "tellIt" | "pulls" | "engineersPaper" | "anotherAnchor" | "dragTest";

const TOLD: readonly Reason[] = [
  "wallsNotTold", "gustNotTold", "exposureNotTold", "underRoofNotTold", "stakeNotTold", "materialNotTold",
  "embeddedNotTold", "soilNotTold", "groundStateNotTold", "rainSincePullsNotTold", "stakesAllowedNotTold",
]; // biome-ignore format: what is answered by telling it
const PULLED: readonly Reason[] = [
  "materialNotTold", "embeddedNotTold", "soilNotTold", "groundStateNotTold", "groundStateNotPublished", "noFigure", "sidewaysOnly",
  "fewerThanThreePulls", "softestSpotNotPulled", "rainSincePulls",
]; // biome-ignore format: what pulls on this ground answer
const ENGINEERED: readonly Reason[] = [
  "walled",
  "roofSlopeNotPublished",
  "groundStateNotPublished",
  "noFigure",
  "sidewaysOnly",
  "stakesNotAllowed",
  "frictionNotKnown",
];

/** What to do about reasons, the nearest thing first. */
export function insteadOf(reasons: readonly Reason[]): readonly Instead[] {
  const any = (of: readonly Reason[]) => reasons.some((reason) => of.includes(reason));
  return [
    ...(any(TOLD) ? (["tellIt"] as const) : []),
    ...(any(["frictionNotKnown"]) ? (["dragTest"] as const) : []),
    ...(any(PULLED) ? (["pulls"] as const) : []),
    ...(any(["bareStakesInSand"]) ? (["anotherAnchor", "pulls"] as const) : []),
    ...(any(ENGINEERED) || any(["bareStakesInSand"]) ? (["engineersPaper"] as const) : []),
  ].filter((one, i, all) => all.indexOf(one) === i);
}

/** Of several, the one that counts: one that is short makes all short, one that is not known leaves all not known. None is not known. */
export function worstOf(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes("short")) return "short";
  return verdicts.length === 0 || verdicts.includes("notKnown") ? "notKnown" : "notShort";
}
