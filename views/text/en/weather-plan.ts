import type { Forecast } from "../../../machines/install/forecast.ts";
import type { Levels } from "../../../machines/install/watch.ts";
import type { AT_60, AT_80, AT_LIMIT, WARNED_BY, WATCHED_BY, WeatherPlan } from "../../../machines/install/weather-plan.ts";
import type { WatchedWind } from "../../pages/guide/weather.ts";

const WATCHED: Readonly<Record<(typeof WATCHED_BY)[number], string>> = {
  watcher: "the customer's person",
  lead: "the lead",
  deputy: "the deputy",
  competent: "the competent person",
  crew: "somebody of the crew",
};
const WARNED: Readonly<Record<(typeof WARNED_BY)[number], string>> = {
  radio: "weather radio, on all the time",
  phone: "official warnings on the watcher's phone",
  office: "the office calls the watcher",
  venue: "the venue's own warning service",
};
const DOES: {
  readonly at60: Readonly<Record<(typeof AT_60)[number], string>>;
  readonly at80: Readonly<Record<(typeof AT_80)[number], string>>;
  readonly atLimit: Readonly<Record<(typeof AT_LIMIT)[number], string>>;
} = {
  at60: {
    readOften: "Read more often. Tell the customer's person.",
    looseThings: "Read more often. Loose things down and in.",
    wallsOff: "Walls off, upwind side last. Read more often.",
  },
  at80: {
    getReady: "Music down, say where to go, exits clear.",
    wallsOff: "Walls off. Say where to go, exits clear.",
    everybodyOut: "Everybody out, to the storm shelter.",
  },
  atLimit: {
    everybodyOut: "Everybody out. Nobody near the tent.",
    everybodyOutFence: "Everybody out. Fence it off, nobody near.",
  },
};

/** The fields of a weather plan and a forecast, by their names in the brief. */
const FIELDS: { readonly [K in `weatherPlan.${keyof WeatherPlan}` | `forecast.${keyof Forecast}`]: string } = {
  "weatherPlan.watchedBy": "Who watches",
  "weatherPlan.warnedBy": "Where warnings come from",
  "weatherPlan.at60": "At 60% of the limit",
  "weatherPlan.at80": "At 80% of the limit",
  "weatherPlan.atLimit": "At the limit",
  "weatherPlan.clearMin": "To clear it, minutes",
  "weatherPlan.lowerMin": "To lower it, minutes",
  "weatherPlan.readEveryMin": "Read the wind every, minutes",
  "weatherPlan.readWindyMin": "The same from 60% on, minutes",
  "forecast.gustMph": "Highest gust forecast, mph",
  "forecast.from": "Wind from",
  "forecast.to": "Wind until",
  "forecast.issuedBy": "Issued by",
  "forecast.readAt": "Read at",
  "forecast.clearBy": "Everybody out by, as agreed",
};
const CHOICES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "weatherPlan.watchedBy": WATCHED,
  "weatherPlan.warnedBy": WARNED,
  "weatherPlan.at60": DOES.at60,
  "weatherPlan.at80": DOES.at80,
  "weatherPlan.atLimit": DOES.atLimit,
};

/** The same where one of them is chosen: no longer than a field on a phone, 26 letters. */
const PICKS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "weatherPlan.watchedBy": WATCHED,
  "weatherPlan.warnedBy": {
    radio: "weather radio, always on",
    phone: "the watcher's phone",
    office: "the office calls",
    venue: "the venue's own service",
  } satisfies Record<(typeof WARNED_BY)[number], string>,
  "weatherPlan.at60": {
    readOften: "read more often",
    looseThings: "read, loose things in",
    wallsOff: "read, walls off",
  } satisfies Record<(typeof AT_60)[number], string>,
  "weatherPlan.at80": {
    getReady: "music down, exits clear",
    wallsOff: "walls off, exits clear",
    everybodyOut: "everybody out",
  } satisfies Record<(typeof AT_80)[number], string>,
  "weatherPlan.atLimit": {
    everybodyOut: "everybody out",
    everybodyOutFence: "everybody out, fence it",
  } satisfies Record<(typeof AT_LIMIT)[number], string>,
};

