import { bench, describe } from "vitest";
import { squared } from "../../machines/site/squaring.ts";
import { moved, rectangle, TAPING, taped, without } from "../support/marks.ts";

const want = rectangle(100, 200);
const wanted = { want, inPer50Ft: 1, taping: TAPING };
const good = taped(want);
const off = taped(moved(moved(want, "C", 4, -2), "D", -3, 5));
const options = { time: 1000, warmupTime: 200 };

// Wanted: under 1 ms each.
describe("squaring", () => {
  bench("six lengths that are square", () => void squared(good, wanted), options);
  bench("five lengths", () => void squared(without(good, "BD"), wanted), options);
  bench("marks that have to move", () => void squared(off, wanted), options);
  bench("a length misread by a foot", () => void squared({ ...good, DA: 101 }, wanted), options);
});
