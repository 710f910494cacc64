import type { Pen } from "./palette.ts";

type Props = {
  frame: Pen;
  x: number;
  y: number;
  text: string;
  px?: number;
  bold?: boolean;
  anchor?: "start" | "middle" | "end";
  /** Rotation about its position, clockwise. */
  turnDeg?: number;
  class?: string;
};

/** Text outlined in the page's color, so that it stays readable over lines. */
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
      fill={frame.ink}
      stroke={frame.ground}
      stroke-width={frame.px(4.5)}
      paint-order="stroke"
    >
      {text}
    </text>
  );
}
