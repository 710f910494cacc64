import { describe, expect, it } from "vitest";
import { numberInUnit } from "../../machines/speech/en/number-in-unit.ts";
import { readNumber } from "../../machines/speech/en/numbers.ts";
import { readQuantity } from "../../machines/speech/en/quantities.ts";
import { readClock } from "../../machines/speech/en/times.ts";
import type { Quantity } from "../../machines/speech/quantity.ts";
import { inUnit } from "../../machines/speech/quantity.ts";

const reads = (rows: readonly (readonly [text: string, n: number, unit: Quantity["unit"]])[]) =>
  it.each(rows)("%j is %d %s", (text, n, unit) => {
    const found = readQuantity(text);
    expect(found).toHaveLength(1);
    expect(found[0]!.n).toBeCloseTo(n, 9);
    expect(found[0]!.unit).toBe(unit);
    expect(readNumber(text)).toEqual(found[0]);
  });
const bare = (rows: readonly (readonly [text: string, n: number])[]) => reads(rows.map(([text, n]) => [text, n, null]));
const none = (texts: readonly string[]) => it.each(texts)("%j is none", (text) => expect(readQuantity(text)).toEqual([]));

describe("whole numbers in words", () =>
  bare([
    ["eight", 8],
    ["Eight.", 8],
    ["twenty-eight", 28],
    ["a hundred and twenty", 120],
    ["hundred and twenty", 120],
    ["a hundred and twenty-eight", 128],
    ["one hundred twenty eight", 128],
    ["one twenty eight", 128],
    ["twelve hundred", 1200],
    ["twelve hundred and fifty", 1250],
    ["a thousand and one", 1001],
    ["one thousand, two hundred thirty-four", 1234],
    ["nine hundred ninety-nine thousand nine hundred ninety-nine", 999_999],
    ["two and a half thousand", 2500],
  ]));

describe("whole numbers in digits, and partly in digits", () =>
  bare([
    ["8", 8],
    ["05", 5],
    ["1,200", 1200],
    ["1,200.5", 1200.5],
    ["999999", 999_999],
    ["8 hundred", 800],
    ["1 thousand 200", 1200],
    ["one hundred 28", 128],
  ]));

describe("digit by digit", () => {
  bare([
    ["one two eight", 128],
    ["three four five", 345],
    ["3 4 5", 345],
    ["one oh five", 105],
    ["1 o 5", 105],
    ["five five zero", 550],
    ["1 2 3 4 5 6", 123_456],
  ]);
  none(["oh five", "oh", "zero five five", "one oh", "1 2 3 4 5 6 7"]);
});

describe("dozens and nothing", () =>
  bare([
    ["a dozen", 12],
    ["half a dozen", 6],
    ["half dozen", 6],
    ["two dozen", 24],
    ["none", 0],
    ["nil", 0],
    ["zero", 0],
    ["nought", 0],
    ["naught", 0],
  ]));

describe("decimals", () => {
  bare([
    ["7.5", 7.5],
    [".5", 0.5],
    ["seven point five", 7.5],
    ["point five", 0.5],
    ["nought point five", 0.5],
    ["seven point two five", 7.25],
    ["seven point oh five", 7.05],
    ["seven point twenty-five", 7.25],
    ["7 point 25", 7.25],
  ]);
  none(["seven point", "point", "7.5.5", "7. five", "7.5 1/2", "seven point five and a half"]);
});

