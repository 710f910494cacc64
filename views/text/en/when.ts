import { dateFormats } from "../date-formats.ts";

/** The day before the month and a clock of 24 hours. */
const format = dateFormats("en-GB", {
  clock: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
  day: { weekday: "short", day: "numeric", month: "short" },
  date: { year: "numeric", month: "2-digit", day: "2-digit" },
  second: { hour: "2-digit", minute: "2-digit", second: "2-digit", hourCycle: "h23" },
  moment: { dateStyle: "medium", timeStyle: "short", hourCycle: "h23" },
});

/** Moments in the zone of a site. */
export const when = {
  clock: (zone: string, at: number) => format("clock", zone, at),
  day: (zone: string, at: number) => format("day", zone, at),
  dayAndClock: (zone: string, at: number) => `${format("day", zone, at)} ${format("clock", zone, at)}`,
  moment: (zone: string, at: number) => format("moment", zone, at),
  /** To the second, so that lines sort by it as text: 2026-06-02 14:05:30. */
  second: (zone: string, at: number) => `${format("date", zone, at).split("/").reverse().join("-")} ${format("second", zone, at)}`,
} as const;
