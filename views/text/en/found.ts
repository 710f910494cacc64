import type { Shortfall } from "../../../machines/install/checks/computed.ts";
import { type Found, nameOf } from "../../../machines/install/found.ts";
import { offsetOf } from "../../../machines/site/model.ts";
import type { Point } from "../../../machines/tent/types.ts";
import { feetInches } from "./names.ts";
import { neighborName, placesText } from "./worked-out.ts";

/** A point as it was told: "12 ft along, 8 ft right". */
function pointText(point: Point): string {
  const { alongFt, offFt } = offsetOf(point);
  return `${feetInches(alongFt)} along${offFt === 0 ? "" : `, ${feetInches(Math.abs(offFt))} ${offFt < 0 ? "left" : "right"}`}`;
}

/** Every point of a line or a thing, in the order that they were told in. */
function wayText(found: Found): string {
  if (found.is !== "thing") return `from ${found.line.points.map(pointText).join(" to ")}`;
  const { shape } = found.thing;
  if (shape.is === "circle") return `${feetInches(shape.radiusFt)} around ${pointText(shape.middle)}`;
  return `from ${(shape.is === "path" ? shape.points : shape.corners).map(pointText).join(" to ")}`;
}

const kindText = (found: Found): string => {
  if (found.is === "thing") return neighborName(found.thing.kind);
  if (found.is === "buried") return `${neighborName(found.line.kind)} line`;
  return `overhead line, ${found.line.kv === null ? "voltage unknown" : `${found.line.kv} kV`}`;
};

/** What was found, with every number that counts: as it is read back, and as it stands in the record. */
export const foundText = (found: Found): string => `Found: ${kindText(found)}, ${wayText(found)}`;

/** What is too near to it, in one sentence each. */
const shutText = ({ of, distance, wanted, unit }: Shortfall): string => {
  const what = of.length === 0 ? "Ropes or cloth" : placesText(of, 3);
  return `${what}: ${distance ?? "?"} ${unit}, ${wanted ?? "?"} needed.`;
};

/** What the guide says to something that was found. */
export const foundTexts = {
  reply: (found: Found, shuts: readonly Shortfall[], dropped: boolean) => {
    const told =
      shuts.length === 0
        ? `"${nameOf(found)}" is on the plan. Nothing worked out is too near. Tape it all the same.`
        : `"${nameOf(found)}" is on the plan, and too near. ${shuts.map(shutText).join(" ")} Nothing goes on.`;
    return dropped ? `${told} The change that waited for a second person is dropped. Put it forward again.` : told;
  },
} as const;
