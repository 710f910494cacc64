import fc from "fast-check";
import { expect, test } from "vitest";
import { rightAngle } from "../../machines/site/right-angle.ts";

test("is as large as the tape allows", () => expect(rightAngle(120, 60, 100)).toEqual({ alongFt: 80, acrossFt: 60, diagonalFt: 100 }));
test("is as large as the edges allow", () => expect(rightAngle(40, 40, 100)).toEqual({ alongFt: 40, acrossFt: 30, diagonalFt: 50 }));
test("puts the longer leg where there is more room", () =>
  expect(rightAngle(20, 40, 100)).toEqual({ alongFt: 18, acrossFt: 24, diagonalFt: 30 }));
test("is small with a 30 ft tape", () => expect(rightAngle(120, 60, 30)).toEqual({ alongFt: 24, acrossFt: 18, diagonalFt: 30 }));
test("does not exist for a 4 ft tape", () => expect(rightAngle(120, 60, 4)).toBeNull());
test("is right-angled and within the edges and the tape for any lengths", () => {
  const ft = fc.double({ min: 5, max: 400, noNaN: true });
  fc.assert(
    fc.property(ft, ft, ft, (along, across, tape) => {
      const found = rightAngle(along, across, tape)!;
      expect(found.alongFt ** 2 + found.acrossFt ** 2).toBe(found.diagonalFt ** 2);
      expect(found.alongFt <= along + 1e-5 && found.acrossFt <= across + 1e-5 && found.diagonalFt <= tape + 1e-5).toBe(true);
    }),
  );
});
