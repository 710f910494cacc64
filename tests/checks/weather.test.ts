import { describe, expect, it } from "vitest";
import { BEAUFORT_NAMES, beaufortOfMph, beaufortOfMps, windByLook } from "../../machines/weather/beaufort.ts";
import { cold } from "../../machines/weather/cold.ts";
import { gustiness, hourlyMeanMph } from "../../machines/weather/gust.ts";
import { heat } from "../../machines/weather/heat.ts";
import { regression } from "../../machines/weather/heat-index.ts";
import { lightning, quietAt } from "../../machines/weather/lightning.ts";
import { studentT95 } from "../../machines/weather/student-t.ts";

const shade = (airF: number, humidity: number) => heat({ airF, humidity, sun: "none" });

describe("heat index, US National Weather Service", () => {
  // The chart at rfcafe.com/references/general/heat-index.htm (read), to a degree; for R over 85 and T under 88 it has not the adjustment.
  it.each([
    [80, 40, 80], [80, 70, 83], [82, 60, 84], [84, 50, 85], [84, 85, 96], [86, 60, 91], [88, 60, 95], [88, 85, 110],
    [90, 40, 91], [90, 50, 95], [90, 60, 100], [90, 65, 103], [90, 75, 109], [90, 90, 122], [90, 100, 132], [92, 55, 101],
    [94, 60, 110], [96, 50, 108], [96, 65, 121], [100, 40, 109], [100, 60, 129], [104, 45, 124], [110, 40, 136],
  ])("chart: %d °F at %d %% is %d", (t, r, chart) => expect(Math.abs(shade(t, r).indexF - chart)).toBeLessThan(1)); // biome-ignore format: a table
  // The equation at wpc.ncep.noaa.gov/html/heatindex_equation.shtml (read), worked out.
  it.each([
    [90, 50, 94.6],
    [96, 65, 121.03],
    [100, 60, 129.49],
    [95, 10, 89.45],
    [82, 95, 93.97],
    [75, 50, 74.78],
    [80, 100, 89.29],
    [82, 100, 96.04],
  ])("equation: %d °F at %d %% is %d", (t, r, f) => expect(Math.abs(shade(t, r).indexF - f)).toBeLessThan(0.01));
  it.each([
    [80, 100, 87],
    [82, 95, 93],
    [82, 100, 95],
  ])("without the adjustment for damp air %d °F at %d %% is the chart's %d", (t, r, chart) =>
    expect(Math.abs(regression(t, r) - chart)).toBeLessThan(0.5),
  );
  it("in full sun it may be 15 °F more (USGS manual 445-2-H, app. 45-B, read), and sun that is not known is full sun", () => {
    for (const sun of ["full", "partly", null] as const) expect(heat({ airF: 90, humidity: 50, sun }).feltF).toBeCloseTo(109.6, 2);
    expect(shade(90, 50).feltF).toBeCloseTo(94.6, 2);
  });
  // NWS chart bands (read): of 103 and 105, 125 and 130 the stricter.
  it.each([
    [75, 50, "none"],
    [84, 50, "caution"],
    [90, 50, "extremeCaution"],
    [94, 60, "danger"],
    [100, 60, "extremeDanger"],
  ])("%d °F at %d %% in the shade: %s", (t, r, band) => expect(shade(t, r).band).toBe(band));
});

describe("work, rest and water in the heat", () => {
  // OSHA's proposed rule of 2024 (read, secondary): 80 and 90; 15 minutes every two hours; a quart an hour.
  const at = (indexF: number) => {
    let [low, high] = [70, 110];
    for (let i = 0; i < 60; i++)
      [low, high] = shade((low + high) / 2, 40).indexF < indexF ? [(low + high) / 2, high] : [low, (low + high) / 2];
    return shade(high, 40);
  };
  it.each([
    [79.9, "none", null],
    [80, "initial", 1],
    [90, "high", 1],
  ])("at an index of %d the trigger is %s, the water %s qt an hour", (f, trigger, water) =>
    expect(at(f)).toMatchObject({ trigger, waterQtPerHour: water }),
  );
  it("from 90 there are 15 minutes of rest in two hours", () =>
    expect(at(90).rest).toMatchObject({ is: "breaks", workMin: 105, restMin: 15 }));
  // NIOSH, Heat Stress: Work/Rest Schedules, cdc.gov/niosh/mining (read): heavy work, air temperature at 30 % humidity.
  it.each([
    [95, 45], [96, 45], [97, 40], [98, 35], [99, 35], [100, 30], [101, 30], [102, 25], [103, 20], [104, 20], [105, 15],
  ])("heavy work in the shade at %d °F: %d minutes in the hour", (t, workMin) =>
    expect(shade(t, 30).rest).toMatchObject({ is: "breaks", workMin, restMin: 60 - workMin })); // biome-ignore format: a table
  it("from 106 °F the schedule has only its caution", () => expect(shade(105.1, 30).rest.is).toBe("caution"));
  it("sun and damp air go on top (NIOSH 2016-106, from memory), dry air takes nothing off", () => {
    expect(heat({ airF: 85, humidity: 30, sun: "full" }).rest).toMatchObject({ workMin: 35 });
    expect(shade(95, 60).rest).toMatchObject({ workMin: 20 });
    expect(shade(95, 10).rest).toMatchObject({ workMin: 45 });
  });
  it("what is added is marked as from memory, the schedule as read", () => {
    const { source, inputs } = heat({ airF: 95, humidity: 60, sun: "full" }).lines.at(-1)!;
    expect(source).toMatchObject({ seen: "read" });
    expect(inputs.filter(({ name }) => name !== "air")).toMatchObject([{ source: { seen: "memory" } }, { source: { seen: "memory" } }]);
  });
});