describe("fractions", () => {
  bare([
    ["a half", 0.5],
    ["half", 0.5],
    ["a quarter", 0.25],
    ["three quarters", 0.75],
    ["three fourths", 0.75],
    ["two thirds", 2 / 3],
    ["½", 0.5],
    ["7/8", 0.875],
    ["3/8ths", 0.375],
    ["3 16ths", 3 / 16],
    ["5⁄16", 5 / 16],
    ["three thirty-seconds", 3 / 32],
    ["seven sixty-fourths", 7 / 64],
    ["five and a half", 5.5],
    ["five and half", 5.5],
    ["five and three eighths", 5.375],
    ["five three eighths", 5.375],
    ["five and two eighths", 5.25],
    ["one and seven sixteenths", 1.4375],
    ["a hundred and three quarters", 100.75],
    ["5 1/2", 5.5],
    ["5-1/2", 5.5],
    ["5½", 5.5],
    ["5-½", 5.5],
    ["5 and 1/2", 5.5],
    ["five and 3/8", 5.375],
  ]);
  none([
    "1/0",
    "0/0",
    "5 3/2",
    "a third of",
    "third",
    "twenty third",
    "five half",
    "sixty fourths",
    "twenty two eighths",
    "3/4/24",
    "1 / 2",
  ]);
});

describe("inches", () =>
  reads([
    ["eight inches", 8, "in"],
    ["8in", 8, "in"],
    ["8 in.", 8, "in"],
    ['8"', 8, "in"],
    ["8''", 8, "in"],
    ["8-inch", 8, "in"],
    ["an inch", 1, "in"],
    ["half an inch", 0.5, "in"],
    ["half inch", 0.5, "in"],
    ["a half inch", 0.5, "in"],
    ["a quarter inch", 0.25, "in"],
    ["a quarter of an inch", 0.25, "in"],
    ["three quarters of an inch", 0.75, "in"],
    ["three quarter inch", 0.75, "in"],
    ["5/8 of an inch", 0.625, "in"],
    ["an inch and a half", 1.5, "in"],
    ["inch and a half", 1.5, "in"],
    ["six inches and three quarters", 6.75, "in"],
    ["five and a half inches", 5.5, "in"],
    ['5 1/2"', 5.5, "in"],
    ["five and three eighths of an inch", 5.375, "in"],
  ]));

describe("feet, and feet with inches, are returned in feet", () => {
  reads([
    ["five foot", 5, "ft"],
    ["a foot", 1, "ft"],
    ["half a foot", 0.5, "ft"],
    ["128'", 128, "ft"],
    ["20-foot", 20, "ft"],
    ["a foot and a half", 1.5, "ft"],
    ["foot and a half", 1.5, "ft"],
    ["two and a half feet", 2.5, "ft"],
    ["six foot two", 6 + 2 / 12, "ft"],
    ["6 Foot 2.", 6 + 2 / 12, "ft"],
    ["6-foot-2", 6 + 2 / 12, "ft"],
    ["six feet and two inches", 6 + 2 / 12, "ft"],
    ["six feet two and a half inches", 6 + 2.5 / 12, "ft"],
    ["six foot two and a half", 6 + 2.5 / 12, "ft"],
    ["six foot two inches and a half", 6 + 2.5 / 12, "ft"],
    ["six foot and a half inch", 6 + 0.5 / 12, "ft"],
    ["6'2\"", 6 + 2 / 12, "ft"],
    ["6' 2 1/2\"", 6 + 2.5 / 12, "ft"],
    ["6'-2 1/2\"", 6 + 2.5 / 12, "ft"],
    ["6′2″", 6 + 2 / 12, "ft"],
    ["6’2”", 6 + 2 / 12, "ft"],
    ["6 ft 2 in", 6 + 2 / 12, "ft"],
    ["6 ft. 2 in.", 6 + 2 / 12, "ft"],
    ["6 ft, 2 in", 6 + 2 / 12, "ft"],
    ["6ft2", 6 + 2 / 12, "ft"],
    ["6 ft 11 15/16 in", 6 + (11 + 15 / 16) / 12, "ft"],
    ["a hundred and twenty-eight feet and three quarters of an inch", 128 + 0.75 / 12, "ft"],
  ]);
  none(["foot", "inch", "six foot in", "6 ft 12 in", "6 ft 14 in", "6.5 ft 2 in", "2 in 6 ft", "6 ft -2 in", "6 ft 2 ft", "'", '"']);
});

