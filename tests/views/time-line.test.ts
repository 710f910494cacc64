import { describe, expect, it } from "vitest";
import { forecast } from "../../machines/time/forecast.ts";
import type { JobProgress } from "../../machines/time/job-stage.ts";
import { factorsFrom } from "../../machines/time/learning.ts";
import { clockAt, forecastLine } from "../../views/pages/time/line.ts";
import { en } from "../../views/text/en/en.ts";
import { about } from "../../views/text/en/time.ts";
import { frozenWith, standingAt, unstarted } from "../support/time.ts";

const frozen = frozenWith(7);
const NOON = Date.UTC(2026, 5, 2, 18);
const lineOf = (at: JobProgress, people?: number) =>
  forecastLine(forecast(frozen, { ...at, lastAt: NOON }, factorsFrom([], null), NOON, people)!, "America/Denver", NOON, en);

describe("the forecast in one line", () => {
  it("before the start is the work there is", () => expect(lineOf(unstarted(frozen))).toMatch(/^About .* to raise it \(.* to .*\)$/));
  it("during the raise is the time of day it is likely done", () =>
    expect(lineOf(standingAt(frozen, "tension.seamEnds"))).toMatch(/^Likely done 1\d:\d\d \(1\d:\d\d to 1\d:\d\d\)$/));
  it("during the strike is when all is down", () =>
    expect(lineOf(standingAt(frozen, "strike.fold"))).toMatch(/^Likely all down \d\d:\d\d/));
  it("is nothing while held, while making safe, with too few people, or when closed", () => {
    const at = standingAt(frozen, "tension.seamEnds");
    expect(lineOf({ ...at, worked: { ...at.worked, held: true } })).toBeNull();
    expect(lineOf({ ...at, phase: "makingSafe" })).toBeNull();
    expect(lineOf({ ...at, phase: "closed" })).toBeNull();
    expect(lineOf(standingAt(frozen, "poles.pinned"), 3)).toBeNull();
  });
});

describe("a time of day", () => {
  const clock = clockAt("America/Denver", NOON, en);
  it("is told to five minutes on the clock of the site", () => expect(clock.short(NOON + 43 * 60_000)).toBe("12:45"));
  it("has its day where that is not today, midnight by rounding too", () => {
    expect(clock.short(NOON + 12 * 3_600_000 - 60_000)).toMatch(/^Wed,? 3 Jun 00:00$/);
    expect(clock.today(NOON + 12 * 3_600_000 - 60_000)).toBe(false);
  });
});

it.each([
  [0, "0 min"],
  [1.4, "1 min"],
  [29.4, "29 min"],
  [31, "30 min"],
  [58, "1 h"],
  [118, "2 h"],
  [123, "2 h 5 min"],
])("%d minutes are about %s", (minutes, text) => expect(about(minutes)).toBe(text));
