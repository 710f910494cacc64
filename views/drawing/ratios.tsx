import type { Verdict } from "../../machines/loads/verdict.ts";
import type { Words } from "../text/words.ts";
import { roundHundredth } from "./frame.ts";
import type { Pen } from "./palette.ts";
import type { StationRatio } from "./station-ratio.ts";

/** Room of a ratio with its box, along its text and across, px: "? 10.25" is the longest that is drawn whole. */
export const RATIO_PX = { wide: 52, high: 12 } as const;
const SHOWN_PX = 11;

type Props = {
  readonly frame: Pen;
  readonly x: number;
  readonly y: number;
  readonly of: Pick<StationRatio, "verdict" | "ratio">;
  readonly words: Words;
  /** Rotation about its middle, clockwise. */
  readonly turnDeg?: number;
};

/** A ratio in its box: filled where it is short, dashed with a question mark where it is not known, else open. */
export function RatioMark({ frame, x, y, of: { verdict, ratio }, words: { loads }, turnDeg }: Props) {
  const { px, ink, ground } = frame;
  const [wide, high] = [px(RATIO_PX.wide), px(RATIO_PX.high)];
  const number = ratio === null ? "" : loads.ratio(ratio);
  return (
    <g class={`drawn-ratio ${CLASS[verdict]}`} transform={turnDeg ? `rotate(${turnDeg} ${x} ${y})` : undefined}>
      <rect
        x={roundHundredth(x - wide / 2)}
        y={roundHundredth(y - high / 2)}
        width={wide}
        height={high}
        fill={verdict === "short" ? ink : ground}
        stroke={ink}
        stroke-width="1"
        stroke-dasharray={verdict === "notKnown" ? "3 2" : undefined}
        vector-effect="non-scaling-stroke"
      />
      <text x={x} y={y} font-size={px(SHOWN_PX)} font-weight="700" text-anchor="middle" fill={verdict === "short" ? ground : ink}>
        {verdict === "notKnown" ? `? ${number}`.trim() : number}
      </text>
    </g>
  );
}

const CLASS: Readonly<Record<Verdict, string>> = { short: "is-short", notKnown: "is-not-known", notShort: "is-open" };