describe("metric lengths are converted to feet or inches, and add up", () => {
  reads([
    ["seven point five metres", 7.5 / 0.3048, "ft"],
    ["7.5 meters", 7.5 / 0.3048, "ft"],
    ["7.5 m", 7.5 / 0.3048, "ft"],
    ["half a metre", 0.5 / 0.3048, "ft"],
    ["two metres and a half", 2.5 / 0.3048, "ft"],
    ["2 metres 40", 2.4 / 0.3048, "ft"],
    ["two metre forty", 2.4 / 0.3048, "ft"],
    ["2m40", 2.4 / 0.3048, "ft"],
    ["two metres oh five", 2.05 / 0.3048, "ft"],
    ["2 m 05", 2.05 / 0.3048, "ft"],
    ["2 m 400", 2.4 / 0.3048, "ft"],
    ["2 m 40 cm", 2.4 / 0.3048, "ft"],
    ["2 m 40 cm 5 mm", 2.405 / 0.3048, "ft"],
    ["2 m 5 mm", 2.005 / 0.3048, "ft"],
    ["thirty centimetres", 30 / 2.54, "in"],
    ["30 centimeters", 30 / 2.54, "in"],
    ["two centimetres five millimetres", 2.5 / 2.54, "in"],
    ["750 mm", 750 / 25.4, "in"],
  ]);
  none(["2 m 140 cm", "40 cm 2 m", "2 m 6 in", "2.5 m 40 cm", "2 mm 5"]);
});

describe("degrees and turns", () =>
  reads([
    ["ten degrees", 10, "deg"],
    ["ten degree", 10, "deg"],
    ["ten and a half degrees", 10.5, "deg"],
    ["10°", 10, "deg"],
    ["10 deg", 10, "deg"],
    ["three turns", 3, "turns"],
    ["half a turn", 0.5, "turns"],
    ["three quarters of a turn", 0.75, "turns"],
    ["a turn and a half", 1.5, "turns"],
  ]));

describe("wind speeds are converted to mph", () => {
  reads([
    ["fourteen mph", 14, "mph"],
    ["14 miles an hour", 14, "mph"],
    ["14 miles per hour", 14, "mph"],
    ["14 m.p.h.", 14, "mph"],
    ["14 knots", (14 * 1.852) / 1.609344, "mph"],
    ["14 kt", (14 * 1.852) / 1.609344, "mph"],
    ["22 kph", 22 / 1.609344, "mph"],
    ["22 km/h", 22 / 1.609344, "mph"],
    ["22 kilometres an hour", 22 / 1.609344, "mph"],
    ["22 kilometers per hour", 22 / 1.609344, "mph"],
    ["six metres per second", (6 * 3.6) / 1.609344, "mph"],
    ["6 m/s", (6 * 3.6) / 1.609344, "mph"],
  ]);
  none(["14 miles", "14 kilometres", "14 miles an"]);
});

describe("forces are converted to lbf", () => {
  reads([
    ["eight hundred pounds", 800, "lbf"],
    ["800 lb", 800, "lbf"],
    ["800 lbs.", 800, "lbf"],
    ["800 lbf", 800, "lbf"],
    ["eight hundred pounds force", 800, "lbf"],
    ["two fifty pounds", 250, "lbf"],
    ["fifteen fifty pounds", 1550, "lbf"],
    ["two and a half thousand pounds", 2500, "lbf"],
    ["4 kN", 4000 / (0.45359237 * 9.80665), "lbf"],
    ["4kN", 4000 / (0.45359237 * 9.80665), "lbf"],
    ["four kilonewtons", 4000 / (0.45359237 * 9.80665), "lbf"],
    ["3,500 newtons", 3500 / (0.45359237 * 9.80665), "lbf"],
  ]);
  none(["80 kilos", "80 kg"]);
});

describe("negative numbers", () => {
  reads([
    ["minus three degrees", -3, "deg"],
    ["negative three", -3, null],
    ["-3", -3, null],
    ["−3", -3, null],
    ["–3", -3, null],
    ["-5 1/2", -5.5, null],
    ["minus six foot two", -(6 + 2 / 12), "ft"],
  ]);
  it.each(["-0", "minus zero"])("%j is positive zero", (text) => expect(Object.is(readNumber(text)?.n, 0)).toBe(true));
  none(["minus", "-", "minus minus three", "minus -3", "three minus"]);
});

