import type { Weights, WeightsNotKnown } from "../../../machines/install/ballast.ts";
import type { Limits } from "../../../machines/install/limits.ts";
import { placeOf, siteClearances } from "../../../machines/install/site-clearances.ts";
import { clearanceRules } from "../../../machines/install/site-rules.ts";
import type { Screening } from "../../../machines/loads/screening.ts";
import type { SiteClearances } from "../../../machines/site/clearances.ts";
import { EMPTY_SITE, type SiteModel } from "../../../machines/site/model.ts";
import type { ClearanceRules } from "../../../machines/site/rules.ts";
import type { Place } from "../../../machines/site/stand.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";

/** A site with the tent on it, of a job or of a draft, and all that is worked out there. */
export type SiteState = {
  /** The address of its pages, and of where it is one part of. */
  readonly path: string;
  readonly up: string;
  /** The job; `null` of a draft. */
  readonly job: string | null;
  readonly title: string;
  readonly rehearsal: boolean;
  readonly plan: TentPlan;
  readonly site: SiteModel;
  /** Whether anybody entered anything. */
  readonly isTold: boolean;
  readonly limits: SiteLimits;
  readonly rules: ClearanceRules;
  readonly place: Place;
  readonly clearances: SiteClearances;
  readonly bearingDeg: number | undefined;
  readonly screening: Screening | null;
  /** What weights at the straps have to weigh, or why that is not known; `null` where none is used. */
  readonly ballast: Weights | WeightsNotKnown | null;
  /** Whether this screen may put a change forward, and whether it may add a line. */
  readonly mayChange: boolean;
  readonly mayAdd: boolean;
};

export type SiteLimits = Pick<Limits, "toleranceIn" | "separationFt">;

type Told = Omit<SiteState, "site" | "isTold" | "rules" | "place" | "clearances"> & { readonly siteModel: SiteModel | undefined };

/** A site with what is worked out from it, when its page is asked for: nothing of it is stored. */
export function siteState({ siteModel, ...told }: Told): SiteState {
  const site = siteModel ?? EMPTY_SITE;
  const place = placeOf(told.plan, site);
  return {
    ...told,
    site,
    isTold: siteModel !== undefined,
    rules: clearanceRules(told.limits, site.overhead),
    place,
    clearances: siteClearances(told.plan, site, told.limits, place),
  };
}
