/** Limits of what a site may be told as: against slips and nonsense, not of strength. Common practice, no source. */
export const SITE_LIMITS = {
  /** How far along or off the baseline anything may lie, ft: a mile. */
  maxFt: 5280,
  /** Stretches of all lines and edges together: few enough that no hold waits while they are read. */
  maxSegments: 5_000,
  /** Lines, wires and things together: as many as a page can show to somebody who looks for one. */
  maxNeighbors: 500,
  minLinePoints: 2,
  minCorners: 3,
  maxCorners: 200,
  maxNameLetters: 80,
  maxWidthIn: 600,
  maxToleranceIn: 600,
  maxErrorFt: 100,
  maxKv: 2000,
  maxLowestFt: 1000,
  minRadiusFt: 0.1,
  maxRadiusFt: 500,
  maxSlopePercent: 100,
  maxHeadingDeg: 360,
  maxFixes: 500,
  /** Lines that are exposed by hand for one anchor. */
  maxExposed: 20,
  /** Farther than any stations stand apart, ft. */
  maxSlideFt: 50,
} as const;

/** Problems are told up to this many. */
export const MAX_PROBLEMS = 50;

/** What is wrong with a site as it was told. A screen makes a sentence of it. */
export type SiteProblem = {
  /** Names and positions from the top, with dots between: `buried.2.points.0.alongFt`. Empty: the whole. */
  readonly path: string;
  readonly code: SiteProblemCode;
  /** What was told, shortened; empty where there was nothing. */
  readonly value: string | number;
  /** The limit that it is over or under; `null` where the code says it all. */
  readonly limit: number | null;
};

export type SiteProblemCode =
  | "notAnObject"
  | "notAList"
  | "unknownField"
  /** A field that has to be there. */
  | "missing"
  /** Not a finite number. */
  | "notANumber"
  | "notText"
  | "noName"
  | "nameTooLong"
  /** Letters that nobody sees, or that turn the direction of text, in a name. */
  | "nameUnseen"
  | "nameTwice"
  /** None of the words that the field takes. */
  | "notKnown"
  | "tooSmall"
  | "tooLarge"
  /** Farther along or off the baseline than any site reaches. */
  | "tooFar"
  | "tooManySegments"
  | "tooManyNeighbors"
  | "tooFewPoints"
  | "tooManyCorners"
  /** All points of a line are one. */
  | "noLength"
  | "noArea"
  | "crossesItself"
  /** Only of GeoJSON. */
  | "tooMuchInFile"
  | "notJson"
  | "notGeoJson"
  /** Coordinates of another system than WGS 84, which RFC 7946 does not allow. */
  | "otherSystem"
  | "noGeometry"
  /** A geometry that this cannot be. */
  | "wrongGeometry"
  | "notAPosition"
  | "holes"
  | "ringNotClosed"
  /** Degrees with so few decimals that nothing can be kept clear of by them; in feet. */
  | "tooCoarse"
  /** A stake that this tent does not have. */
  | "noSuchStake"
  /** A stake or a station that is told twice. */
  | "stakeTwice"
  /** A station that does not slide, or so far that a gap is too narrow or wider than the sheet's spacing. */
  | "slidesTooFar"
  /** More than one ground, or more than one area of a ticket. */
  | "onlyOne";