describe("an ambiguous text returns all of its readings", () => {
  const ft = (feet: number, inches: number): Quantity => ({ n: feet + inches / 12, unit: "ft" });
  const n = (is: number): Quantity => ({ n: is, unit: null });
  it.each<[string, Quantity[]]>([
    ["six two", [n(62), ft(6, 2)]],
    ["6 2", [n(62), ft(6, 2)]],
    ["six ten", [n(610), n(6.1), ft(6, 10)]],
    ["20 8", [n(28), ft(20, 8)]],
    ["15 6", [n(156), ft(15, 6)]],
    ["1 28", [n(128), n(1.28)]],
    ["two fifty", [n(250), n(2.5)]],
    ["fifteen fifty", [n(1550), n(15.5)]],
    ["six two and a half", [n(62.5), ft(6, 2.5)]],
    ["six two inches", [{ n: 62, unit: "in" }, ft(6, 2)]],
    ["six two and a half inches", [{ n: 62.5, unit: "in" }, ft(6, 2.5)]],
    ["two fifty metres", [ft(250 / 0.3048, 0), ft(2.5 / 0.3048, 0)]],
    ["two metres five", [ft(2.05 / 0.3048, 0), ft(2.5 / 0.3048, 0)]],
    ["six feet and a half", [ft(6.5, 0), ft(6, 0.5)]],
    ["six foot three quarters", [ft(6.75, 0), ft(6, 0.75)]],
    ["twenty five sixteenths", [n(25 / 16), n(20 + 5 / 16)]],
    ["51/2", [n(25.5), n(5.5)]],
    [
      "4 kn",
      [
        { n: 4000 / (0.45359237 * 9.80665), unit: "lbf" },
        { n: (4 * 1.852) / 1.609344, unit: "mph" },
      ],
    ],
  ])("%j", (text, expected) => {
    const found = readQuantity(text);
    expect(found.map((f) => f.unit)).toEqual(expect.arrayContaining(expected.map((e) => e.unit)));
    expect(found).toHaveLength(expected.length);
    for (const e of expected) expect(found.some((f) => f.unit === e.unit && Math.abs(f.n - e.n) < 1e-9)).toBe(true);
    expect(readNumber(text)).toBeNull();
  });
});

describe("talk that contains a number", () =>
  none([
    "",
    " ",
    "next",
    "six to eight",
    "6-8",
    "6–8",
    "8 - 9",
    "eight or nine",
    "eight no nine",
    "about eight",
    "eight and",
    "and eight",
    "eight and nine",
    "eight eight or so",
    "thousand hundred",
    "a hundred dozen",
    "10 percent",
    "10%",
    "two to",
    "to",
    "too",
    "for",
    "four for",
    "one, two, three",
    "one. two. three",
    "gimme six more",
    "a",
    "a eight",
    "of an inch",
    "six two degrees",
    "fifteen six",
    "constructor",
    "1e3",
    "Infinity",
    "NaN",
  ]));

describe("implausibly large numbers", () =>
  none(["1000001", "one million", "twelve hundred thousand", "999,999 m", "-1000001", `9${"0".repeat(400)}`]));

describe("a text of 10 kB", () => {
  it.each([
    ["digits", "1".repeat(10_240)],
    ["digits with spaces", "1 ".repeat(5120)],
    ["digits with commas", "1,111".repeat(2048)],
    ["fractions", "1/".repeat(5120)],
    ["letters", "a".repeat(10_240)],
    ["dotted letters", "a.".repeat(5120)],
    ["hyphens", "1-".repeat(5120)],
    ["words", "one ".repeat(2560)],
    ["a sum of words", "a hundred and ".repeat(700)],
    ["two-word numbers", "twenty eight ".repeat(780)],
    ["mixed fractions", "twenty and a half ".repeat(560)],
    ["feet", "six foot ".repeat(1024)],
    ["metres", "2 m 40 cm ".repeat(1024)],
    ["vulgar fractions", "½".repeat(10_240)],
  ])("%s is neither a number nor a time", (_, text) => {
    expect(readQuantity(text)).toEqual([]);
    expect(readClock(text)).toBeNull();
  });
  it("may be mostly spaces", () => expect(readNumber(`${" ".repeat(5000)}8${" ".repeat(5000)}in`)).toEqual({ n: 8, unit: "in" }));
});

