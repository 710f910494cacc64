import fc from "fast-check";
import { toCardinal as british } from "n2words/en-GB";
import { toCardinal as american, toOrdinal } from "n2words/en-US";
import { toWords } from "to-words/en-US";
import { describe, expect, it } from "vitest";
import { readNumber } from "../../machines/speech/en/numbers.ts";
import { readQuantity } from "../../machines/speech/en/quantities.ts";
import { inUnit } from "../../machines/speech/quantity.ts";
import { feetInches, inches } from "../../views/text/en/names.ts";

/** 0 to 2,000 one by one, then a sample up to 999,999 that includes every last digit. */
const WHOLE = [...Array.from({ length: 2001 }, (_, n) => n), ...Array.from({ length: 1021 }, (_, k) => 2001 + k * 977), 999_999];

describe("numbers spelled out by other libraries are read back", () => {
  const wrong = (write: (n: number) => string, numbers = WHOLE) =>
    numbers.flatMap((n) => {
      const said = readQuantity(write(n));
      return said.length === 1 && said[0]!.n === n && said[0]!.unit === null ? [] : [[write(n), said]];
    });
  it.each([
    ["to-words: One Hundred Twenty Eight", (n: number) => toWords(n)],
    ["n2words, American: one hundred twenty-eight", american],
    ["n2words, British: one hundred and twenty-eight", british],
    ["with commas after the thousands", (n: number) => american(n).replace("thousand ", "thousand, ")],
    ["in digits, with the comma", (n: number) => n.toLocaleString("en-US")],
    ["with no hyphens", (n: number) => british(n).replaceAll("-", " ")],
    ["shouted, with a full stop", (n: number) => `${american(n).toUpperCase()}.`],
  ])("%s", (_, write) => expect(wrong(write)).toEqual([]));
  it("negative numbers", () =>
    expect(
      wrong(
        american,
        WHOLE.filter((n) => n > 0 && n < 500).map((n) => -n),
      ),
    ).toEqual([]));
  it("hundredths, 0.01 to 19.99", () =>
    expect(
      wrong(
        american,
        Array.from({ length: 1999 }, (_, n) => (n + 1) / 100),
      ),
    ).toEqual([]));
  it("ordinals are not numbers", () => expect(WHOLE.slice(1).filter((n) => readQuantity(toOrdinal(n)).length > 0)).toEqual([]));
});

describe("a tape measure: every sixteenth from 0 to 12 in", () => {
  const PARTS: Readonly<Record<number, string>> = { 2: "half", 4: "quarter", 8: "eighth", 16: "sixteenth" };
  const marks = Array.from({ length: 12 * 16 + 1 }, (_, k) => {
    let [over, under] = [k % 16, 16];
    for (; over > 0 && over % 2 === 0; over /= 2) under /= 2;
    return { n: k / 16, whole: Math.floor(k / 16), over, under };
  });
  const inWords = ({ whole, over, under }: (typeof marks)[number], a: string, join: string) => {
    const part = over === 0 ? "" : over === 1 ? `${a} ${PARTS[under]}` : `${american(over)} ${PARTS[under]}s`;
    return [whole > 0 || over === 0 ? american(whole) : "", part].filter((t) => t !== "").join(join);
  };
  const misread = (write: (mark: (typeof marks)[number]) => string) =>
    marks.flatMap((mark) => {
      const said = readNumber(write(mark));
      return said?.unit === "in" && said.n === mark.n ? [] : [[write(mark), said]];
    });
  it.each([
    ["five and three sixteenths inches", (m: (typeof marks)[number]) => `${inWords(m, "a", " and ")} inches`],
    ["five and one half inches", (m) => `${inWords(m, "one", " and ")} inches`],
    ["five three sixteenths inches", (m) => `${inWords(m, "one", " ")} inches`],
    ["three sixteenths of an inch", (m) => (m.whole > 0 || m.over === 0 ? `${m.n} in` : `${inWords(m, "a", "")} of an inch`)],
    ["5-3/16 in.", (m) => `${[m.whole, m.over > 0 ? `${m.over}/${m.under}` : "0/16"].join("-")} in.`],
    ["5 3/16 inch", (m) => inches(m.n)],
  ])("%s", (_, write) => expect(misread(write)).toEqual([]));
  it("six foot five and three sixteenths", () => {
    const under12 = marks.filter((m) => m.n < 12 && m.n >= 1);
    const wrong = under12.filter((m) => {
      const said = readNumber(`six foot ${inWords(m, "a", " and ")}`);
      return said?.unit !== "ft" || Math.abs(said.n - 6 - m.n / 12) > 1e-12;
    });
    expect(wrong).toEqual([]);
  });
});

