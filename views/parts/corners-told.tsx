import { placeOf, pointOf } from "../../machines/install/site-clearances.ts";
import { isOnBaseline, offsetOf, type SiteModel } from "../../machines/site/model.ts";
import type { TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";

type Props = { readonly plan: TentPlan; readonly site: Pick<SiteModel, "wanted"> | undefined; readonly words: Words };

/** Where corners A and B go, off the baseline that the site was taped from; nothing where that is the tent's own A–B. */
export const CornersTold = ({ plan, site, words }: Props) => {
  if (!site || isOnBaseline(site)) return null;
  const at = (corner: string) => offsetOf(pointOf(plan, corner, placeOf(plan, site)));
  return <p>{words.workedOut.corners([at("A"), at("B")])}</p>;
};
