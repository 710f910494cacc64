import { EXAMPLES } from "../../../machines/tent/examples.ts";
import { planTent } from "../../../machines/tent/plan.ts";
import type { StationKind } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { DrawFrame, Drawing } from "./drawing.ts";
import { moved, type XY } from "./geometry.ts";
import { Area, Dot, Hatch, Lettering, Line, Span, Strap } from "./strokes.tsx";
import { PlateAbove } from "./things.tsx";

/** Units for a foot. */
export const UNITS_PER_FT = 16;
/** A tent with stations of each kind on its side A–B, which is drawn with the tent at the right: plates stand where every plan has them. */
const PLAN = planTent(EXAMPLES.find(({ spec }) => spec.midsFt.length > 0)!.spec);

/** One station of a kind from above, to the scale of the plan: its pole, its plates square across their straps. Common practice, no source: the sheet has the last word. */
function station(kind: StationKind, [x, y]: XY, title: (w: Words) => string): DrawFrame {
  const { id, xFt, yFt } = PLAN.stations.find((s) => s.kind === kind && (kind === "corner" ? s.id === "A" : s.edge === "AB"))!;
  const plates = PLAN.plates.filter((p) => p.station === id);
  const at = (p: { xFt: number; yFt: number }): XY => [x + (p.xFt - xFt) * UNITS_PER_FT, y - (p.yFt - yFt) * UNITS_PER_FT];
  const tent: XY[] =
    kind === "corner"
      ? [
          [x, 0],
          [320, 0],
          [320, y],
          [x, y],
        ]
      : [
          [x, 0],
          [320, 0],
          [320, 200],
          [x, 200],
        ];
  return (words) => {
    const { labels } = words.handWork;
    const below: XY = at(plates.at(-1)!);
    return (
      <>
        <Area is="earth" points={tent} />
        <Hatch points={tent} apart={14} />
        <Line
          is="bold"
          points={
            kind === "corner"
              ? [
                  [x, 0],
                  [x, y],
                  [320, y],
                ]
              : [
                  [x, 0],
                  [x, 200],
                ]
          }
        />
        {plates.map((plate) => (
          <>
            <Strap points={[[x, y], at(plate)]} wide={9} part="strap" />
            <PlateAbove at={at(plate)} pullDeg={plate.bearingDeg} size={0.74} />
          </>
        ))}
        <Dot at={[x, y]} r={8} />
        <Dot at={[x, y]} r={3} is="solid" />
        <Lettering at={[kind === "corner" ? 266 : 276, kind === "corner" ? 30 : 40]} text={labels.tent} />
        <Lettering at={kind === "corner" ? [46, 30] : [58, 24]} text={title(words)} />
        {kind === "side" && (
          <Span from={[below[0], 168]} to={[x, 168]} text={words.feetInches(PLAN.spec.setbackFt)} at={[(below[0] + x) / 2, 186]} />
        )}
        {kind === "side" && <Line is="ghost" points={[moved(below, 0, 16), [below[0], 168]]} />}
        {kind !== "side" && <Lettering at={kind === "corner" ? [46, 170] : [58, 180]} text={labels.plates(plates.length)} />}
      </>
    );
  };
}

/** Plates at a side, at a seam end, at a corner, as every plan lays them out (`machines/tent/anchors.ts`: common practice, no source). */
export const plates: Drawing = {
  frames: [
    station("side", [232, 96], (w) => w.handWork.labels.side),
    station("seamEnd", [232, 100], (w) => w.handWork.labels.seamEnd),
    station("corner", [196, 76], (w) => w.handWork.labels.corner),
  ],
};
