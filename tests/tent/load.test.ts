import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type KitCatalog, loadingOrder, loadOf, ORDER_OF_USE, USUAL_SPARE, weightOf } from "../../machines/tent/load.ts";
import { eighty, hundred, planOf, twenty } from "./tents.ts";

const plans = [twenty, eighty, hundred].map(planOf);
/** A fraction as the form accepts it: 0 to 100%, to a ten-thousandth of a percent. */
const share = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1e6);
const note = fc.record({ spare: share, unitLb: fc.integer({ min: 1, max: 500_000 }).map((n) => n / 100) }, { requiredKeys: [] });
const catalog: fc.Arbitrary<KitCatalog> = fc.dictionary(fc.constantFrom(...ORDER_OF_USE), note) as never;
const plan = fc.constantFrom(...plans);
const lineOf = (item: string, kit: KitCatalog, p = plans[1]!) => loadOf(p, kit).find((line) => line.item === item)!;

describe("the loading list", () => {
  it("lists every item of the kit once", () => {
    for (const p of plans)
      expect(
        loadOf(p)
          .map((line) => line.item)
          .sort(),
      ).toEqual(p.kit.map((line) => line.item).sort());
  });
  it("is in order of use, and the truck is loaded in reverse", () => {
    const items = loadOf(plans[1]!).map((line) => line.item);
    expect(items.indexOf("perimeterStake")).toBe(0);
    expect(items.indexOf("midPiece")).toBeLessThan(items.indexOf("sidePole"));
    expect(items.indexOf("sidePole")).toBeLessThan(items.indexOf("centerPole"));
    expect(loadingOrder(items).at(-1)).toBe("perimeterStake");
    expect(loadingOrder(loadingOrder(items))).toEqual(items);
  });
  it("uses the yard's spares if given, otherwise the usual ones, and says which", () => {
    expect(lineOf("stakePlate", {})).toMatchObject({ share: USUAL_SPARE.stakePlate, shareBy: "usual" });
    expect(lineOf("stakePlate", { stakePlate: { spare: 0.08 } })).toMatchObject({ share: 0.08, shareBy: "yard" });
  });
  it("rounds spares up: 5% of 20 is 1, 5% of 21 is 2", () => {
    const kit = (count: number) => ({ kit: [{ item: "perimeterStake", count, use: "perimeterStake" }] }) as never;
    expect(loadOf(kit(20)).map((line) => line.spares)).toEqual([1]);
    expect(loadOf(kit(21)).map((line) => line.spares)).toEqual([2]);
  });
  it("has no spares at 0%", () => {
    const none = Object.fromEntries(ORDER_OF_USE.map((item) => [item, { spare: 0 }]));
    for (const p of plans) for (const line of loadOf(p, none)) expect(line).toMatchObject({ spares: 0, count: line.need });
  });
  it("counts what is needed plus the spares, rounded up from the fraction", () =>
    fc.assert(
      fc.property(plan, catalog, (p, kit) => {
        for (const { need, spares, count, share } of loadOf(p, kit)) {
          expect(count).toBe(need + spares);
          expect(Number.isInteger(spares)).toBe(true);
          expect(spares).toBeGreaterThanOrEqual(need * share - 1e-6);
          expect(spares).toBeLessThan(need * share + 1);
        }
      }),
    ));
  it("never has fewer spares for a larger fraction or need", () =>
    fc.assert(
      fc.property(share, share, fc.nat(2000), fc.nat(2000), (s, t, n, m) => {
        const spares = (need: number, spare: number) =>
          loadOf({ kit: [{ item: "sidePole", count: need + 1 }] }, { sidePole: { spare } })[0]!.spares;
        expect(spares(n, Math.max(s, t))).toBeGreaterThanOrEqual(spares(n, Math.min(s, t)));
        expect(spares(Math.max(n, m), s)).toBeGreaterThanOrEqual(spares(Math.min(n, m), s));
      }),
    ));
});

describe("the weight of a load", () => {
  it("is never guessed: items without a unit weight are listed as unknown", () => {
    const lines = loadOf(plans[1]!, { stakePlate: { unitLb: 12 } });
    const plates = lines.find((line) => line.item === "stakePlate")!;
    expect(plates.lb).toBe(12 * plates.count);
    expect(lines.filter((line) => line.item !== "stakePlate").every((line) => line.lb === null && line.unitLb === null)).toBe(true);
    expect(weightOf(lines)).toEqual({
      lb: plates.lb,
      unknown: lines.map((line) => line.item).filter((item) => item !== "stakePlate"),
    });
  });
  it("includes the spares, and is complete if every unit weight is known", () =>
    fc.assert(
      fc.property(plan, catalog, (p, kit) => {
        const all = Object.fromEntries(ORDER_OF_USE.map((item) => [item, { unitLb: 1, ...kit[item] }]));
        const lines = loadOf(p, all);
        const { lb, unknown } = weightOf(lines);
        expect(unknown).toEqual([]);
        expect(lb).toBeCloseTo(
          lines.reduce((sum, line) => sum + line.count * line.unitLb!, 0),
          6,
        );
      }),
    ));
});
