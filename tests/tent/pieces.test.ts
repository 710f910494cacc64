import { describe, expect, test } from "vitest";
import { edgesAround, fits, looks, type Turn } from "./places.ts";
import { eighty, forty, hundred, planOf, sixty, twenty } from "./tents.ts";

const TURNS: readonly Turn[] = [0, 180];

describe("pieces in laying order from the near end", () => {
  test("split ends are named after their corners, mids are numbered", () => {
    expect(planOf(sixty).pieces.map((p) => [p.order, p.id])).toEqual([
      [1, "end-A"],
      [2, "end-D"],
      [3, "mid-1"],
      [4, "mid-2"],
      [5, "end-B"],
      [6, "end-C"],
    ]);
  });

  test("whole ends are named after their edge", () => {
    expect(planOf(forty).pieces.map((p) => p.id)).toEqual(["end-DA", "mid-1", "mid-2", "end-BC"]);
  });

  test("a one-piece top has no seams", () => {
    const plan = planOf(twenty);
    expect(plan.pieces).toEqual([{ id: "top", kind: "whole", order: 1, at: { xFt: 0, yFt: 0, widthFt: 20, lengthFt: 20 }, edges: {} }]);
    expect(plan.seams).toEqual([]);
    expect(plan.stations.filter((s) => s.kind === "seamEnd")).toEqual([]);
  });

  test("a square top with split ends has four pieces, one cross seam, and two ridge seams", () => {
    const plan = planOf({ ...eighty, lengthFt: 80, midsFt: [] });
    expect(plan.pieces.map((p) => p.id)).toEqual(["end-A", "end-D", "end-B", "end-C"]);
    expect(plan.seams.map((s) => s.id)).toEqual(["R-DA", "S1", "R-BC"]);
    expect(plan.seams[1]).toMatchObject({ lacePiece: "end-DA", eyeletPiece: "end-BC" });
    expect(plan.seams[1]!.halves.map((h) => [h.lacePiece, h.eyeletPiece])).toEqual([
      ["end-A", "end-B"],
      ["end-D", "end-C"],
    ]);
  });
});

describe("a piece in the wrong place cannot be laced", () => {
  test.each([
    ["80×100", eighty],
    ["60×120", sixty],
    ["100×200", hundred],
    ["40×80", forty],
  ])("%s: no piece fits another's place, turned or not, unless both are equal mids", (_, input) => {
    const { pieces } = planOf(input);
    for (const piece of pieces) {
      for (const place of pieces) {
        for (const turn of TURNS) {
          const right = turn === 0 && (piece.id === place.id || (piece.kind === "mid" && place.kind === "mid"));
          expect(fits(piece, place, turn), `${piece.id} in place of ${place.id}, turned ${turn}°`).toBe(right);
        }
      }
    }
  });

  test("a mid turned by 180° has lace where the eyelets belong", () => {
    const mid = planOf(eighty).pieces.find((p) => p.id === "mid-1")!;
    expect(edgesAround(mid)).toEqual([null, "lace", null, "eyelet"]);
    expect(edgesAround(mid, 180)).toEqual([null, "eyelet", null, "lace"]);
  });

  test("the four pieces of split ends differ in every orientation", () => {
    const ends = planOf(eighty).pieces.filter((p) => p.kind === "splitEnd");
    expect(new Set(ends.map(looks)).size).toBe(4);
  });
});
