import type { Brief } from "../../machines/install/brief.ts";
import { EMPTY_SITE, type SiteModel } from "../../machines/site/model.ts";
import { briefOf, type Changed, SMALL } from "../proof/fixtures.ts";
import { at, box, buried, thing, wire } from "./sites.ts";

/** The small tent on a site; its stake line along A–B stands 6 ft left of the baseline. */
export const onSite = (site: Partial<SiteModel>, changed: Changed = {}): Brief => ({
  ...briefOf(SMALL, changed),
  siteModel: { ...EMPTY_SITE, ...site },
});

/** A gas line that runs 18 in outside the plate at AB1: 6 in from where its outer stake may be. */
export const NEAR_AB1 = buried([at(-7.5, 5), at(-7.5, 15)], { id: "too near 1" });
/** The same line where it cannot be near to any stake. */
export const FAR_OFF = buried([at(-40, 5), at(-40, 15)], { id: "too near 1" });

/** All that can be too near, each named so, and a ticket that names nothing of the ground. */
export const TOO_NEAR = onSite({
  buried: [NEAR_AB1],
  overhead: [wire([at(0, 0), at(0, 9)], { id: "too near 2" })],
  things: [thing("building", { is: "polygon", corners: box(30, 0, 9, 9) }, "too near 3")],
  ticketArea: { errorFt: 0, corners: box(0, 0, 9, 9) },
});
/** Near nothing, and off the baseline that its site was taped from. */
export const OFF_THE_BASELINE = onSite({
  buried: [FAR_OFF],
  overhead: [wire([at(-200, 0), at(-200, 90)])],
  wanted: { cornerA: at(10.5, -5), headingDeg: 30 },
});
/** An engineer's anchor at AB1, where a gas line crosses the stake line, and a private water line far off. */
export const WITH_AN_ANCHOR = onSite({
  buried: [buried([at(-60, 11), at(-3, 11)]), buried([at(-40, 5), at(-40, 15)], { id: "water 1", kind: "water", told: "private" })],
  fixes: [{ is: "engineeredAnchor", stake: { is: "plate", station: "AB1", plate: 1 }, expose: ["gas 1"] }],
});
