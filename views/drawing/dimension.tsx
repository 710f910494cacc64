import { type Frame, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import type { Palette } from "./palette.ts";

export type XY = readonly [x: number, y: number];
type Props = { frame: Frame; from: XY; to: XY; text: string; class?: string };

/** Stroke of dimension lines, extension lines, and leaders: equally thin on paper and on a screen. */
export const thin = ({ ink }: Palette) =>
  ({ stroke: ink, "stroke-width": "0.75", "vector-effect": "non-scaling-stroke", fill: "none" }) as const;

/** A dimension line with slanted ticks and short extension lines at its ends, and its length above the middle. */
export function Dimension({ frame, from, to, text, class: name = "drawn-dimension" }: Props) {
  const { px } = frame;
  const [across, down] = unitVector(from, to);
  const middle: XY = [roundHundredth((from[0] + to[0]) / 2), roundHundredth((from[1] + to[1]) / 2)];
  const turnDeg = uprightDeg(across, down);
  const lift = turnDeg === 0 ? [0, -px(9)] : [px(9) * Math.sin((turnDeg * Math.PI) / 180), -px(9) * Math.cos((turnDeg * Math.PI) / 180)];
  return (
    <g class={name}>
      <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} {...thin(frame)} />
      {[from, to].map(([x, y]) => (
        <g>
          <line
            x1={roundHundredth(x - down * px(6))}
            y1={roundHundredth(y + across * px(6))}
            x2={roundHundredth(x + down * px(6))}
            y2={roundHundredth(y - across * px(6))}
            {...thin(frame)}
          />
          <line
            x1={roundHundredth(x - (across + down) * px(4))}
            y1={roundHundredth(y - (down - across) * px(4))}
            x2={roundHundredth(x + (across + down) * px(4))}
            y2={roundHundredth(y + (down - across) * px(4))}
            {...thin(frame)}
            stroke-width="2"
          />
        </g>
      ))}
      <Label
        frame={frame}
        x={roundHundredth(middle[0] + lift[0]!)}
        y={roundHundredth(middle[1] + lift[1]!)}
        text={text}
        turnDeg={turnDeg}
        bold
      />
    </g>
  );
}

/** Vector of length 1 from one point toward another. */
export function unitVector(from: XY, to: XY): XY {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
}

/** Rotation of text along a line, in degrees clockwise, so that it reads from below or from the right. */
export function uprightDeg(across: number, down: number): number {
  const deg = roundHundredth((Math.atan2(down, across) * 180) / Math.PI);
  if (deg >= 90) return roundHundredth(deg - 180);
  return deg < -90 ? roundHundredth(deg + 180) : deg;
}
