import * as v from "valibot";
import { type Bounds, isWithin } from "../../machines/figures/bounds.ts";
import type { AmountUnit } from "../../machines/figures/line.ts";
import { COMPASS_BOUNDS, WIND_BOUNDS } from "../../machines/install/bounds.ts";
import { believable } from "../../machines/install/checks/value-form.ts";
import { EXPOSURES, type Reading, type ThunderReading, type WarningReading } from "../../machines/install/commands.ts";
import type { Instant } from "../../machines/install/ids.ts";
import type { JobState } from "../../machines/install/state.ts";
import { warningText } from "../../machines/install/warning-text.ts";
import { worstMph } from "../../machines/install/weather.ts";
import { beginning } from "../../machines/lookup/beginning.ts";
import { AIR_BOUNDS, FLASH_TO_BANG_BOUNDS, HUMIDITY_BOUNDS, SUNS } from "../../machines/weather/air.ts";
import { BEAUFORT_NAMES, meanByLook } from "../../machines/weather/beaufort.ts";
import { says, saysOf } from "./issue.ts";
import { Problem, type Sentence } from "./problem.ts";
import { VALUE_ERRORS } from "./value-errors.ts";

/** Held up by a hand or on a pole, ft: against slips. Common practice, no source. */
const HEIGHT_BOUNDS: Bounds = { from: 0, to: 100 };

const figure = (bounds: Bounds, unit: AmountUnit) =>
  v.pipe(
    v.number(says("notANumber")),
    v.check(
      (n) => isWithin(n, bounds),
      saysOf(({ figures }, given) => figures.problem({ code: "outOfRange", field: "", is: Number(given), limit: bounds, unit })),
    ),
  );
const may = <S extends v.GenericSchema>(schema: S) => v.optional(v.nullable(schema), null);
const oneOf = <const N extends readonly string[]>(names: N) =>
  v.picklist(
    names,
    saysOf(({ errors }, given) => errors.notOneOf(given, names)),
  );
export const speed = believable("mph", WIND_BOUNDS, VALUE_ERRORS);

/** What may come with a wind besides its speed: where it comes from, where it was read. */
export const BESIDE_WIND = {
  gustMph: may(speed),
  fromDeg: may(believable("deg", COMPASS_BOUNDS, VALUE_ERRORS)),
  // Not named where nobody said: a request stays the request it always was.
  heightFt: v.optional(figure(HEIGHT_BOUNDS, "ft")),
  exposure: v.optional(oneOf(EXPOSURES)),
};
/** A wind by the look of things, as a word of the scale. */
export const LOOK = v.picklist(
  BEAUFORT_NAMES,
  saysOf(({ errors, sky }, given) => errors.notOneOf(given, BEAUFORT_NAMES.map(sky.look))),
);
export const HEAT = { airF: figure(AIR_BOUNDS, "degF"), humidity: figure(HUMIDITY_BOUNDS, "percent"), sun: may(oneOf(SUNS)) };
export const COLD = { airF: figure(AIR_BOUNDS, "degF"), windMph: figure(WIND_BOUNDS, "mph") };
/** Whatever comes with an alarm, and however it is written, it never keeps the alarm out. */
export const BESIDE_ALARM = {
  takenAt: v.optional(v.unknown()),
  seconds: v.optional(v.unknown()),
  what: v.optional(v.unknown()),
  until: v.optional(v.unknown()),
  issuer: v.optional(v.unknown()),
};

type BesideWind = { readonly heightFt?: number | undefined; readonly exposure?: (typeof EXPOSURES)[number] | undefined };
/** Only what was said: a reading that says no more is as it always was. */
const besides = ({ heightFt, exposure }: BesideWind) => ({
  ...(heightFt === undefined ? {} : { heightFt }),
  ...(exposure === undefined ? {} : { exposure }),
});

type Wind = Extract<Reading, { kind: "wind" }>;
/** A wind that a meter read, or that was told by the look of things: then its mean is the top of its band. */
export function windReading(
  said: Pick<Wind, "gustMph" | "fromDeg" | "place" | "takenAt"> &
    BesideWind &
    ({ readonly mph: number } | { readonly look: NonNullable<Wind["look"]> }),
): Wind {
  const { gustMph, fromDeg, place, takenAt } = said;
  const speeds = "look" in said ? { mph: meanByLook(said.look), look: said.look } : { mph: said.mph };
  return { kind: "wind", ...speeds, gustMph, fromDeg, takenAt, place, ...besides(said) };
}

/** What is wrong with a gust under the mean that a meter read; `null` where nothing is. */
export const gustProblem = ({ mph, gustMph }: Pick<Wind, "mph" | "gustMph">): Sentence | null =>
  gustMph === null || gustMph >= mph ? null : ({ errors }) => errors.gustUnderMean(gustMph, mph);

/**
 * The gust that counts beside a word of the scale. One under the word's band is none where the word alone stops the job's work: nothing keeps
 * a stop out. Throws a Problem where it does not.
 */
export function gustByLook(look: NonNullable<Wind["look"]>, gustMph: number | null, state: Pick<JobState, "limits">): number | null {
  const mph = meanByLook(look);
  if (gustMph === null || gustMph >= mph) return gustMph;
  const { stopGustMph } = state.limits;
  if (worstMph({ mph, gustMph: null }) >= stopGustMph) return null;
  throw new Problem(422, (w) => w.errors.bodyShape, { gustMph: ({ errors, sky }) => errors.gustUnderLook(gustMph, sky.look(look), mph) });
}

type BesideAlarm = { readonly [K in keyof typeof BESIDE_ALARM]?: unknown };
/** Thunder, with the seconds since its flash where they are any. */
export function thunderReading({ seconds }: BesideAlarm, takenAt: Instant): ThunderReading {
  if (seconds === undefined || seconds === null || seconds === "") return { kind: "thunder", takenAt };
  return typeof seconds === "number" && isWithin(seconds, FLASH_TO_BANG_BOUNDS)
    ? { kind: "thunder", takenAt, seconds }
    : { kind: "thunder", takenAt, notSeconds: shown(seconds) };
}

/** What came instead of a number, as far as it is shown. What is no single value has no text of its own. */
const shown = (given: unknown): string => (typeof given === "object" ? "…" : beginning(wholeLetters(String(given)), 20));
/** Half of a letter that is written as two is no letter, and is kept as a mark in its place. */
const wholeLetters = (text: string): string => text.replaceAll(/[\ud800-\udfff]/gu, "\ufffd");

/** A warning, as far as it was read out. */
export function warningReading(told: BesideAlarm, takenAt: Instant): WarningReading {
  const texts = (["what", "until", "issuer"] as const).flatMap((name) => {
    const text = typeof told[name] === "string" ? wholeLetters(told[name] as string).trim() : "";
    return text === "" ? [] : [[name, warningText(text)] as const];
  });
  return { kind: "warning", takenAt, ...Object.fromEntries(texts) };
}
