import type { SiteModel } from "../site/model.ts";
import type { KitCatalog } from "../tent/load.ts";
import type { EdgeName, TentSpec } from "../tent/types.ts";
import type { Anchorage } from "./anchorage.ts";
import type { INTERIOR_ORDERS, INTERIOR_TIES, PAPERWORK } from "./brief-choices.ts";
import type { Forecast } from "./forecast.ts";
import type { PersonId, WallTime } from "./ids.ts";
import type { Practice } from "./practice.ts";
import type { ROLES } from "./roles.ts";
import type { UTILITIES } from "./utilities.ts";
import type { WeatherPlan } from "./weather-plan.ts";

export type Role = (typeof ROLES)[number];

/** Names live beside the chain, so that they can be erased; here people are ids. */
export type Person = { readonly id: PersonId; readonly role: Role };

export type UtilityKind = (typeof UTILITIES)[number];
/** What a utility on the ticket answered: its lines are marked, it has none here, or it has not answered yet. */
export type Utility = { readonly kind: UtilityKind; readonly marked: boolean | "unanswered" };

export type Ticket = {
  readonly number: string;
  readonly validFrom: WallTime;
  readonly validTo: WallTime;
  readonly utilities: readonly Utility[];
  /** From the mark to the nearest stake. Local law's figure, never under 18 in. */
  readonly toleranceIn: number;
};

/** The maker's or engineer's paper. `null` where it gives no figure: then a default that is stricter, or a question. */
export type Sheet = {
  readonly document: string;
  readonly stakeKind: string;
  readonly stakeDiameterIn: number;
  readonly stakeLengthIn: number;
  readonly embedmentIn: number | null;
  /** Degrees off plumb, away from the tent. */
  readonly stakeLeanDeg: { readonly from: number; readonly to: number } | null;
  /** `null`: it names none, and no ground is that. */
  readonly soil: string | null;
  readonly pullTestLbf: number | null;
  readonly squareInPer50Ft: number | null;
  readonly sidePoleLeanDeg: number | null;
  readonly raiseGustMph: number | null;
  readonly stopGustMph: number | null;
  readonly insideGustMph: number | null;
  readonly interiorOrder: (typeof INTERIOR_ORDERS)[number];
  readonly interiorTies: (typeof INTERIOR_TIES)[number];
};

export type Site = {
  readonly address: string;
  /** Where the crew gathers to be counted. `null`, here and below: nobody knows yet. */
  readonly rallyPoint: string | null;
  /** A building or a hard-topped vehicle for thunder and storm: never a tree, never a tent. */
  readonly stormShelter: string | null;
  readonly firstAid: string | null;
  readonly soilKnown: boolean;
  /** Lines over or near the site. `null`: the voltage is not known. */
  readonly overheadKv: readonly (number | null)[];
  /** Compass bearing of the baseline from A to B in degrees. Absent where nobody took it: then the drawing shows no north. */
  readonly baselineBearingDeg?: number;
  /** The edge of the tent that faces the street, and the street's name. */
  readonly street?: { readonly edge: EdgeName; readonly name: string };
};

export type Paperwork = (typeof PAPERWORK)[number];

export type Use = {
  /** People expected inside; `null` is not known, and then the fire official's paper is wanted. */
  readonly occupants: number | null;
  readonly permit: Paperwork;
  readonly fabricCertificate: Paperwork;
  readonly walls: boolean;
  readonly hungLoads: boolean;
};

/** One tent on one site: all that is known before work starts. */
export type Brief = {
  readonly title: string;
  /** IANA zone of the site, for what is local: tickets, the time of day on screen. */
  readonly zone: string;
  readonly tent: TentSpec;
  /** `null`, as with the ticket: nobody has it yet. */
  readonly sheet: Sheet | null;
  readonly site: Site;
  readonly ticket: Ticket | null;
  readonly use: Use;
  readonly crew: readonly Person[];
  /** Spares and weights of the yard. Absent: the usual spares, and no weight is known. */
  readonly kit?: KitCatalog;
  /** Lines, wires and what else stands there, as it was measured, and where the tent is wanted. Absent where nobody measured. */
  readonly siteModel?: SiteModel;
  /** What its anchors are screened by. Absent where nobody told any of it: then they are not screened. */
  readonly anchorage?: Anchorage;
  /** The highest gust that is forecast for the hire. Absent where nobody told it. */
  readonly forecast?: Forecast;
  /** What is agreed for wind and storm while it stands. Absent where nothing is. */
  readonly weatherPlan?: WeatherPlan;
  /** A trainee's: no tent stands behind it, it is marked on every screen and kept out of every count. Absent where it is real. */
  readonly rehearsal?: true;
  /** Of a rehearsal in which site and crew answer back. Absent where nothing happens but what is said. */
  readonly practice?: Practice;
};
