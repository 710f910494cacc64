import type { TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";
import { thin } from "./dimension.tsx";
import { type Frame, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import { EdgeMarks, Order } from "./pieces.tsx";
import { PoleMark } from "./poles.tsx";
import { RatioMark, widestPx } from "./ratios.tsx";
import type { Sheet } from "./sheet.ts";
import { AnchorMark, StakedPlate } from "./stakes.tsx";
import { StationMark } from "./stations.tsx";

type At = { frame: Frame; x: number; y: number };
type Line = readonly [text: string, mark: (at: At) => unknown];

const KEY_COLUMN_PX = 230;
const ROW_PX = 20;

/** How high the key is in px, with three columns, as it always has room for; `ratios`, with those of the screening and what they are. */
export const layoutKeyPx = (plan: TentPlan, words: Words, ratios: boolean): number =>
  ROW_PX * (1 + Math.ceil(linesOf(plan, words).length / 3) + (ratios ? RATIO_ROWS : 0));
/** A row of what the ratios are, a row of their marks, and the caution. */
const RATIO_ROWS = 3;

/** What the marks mean: only those that this tent has. */
export function LayoutKey({ plan, sheet: frame, y, ratios }: { plan: TentPlan; sheet: Sheet; y: number; ratios: boolean }) {
  const { px, units, words } = frame;
  const columns = frame.widePx >= 4 * KEY_COLUMN_PX ? 4 : 3;
  const rows = Math.ceil(linesOf(plan, words).length / columns);
  return (
    <g class="drawn-key">
      <Label frame={frame} x={px(20)} y={roundHundredth(y + px(ROW_PX / 2))} text={words.layoutDrawing.note[units]} anchor="start" />
      {linesOf(plan, words).map(([text, mark], i) => {
        const x = roundHundredth(px(34) + (i % columns) * px(KEY_COLUMN_PX));
        const at = roundHundredth(y + px(ROW_PX * (1.5 + Math.floor(i / columns))));
        return (
          <g>
            {mark({ frame, x, y: at })}
            <Label frame={frame} x={roundHundredth(x + px(20))} y={at} text={text} anchor="start" />
          </g>
        );
      })}
      {ratios && <RatioKey sheet={frame} y={roundHundredth(y + px(ROW_PX * (1.5 + rows)))} />}
    </g>
  );
}

/** What stands in the samples; it is no station's. */
const SAMPLE_RATIO = {
  short: { ratio: 1.2, isAtLeast: false },
  notKnown: { ratio: 0.8, isAtLeast: true },
  notShort: { ratio: 0.8, isAtLeast: false },
} as const;

/** What a ratio is, its three marks, and that it is a screening. */
function RatioKey({ sheet: frame, y }: { sheet: Sheet; y: number }) {
  const { px, words } = frame;
  const { ratio: text } = words.layoutDrawing;
  const row = (n: number) => roundHundredth(y + px(ROW_PX * n));
  return (
    <g class="drawn-ratio-key">
      <Label frame={frame} x={px(20)} y={row(0)} text={text.is} anchor="start" />
      {(["short", "notKnown", "notShort"] as const).map((verdict, i) => {
        const of = { verdict, ...SAMPLE_RATIO[verdict] };
        const halfPx = widestPx([of]) / 2;
        const x = roundHundredth(px(20 + halfPx) + i * px(KEY_COLUMN_PX));
        return (
          <g>
            <RatioMark frame={frame} x={x} y={row(1)} of={of} words={words} />
            <Label frame={frame} x={roundHundredth(x + px(halfPx + 8))} y={row(1)} text={text[verdict]} anchor="start" />
          </g>
        );
      })}
      <Label frame={frame} x={px(20)} y={row(2)} text={text.caution} anchor="start" bold />
    </g>
  );
}

function linesOf({ seams, poles, plates }: TentPlan, { drawing: { key }, layoutDrawing }: Words): Line[] {
  const joined: Line[] = [
    [key.seamEnd, (at) => <StationMark kind="seamEnd" {...at} />],
    [key.lace, (at) => <EdgeSample edge="lace" {...at} />],
    [key.eyelet, (at) => <EdgeSample edge="eyelet" {...at} />],
  ];
  const anchors: Line[] = [[layoutDrawing.key.anchor, (at) => <AnchorMark size={1.5} {...at} />]];
  const quarter: Line = [key.quarter, (at) => <PoleMark kind="quarter" {...at} />];
  return [
    [key.corner, (at) => <StationMark kind="corner" {...at} />],
    [key.side, (at) => <StationMark kind="side" {...at} />],
    ...(seams.length > 0 ? joined : []),
    [key.center, (at) => <PoleMark kind="center" {...at} />],
    ...(poles.some((p) => p.kind === "quarter") ? [quarter] : []),
    [layoutDrawing.key.plate, (at) => <StakedPlate plate={{ bearingDeg: 90, stakes: plates[0]!.stakes }} size={1.5} {...at} />],
    ...(plates.some((plate) => plate.replaced) ? anchors : []),
    [layoutDrawing.key.stakeLine, (at) => <Sample dash="6 4" {...at} />],
    [layoutDrawing.key.diagonal, (at) => <Sample dash="12 3 2 3" {...at} />],
    [layoutDrawing.baseline, (at) => <Sample width="4" {...at} />],
    [key.order, (at) => <Order order="" {...at} />],
  ];
}

const Sample = ({ frame, x, y, dash, width = "0.75" }: At & { dash?: string; width?: string }) => (
  <line
    x1={roundHundredth(x - frame.px(14))}
    y1={y}
    x2={roundHundredth(x + frame.px(14))}
    y2={y}
    {...thin(frame)}
    stroke-width={width}
    stroke-dasharray={dash}
  />
);
const EdgeSample = ({ frame, x, y, edge }: At & { edge: "lace" | "eyelet" }) => (
  <EdgeMarks frame={frame} edge={edge} x1={roundHundredth(x - frame.px(13))} y1={y} x2={roundHundredth(x + frame.px(13))} y2={y} />
);
