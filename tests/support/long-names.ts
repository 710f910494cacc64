import type { Brief } from "../../machines/install/brief.ts";
import { planOf } from "../../machines/install/slides.ts";
import { EMPTY_SITE, type SiteModel } from "../../machines/site/model.ts";
import { SITE_LIMITS } from "../../machines/site/site-limits.ts";
import { hundred } from "../tent/tents.ts";
import { ALL_PARTS } from "./all-parts.ts";
import { briefFor } from "./briefs.ts";
import { at, box, buried, thing, wire } from "./sites.ts";

/** A name as long as one may be, of words as crews would type them. */
const long = (name: string): string => `${name} along the old loading dock by the gate `.repeat(3).slice(0, SITE_LIMITS.maxNameLetters);

/** Off the tent, and along its middle line. */
const FAR = [at(-90, 0), at(-90, 200)];
const RIGHT_ACROSS = [at(-30, 60), at(160, 60)];

/** The largest tent with all four parts, each line and thing under a name as long as one may be: all of them in its way, or none. */
export function longNames(inTheWay: boolean): Brief {
  const points = inTheWay ? RIGHT_ACROSS : FAR;
  const gas = long("gas main");
  const site: SiteModel = {
    ...EMPTY_SITE,
    buried: [buried(points, { id: gas }), buried(points, { id: long("fire water"), kind: "water", told: "private" })],
    overhead: [wire(points, { id: long("service drop"), kv: null })],
    things: inTheWay ? [thing("tent", { is: "polygon", corners: box(80, 0, 90, 90) }, long("catering tent"))] : [],
    ticketArea: inTheWay ? { errorFt: 0, corners: box(0, 0, 9, 9) } : null,
    fixes: [],
  };
  const brief = { ...briefFor(hundred), ...ALL_PARTS, siteModel: site };
  const station = planOf(brief).stations.at(-1)!.id;
  return {
    ...brief,
    siteModel: {
      ...site,
      fixes: [{ is: "engineeredAnchor", stake: { is: "plate", station, plate: 1 }, expose: site.buried.map(({ id }) => id) }],
    },
  };
}