describe("lengths that the guide prints are read back within its 1/32 in rounding", () => {
  it("feet and inches", () =>
    fc.assert(
      fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), (ft) => {
        const said = readNumber(feetInches(ft));
        expect(said && Math.abs(inUnit(said, "in")! - ft * 12)).toBeLessThanOrEqual(1 / 32 + 1e-6);
      }),
    ));
  it("inches", () =>
    fc.assert(
      fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), (n) => {
        const said = readNumber(inches(n));
        expect(said?.unit).toBe("in");
        expect(Math.abs(said!.n - n)).toBeLessThanOrEqual(1 / 32 + 1e-9);
      }),
    ));
  it("every sixteenth of ten feet, as printed", () => {
    const wrong = Array.from({ length: 1921 }, (_, k) => k / 192).filter((ft) => {
      const said = readNumber(feetInches(ft));
      return said === null || Math.abs(inUnit(said, "ft")! - ft) > 1e-9;
    });
    expect(wrong).toEqual([]);
  });
});

describe("any text gives a plausible number or none", () => {
  const words =
    "a an and the one two six ten fifteen twenty fifty hundred thousand point half quarter quarters eighths sixteenths dozen foot feet inches metres cm degrees minus oh of 5 20 1/2 51/2 7.5 - , ' \"".split(
      " ",
    );
  it("every reading is finite, within a million, and unique", () =>
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(fc.constantFrom(...words), { maxLength: 9 }).map((w) => w.join(" ")),
        ),
        (text) => {
          const found = readQuantity(text);
          for (const { n } of found) expect(Math.abs(n)).toBeLessThanOrEqual(1e6);
          expect(new Set(found.map(({ n, unit }) => `${n} ${unit}`)).size).toBe(found.length);
        },
      ),
      { numRuns: 2000 },
    ));
});

/**
 * NIST SP 811 (2008), Appendix B.8, as printed there: exact factors in full, the others to seven digits. The knot has the
 * same value in the BIPM's SI Brochure, 8th edition, table 8: 1852/3600 m/s.
 */
describe("units against NIST SP 811, B.8", () => {
  const FOOT_M = 3.048e-1;
  const INCH_M = 2.54e-2;
  const MPH_MS = 4.4704e-1;
  const KNOT_MS = 5.144444e-1;
  const KMH_MS = 2.777778e-1;
  const LBF_N = 4.448222;
  it.each([
    ["1 m", "ft", 1 / FOOT_M],
    ["1 cm", "in", 0.01 / INCH_M],
    ["1 mm", "in", 0.001 / INCH_M],
    ["1 m/s", "mph", 1 / MPH_MS],
    ["1 knot", "mph", KNOT_MS / MPH_MS],
    ["1 km/h", "mph", KMH_MS / MPH_MS],
    ["1 newton", "lbf", 1 / LBF_N],
    ["1 kN", "lbf", 1000 / LBF_N],
  ])("%s in %s", (text, unit, n) => {
    const said = readNumber(text);
    expect(said?.unit).toBe(unit);
    expect(said!.n / n).toBeCloseTo(1, 6);
  });
  it("the knot is 1852/3600 m/s (BIPM, SI Brochure, 8th edition, table 8)", () =>
    expect((readNumber("3600 knots")!.n * MPH_MS) / 1852).toBeCloseTo(1, 12));
  it("exact conversions stay exact: 254 mm is 10 in, 3.048 m is 10 ft", () => {
    expect(readNumber("254 mm")).toEqual({ n: 10, unit: "in" });
    expect(readNumber("3.048 m")).toEqual({ n: 10, unit: "ft" });
  });
});
