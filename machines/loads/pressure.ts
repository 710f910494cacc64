import { amount } from "../figures/line.ts";
import { METERS_PER_FOOT, NEWTONS_PER_POUND_FORCE } from "../figures/units.ts";
import { GUST_FACTOR } from "../weather/gust.ts";
import type { LoadLine } from "./lines.ts";
import { ASCE_KD, ASCE_KE, ASCE_KZ, ASCE_PRESSURE, EN_PRESSURE } from "./sources.ts";
import type { Reason } from "./verdict.ts";

export const EXPOSURES = ["B", "C", "D"] as const;
/** Ground around the site: B town and trees, C open country, D flat open water or mud flats upwind. */
export type Exposure = (typeof EXPOSURES)[number];

/** Gradient height and power of the wind's profile, editions up to 2016. */
const PROFILE: Readonly<Record<Exposure, { readonly alpha: number; readonly zgFt: number }>> = {
  B: { alpha: 7, zgFt: 1200 },
  C: { alpha: 9.5, zgFt: 900 },
  D: { alpha: 11.5, zgFt: 700 },
};
const MIN_PROFILE_FT = 15;
const KD = 0.85;
/** Height in m up to which a pressure in kN/m² holds. */
const EN_ROWS = [[5, 0.5], [10, 0.6], [15, 0.66], [20, 0.71], [25, 0.76]] as const; // biome-ignore format: a table
/** The mean wind, m/s, that the table is meant up to. */
const EN_MAX_MEAN_MPS = 28;
const PSF_PER_KPA = (1000 * METERS_PER_FOOT ** 2) / NEWTONS_PER_POUND_FORCE;
const MPH_PER_MPS = 3600 / (METERS_PER_FOOT * 5280);

/**
 * How much of the wind at 33 ft in open country is left at a height in feet, squared: ASCE 7 to 2016, 2.01 (z / zg)^(2 / α), and never
 * that of less than 15 ft.
 */
export const kz = (exposure: Exposure, heightFt: number): number => {
  const { alpha, zgFt } = PROFILE[exposure];
  return 2.01 * (Math.max(heightFt, MIN_PROFILE_FT) / zgFt) ** (2 / alpha);
};

/** How much thinner the air is at an elevation of the ground in feet over the sea. */
export const ke = (elevationFt: number): number => Math.exp(-0.0000362 * elevationFt);

/** Velocity pressure in psf, ASCE 7 equation 26.10-1, on flat ground (Kzt 1). Speed in mph, a 3-second gust. */
export const velocityPressurePsf = (factors: { readonly kz: number; readonly kd: number; readonly ke: number }, gustMph: number): number =>
  0.00256 * factors.kz * factors.kd * factors.ke * gustMph ** 2;

/** EN 13782's simplified pressure in psf at a height in feet; `null` over 25 m. */
export function enPressurePsf(heightFt: number): number | null {
  const row = EN_ROWS.find(([upToM]) => heightFt * METERS_PER_FOOT <= upToM);
  return row ? row[1] * PSF_PER_KPA : null;
}

export type WindFacts = {
  /** 3-second gust at 33 ft in open country, mph; `null` not known. */
  readonly gustMph: number | null;
  readonly exposure: Exposure | null;
  /** Of the ground over the sea, ft; `null` not known, and then no air is thinner than at the sea. */
  readonly elevationFt: number | null;
};
export type Heights = { readonly meanFt: number; readonly peakFt: number };

/** The pressure that is used, both that it was chosen from, and what keeps it from being known: then it is at least this. */
export type Pressure = {
  readonly psf: number;
  readonly by: "asce" | "en";
  readonly ascePsf: number | null;
  readonly enPsf: number | null;
  readonly reasons: readonly Reason[];
  readonly lines: readonly LoadLine[];
};