/** What is agreed for wind and storm, what is forecast, and what the watcher of a standing tent is told. */
export const weatherPlan = {
  title: "Weather plan",
  link: "Weather plan",
  intro: "Agree on it with the customer's person before the handover. A tent is no shelter from wind or lightning.",
  putsForward: "It counts once a second person agrees.",
  field: (name: string): string | null => (Object.hasOwn(FIELDS, name) ? FIELDS[name as keyof typeof FIELDS] : null),
  choices: (name: string): Readonly<Record<string, string>> => (Object.hasOwn(CHOICES, name) ? CHOICES[name]! : {}),
  picks: (name: string): Readonly<Record<string, string>> => (Object.hasOwn(PICKS, name) ? PICKS[name]! : {}),
  planPart: "The plan",
  forecastPart: "The forecast for the rental",
  forecastHint: "Times as the clock at the site shows them. Leave all of it empty where nobody has one.",
  change: "Change the plan or the forecast",
  range: (from: number, to: number) => `${from} to ${to}`,
  put: "Put it forward",
  keep: "Keep it",
  toDraft: "Back to the job",
  onDraft: "Weather plan and forecast",
  because: "Weather plan and forecast.",
  nothingTyped: "Nothing is filled in. Fill in the plan, the forecast, or both.",
  levels: "What happens at which gust",
  level: { at60: "60%", at80: "80%", atLimit: "limit" } satisfies Readonly<Record<keyof Levels, string>>,
  gust: (mph: number) => `${mph} mph`,
  does: (level: keyof Levels, plan: WeatherPlan): string =>
    level === "at60" ? DOES.at60[plan.at60] : level === "at80" ? DOES.at80[plan.at80] : DOES.atLimit[plan.atLimit],
  facts: "Who, where and how long",
  watches: (by: WeatherPlan["watchedBy"]) => `Watching: ${WATCHED[by]}.`,
  warnings: (by: WeatherPlan["warnedBy"]) => `Warnings: ${WARNED[by]}.`,
  goTo: (shelter: string | null) =>
    shelter === null
      ? "Where people go: not known yet. Name a building or hard-topped vehicles, never a tent or a tree."
      : `Where people go: ${shelter}. Never a tent or a tree.`,
  takes: (clearMin: number, lowerMin: number) => `Clearing takes ${clearMin} min, lowering ${lowerMin} min.`,
  readings: (everyMin: number, windyMin: number) => `Wind read every ${everyMin} min, every ${windyMin} min from 60% on.`,
  noPlan: "There is no weather plan yet.",
  noForecast: "Nobody has given a forecast yet.",
  forecast: (mph: number, from: string, to: string) => `Forecast: gusts to ${mph} mph, ${from} to ${to}.`,
  issued: (by: string, at: string) => `Issued by ${by}, read ${at}.`,
  verdict: {
    overLimit: (limit: number) =>
      `Over the limit of ${limit} mph: it has to be empty before that. Only the sheet or an engineer's paper can allow more.`,
    overRaising: (limit: number) => `Over the ${limit} mph for raising: poles go up before it or after it.`,
    under: (limit: number) => `Under the limit of ${limit} mph. The wind on site still has the last word.`,
  },
  emptyBy: (at: string) => `Agreed: everybody out by ${at}.`,
  hourCome: (at: string) => `Everybody out now, nobody in: agreed for ${at}.`,
  notAgreed: "No hour is agreed yet.",
  now: (gust: string) => `Now: ${gust}`,
  readShort: ({ mph, gustMph, minAgo }: WatchedWind) => `Watch: ${mph}${gustMph === null ? "" : ` gust ${gustMph}`}, ${minAgo} min`,
  read: ({ mph, gustMph, minAgo }: WatchedWind) =>
    `The watch read ${mph}${gustMph === null ? "" : ` gusting ${gustMph}`} mph, ${minAgo} min ago`,
  levelsLink: (levels: readonly { readonly gust: string; readonly does: string }[]) =>
    `Weather plan. ${levels.map(({ gust, does }) => `${gust}: ${does}`).join(" ")}`,
  due: {
    quiet: "Wind reading due.",
    top: (everyMin: number) => `Wind reading overdue: every ${everyMin} min. Read it now.`,
    loud: (everyMin: number) => `Wind reading missed: every ${everyMin} min. Read it now.`,
  },
  tooLong: (needMin: number, leftMin: number) => `Lowering takes ${needMin} min, ${leftMin} left. Everybody out, stay out.`,
  gustOutside: (mph: number, most: number) => `A gust of ${mph} mph can't be right. From 0 to ${most} mph.`,
  endsFirst: (to: string, from: string) => `It ends ${to}, before it begins ${from}. Give the end after the beginning.`,
  tooManyDays: (days: number) => `Longer than ${days} days. No forecast reaches that far: give the part that one does.`,
  readAfter: (to: string) => `Read after it was over, ${to}. Give the newest forecast.`,
  emptyTooLate: (by: string, from: string) => `Out by ${by} is after the wind begins, ${from}. Agree on that hour or an earlier one.`,
  minutesOutside: (n: number, from: number, to: number) => `${n} min is out of range. From ${from} to ${to} min.`,
  windyNotShorter: (windy: number, calm: number) =>
    `Every ${windy} min is no shorter than every ${calm} min. From 60% on it has to be shorter.`,
} as const;
