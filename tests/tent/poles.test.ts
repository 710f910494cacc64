import { describe, expect, test } from "vitest";
import { eighty, hundred, kitCount, planOf, twenty } from "./tents.ts";

const at = (plan: ReturnType<typeof planOf>, id: string) => {
  const pole = plan.poles.find((p) => p.id === id)!;
  return [pole.xFt, pole.yFt];
};

describe("interior poles", () => {
  test("are numbered from the near end and from left to right", () => {
    expect(planOf(eighty).rows).toEqual([
      { id: "hip-DA", kind: "hip", quarters: ["Q1", "Q2", "Q3"], centers: [] },
      { id: "line-1", kind: "cross", quarters: ["Q4", "Q5"], centers: ["C1"] },
      { id: "line-2", kind: "cross", quarters: ["Q6", "Q7"], centers: ["C2"] },
      { id: "hip-BC", kind: "hip", quarters: ["Q8", "Q9", "Q10"], centers: [] },
    ]);
  });

  test("one ring is halfway to the ridge, with three poles per hip end", () => {
    const plan = planOf(eighty);
    expect(["Q1", "Q2", "Q3", "Q4", "C1", "Q5"].map((id) => at(plan, id))).toEqual([
      [20, 20],
      [40, 20],
      [60, 20],
      [20, 40],
      [40, 40],
      [60, 40],
    ]);
  });

  test("two rings have five and three poles per hip end and four per cross line", () => {
    const plan = planOf({ ...hundred, widthFt: 90, lengthFt: 110, midsFt: [20] });
    expect(plan.rows.map((r) => r.quarters.length)).toEqual([8, 4, 4, 8]);
    const near = plan.poles.filter((p) => p.row === "hip-DA");
    expect(near.filter((p) => p.ring === 1).map((p) => [p.xFt, p.yFt])).toEqual([15, 30, 45, 60, 75].map((x) => [x, 15]));
    expect(near.filter((p) => p.ring === 2).map((p) => [p.xFt, p.yFt])).toEqual([30, 45, 60].map((x) => [x, 30]));
  });

  test("a small top has one center pole in the middle and no quarter poles", () => {
    const plan = planOf(twenty);
    expect(plan.poles).toEqual([{ id: "C1", kind: "center", row: "line-1", ring: 0, xFt: 10, yFt: 10 }]);
  });

  test("a longer one-piece top has evenly spaced center poles between the hip points", () => {
    const plan = planOf({ ...twenty, widthFt: 40, lengthFt: 80, ridge: { kind: "evenly", count: 3 } });
    expect(plan.poles.map((p) => p.yFt)).toEqual([20, 40, 60]);
  });

  test("omitting a pole keeps the other names, and added poles are X1, X2 … in their own row", () => {
    const plan = planOf({ ...eighty, leaveOut: ["Q2"], add: [{ kind: "quarter", xFt: 40, yFt: 50 }] });
    expect(plan.rows[0]!.quarters).toEqual(["Q1", "Q3"]);
    expect(plan.rows.at(-1)).toEqual({ id: "added", kind: "added", quarters: ["X1"], centers: [] });
    expect(kitCount(plan, "quarterPole")).toBe(10);
    expect(kitCount(plan, "interiorStake")).toBe(12);
  });

  test("a row without poles does not exist", () => {
    expect(planOf({ ...eighty, leaveOut: ["Q1", "Q2", "Q3"] }).rows.map((r) => r.id)).toEqual(["line-1", "line-2", "hip-BC"]);
  });
});