describe("the wanted unit", () => {
  it("feet and inches convert to each other", () => {
    expect(inUnit({ n: 2, unit: "ft" }, "in")).toBe(24);
    expect(inUnit({ n: 24, unit: "in" }, "ft")).toBe(2);
  });
  it("a bare number is assumed to be in it", () => expect(inUnit({ n: 8, unit: null }, "deg")).toBe(8));
  it.each([
    ["deg", "in"],
    ["in", "deg"],
    ["mph", "ft"],
    ["lbf", "mph"],
    ["turns", "deg"],
    ["in", "count"],
  ] as const)("%s does not convert to %s", (unit, wants) => expect(inUnit({ n: 3, unit }, wants)).toBeNull());
});

const at = (hour: number, minute: number, half: "am" | "pm" | null) => ({ hour, minute, half });

describe("a time that may be am or pm has no half", () =>
  it.each([
    ["2:15", 2, 15],
    ["10:15", 10, 15],
    ["1015", 10, 15],
    ["730", 7, 30],
    ["12:30", 12, 30],
    ["2 15", 2, 15],
    ["two fifteen", 2, 15],
    ["two oh five", 2, 5],
    ["two o'clock", 2, 0],
    ["2 o’clock", 2, 0],
    ["two o clock", 2, 0],
    ["quarter past two", 2, 15],
    ["a quarter past two", 2, 15],
    ["quarter after 2", 2, 15],
    ["half past ten", 10, 30],
    ["1/2 past 10", 10, 30],
    ["ten to three", 2, 50],
    ["10 minutes to 3", 2, 50],
    ["quarter of three", 2, 45],
    ["twenty-five to four", 3, 35],
    ["ten to one", 12, 50],
    ["ten to twelve", 11, 50],
    ["ten past two o'clock", 2, 10],
  ])("%s", (text, hour, minute) => expect(readClock(text)).toEqual(at(hour, minute, null))));

describe("a time with am or pm", () =>
  it.each([
    ["2:15 pm", 14, 15, "pm"],
    ["2:15pm", 14, 15, "pm"],
    ["2:15 P.M.", 14, 15, "pm"],
    ["2.15 pm", 14, 15, "pm"],
    ["2 pm", 14, 0, "pm"],
    ["two in the afternoon", 14, 0, "pm"],
    ["eight in the morning", 8, 0, "am"],
    ["eight in the evening", 20, 0, "pm"],
    ["two fifteen p m", 14, 15, "pm"],
    ["07:30 pm", 19, 30, "pm"],
    ["14:15 pm", 14, 15, "pm"],
    ["12:15 am", 0, 15, "am"],
    ["12:15 pm", 12, 15, "pm"],
    ["ten to one pm", 12, 50, "pm"],
    ["ten to twelve pm", 11, 50, "am"],
    ["quarter to twelve am", 23, 45, "pm"],
  ] as const)("%s", (text, hour, minute, half) => expect(readClock(text)).toEqual(at(hour, minute, half))));

