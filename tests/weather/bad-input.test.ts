import { describe, expect, it } from "vitest";
import { problemsOfCold, problemsOfFlashToBang, problemsOfHeat } from "../../machines/weather/air.ts";

describe("a reading of the air that cannot be", () => {
  it("a humidity of 140 is refused, with the limit", () =>
    expect(problemsOfHeat({ airF: 90, humidity: 140, sun: null })).toEqual([
      { field: "humidity", code: "outOfRange", is: 140, limit: { from: 0, to: 100 }, unit: "percent" },
    ]));
  it.each([-5, 900])("a wind of %d mph is refused, with the limit", (windMph) =>
    expect(problemsOfCold({ airF: 10, windMph })).toEqual([
      { field: "windMph", code: "outOfRange", is: windMph, limit: { from: 0, to: 200 }, unit: "mph" },
    ]),
  );
  it("what is missing or no number is named, each", () => {
    expect(problemsOfHeat({ airF: undefined, humidity: "damp", sun: "some" }).map(({ field, code }) => [field, code])).toEqual([
      ["airF", "missing"],
      ["humidity", "notANumber"],
      ["sun", "notOneOf"],
    ]);
    expect(problemsOfFlashToBang(Number.NaN)).toMatchObject([{ code: "notANumber" }]);
    expect(problemsOfFlashToBang(-1)).toMatchObject([{ code: "outOfRange" }]);
  });
  it("what can be is taken", () => {
    expect(problemsOfHeat({ airF: 90, humidity: 50, sun: "full" })).toEqual([]);
    expect(problemsOfCold({ airF: -20, windMph: 15 })).toEqual([]);
    expect(problemsOfFlashToBang(12)).toEqual([]);
  });
});
