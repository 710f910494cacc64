import { diagonalsOf } from "../../machines/tent/tape.ts";
import { CORNERS, type TentPlan } from "../../machines/tent/types.ts";
import { Dimension, thin, unitVector, uprightDeg, type XY } from "./dimension.tsx";
import { type Box, overlap, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import { LEAD_PX, markAt, type Sheet, TEXT_PX, widthPx } from "./sheet.ts";

type Props = { plan: TentPlan; sheet: Sheet };

/** The footprint between the corner marks with a heavier baseline A–B, and the stake line around it. */
export function Outline({ plan, sheet }: Props) {
  const marks = CORNERS.map((c) => markAt(plan, sheet, c));
  const [a, b] = marks as [XY, XY];
  const stakes = sheet.lines.map(({ start }): XY => [sheet.x(start.xFt), sheet.y(start.yFt)]);
  return (
    <g class="drawn-outline">
      <polygon class="drawn-footprint" points={points(marks)} {...thin(sheet)} stroke-width="1.5" />
      <line class="drawn-baseline" x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} {...thin(sheet)} stroke-width="4" />
      <polygon class="drawn-stake-line" points={points(stakes)} {...thin(sheet)} stroke-dasharray="6 4" />
    </g>
  );
}

/** Overall length along the baseline, overall width along the near end, and the setback of the stake line. */
export function Overall({ plan, sheet }: Props) {
  const { px, reach, edges, units, words } = sheet;
  const [a, b, c, d] = CORNERS.map((corner) => markAt(plan, sheet, corner)) as [XY, XY, XY, XY];
  const lengthOf = (edge: string) => words.tapeText(plan.edges.find((e) => e.name === edge)!.lengthFt, units);
  const left = Math.max(a[0], b[0]) - (reach.left - px(LEAD_PX + edges.AB.reachPx + 14));
  const down = reach.bottom + px(LEAD_PX + edges.DA.reachPx + 22) - Math.min(a[1], d[1]);
  const top = reach.top - px(LEAD_PX + edges.BC.reachPx + 14);
  const aside = (p: XY): XY => [roundHundredth(p[0] - left), p[1]];
  const below = (p: XY): XY => [p[0], roundHundredth(p[1] + down)];
  const outX = roundHundredth(c[0] + plan.spec.setbackFt);
  return (
    <g class="drawn-overall">
      <Dimension frame={sheet} from={aside(a)} to={aside(b)} text={lengthOf("AB")} />
      <Dimension frame={sheet} from={below(a)} to={below(d)} text={lengthOf("DA")} />
      <Dimension frame={sheet} from={[c[0], roundHundredth(top)]} to={[outX, roundHundredth(top)]} text="" />
      <line
        x1={outX}
        y1={roundHundredth(top + px(10))}
        x2={outX}
        y2={roundHundredth(reach.top - px(6))}
        {...thin(sheet)}
        stroke-dasharray="1 3"
      />
      <Label
        frame={sheet}
        x={roundHundredth(outX + px(10))}
        y={roundHundredth(top)}
        text={words.layoutDrawing.setback(words.tapeText(plan.spec.setbackFt, units))}
        anchor="start"
        bold
      />
    </g>
  );
}

/** Candidate positions along a diagonal, as fractions of its length, in order of preference. */
const POSITIONS = Array.from({ length: 28 }, (_, n) => (n % 2 === 0 ? 0.3 + n / 200 : 0.3 - (n + 1) / 100)).flatMap((t) => [t, 1 - t]);

/** Position of each diagonal's length: on its line, clear of the occupied boxes if possible. */
export function diagonalTexts({ plan, sheet }: Props, taken: readonly Box[]) {
  const { AC, BD } = diagonalsOf(plan);
  const { px, units, words } = sheet;
  const done: Box[] = [];
  return (
    [
      ["A", "C", "A–C", AC],
      ["B", "D", "B–D", BD],
    ] as const
  ).map(([from, to, name, ft]) => {
    const [p, q] = [plan.stations.find((s) => s.id === from)!, plan.stations.find((s) => s.id === to)!];
    const text = words.layoutDrawing.diagonal(name, words.tapeText(ft, units));
    const half = px(widthPx(text)) / 2;
    const [ux, uy] = unitVector([p.xFt, p.yFt], [q.xFt, q.yFt]);
    const boxesAt = (t: number): Box[] =>
      [-1, -0.6, -0.2, 0.2, 0.6, 1].map((n) => ({
        xFt: p.xFt + (q.xFt - p.xFt) * t + ux * half * n,
        yFt: p.yFt + (q.yFt - p.yFt) * t + uy * half * n,
        widthFt: px(TEXT_PX + 4),
        heightFt: px(TEXT_PX + 4),
      }));
    const asideFt = (o: Box) => Math.abs((o.xFt - p.xFt) * uy - (o.yFt - p.yFt) * ux);
    const near = [...taken, ...done].filter((o) => asideFt(o) < o.widthFt + o.heightFt + px(TEXT_PX + 4));
    const touched = (t: number) => boxesAt(t).filter((b) => near.some((o) => overlap(b, o))).length;
    const t = POSITIONS.find((place) => touched(place) === 0) ?? POSITIONS.reduce((a, b) => (touched(b) < touched(a) ? b : a));
    const boxes = boxesAt(t);
    done.push(...boxes);
    return {
      from: p,
      to: q,
      text,
      boxes,
      xFt: p.xFt + (q.xFt - p.xFt) * t,
      yFt: p.yFt + (q.yFt - p.yFt) * t,
      turnDeg: uprightDeg(ux, -uy),
    };
  });
}

type Texts = { sheet: Sheet; texts: ReturnType<typeof diagonalTexts> };

/** Both diagonals, as dash-dot lines. */
export const Diagonals = ({ sheet, texts }: Texts) => (
  <g class="drawn-diagonals">
    {texts.map(({ from, to }) => (
      <line
        x1={sheet.x(from.xFt)}
        y1={sheet.y(from.yFt)}
        x2={sheet.x(to.xFt)}
        y2={sheet.y(to.yFt)}
        {...thin(sheet)}
        stroke-dasharray="12 3 2 3"
      />
    ))}
  </g>
);

/** The lengths of the diagonals, drawn over crossing lines. */
export const DiagonalLengths = ({ sheet, texts }: Texts) => (
  <g class="drawn-diagonal-lengths">
    {texts.map(({ text, xFt, yFt, turnDeg }) => (
      <Label frame={sheet} x={sheet.x(xFt)} y={sheet.y(yFt)} text={text} turnDeg={turnDeg} bold />
    ))}
  </g>
);

const points = (spots: readonly XY[]): string => spots.map((p) => p.join(",")).join(" ");