describe("cold", () => {
  // Wind chill chart at home1.gte.net (read), checked by the formula; its rows at or below −10 °F are not copied.
  it.each([
    [40, 5, 36], [40, 60, 25], [35, 20, 24], [30, 10, 21], [30, 25, 16], [20, 15, 6], [10, 20, -9], [0, 15, -19], [0, 30, -26],
    [-5, 40, -36], [25, 35, 7], [15, 50, -10],
  ])("chart: %d °F and %d mph is %d", (airF, windMph, chart) =>
    expect(Math.abs(cold({ airF, windMph }).chillF - chart)).toBeLessThan(0.51)); // biome-ignore format: a table
  it.each([
    [0, 15, -19.4],
    [-10, 5, -22.26],
  ])("formula: %d °F and %d mph is %d", (airF, windMph, f) => expect(Math.abs(cold({ airF, windMph }).chillF - f)).toBeLessThan(0.01));
  // The ends of its range, 50 °F and 3 mph, are from memory.
  it("where the formula does not hold it is the air's own", () => {
    expect(cold({ airF: 51, windMph: 20 }).chillF).toBe(51);
    expect(cold({ airF: 20, windMph: 2 }).chillF).toBe(20);
  });
  it("frostbite in half an hour comes from −18 °F of wind chill (same page, read)", () => {
    expect(cold({ airF: 0, windMph: 12 }).frostbiteIn30Min).toBe(false);
    expect(cold({ airF: 0, windMph: 15 }).frostbiteIn30Min).toBe(true);
  });
  // Saskatchewan's Work Warm-up Schedule, studylib.net/doc/6592367 (read): minutes of work, or usual breaks, or none but what cannot wait.
  it.each([
    ["no wind", 0, ["asUsual", "asUsual", 75, 55, 40, 30, "emergencyOnly"]],
    ["5 mph", 5, ["asUsual", 75, 55, 40, 30, "emergencyOnly", "emergencyOnly"]],
    ["10 mph", 10, [75, 55, 40, 30, "emergencyOnly", "emergencyOnly", "emergencyOnly"]],
    ["15 mph", 15, [55, 40, 30, "emergencyOnly", "emergencyOnly", "emergencyOnly", "emergencyOnly"]],
    ["20 mph", 20, [40, 30, "emergencyOnly", "emergencyOnly", "emergencyOnly", "emergencyOnly", "emergencyOnly"]],
  ] as const)("warm-up breaks in %s from −15 °F down, by fives", (_wind, windMph, steps) => {
    const found = (airF: number) => {
      const { warmUp } = cold({ airF, windMph });
      return warmUp.is === "breaks" ? warmUp.workMin : warmUp.is;
    };
    expect([-15, -20, -25, -30, -35, -40, -45].map(found)).toEqual(steps);
    expect([-19, -24, -29, -34, -39, -44, -60].map(found)).toEqual(steps);
  });
  it("between two steps it is the stricter one", () => {
    expect(cold({ airF: -19.5, windMph: 0 }).warmUp).toEqual(cold({ airF: -20, windMph: 0 }).warmUp);
    expect(cold({ airF: -15, windMph: 11 }).warmUp).toEqual(cold({ airF: -15, windMph: 15 }).warmUp);
  });
  it("the 60 °F for bare hands (ACGIH) is marked as from memory", () =>
    expect(cold({ airF: 59, windMph: 0 }).gloves).toMatchObject({ needed: true, source: { seen: "memory" } }));
  it("in more wind than the schedule has, it says so", () => expect(cold({ airF: -15, windMph: 25 }).beyondSchedule).toBe(true));
});

