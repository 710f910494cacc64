import type { Friction } from "../loads/ballast.ts";
import type { UnderRoof } from "../loads/canopy.ts";
import type { GroundState, Pull, SoilClass, StakeMaterial } from "../loads/ground.ts";
import type { Exposure } from "../loads/pressure.ts";
import type { StationKind } from "../tent/types.ts";

/** What anchors are screened by, beside the sheet and the plan. `null`, everywhere: nobody knows. */
export type Anchorage = {
  /** The 3-second gust, 33 ft up in open country, that the anchors are to hold, mph: the sheet's design wind or the code's. */
  readonly gustMph: number | null;
  readonly exposure: Exposure | null;
  /** Of the ground over the sea, ft. */
  readonly elevationFt: number | null;
  readonly underRoof: UnderRoof | null;
  readonly material: StakeMaterial | null;
  readonly soil: SoilClass | null;
  readonly groundState: GroundState | null;
  /** Made on this ground before the job, in any order. */
  readonly pulls: readonly Pull[];
  readonly rainSincePulls: boolean | null;
  /** Never under 1.5; `null`: 1.5. */
  readonly factorOfSafety: number | null;
  /** The most stakes that the sheet allows on one plate. */
  readonly sheetAllows: Readonly<Record<StationKind, number | null>>;
  /** How hard weights are to slide there; absent where none is used. */
  readonly friction?: Friction;
};

/** An anchorage of which nothing was told yet. */
export const NOTHING_TOLD: Anchorage = {
  gustMph: null,
  exposure: null,
  elevationFt: null,
  underRoof: null,
  material: null,
  soil: null,
  groundState: null,
  pulls: [],
  rainSincePulls: null,
  factorOfSafety: null,
  sheetAllows: { corner: null, seamEnd: null, side: null },
};
