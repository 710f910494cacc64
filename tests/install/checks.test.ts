import { describe, expect, it, test } from "vitest";
import { finding, tileInput } from "../../machines/install/checks/any-check.ts";
import { type GivenMeasure, inUnitOf } from "../../machines/install/checks/measure.ts";
import { CHECKS } from "../../machines/install/checks/registry.ts";
import type { Unit } from "../../machines/install/checks/units.ts";
import type { FieldNumber, Fields } from "../../machines/install/checks/value-form.ts";
import { valueFromFields } from "../../machines/install/checks/values.ts";
import { measure, yes } from "../../machines/install/gates.ts";
import { TAPING } from "../support/marks.ts";

describe("a measurement, in the unit that its gate is asked in", () => {
  it.each<[n: number, unit: GivenMeasure["unit"], wants: Unit | null, is: [number, Unit] | null]>([
    [140, "mm", "in", [5.511811, "in"]],
    [25.4, "mm", "ft", [0.083333, "ft"]],
    [7.5, "m", "ft", [24.606299, "ft"]],
    [0.1, "m", "in", [3.937008, "in"]],
    [2, "ft", "in", [24, "in"]],
    [6, "in", "ft", [0.5, "ft"]],
    [-3.5, "deg", "deg", [-3.5, "deg"]],
    [-0, "in", "in", [0, "in"]],
    [2.5, "m", null, [8.2021, "ft"]],
    [3, "in", "deg", null],
    [3, "deg", "in", null],
    [3, "mm", "lbf", null],
  ])("%d %s, wanted in %s", (n, unit, wants, is) =>
    expect(inUnitOf({ kind: "measure", n, unit }, wants)).toEqual(is && { kind: "measure", n: is[0], unit: is[1] }),
  );
});

describe("the fields of a form, as the JSON that says the same", () => {
  const typed =
    (fields: Fields): FieldNumber =>
    (name) =>
      Number(fields[name]);
  it.each<[Fields, object]>([
    [
      { kind: "yesNo", value: "yes" },
      { kind: "yesNo", yes: true },
    ],
    [
      { kind: "count", value: "8" },
      { kind: "count", n: 8 },
    ],
    [
      { kind: "measure", value: "5.5", unit: "in" },
      { kind: "measure", n: 5.5, unit: "in" },
    ],
    [{ kind: "none" }, { kind: "none" }],
    [{ kind: "unknown" }, { kind: "unknown" }],
    [
      { kind: "lengths", length: "AB", value: "20" },
      { kind: "lengths", ft: { AB: 20 } },
    ],
    [
      { kind: "lengths", "ft.AB": "20", "ft.BC": " " },
      { kind: "lengths", ft: { AB: 20 } },
    ],
    [
      { kind: "counts", "n.sidePole": "3", "n.polePlate": "" },
      { kind: "counts", n: { sidePole: 3 } },
    ],
    [
      { kind: "document", value: "LT-7" },
      { kind: "document", named: "LT-7" },
    ],
    [
      { kind: "paper", by: "A", document: "B" },
      { kind: "paper", by: "A", document: "B" },
    ],
    [{ kind: "color", value: "red" }, { kind: "color" }],
  ])("%j", (fields, json) => expect(valueFromFields(fields, typed(fields))).toEqual(json));
});

describe("what an answer comes to, as data", () => {
  const check = { kind: "counts", want: { stakePlate: 44, sidePole: 30, polePlate: 9 }, as: null } as const;
  const loaded = { "kit.loaded": { value: { kind: "counts", n: { stakePlate: 46 } } } } as const;
  const counts = (n: Record<string, number>) => ({ kind: "counts", n }) as const;

  test("what is left to count and what is short; more is no fault of a load", () =>
    expect(finding(check, counts({ stakePlate: 50, sidePole: 28 }), { answers: {} })).toEqual({
      kind: "counts",
      missing: ["polePlate"],
      off: [{ item: "sidePole", n: 28, wanted: 30 }],
    }));
  test("coming back, what went out is wanted, no less and no more", () =>
    expect(finding({ ...check, as: "kit.loaded" }, counts({ stakePlate: 44, sidePole: 31 }), { answers: loaded })).toEqual({
      kind: "counts",
      missing: ["polePlate"],
      off: [
        { item: "stakePlate", n: 44, wanted: 46 },
        { item: "sidePole", n: 31, wanted: 30 },
      ],
    }));
  test("not known comes to nothing, and a yes is a yes", () => {
    expect(finding(check, { kind: "unknown" }, { answers: {} })).toBeNull();
    expect(finding(yes, { kind: "yesNo", yes: true }, { answers: {} })).toBeNull();
  });
});

describe("what a tile has to answer with, as data", () => {
  test("a number with its unit, and a button where it is good that there is none", () =>
    expect(tileInput(measure("ft", 20, null, true), undefined)).toEqual({
      input: "number",
      fields: { kind: "measure", unit: "ft" },
      keypad: "ft",
      choices: [{ fields: { kind: "none" }, value: { kind: "none" } }],
    }));
  test("lengths: the next one is the first that was not read", () => {
    const marks = { A: { xFt: 0, yFt: 0 }, B: { xFt: 0, yFt: 20 }, C: { xFt: 20, yFt: 20 }, D: { xFt: 20, yFt: 0 } };
    const tile = tileInput({ kind: "lengths", want: marks, inPer50Ft: 1, taping: TAPING }, { kind: "lengths", ft: { AB: 20, BC: 21 } });
    if (tile.input !== "readings") throw new Error(tile.input);
    expect([tile.next, tile.rows.map(({ name, good }) => [name, good]).slice(0, 3), tile.rows[1]!.offIn]).toEqual([
      "CD",
      [
        ["AB", true],
        ["BC", false],
        ["CD", false],
      ],
      12,
    ]);
  });
});

test("no kind of check stands under another name", () =>
  expect(Object.entries(CHECKS).filter(([name, { kind }]) => name !== kind)).toEqual([]));
