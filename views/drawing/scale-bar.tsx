import { METERS_PER_FOOT } from "../../machines/install/checks/units.ts";
import { roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import type { Sheet } from "./sheet.ts";

const STEPS = [50, 20, 10, 5, 2, 1];
const PARTS = 4;
const MAX_LENGTH_PX = 280;

/** A scale bar of four equal parts in whole feet or meters, which stays correct at any zoom. */
export function ScaleBar({ sheet, x, y }: { sheet: Sheet; x: number; y: number }) {
  const { px, units, words } = sheet;
  const oneFt = units === "mm" ? 1 / METERS_PER_FOOT : 1;
  const step = STEPS.find((n) => n * oneFt * PARTS <= px(MAX_LENGTH_PX)) ?? 1;
  const at = (n: number) => roundHundredth(x + n * step * oneFt);
  return (
    <g class="drawn-scale" data-step={step}>
      {Array.from({ length: PARTS }, (_, n) => (
        <rect
          x={at(n)}
          y={y}
          width={roundHundredth(step * oneFt)}
          height={px(7)}
          fill={n % 2 === 0 ? sheet.ink : "none"}
          stroke={sheet.ink}
          stroke-width="1"
          vector-effect="non-scaling-stroke"
        />
      ))}
      {[0, 1, 2].map((n) => (
        <Label frame={sheet} x={at(n)} y={roundHundredth(y - px(9))} text={String(n * step)} />
      ))}
      <Label frame={sheet} x={at(PARTS)} y={roundHundredth(y - px(9))} text={words.layoutDrawing.scale[units](PARTS * step)} />
    </g>
  );
}