describe("Beaufort scale", () => {
  // Public tables, quest.arc.nasa.gov and delta-s.org (read). That it is of the mean wind at 10 m is from memory (WMO).
  const MPH = [[1, 3], [4, 7], [8, 12], [13, 18], [19, 24], [25, 31], [32, 38], [39, 46], [47, 54], [55, 63], [64, 72]] as const; // biome-ignore format: a table
  const MPS = [[0.3, 1.5], [1.6, 3.3], [3.4, 5.4], [5.5, 7.9], [8, 10.7], [10.8, 13.8], [13.9, 17.1], [17.2, 20.7], [20.8, 24.4], [24.5, 28.4], [28.5, 32.6]] as const; // biome-ignore format: a table
  it("has thirteen forces, each with its band in mph and in m/s", () => {
    expect([0, 0.9, ...MPH.flat(), 73, 150].map(beaufortOfMph)).toEqual([0, 0, ...MPH.flatMap((_, i) => [i + 1, i + 1]), 12, 12]);
    expect([0, 0.2, ...MPS.flat(), 32.7, 60].map(beaufortOfMps)).toEqual([0, 0, ...MPS.flatMap((_, i) => [i + 1, i + 1]), 12, 12]);
  });
  it("between two bands is the higher", () => expect([24.5, 31.5, 38.2].map(beaufortOfMph)).toEqual([6, 7, 8]));
  it("a word counts at the top of its band, the last one has none", () => {
    const tops = BEAUFORT_NAMES.map((name) => windByLook(name).topMph);
    expect(tops).toEqual([1, 3, 7, 12, 18, 24, 31, 38, 46, 54, 63, 72, null]);
  });
});

describe("gusts", () => {
  // Durst curve, ASCE 7 commentary fig. C26.5-1, by two public code sources (read second hand): 1.52. The mean is computed.
  it("a gust of 38 mph goes with an hour's mean of 25", () => expect(hourlyMeanMph(38)).toBeCloseTo(25, 9));
  it("a factor over that of open country is said to be", () => {
    expect(gustiness({ mph: 20, gustMph: 26 })).toMatchObject({ factor: 1.3, turbulent: false, usual: 1.52 });
    expect(gustiness({ mph: 10, gustMph: 22 })).toMatchObject({ factor: 2.2, turbulent: true });
  });
  it("a calm has none, nor a gust under its wind", () => {
    expect(gustiness({ mph: 0, gustMph: 8 })).toBeNull();
    expect(gustiness({ mph: 12, gustMph: 8 })).toBeNull();
  });
});

describe("lightning, US National Weather Service by a copy at gdysc.org (read)", () => {
  it("a count of 30 is 6 miles, and shelter", () => expect(lightning(30)).toMatchObject({ miles: 6, stopMiles: 6, withinStop: true }));
  it("a count of 31 is farther than that, and nothing in it says to go on", () => {
    expect(lightning(31)).toMatchObject({ miles: 6.2, withinStop: false });
    expect(Object.keys(lightning(31)).sort()).toEqual(["line", "miles", "stopMiles", "withinStop"]);
  });
  it("last thunder at 14:10 and one more at 14:25: not before 14:55", () => {
    const clock = (hours: number, minutes: number) => (hours * 60 + minutes) * 60_000;
    expect(quietAt([clock(14, 10), clock(14, 25)], 1800)).toBe(clock(14, 55));
    expect(quietAt([], 1800)).toBeNull();
  });
});

describe("Student's t, one-sided 0.05", () => {
  // In closed form for one and two degrees of freedom; beyond, the area under the density by Simpson's rule, with x = √df · tan θ.
  it("is tan(0.45 π) for one, and 2.9200 for two (support.sas.com, TINV, read)", () => {
    expect(studentT95(1)).toBeCloseTo(Math.tan(0.45 * Math.PI), 3);
    expect(studentT95(2)).toBeCloseTo(2.9199855804, 3);
  });
  it.each([3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 18, 20])("leaves one in twenty beyond it for %d", (df) => {
    const area = (to: number) => {
      const h = to / 200;
      let sum = 1 + Math.cos(to) ** (df - 1);
      for (let i = 1; i < 200; i++) sum += Math.cos(i * h) ** (df - 1) * (i % 2 ? 4 : 2);
      return (sum * h) / 3;
    };
    expect(area(Math.atan(studentT95(df) / Math.sqrt(df))) / area(Math.PI / 2)).toBeCloseTo(0.9, 3);
  });
});
