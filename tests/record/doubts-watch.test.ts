import { describe, expect, it } from "vitest";
import { en } from "../../views/text/en/en.ts";
import { MINUTE } from "../proof/fixtures.ts";
import { WEATHER_PLAN } from "../support/weather-plan.ts";
import { PacedJob, plainBrief } from "./doubts-crew.ts";

/** Gusts of a tent that stands by a plan that wants one every 20 minutes, and every 10 from 60 % of its limit on: so many minutes after the one before. */
function watched(readings: readonly (readonly [afterMin: number, gustMph: number])[], brief = plainBrief({ weatherPlan: WEATHER_PLAN })) {
  const job = new PacedJob(brief);
  job.pauseMs = 1000;
  job.until(() => job.call === "watch");
  for (const [afterMin, gustMph] of readings) {
    const takenAt = job.at + afterMin * MINUTE;
    const reading = { kind: "wind", mph: 3, gustMph, fromDeg: null, takenAt, place: null } as const;
    job.tell({ type: "reading", reading }, { afterMs: afterMin * MINUTE });
  }
  return job.doubts("missedReadings");
}

describe("wind readings of a standing tent that nobody made", () => {
  it("are a finding from two intervals on, with the longest time", () => {
    const [doubt, ...more] = watched([
      [5, 6],
      [41, 6],
      [90, 6],
    ]);
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ phase: "standing", facts: { count: 2, due: 6, longestSeconds: 5400, everyMin: 20 } });
  });
  it("are told with how many were due, and how long it went", () => {
    const [doubt] = watched([
      [5, 6],
      [120, 6],
    ]);
    expect(en.findingWhat(doubt as never, { names: [], call: "", said: "" } as never)).toBe(
      "While it stood, 5 wind readings that were due were not made. It went 2 h without one; the weather plan says every 20 min.",
    );
  });
  it("are missed sooner from 60 % of the limit on", () =>
    expect(
      watched([
        [5, 18],
        [21, 6],
      ]),
    ).toMatchObject([{ facts: { count: 1, everyMin: 10 } }]));
  it("are missed by the gust that was agreed, where the wind was read before it was", () => {
    const job = new PacedJob(plainBrief({ weatherPlan: WEATHER_PLAN }));
    job.pauseMs = 1000;
    const tell = (gustMph: number, afterMin: number) => {
      const takenAt = job.at + afterMin * MINUTE;
      job.tell(
        { type: "reading", reading: { kind: "wind", mph: 3, gustMph, fromDeg: null, takenAt, place: null } },
        { afterMs: afterMin * MINUTE },
      );
    };
    job.until(() => job.call === "plan.evacuate");
    tell(12, 1);
    job.until(() => job.call === "watch");
    tell(6, 25);
    expect(job.doubts("missedReadings")).toMatchObject([{ facts: { count: 1, everyMin: 10 } }]);
  });
  it("are none while they come in time", () =>
    expect(
      watched([
        [5, 6],
        [39, 6],
      ]),
    ).toEqual([]));
  it("are none where no plan asks for them", () => expect(watched([[200, 6]], plainBrief())).toEqual([]));
});
