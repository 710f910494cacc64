import type { ROLES } from "./roles.ts";

/** Who can watch a standing tent, by the part that they have on the job: names lie beside the chain. */
export const WATCHED_BY = ["watcher", "lead", "deputy", "competent", "crew"] as const satisfies readonly (typeof ROLES)[number][];
/** Where warnings come from. */
export const WARNED_BY = ["radio", "phone", "office", "venue"] as const;
/** What is done at three fifths of the limit, at four fifths, and at it. */
export const AT_60 = ["readOften", "looseThings", "wallsOff"] as const;
export const AT_80 = ["getReady", "wallsOff", "everybodyOut"] as const;
export const AT_LIMIT = ["everybodyOut", "everybodyOutFence"] as const;

/** What is agreed for wind and storm while the tent stands. People go to the storm shelter of the site. */
export type WeatherPlan = {
  readonly watchedBy: (typeof WATCHED_BY)[number];
  readonly warnedBy: (typeof WARNED_BY)[number];
  readonly at60: (typeof AT_60)[number];
  readonly at80: (typeof AT_80)[number];
  readonly atLimit: (typeof AT_LIMIT)[number];
  /** How long it takes until nobody is inside, and until the tent is down, minutes. */
  readonly clearMin: number;
  readonly lowerMin: number;
  /** How often the wind is read, minutes: below three fifths of the limit, and from there on. */
  readonly readEveryMin: number;
  readonly readWindyMin: number;
};

type Range = { readonly from: number; readonly to: number };
/** What the minutes of a plan can be. A reading is never older than the guide lets it be; the rest is common practice, no source. */
export const PLAN_MINUTES = {
  clearMin: { from: 1, to: 120 },
  lowerMin: { from: 5, to: 720 },
  readEveryMin: { from: 5, to: 30 },
  readWindyMin: { from: 2, to: 15 },
} as const satisfies Readonly<Partial<Record<keyof WeatherPlan, Range>>>;
export type PlanMinutes = keyof typeof PLAN_MINUTES;
