import { describe, expect, it } from "vitest";
import { exitsFor, overheadClearanceFt } from "../../machines/install/published-limits.ts";
import { feetInches } from "../../views/text/en/names.ts";

/**
 * Worked examples of the reference page that no test here repeats, because the program works out nothing of the kind. Numbers are
 * those of its table.
 *
 * | no. | example | why it is left out |
 * | --- | --- | --- |
 * | 5 | a call on Monday, digging on Friday | Notice differs by state: the ticket's own two dates count, and no date is figured from a call. |
 * | 37 | people on 3,200 sq ft | How many people come in is asked, since the floor area alone does not tell how it is used. |
 * | 39 | a permit from 401 sq ft | Each place sets its own threshold: whether one is required is asked, and where nobody knows, the call sends the lead to the fire official. |
 * | 40, 41 | weight that one person may lift | No lift is rated: nothing is asked about reach, height or grip. |
 * | 42 | weight that a team may lift | The same: the hands on each pole are counted, and no pounds are shared out among them. |
 * | 43 | hours in a noise of 100 dBA | No noise is measured: ears are covered whenever stakes are driven. |
 * | 44 | strap, hook and stake, the weakest counts | The screening is of stakes alone, and says on its page that straps, ratchets and plates are left out. |
 * | 45 | pull on a block and tackle | No pole is raised with one here. |
 * | 51, 52 | steel tape, corrected for heat, pull and sag | All corrections of example 52 together come to 0.25 ft, where squaring allows 0.73: a reading counts as it was taken. |
 */

// cfr.laws-info.com/text/29/1926/1408, and a copy of 1926.1407 at self-law.org (read).
describe('29 CFR 1926.1408 Table A: the value after "to" is included', () => {
  it.each([
    [50, 10],
    [50.1, 15],
    [200, 15],
    [201, 20],
    [350, 20],
    [500, 25],
    [750, 35],
    [1000, 45],
  ])("%d kV: %d ft", (kv, ft) => expect(overheadClearanceFt(kv)).toBe(ft));
  it("over 1,000 kV it is up to the line's owner or an engineer", () => expect(overheadClearanceFt(1001)).toBeNull());
  it("unknown voltage: 20 ft (1926.1407(a)(2))", () => expect(overheadClearanceFt(null)).toBe(20));
});

// 29 CFR 1910.333(c)(3)(i), from memory: 10 ft up to 50 kV to ground, and 4 in more for every 10 kV above that.
describe("10 ft and 4 in for every 10 kV over 50 (from memory)", () => {
  const byTensFt = (kv: number, tens = (n: number) => n) => 10 + (tens(Math.max(0, kv - 50) / 10) * 4) / 12;
  it("115 kV: 12 ft 2 in (computed), and the 15 ft of Table A govern", () => {
    expect(byTensFt(115)).toBeCloseTo(12 + 2 / 12, 2);
    expect(feetInches(byTensFt(115))).toBe("12 ft 2 in");
    expect(overheadClearanceFt(115)).toBe(15);
  });
  it("is never more than Table A, with each 10 kV that is begun counted whole", () => {
    const kinder = Array.from({ length: 1000 }, (_, n) => n + 1).filter((kv) => overheadClearanceFt(kv)! < byTensFt(kv, Math.ceil));
    expect(kinder).toEqual([]);
  });
});

// Table 3103.12.2, 2403.12.2 in older editions, by fbgtx.org (read). Its rows from 1,000 people on are from memory, and not used.
describe("International Fire Code Table 3103.12.2", () => {
  it.each([
    [199, 2, 72],
    [200, 3, 72],
    [499, 3, 72],
    [500, 4, 96],
    [999, 4, 96],
  ])("%d people: %d exits of %d in", (people, exits, widthIn) => expect(exitsFor(people)).toEqual({ exits, widthIn }));
  it("from 1,000 people it is up to the fire official", () => expect(exitsFor(1000)).toBeNull());
});
