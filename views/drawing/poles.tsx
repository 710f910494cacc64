import type { InteriorPole, TentPlan } from "../../machines/tent/types.ts";
import { type Box, type Frame, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import type { Pen } from "./palette.ts";

/** Center poles as filled discs, quarter poles as open triangles, each with its name. */
export function Poles({ plan, frame }: { plan: TentPlan; frame: Frame }) {
  return (
    <g class="drawn-poles">
      {plan.poles.map((pole) => (
        <g class={`drawn-pole drawn-${pole.kind}`} data-pole={pole.id}>
          <PoleMark kind={pole.kind} frame={frame} x={frame.x(pole.xFt)} y={frame.y(pole.yFt)} />
          <Label
            frame={frame}
            x={roundHundredth(frame.x(pole.xFt) + frame.px(6))}
            y={roundHundredth(frame.y(pole.yFt) - frame.px(12))}
            text={pole.id}
            anchor="start"
          />
        </g>
      ))}
    </g>
  );
}

/** Bounding box of a pole and its name. */
export const poleBox = (pole: InteriorPole, { px }: Frame): Box => ({
  xFt: pole.xFt + px(12),
  yFt: pole.yFt + px(6),
  widthFt: px(38),
  heightFt: px(26),
});

export function PoleMark({ kind, frame, x, y }: { kind: InteriorPole["kind"]; frame: Pen; x: number; y: number }) {
  const { px } = frame;
  if (kind === "center") return <circle cx={x} cy={y} r={px(5.5)} fill={frame.ink} stroke={frame.ground} stroke-width={px(1.5)} />;
  const points = [
    [x, y - px(6)],
    [x + px(5.5), y + px(4)],
    [x - px(5.5), y + px(4)],
  ];
  return (
    <polygon
      points={points.map((p) => p.map(roundHundredth).join(",")).join(" ")}
      fill={frame.ground}
      stroke={frame.ink}
      stroke-width="1.5"
      vector-effect="non-scaling-stroke"
    />
  );
}
