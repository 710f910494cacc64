import type { Instead, Reason } from "../../../machines/loads/verdict.ts";
import { own } from "../../../machines/lookup/own.ts";

/** Why something of the anchors is not known, or short without a figure. */
export const REASON: Readonly<Record<Reason, string>> = {
  walled: "A tent with walls is another case.",
  wallsNotTold: "Nobody said whether it has walls.",
  gustNotTold: "Nobody gave the design gust.",
  exposureNotTold: "Nobody said what ground is upwind.",
  underRoofNotTold: "Nobody said whether it's clear under the roof.",
  roofSlopeNotPublished: "No figures fit a roof this steep or flat.",
  stakeNotTold: "Nobody has the sheet's stake.",
  materialNotTold: "Nobody said what the stakes are made of.",
  embeddedNotTold: "The sheet gives no embedment.",
  soilNotTold: "The kind of soil isn't known.",
  groundStateNotTold: "Nobody said how the ground is.",
  groundStateNotPublished: "There are no figures for soaked, frozen or dug ground.",
  noFigure: "No figure fits this stake in this soil.",
  sidewaysOnly: "The figure is for sideways pulls alone.",
  bareStakesInSand: "Bare stakes don't hold in sand.",
  fewerThanThreePulls: "It takes three pulls along the strap.",
  softestSpotNotPulled: "The softest spot wasn't pulled.",
  rainSincePulls: "Heavy rain came after the pulls.",
  rainSincePullsNotTold: "Nobody said whether it rained after the pulls.",
  stakesNotAllowed: "A plate has more stakes than the sheet allows there. The rest is not counted.",
  stakesAllowedNotTold: "A plate has more than two stakes, and nobody entered how many the sheet allows. Two are counted.",
  frictionNotKnown: "The friction under the weights isn't known.",
};

/** What to do about it. */
export const INSTEAD: Readonly<Record<Instead, string>> = {
  tellIt: "Tell what is missing, below.",
  pulls: "Make three or more pulls along the strap, one at the softest spot.",
  engineersPaper: "Get a licensed engineer's paper.",
  anotherAnchor: "Use an anchor that is made for sand.",
  dragTest: "Drag a weight on this ground and measure it.",
};

/** Why something is not known or short, in one short sentence, by its code in a call. */
export const whyShort = (code: string | number | undefined): string => own(REASON as Readonly<Record<string, string>>, String(code)) ?? "";
