import { describe, expect, it } from "vitest";
import { parseWind } from "../../machines/speech/en/wind.ts";

const wind = (mph: number, gustMph: number | null, fromDeg: number | null = null, taken: object | null = null) => ({
  wind: { mph, gustMph, fromDeg, taken },
});

describe("a wind and its gust", () => {
  it.each([
    ["nineteen gusting twenty-six", wind(19, 26)],
    ["nineteen gusts twenty-six", wind(19, 26)],
    ["wind nineteen and gusting to 26", wind(19, 26)],
    ["winds nineteen gusting twenty-six", wind(19, 26)],
    ["the wind's at nineteen gusting 26", wind(19, 26)],
    ["it's nineteen gusting 26", wind(19, 26)],
    ["we've got nineteen gusting 26", wind(19, 26)],
    ["nineteen, no gusts", wind(19, 19)],
    ["19 with no gusts", wind(19, 19)],
    ["19 not gusting", wind(19, 19)],
    ["wind steady nineteen", wind(19, 19)],
    ["wind steady at nineteen", wind(19, 19)],
  ])("%s, wherever the job stands", (said, meant) => {
    expect(parseWind(said, false)).toEqual(meant);
    expect(parseWind(said, true)).toEqual(meant);
  });
  it.each([
    ["nineteen", wind(19, null)],
    ["steady nineteen", wind(19, 19)],
    ["nineteen steady", wind(19, 19)],
    ["steady 12 knots", wind(13.9, 13.9)],
  ])("%s, where the wind is asked", (said, meant) => {
    expect(parseWind(said, true)).toEqual(meant);
    expect(parseWind(said, false)).toBeNull();
  });
  it.each([
    ["gusting twenty-six", 26],
    ["gusts of twenty-six", 26],
    ["wind gusting 26", 26],
    ["it's gusting 26", 26],
    ["the wind is gusting 26", 26],
    ["gusts to forty", 40],
    ["a gust of forty five", 45],
    ["wind's up to forty", 40],
  ])("%s has a gust alone: the mean is no more than that", (said, mph) => expect(parseWind(said, false)).toEqual(wind(mph, mph)));
  it("blowing forty is a wind without its gust", () => expect(parseWind("it's blowing forty", false)).toEqual(wind(40, null)));
  it.each(["gusting pretty hard", "it's blowing hard", "up to forty"])("%s is talk", (said) => expect(parseWind(said, false)).toBeNull());
  it.each(["no gusts", "steady", "wind steady"])("%s has no mean", (said) =>
    expect(parseWind(said, true) ?? { notUnderstood: true }).toEqual({ notUnderstood: true }),
  );
});

describe("a unit said once goes for both parts", () => {
  it.each([
    ["twelve knots gusting eighteen", wind(13.9, 20.8)],
    ["twelve gusting eighteen knots", wind(13.9, 20.8)],
    ["twelve knots, gusts of eighteen", wind(13.9, 20.8)],
    ["twenty kilometers an hour gusting thirty", wind(12.5, 18.7)],
    ["20 km/h gusting 30", wind(12.5, 18.7)],
    ["six meters per second gusting nine", wind(13.5, 20.2)],
    ["twelve miles an hour gusting eighteen", wind(12, 18)],
    ["twelve knots gusting eighteen from the west", wind(13.9, 20.8, 270)],
  ])("%s", (said, meant) => expect(parseWind(said, false)).toEqual(meant));
  it("each in its own where both are said", () =>
    expect(parseWind("ten knots gusting eighteen miles an hour", false)).toEqual(wind(11.6, 18)));
});

describe("where it was read", () => {
  it.each([
    ["wind ten gusting fifteen in a lee", "lee"],
    ["ten gusting fifteen, in the lee of the barn, five minutes ago", "lee"],
    ["wind ten gusting fifteen out in the open", "open"],
  ])("%s", (said, exposure) => expect(parseWind(said, false)).toMatchObject({ wind: { mph: 10, gustMph: 15, exposure } }));
});

describe("where it blows from", () => {
  it.each([
    ["ten gusting fifteen from the west", wind(10, 15, 270)],
    ["ten gusting fifteen out of the southwest", wind(10, 15, 225)],
    ["ten gusting fifteen, from the north east", wind(10, 15, 45)],
    ["10 gusting 15 mph from the north-northwest", wind(10, 15, 337.5)],
    ["10 gusting 15 from NW", wind(10, 15, 315)],
    ["wind ten from the north", wind(10, null, 0)],
    ["wind from the west, ten gusting fifteen", wind(10, 15, 270)],
    ["out of the west at ten gusting fifteen", wind(10, 15, 270)],
    ["wind from the west at ten", wind(10, null, 270)],
    ["nineteen, no gusts, from the east", wind(19, 19, 90)],
    ["ten gusting fifteen from the west five minutes ago", wind(10, 15, 270, { minutesAgo: 5 })],
    ["ten gusting fifteen five minutes ago from the west", wind(10, 15, 270, { minutesAgo: 5 })],
    ["ten gusting fifteen from the west at quarter past two", wind(10, 15, 270, { hour: 2, minute: 15, half: null })],
  ])("%s", (said, meant) => expect(parseWind(said, false)).toEqual(meant));
  it.each(["ten gusting fifteen from the door", "wind ten from the truck", "ten gusting fifteen from northnorth"])(
    "%s is no point of the compass, so there is no such wind",
    (said) => expect(parseWind(said, false)).toEqual({ noSuchWind: true }),
  );
});