describe("a time on the 24-hour clock", () =>
  it.each([
    ["14:15", 14, 15, null],
    ["14.15", 14, 15, null],
    ["1415", 14, 15, null],
    ["1415 hours", 14, 15, null],
    ["14 15", 14, 15, null],
    ["fourteen fifteen", 14, 15, null],
    ["fourteen hundred", 14, 0, null],
    ["fourteen hundred hours", 14, 0, null],
    ["twenty two thirty", 22, 30, null],
    ["twenty-one hundred", 21, 0, null],
    ["quarter past fourteen", 14, 15, null],
    ["00:30", 0, 30, null],
    ["0030 hours", 0, 30, null],
    ["midnight", 0, 0, null],
    ["ten to midnight", 23, 50, null],
    ["07:30", 7, 30, "am"],
    ["0730", 7, 30, "am"],
    ["oh seven thirty", 7, 30, "am"],
    ["oh seven hundred hours", 7, 0, "am"],
    ["zero seven thirty", 7, 30, "am"],
    ["1015 hours", 10, 15, "am"],
    ["ten hundred", 10, 0, "am"],
    ["1230 hours", 12, 30, "pm"],
    ["noon", 12, 0, "pm"],
    ["midday", 12, 0, "pm"],
    ["twelve noon", 12, 0, "pm"],
    ["ten to noon", 11, 50, "am"],
    ["ten to thirteen", 12, 50, "pm"],
  ] as const)("%s", (text, hour, minute, half) => expect(readClock(text)).toEqual(at(hour, minute, half))));

describe("how long ago", () =>
  it.each([
    ["now", 0],
    ["just now", 0],
    ["Just now.", 0],
    ["a minute ago", 1],
    ["five minutes ago", 5],
    ["5 mins ago", 5],
    ["two and a half minutes ago", 2.5],
    ["half an hour ago", 30],
    ["a half hour ago", 30],
    ["a quarter of an hour ago", 15],
    ["three quarters of an hour ago", 45],
    ["an hour ago", 60],
    ["an hour and a half ago", 90],
    ["two hours ago", 120],
    ["an hour and ten minutes ago", 70],
    ["thirty seconds ago", 0.5],
  ])("%s", (text, minutesAgo) => expect(readClock(text)).toEqual({ minutesAgo })));

describe("texts that are not a time", () =>
  it.each([
    "",
    "two",
    "14",
    "eight inches",
    "two five",
    "24:00",
    "25:15",
    "2:60",
    "14:15:20",
    "14:15 am",
    "1015 hours pm",
    "noon pm",
    "1,415",
    "-2:15",
    "two hundred",
    "14 hours",
    "half to three",
    "half ten",
    "ten two three",
    "twenty five fifteen",
    "twelve in the morning",
    "five minutes",
    "minutes ago",
    "a few minutes ago",
    "two to three minutes ago",
    "25 hours ago",
    "ago",
    "tomorrow",
    "about two fifteen",
    "constructor",
  ])("%j", (text) => expect(readClock(text)).toBeNull()));

describe("a number that could be another one is asked again", () => {
  it.each([
    ["one twenty-eight and three quarters of an inch", [10.729167, 128.0625]],
    ["128 and 3/4 of an inch", [10.729167, 128.0625]],
    ["128 3/4 of an inch", [10.729167, 128.0625]],
    ["a hundred and twenty-eight and three quarters of an inch", [10.729167, 128.0625]],
    ["10 4", [104, 10.333333]],
    ["eighty eighty-one", [8081, 80.81]],
  ])("%s, off a tape in feet", (said, n) => expect(numberInUnit(said, "ft")).toEqual({ ambiguous: { n, unit: "ft" } }));
  it.each([
    ["one and three quarters of an inch", 1.75],
    ["fourteen and a half inches", 14.5],
  ])("%s, where inches are asked, is that", (said, n) => expect(numberInUnit(said, "in")).toEqual({ n }));
  it.each([
    ["three quarters of an inch", 0.0625],
    ["128 feet and three quarters of an inch", 128.0625],
  ])("%s, where feet are asked, is that", (said, n) => expect(numberInUnit(said, "ft")).toEqual({ n }));
});

describe("nobody counts in parts", () => {
  it.each([
    ["one twenty", 120],
    ["one twelve", 112],
    ["two fifty", 250],
    ["a dozen", 12],
  ])("%s is %i", (said, n) => expect(numberInUnit(said, "count")).toEqual({ n }));
  it("10 4 may be two counts", () => expect(numberInUnit("10 4", "count")).toEqual({ notUnderstood: true }));
});
