import { expect, it } from "vitest";
import { isNoShelter } from "../../machines/install/storm-shelter.ts";

it.each([
  "the oak at gate 3",
  "under the pines",
  "the big top",
  "a gazebo",
  "the other tent",
  "the pavilion",
  "the oak by the barn",
  "the elm by the truck",
  "the tent by the truck",
  "under the trees at the school",
  "picnic shelter",
  "the carport",
  "a golf cart",
  "the open shed",
  "bandstand",
  "the bus stop",
])("%s is no storm shelter", (place) => expect(isNoShelter(place)).toBe(true));
it.each([
  "the brick barn",
  "Oak Street School",
  "Pine Hill church",
  "the Pavilion Hotel",
  "the truck cabs",
  "fellowship hall",
  "the farmhouse",
  "the barn under the oaks",
  "the school across from the grove",
])("%s may be one", (place) => expect(isNoShelter(place)).toBe(false));
