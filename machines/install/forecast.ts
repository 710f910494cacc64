import type { WallTime } from "./ids.ts";

/** The forecast for the hire, as somebody read it and gave it by hand. */
export type Forecast = {
  /** The highest gust that it names, mph. */
  readonly gustMph: number;
  /** From when until when that is to be expected. */
  readonly from: WallTime;
  readonly to: WallTime;
  /** The service or office that issued it. */
  readonly issuedBy: string;
  readonly readAt: WallTime;
  /** The hour by which nobody is inside, where it was agreed; `null` where it was not. */
  readonly clearBy: WallTime | null;
};

/** Gusts that a forecast can name, mph. No gust over 253 mph was ever measured (World Meteorological Organization, Barrow Island 1996): what is beyond is a slip. */
export const MAX_FORECAST_GUST_MPH = 250;
/** The longest time that one forecast is for, days. Common practice, no source: beyond that none names a gust for an hour. */
export const MAX_FORECAST_DAYS = 14;

/** A forecast held against the gust at which the tent is empty, and the one from which nothing is raised, both in mph. */
export type ForecastVerdict = "overLimit" | "overRaising" | "under";
export const heldAgainst = ({ gustMph }: Pick<Forecast, "gustMph">, limitMph: number, raiseMph: number): ForecastVerdict =>
  gustMph >= limitMph ? "overLimit" : gustMph >= raiseMph ? "overRaising" : "under";
