import { expect, it } from "vitest";
import { isNoShelter } from "../../machines/install/storm-shelter.ts";

it.each(["the oak at gate 3", "under the pines", "the big top", "a gazebo", "the other tent", "the pavilion"])(
  "%s is no storm shelter",
  (place) => expect(isNoShelter(place)).toBe(true),
);
it.each([
  "the brick barn",
  "Oak Street School",
  "Pine Hill church",
  "the Pavilion Hotel",
  "the truck cabs",
  "fellowship hall",
  "the farmhouse",
])("%s may be one", (place) => expect(isNoShelter(place)).toBe(false));
