import type { Frame } from "./frame.ts";

type Props = {
  frame: Frame;
  x: number;
  y: number;
  text: string;
  px?: number;
  bold?: boolean;
  anchor?: "start" | "middle" | "end";
  /** Turned about its place, clockwise. */
  turnDeg?: number;
  class?: string;
};

/** A word with a rim of the page's color, so that lines under it do not make it hard to read. */
export function Label({ frame, x, y, text, px = 12, bold = false, anchor, turnDeg, class: name = "drawn-label" }: Props) {
  return (
    <text
      class={name}
      x={x}
      y={y}
      font-size={frame.px(px)}
      font-weight={bold ? "700" : undefined}
      text-anchor={anchor}
      transform={turnDeg ? `rotate(${turnDeg} ${x} ${y})` : undefined}
      fill="currentColor"
      stroke="Canvas"
      stroke-width={frame.px(4.5)}
      paint-order="stroke"
    >
      {text}
    </text>
  );
}
