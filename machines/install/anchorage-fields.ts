/** The figures and choices of an anchorage by their dotted names, in the order in which they are told; pulls come in rows of their own. */
export const ANCHORAGE_FIELDS = [
  "gustMph",
  "exposure",
  "elevationFt",
  "underRoof",
  "material",
  "soil",
  "groundState",
  "factorOfSafety",
  "rainSincePulls",
  "sheetAllows.corner",
  "sheetAllows.seamEnd",
  "sheetAllows.side",
  "friction.coefficient",
  "friction.by",
] as const;

/** What is told of each pull. */
export const PULL_FIELDS = ["lbf", "direction", "softestSpot"] as const;
