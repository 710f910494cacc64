import type { Line } from "../figures/line.ts";

export type WeatherFormula =
  | "heatIndexSimple"
  | "heatIndex"
  | "heatIndexDry"
  | "heatIndexHumid"
  | "heatInSun"
  | "heatForWorkRest"
  | "windChill"
  | "flashToBang"
  | "windTrend";
export type WeatherInput =
  | "air"
  | "humidity"
  | "heatIndex"
  | "sun"
  | "humid"
  | "wind"
  | "count"
  | "perMile"
  | "limit"
  | "rise"
  | "readings";
/** What a line of the weather leaves out. */
export type WeatherLeftOut =
  /** The fit is good to about 1.3 °F (rfcafe.com, heat index page, read). */
  | "fitError"
  /** It is for shade and a light wind. */
  | "shadeAndLightWind"
  /** Whoever is new to the heat, ill, or in heavy clothes takes less. */
  | "theUnused"
  /** The wind is that of an open field at 10 m; on a face it is less. */
  | "windAtTenMeters"
  /** Wet clothes chill more. */
  | "wetClothes"
  /** Lightning strikes up to 10 miles from its rain: OSHA/NOAA, read. */
  | "strikesAhead"
  /** A front does not come in a straight line. */
  | "fronts";
export type WeatherLine = Line<WeatherFormula, WeatherInput, WeatherLeftOut>;
