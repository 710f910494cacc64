import { expect, it } from "vitest";
import { aloud } from "../../views/text/en/spoken.ts";

it.each([
  ["8 in is not good: wanted 0 in to 6 in.", "8 inches is not good: wanted 0 inches to 6 inches."],
  ["5 1/2 in", "5 and a half inches"],
  ["89 ft 5 5/16 in", "89 feet 5 and 5 sixteenths inches"],
  ["3/4 in", "three quarters of an inch"],
  ["1/2 in", "a half of an inch"],
  ["1 in", "1 inch"],
  ["1 ft", "1 foot"],
  ["11 in", "11 inches"],
  ["-0.9°", "minus 0.9 degrees"],
  ["Wind 14 mph gusting 19", "Wind 14 miles an hour gusting 19"],
  ["900 lb", "900 pounds"],
  ["Seam 1, AB half", "Seam 1, A B half"],
  ["LT-2041", "LT-2041"],
  ["Stake in, strap in.", "Stake in, strap in."],
  ["4 in all", "4 in all"],
  ["2 in each corner", "2 in each corner"],
  ["Leans 1° at AB12, on AC", "Leans 1 degree at A B 12, on A C"],
  ["1 1/16 in", "1 and 1 sixteenth inches"],
])("%s is spoken as: %s", (written, spoken) => expect(aloud(written)).toBe(spoken));
