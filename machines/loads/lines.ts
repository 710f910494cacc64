import type { Line } from "../figures/line.ts";

export type LoadFormula =
  | "exposureFactor"
  | "elevationFactor"
  | "ascePressure"
  | "enPressure"
  | "pressureUsed"
  | "roofAngle"
  | "asceUplift"
  | "enUplift"
  | "upliftUsed"
  | "asceDrag"
  | "enDrag"
  | "dragUsed"
  | "tributaryEdge"
  | "areaNearest"
  | "areaByShare"
  | "stationUplift"
  | "stationDrag"
  | "strapAngle"
  | "tensionFromUplift"
  | "tensionFromDrag"
  | "strapTension"
  | "perStake"
  | "capacityFromPulls"
  | "capacityFromTable"
  | "wetGround"
  | "ballast";

export type LoadInputName =
  | "gust"
  | "exposure"
  | "height"
  | "elevation"
  | "kz"
  | "kd"
  | "ke"
  | "asce"
  | "en"
  | "eaveHeight"
  | "peakHeight"
  | "halfWidth"
  | "roofAngle"
  | "underRoof"
  | "coefficient"
  | "gustEffect"
  | "edge"
  | "perimeter"
  | "roofArea"
  | "pressure"
  | "area"
  | "rise"
  | "setback"
  | "sidePole"
  | "uplift"
  | "drag"
  | "plates"
  | "strapAngle"
  | "tension"
  | "stakes"
  | "stakesThere"
  | "stakesAllowed"
  | "lowestPull"
  | "pulls"
  | "factor"
  | "soil"
  | "stakeDiameter"
  | "stakeLength"
  | "embedded"
  | "dry"
  | "friction";

/** What a line of the loads leaves out. */
export type LoadLeftOut =
  /** Both sets are for rigid roofs with flat slopes, not for tensioned cloth with hips. */
  | "clothNotRigid"
  /** At the edges of the roof the wind lifts harder: EN 1991-1-4 table 7.7, zones B and C, down to −2.2. */
  | "edgeStrips"
  /** The figure is for roofs whose mean height is 0.25 to 1 times their width; this one is flatter. It is used all the same where it is the worse. */
  | "heightToWidth"
  /** Hills, ridges and gaps between buildings: Kzt is taken as 1. */
  | "hillsAndGaps"
  /** Over a mean of 28 m/s the table is not meant for it. Used as the least there is. */
  | "overTableWind"
  /** Wind on poles, ropes, valances and what hangs from the roof. */
  | "polesRopesValance"
  /** The cloth's own pull, and what the ratchets put in. */
  | "pretension"
  /** Cloth that flaps and poles that pump. */
  | "pumping"
  /** Snow, hail and water that stands on the roof. */
  | "snowAndWater"
  /** Hung loads and other weights. */
  | "hungLoads"
  /** Straps, ratchets, plates, poles and cloth themselves. */
  | "strapsAndPoles"
  /** Stakes on one plate share soil and hold less than as many single ones; no spacing was found published. */
  | "sharedSoil"
  /** Stakes of a plate that its sheet does not allow there are not counted. */
  | "stakesNotAllowed"
  /** Stakes over the planning minimum are not counted while nobody told how many the sheet allows at that plate. */
  | "stakesAllowedNotTold"
  /** Inside ties are never counted against uplift. */
  | "insideTies"
  /** Some plates of a station take more than their share. */
  | "unevenShare"
  /** How far a stake moves before it holds. */
  | "movement"
  /** Ground between the spots that were pulled. */
  | "groundBetween"
  /** Rain after the pulls: they are done again. */
  | "laterRain"
  /** A weight that tips, sinks, or stands in water. */
  | "tippingAndSinking"
  /** Friction on grass, mud, or ice is not that of the test. */
  | "wetFriction";

export type LoadLine = Line<LoadFormula, LoadInputName, LoadLeftOut>;
