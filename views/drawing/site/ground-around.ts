import { placeOf } from "../../../machines/install/site-clearances.ts";
import { clearanceRules } from "../../../machines/install/site-rules.ts";
import type { Frozen } from "../../../machines/install/step.ts";
import type { SiteModel } from "../../../machines/site/model.ts";
import type { ClearanceRules } from "../../../machines/site/rules.ts";
import type { Shape } from "../../../machines/site/shape.ts";
import type { Point } from "../../../machines/tent/types.ts";
import { inPlan } from "./site-frame.ts";

/** What lies around a tent, in feet of its own plan, and how wide its zones are. */
export type GroundAround = { readonly site: SiteModel; readonly rules: ClearanceRules };

/** What a job knows of the ground around its tent, as its drawings take it; `undefined` where nobody entered any. The same job gives the same one. */
export function groundAround(frozen: Frozen): GroundAround | undefined {
  const { brief, plan, limits } = frozen;
  if (!brief.siteModel) return undefined;
  const known = made.get(frozen);
  if (known) return known;
  const around = {
    site: moved(brief.siteModel, inPlan(plan, placeOf(plan, brief.siteModel))),
    rules: clearanceRules(limits, brief.siteModel.overhead),
  };
  made.set(frozen, around);
  return around;
}
const made = new WeakMap<Frozen, GroundAround>();

function moved({ buried, overhead, things, ground, ticketArea, ...rest }: SiteModel, to: (p: Point) => Point): SiteModel {
  return {
    ...rest,
    buried: buried.map((line) => ({ ...line, points: line.points.map(to) })),
    overhead: overhead.map((line) => ({ ...line, points: line.points.map(to) })),
    things: things.map((thing) => ({ ...thing, shape: shapeMoved(thing.shape, to) })),
    ground: ground && { ...ground, corners: ground.corners.map(to) },
    ticketArea: ticketArea && { ...ticketArea, corners: ticketArea.corners.map(to) },
  };
}

function shapeMoved(shape: Shape, to: (p: Point) => Point): Shape {
  switch (shape.is) {
    case "circle":
      return { ...shape, middle: to(shape.middle) };
    case "path":
      return { ...shape, points: shape.points.map(to) };
    case "polygon":
      return { ...shape, corners: shape.corners.map(to) };
  }
}
