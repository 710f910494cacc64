import type { CallTexts } from "../call-text.ts";
import { anchorsScreened } from "./calls/anchors-screened.ts";
import { anchorsSet } from "./calls/anchors-set.ts";
import { conditions } from "./calls/conditions.ts";
import { inspected } from "./calls/inspected.ts";
import { interiorRaised } from "./calls/interior-raised.ts";
import { makingSafe } from "./calls/making-safe.ts";
import { perimeterRaised } from "./calls/perimeter-raised.ts";
import { sectionsJoined } from "./calls/sections-joined.ts";
import { standing } from "./calls/standing.ts";
import { struck } from "./calls/struck.ts";
import { tensioned } from "./calls/tensioned.ts";
import { utilitiesMarked } from "./calls/utilities-marked.ts";
import { weatherPlanCalls } from "./calls/weather-plan.ts";

/** The words of every call, way out and condition, by its name. */
export const calls: CallTexts = {
  ...utilitiesMarked,
  ...anchorsSet,
  ...anchorsScreened,
  ...sectionsJoined,
  ...perimeterRaised,
  ...interiorRaised,
  ...tensioned,
  ...inspected,
  ...standing,
  ...struck,
  ...makingSafe,
  ...conditions,
  ...weatherPlanCalls,
};
