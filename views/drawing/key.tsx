import type { TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";
import { type Frame, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import { EdgeMarks, Order } from "./pieces.tsx";
import { PoleMark } from "./poles.tsx";
import { PlateMark, StationMark } from "./stations.tsx";

type Mark = (at: { frame: Frame; x: number; y: number }) => unknown;

const MARKS: readonly [keyof Words["drawing"]["key"], Mark][] = [
  ["corner", (at) => <StationMark kind="corner" {...at} />],
  ["seamEnd", (at) => <StationMark kind="seamEnd" {...at} />],
  ["side", (at) => <StationMark kind="side" {...at} />],
  ["plate", (at) => <PlateMark turnDeg={0} {...at} />],
  ["center", (at) => <PoleMark kind="center" {...at} />],
  ["quarter", (at) => <PoleMark kind="quarter" {...at} />],
  ["lace", ({ frame, x, y }) => <EdgeLine frame={frame} x={x} y={y} edge="lace" />],
  ["eyelet", ({ frame, x, y }) => <EdgeLine frame={frame} x={x} y={y} edge="eyelet" />],
  ["order", (at) => <Order order="1" {...at} />],
];

/** Height of the key in px on the narrowest phone: a heading, and two marks per row. */
export const keyPx = (plan: TentPlan): number => 22 + 19 * Math.ceil(marksOf(plan).length / 2);

/** The legend below the near end, with only the marks that this tent has. */
export function Key({ plan, frame, text }: { plan: TentPlan; frame: Frame; text: Words["drawing"] }) {
  const { px } = frame;
  const topFt = frame.heightFt - px(keyPx(plan) - 6);
  const heading = `${text.nearEnd} · ${text.size(plan.widthFt, plan.lengthFt)}`;
  return (
    <g class="drawn-key">
      <Label frame={frame} x={roundHundredth(frame.widthFt / 2)} y={roundHundredth(topFt)} text={heading} bold px={13} />
      {marksOf(plan).map(([name, mark], i) => {
        const x = roundHundredth(px(40) + (i % 2) * px(160));
        const y = roundHundredth(topFt + px(22) + Math.floor(i / 2) * px(19));
        return (
          <g>
            {mark({ frame, x, y })}
            <Label frame={frame} x={roundHundredth(x + px(22))} y={y} text={text.key[name]} anchor="start" />
          </g>
        );
      })}
    </g>
  );
}

function marksOf({ seams, poles }: TentPlan): (typeof MARKS)[number][] {
  const has: Partial<Record<keyof Words["drawing"]["key"], boolean>> = {
    seamEnd: seams.length > 0,
    lace: seams.length > 0,
    eyelet: seams.length > 0,
    quarter: poles.some((p) => p.kind === "quarter"),
  };
  return MARKS.filter(([name]) => has[name] ?? true);
}

function EdgeLine({ frame, x, y, edge }: { frame: Frame; x: number; y: number; edge: "lace" | "eyelet" }) {
  const halfFt = frame.px(13);
  return <EdgeMarks frame={frame} edge={edge} x1={roundHundredth(x - halfFt)} y1={y} x2={roundHundredth(x + halfFt)} y2={y} />;
}
