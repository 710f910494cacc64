import type { THING_KINDS } from "../../../machines/site/model.ts";

/** What stands on a site, by its kind. */
export const THING_NAMES: Readonly<Record<(typeof THING_KINDS)[number], string>> = {
  building: "building",
  tent: "other tent",
  vehicle: "vehicle",
  engine: "engine",
  exit: "exit",
  lotLine: "lot line",
  tree: "tree",
  other: "obstacle",
};