/** Velocity pressure by ASCE 7 at the roof's mean height and by EN 13782 at its peak; the stricter is used. `null` where there is neither. */
export function pressureOn(wind: WindFacts, heights: Heights): Pressure | null {
  const enPsf = enPressurePsf(heights.peakFt);
  const asce = wind.gustMph === null ? null : asceLines({ ...wind, exposure: wind.exposure ?? "B", gustMph: wind.gustMph }, heights);
  if (asce === null && enPsf === null) return null;
  const ascePsf = asce?.at(-1)?.result.n ?? null;
  const psf = Math.max(ascePsf ?? 0, enPsf ?? 0);
  const by = psf === enPsf ? "en" : "asce";
  const en = enPsf === null ? [] : [enLine(enPsf, heights, wind.gustMph)];
  return {
    psf,
    by,
    ascePsf,
    enPsf,
    reasons: [
      ...(wind.gustMph === null ? (["gustNotTold"] as const) : []),
      ...(exposureMatters(wind, heights, psf) ? (["exposureNotTold"] as const) : []),
    ],
    lines: [...(asce ?? []), ...en, usedLine(psf, ascePsf, enPsf, by)],
  };
}

/** Without an exposure the kindest is worked out; it matters only where the worst would be more than what is used. */
const exposureMatters = ({ gustMph, exposure, elevationFt }: WindFacts, { meanFt }: Heights, psf: number): boolean =>
  gustMph !== null && exposure === null && velocityPressurePsf({ kz: kz("D", meanFt), kd: KD, ke: ke(elevationFt ?? 0) }, gustMph) > psf;

type KnownWind = { readonly gustMph: number; readonly exposure: Exposure; readonly elevationFt: number | null };

function asceLines({ gustMph, exposure, elevationFt }: KnownWind, { meanFt }: Heights): readonly LoadLine[] {
  const factors = { kz: kz(exposure, meanFt), kd: KD, ke: ke(elevationFt ?? 0) };
  return [
    {
      formula: "exposureFactor",
      inputs: [
        { name: "exposure", is: exposure, source: "site" },
        { name: "height", is: amount(meanFt, "ft"), source: "plan" },
      ],
      result: amount(factors.kz, "number"),
      source: ASCE_KZ,
      leftOut: [],
    },
    {
      formula: "elevationFactor",
      inputs: [{ name: "elevation", is: amount(elevationFt ?? 0, "ft"), source: "site" }],
      result: amount(factors.ke, "number"),
      source: ASCE_KE,
      leftOut: [],
    },
    {
      formula: "ascePressure",
      inputs: [
        { name: "gust", is: amount(gustMph, "mph"), source: "brief" },
        { name: "kz", is: amount(factors.kz, "number"), source: ASCE_KZ },
        { name: "kd", is: amount(KD, "number"), source: ASCE_KD },
        { name: "ke", is: amount(factors.ke, "number"), source: ASCE_KE },
      ],
      result: amount(velocityPressurePsf(factors, gustMph), "psf"),
      source: ASCE_PRESSURE,
      leftOut: ["hillsAndGaps"],
    },
  ];
}

const enLine = (psf: number, { peakFt }: Heights, gustMph: number | null): LoadLine => ({
  formula: "enPressure",
  inputs: [{ name: "height", is: amount(peakFt, "ft"), source: "plan" }],
  result: amount(psf, "psf"),
  source: EN_PRESSURE,
  leftOut: (gustMph ?? 0) / GUST_FACTOR > EN_MAX_MEAN_MPS * MPH_PER_MPS ? ["overTableWind"] : [],
});

const usedLine = (psf: number, ascePsf: number | null, enPsf: number | null, by: "asce" | "en"): LoadLine => ({
  formula: "pressureUsed",
  inputs: [
    ...(ascePsf === null ? [] : [{ name: "asce", is: amount(ascePsf, "psf"), source: ASCE_PRESSURE } as const]),
    ...(enPsf === null ? [] : [{ name: "en", is: amount(enPsf, "psf"), source: EN_PRESSURE } as const]),
  ],
  result: amount(psf, "psf"),
  source: by === "en" ? EN_PRESSURE : ASCE_PRESSURE,
  leftOut: [],
});
