import { cornerOf } from "../../machines/tent/tape.ts";
import type { EdgeName, TentPlan } from "../../machines/tent/types.ts";
import { thin, type XY } from "./dimension.tsx";
import { roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import type { Pen } from "./palette.ts";
import type { Sheet } from "./sheet.ts";

/** The street along the edge that faces it: two curbs and its name. It shows the side, not the distance. */
export function Street({ sheet, edge, name }: { sheet: Sheet; edge: EdgeName; name: string }) {
  const { px, reach, words } = sheet;
  const level = edge === "BC" || edge === "DA";
  const at = { AB: px(18), BC: px(18), CD: sheet.widthFt - px(18), DA: sheet.belowY - px(14) }[edge];
  const [from, to] = level ? [reach.left, reach.right] : [reach.top, reach.bottom];
  const middle: XY = level ? [roundHundredth((from + to) / 2), roundHundredth(at)] : [roundHundredth(at), roundHundredth((from + to) / 2)];
  return (
    <g class="drawn-street">
      {[-10, 10].map((n) => {
        const o = roundHundredth(at + px(n));
        return level ? (
          <line x1={from} y1={o} x2={to} y2={o} {...thin(sheet)} stroke-width="1.5" />
        ) : (
          <line x1={o} y1={from} x2={o} y2={to} {...thin(sheet)} stroke-width="1.5" />
        );
      })}
      <Label frame={sheet} x={middle[0]} y={middle[1]} text={words.layoutDrawing.street(name)} turnDeg={level ? undefined : -90} bold />
    </g>
  );
}

type NorthProps = { plan: TentPlan; sheet: Sheet; x: number; y: number; bearingDeg: number };

/** A north arrow with its bearing. `bearingDeg` is the compass bearing from A to B, as taken on site. */
export const North = ({ plan, sheet, x, y, bearingDeg }: NorthProps) => (
  <g class="drawn-north">
    <NorthArrow pen={sheet} at={[x, y]} deg={northDeg(plan, bearingDeg)} text={sheet.words.layoutDrawing.north} />
    <Label frame={sheet} x={roundHundredth(x + sheet.px(36))} y={y} text={sheet.words.layoutDrawing.bearing(bearingDeg)} anchor="start" />
  </g>
);

/** The arrow alone, with its letter at the point. `deg` is where north is on the drawing, clockwise from up. */
export function NorthArrow({ pen, at: [x, y], deg, text, letterPx }: { pen: Pen; at: XY; deg: number; text: string; letterPx?: number }) {
  const { px, ink } = pen;
  const [sin, cos] = [Math.sin((deg * Math.PI) / 180), Math.cos((deg * Math.PI) / 180)];
  const corners = (...spots: XY[]) => spots.map(([dx, dy]) => `${roundHundredth(x + px(dx))},${roundHundredth(y + px(dy))}`).join(" ");
  return (
    <>
      <g transform={`rotate(${roundHundredth(deg)} ${x} ${y})`}>
        <polygon points={corners([0, -16], [6, 14], [0, 8])} {...thin(pen)} fill={ink} />
        <polygon points={corners([0, -16], [-6, 14], [0, 8])} {...thin(pen)} />
      </g>
      <Label frame={pen} x={roundHundredth(x + px(25) * sin)} y={roundHundredth(y - px(25) * cos)} text={text} px={letterPx} bold />
    </>
  );
}

/** Direction of north on the drawing, in degrees clockwise from up, based on the actual corner marks A and B. */
export function northDeg(plan: TentPlan, bearingDeg: number): number {
  const [a, b] = [cornerOf(plan, "A"), cornerOf(plan, "B")];
  return (Math.atan2(b.xFt - a.xFt, b.yFt - a.yFt) * 180) / Math.PI - bearingDeg;
}
