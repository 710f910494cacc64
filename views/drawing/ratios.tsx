import type { Verdict } from "../../machines/loads/verdict.ts";
import type { Words } from "../text/words.ts";
import { roundHundredth } from "./frame.ts";
import type { Pen } from "./palette.ts";
import type { StationRatio } from "./station-ratio.ts";

/** Height of a ratio's box, px. */
export const RATIO_HIGH_PX = 12;
/** Width of a ratio's box, px: "10.25" and "10.25 or more" are the longest that are drawn whole. */
const WIDE_PX = { plain: 52, orMore: 92 } as const;
const widePx = ({ ratio, isAtLeast }: Pick<StationRatio, "ratio" | "isAtLeast">): number =>
  ratio !== null && isAtLeast ? WIDE_PX.orMore : WIDE_PX.plain;
/** Room of ratios with their boxes, along their text, px. */
export const widestPx = (all: Iterable<Pick<StationRatio, "ratio" | "isAtLeast">>): number => Math.max(...Array.from(all, widePx));
const SHOWN_PX = 11;

type Props = {
  readonly frame: Pen;
  readonly x: number;
  readonly y: number;
  readonly of: Pick<StationRatio, "verdict" | "ratio" | "isAtLeast">;
  readonly words: Words;
  /** Rotation about its middle, clockwise. */
  readonly turnDeg?: number;
};

/** A ratio in its box: filled where it is short, dashed where it is not known, and then with "or more" or a question mark, else open. */
export function RatioMark({ frame, x, y, of, words: { loads }, turnDeg }: Props) {
  const { verdict, ratio, isAtLeast } = of;
  const { px, ink, ground } = frame;
  const [wide, high] = [px(widePx(of)), px(RATIO_HIGH_PX)];
  const number = ratio === null ? "" : loads.ratio(ratio, isAtLeast);
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
        {verdict === "notKnown" && number === "" ? "?" : number}
      </text>
    </g>
  );
}

const CLASS: Readonly<Record<Verdict, string>> = { short: "is-short", notKnown: "is-not-known", notShort: "is-open" };
