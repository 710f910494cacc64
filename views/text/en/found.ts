import type { Shortfall } from "../../../machines/install/checks/computed.ts";
import { type Found, nameOf } from "../../../machines/install/found.ts";
import { offsetOf } from "../../../machines/site/model.ts";
import type { Point } from "../../../machines/tent/types.ts";
import { feetInches } from "./names.ts";
import { neighborName, offsetText, placesText } from "./worked-out.ts";

/** A point as it was told: "12 ft along, 8 ft right". */
function pointText(point: Point): string {
  const { alongFt, offFt } = offsetOf(point);
  return offsetText(alongFt, offFt);
}

const everyPoint = (points: readonly Point[]): string => `from ${points.map(pointText).join(" to ")}`;
/** As many as are heard in one breath, else its ends. */
const MAX_POINTS_SAID = 3;
function ends(points: readonly Point[]): string {
  if (points.length <= MAX_POINTS_SAID) return everyPoint(points);
  return `${everyPoint([points[0]!, points.at(-1)!])}, by ${points.length - 2} points between`;
}

/** Where a line or a thing runs, in the order that its points were told in. */
function wayText(found: Found, way = everyPoint): string {
  if (found.is !== "thing") return way(found.line.points);
  const { shape } = found.thing;
  if (shape.is === "circle") return `${feetInches(shape.radiusFt)} around ${pointText(shape.middle)}`;
  return way(shape.is === "path" ? shape.points : shape.corners);
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
    // A side that nobody said was taken to be the right one: whoever told it hears which.
    const taken = `Taken ${wayText(found, ends)}. `;
    const told =
      shuts.length === 0
        ? `"${nameOf(found)}" is on the plan. Nothing worked out is too near. Tape it all the same.`
        : `"${nameOf(found)}" is on the plan, and too near. ${shuts.map(shutText).join(" ")} Nothing goes on.`;
    return dropped ? `${taken}${told} The change that waited for a second person is dropped. Put it forward again.` : `${taken}${told}`;
  },
} as const;
