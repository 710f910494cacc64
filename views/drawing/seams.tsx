import type { Seam, TentPlan } from "../../machines/tent/types.ts";
import { type Box, type Frame, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";

/** Seam names, on the seam between the eave and the first pole. */
export function SeamNames({ plan, frame }: { plan: TentPlan; frame: Frame }) {
  return (
    <g class="drawn-seam-names">
      {plan.seams.map((seam) => {
        const [x, y] = frame.cloth(seamBox(seam, plan, frame));
        return (
          <g data-seam={seam.id}>
            <Label frame={frame} x={roundHundredth(x)} y={roundHundredth(y)} text={seam.id} bold />
          </g>
        );
      })}
    </g>
  );
}

/** Bounding box of a seam's name. */
export function seamBox(seam: Seam, { widthFt, lengthFt, spec }: TentPlan, { px }: Frame): Box {
  const inFt = roundHundredth(widthFt / 4 / (spec.quarterRings + 1));
  const size = { widthFt: px(seam.id.length * 7 + 4), heightFt: px(14) };
  if (seam.kind === "cross") return { xFt: inFt, yFt: seam.from.yFt, ...size };
  return { xFt: seam.to.xFt, yFt: seam.to.yFt === 0 ? inFt : lengthFt - inFt, ...size };
}
