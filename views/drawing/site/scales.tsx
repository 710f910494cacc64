import type { Point } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import { Label } from "../label.tsx";
import type { SiteFrame } from "./site-frame.ts";

const STEPS_FT = [5, 10, 20, 50, 100, 200, 500, 1000];
const MIN_STEP_PX = 40;

/** The baseline as far as it is seen, with feet along it at the left edge, and feet off it along the bottom. */
export function Scales({ pen, words: { siteDrawing: text } }: { pen: SiteFrame; words: Words }) {
  const { view, ink, at, highPx } = pen;
  const step = STEPS_FT.find((ft) => ft * pen.perFt >= MIN_STEP_PX) ?? STEPS_FT.at(-1)!;
  const [x0, top] = at({ xFt: 0, yFt: view.far });
  const [, begin] = at({ xFt: 0, yFt: 0 });
  const thin = { stroke: ink, "stroke-width": "1" };
  return (
    <g class="drawn-scales">
      <line x1={x0} y1={begin} x2={x0} y2={top} stroke={ink} stroke-width="1.2" stroke-dasharray="1 3" />
      <circle cx={x0} cy={begin} r="4" fill={ink} />
      {stepsIn(view.near + 20 / pen.perFt, view.far - 8 / pen.perFt, step).map((ft) => {
        const [x, y] = at({ xFt: 0, yFt: ft });
        return (
          <g>
            <line x1={x - 4} y1={y} x2={x + 4} y2={y} {...thin} />
            <Label frame={pen} x={16} y={y} text={String(ft).replace("-", "\u2212")} px={11} />
          </g>
        );
      })}
      {stepsIn(view.left + 30 / pen.perFt, view.right - 22 / pen.perFt, step).map((ft) => {
        const [x] = at({ xFt: ft, yFt: 0 });
        return (
          <g>
            <line x1={x} y1={highPx} x2={x} y2={highPx - 4} {...thin} />
            <Label frame={pen} x={x} y={highPx - 11} text={text.off(ft)} px={11} />
          </g>
        );
      })}
    </g>
  );
}

/** Points that were pressed, in their order, joined. */
export const Pressed = ({ pen, points }: { pen: SiteFrame; points: readonly Point[] }) => (
  <g class="drawn-pressed">
    {points.length > 1 && (
      <polyline
        points={points.map((p) => pen.at(p).join(",")).join(" ")}
        fill="none"
        stroke={pen.ink}
        stroke-width="2.5"
        stroke-dasharray="6 4"
      />
    )}
    {points.map((p, i) => {
      const [cx, cy] = pen.at(p);
      return (
        <g>
          <circle cx={cx} cy={cy} r="9" fill={pen.ink} />
          <text x={cx} y={cy} font-size="11" font-weight="700" fill={pen.ground}>
            {String(i + 1)}
          </text>
        </g>
      );
    })}
  </g>
);

function stepsIn(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.max(0, Math.floor(to / step) - first + 1) }, (_, i) => (first + i) * step + 0);
}
