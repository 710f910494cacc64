import type { JoinEdge, Piece, Side, TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";
import { type Box, type Frame, overlap, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import type { Pen } from "./palette.ts";

type Props = { plan: TentPlan; frame: Frame; text: Words["drawing"] };

/** Outlines of the pieces, with their joined edges. */
export function Pieces({ plan, frame }: Omit<Props, "text">) {
  return (
    <g class="drawn-pieces">
      {plan.pieces.map((piece) => (
        <g class="drawn-piece" data-piece={piece.id}>
          <polygon points={outlineOf(piece, frame)} fill="none" stroke={frame.ink} stroke-width="1" vector-effect="non-scaling-stroke" />
          {(Object.entries(piece.edges) as [Side, JoinEdge][]).map(([side, edge]) => (
            <JoinedEdge piece={piece} side={side} edge={edge} frame={frame} />
          ))}
        </g>
      ))}
    </g>
  );
}

/** Names and laying order of the pieces, clear of poles and seam names. Drawn last, over every line. */
export function PieceNames({ plan, frame, text, taken }: Props & { taken: readonly Box[] }) {
  return (
    <g class="drawn-piece-names">
      {plan.pieces.map((piece) => {
        const words = text.piece(piece.id);
        const box = freeBox(piece, frame, words.length, taken);
        const [x, y] = [frame.x(box.xFt), frame.y(box.yFt)];
        const left = roundHundredth(x - box.widthFt / 2);
        return (
          <g>
            <Order frame={frame} x={roundHundredth(left + frame.px(9))} y={y} order={piece.order} />
            <Label frame={frame} x={roundHundredth(left + frame.px(21))} y={y} text={words} anchor="start" bold />
          </g>
        );
      })}
    </g>
  );
}

/** A number of the laying order in a circle. */
export function Order({ frame, x, y, order }: { frame: Pen; x: number; y: number; order: number | string }) {
  return (
    <g class="drawn-order">
      <circle cx={x} cy={y} r={frame.px(9)} fill={frame.ground} stroke={frame.ink} stroke-width="1.5" vector-effect="non-scaling-stroke" />
      <text x={x} y={y} font-size={frame.px(12)} font-weight="700" fill={frame.ink}>
        {order}
      </text>
    </g>
  );
}

/** Ticks for the loops of a lace edge, dots for eyelets, just inside the edge. */
export function EdgeMarks(props: { frame: Frame; x1: number; y1: number; x2: number; y2: number; edge: JoinEdge }) {
  const { frame, edge, ...ends } = props;
  const lace = edge === "lace";
  return (
    <line
      class={`drawn-edge drawn-${edge}`}
      {...ends}
      stroke={frame.ink}
      stroke-width={frame.px(lace ? 5 : 3)}
      stroke-linecap={lace ? "butt" : "round"}
      stroke-dasharray={lace ? `${frame.px(1.2)} ${frame.px(4.8)}` : `0 ${frame.px(6)}`}
    />
  );
}

function JoinedEdge({ piece, side, edge, frame }: { piece: Piece; side: Side; edge: JoinEdge; frame: Frame }) {
  const inFt = frame.px(4);
  const { xFt, yFt, widthFt, lengthFt } = piece.at;
  const [left, right] = [xFt + inFt, xFt + widthFt - inFt];
  const [near, far] = [yFt + inFt, yFt + lengthFt - inFt];
  const [x1, y1, x2, y2] = {
    near: [left, near, right, near],
    far: [left, far, right, far],
    left: [left, near, left, far],
    right: [right, near, right, far],
  }[side] as [number, number, number, number];
  const [from, to] = [frame.cloth({ xFt: x1, yFt: y1 }), frame.cloth({ xFt: x2, yFt: y2 })];
  return <EdgeMarks frame={frame} edge={edge} x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />;
}

/** The corners of a piece in a drawing, as points of a polygon. */
export const outlineOf = ({ at }: Pick<Piece, "at">, { cloth }: Pick<Frame, "cloth">): string =>
  [
    cloth(at),
    cloth({ xFt: at.xFt, yFt: at.yFt + at.lengthFt }),
    cloth({ xFt: at.xFt + at.widthFt, yFt: at.yFt + at.lengthFt }),
    cloth({ xFt: at.xFt + at.widthFt, yFt: at.yFt }),
  ]
    .map((p) => p.join(","))
    .join(" ");

const FRACTIONS = [1 / 2, 1 / 4, 3 / 4, 3 / 8, 5 / 8, 1 / 8, 7 / 8];

function freeBox({ at }: Piece, { px }: Frame, letters: number, taken: readonly Box[]): Box {
  const size = { widthFt: px(22 + letters * 7), heightFt: px(18) };
  const spots = FRACTIONS.flatMap((fy) =>
    FRACTIONS.map((fx): Box => ({ xFt: at.xFt + at.widthFt * fx, yFt: at.yFt + at.lengthFt * fy, ...size })),
  );
  const inside = (b: Box) =>
    Math.abs(b.xFt - at.xFt - at.widthFt / 2) * 2 + b.widthFt <= at.widthFt &&
    Math.abs(b.yFt - at.yFt - at.lengthFt / 2) * 2 + b.heightFt <= at.lengthFt;
  return spots.find((b) => inside(b) && !taken.some((t) => overlap(b, t))) ?? spots[0]!;
}
