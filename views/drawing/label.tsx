import type { Frame } from "./frame.ts";

type Props = {
  frame: Frame;
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
      fill="currentColor"
      stroke="Canvas"
      stroke-width={frame.px(4.5)}
      paint-order="stroke"
    >
      {text}
    </text>
  );
}
