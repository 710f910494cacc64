import type { EdgeName, Station, StationKind, TentPlan } from "../../machines/tent/types.ts";
import { type Box, type Frame, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import type { Pen } from "./palette.ts";

type Props = { plan: TentPlan; frame: Frame };

/** Directions out of the tent, in which the letter or number of a station is drawn. */
const OUTWARD: Readonly<Record<EdgeName, readonly [x: number, y: number]>> = { AB: [-1, 0], BC: [0, 1], CD: [1, 0], DA: [0, -1] };
const CORNER_OUTWARD = { A: [-1, -1], B: [-1, 1], C: [1, 1], D: [1, -1] } as const;

/** Stake plates on the stake line with the straps to their stations. */
export function Plates({ plan, frame }: Props) {
  const stations = new Map(plan.stations.map((s) => [s.id, s]));
  return (
    <g class="drawn-plates">
      {plan.plates.map((plate) => {
        const station = stations.get(plate.station)!;
        const [x, y] = [frame.x(plate.xFt), frame.y(plate.yFt)];
        return (
          <g class="drawn-plate">
            <line
              x1={frame.x(station.xFt)}
              y1={frame.y(station.yFt)}
              x2={x}
              y2={y}
              stroke={frame.ink}
              stroke-width="0.75"
              vector-effect="non-scaling-stroke"
            />
            <PlateMark frame={frame} x={x} y={y} turnDeg={plate.bearingDeg} />
          </g>
        );
      })}
    </g>
  );
}

/** Every station with its letter or its number along the edge; its title has the full name. `unnamed` draws only the marks. */
export function Stations({ plan, frame, unnamed = false }: Props & { unnamed?: boolean }) {
  return (
    <g class="drawn-stations">
      {plan.stations.map((station) => (
        <g class={`drawn-station drawn-${station.kind}`} data-station={station.id}>
          <title>{station.id}</title>
          <StationMark kind={station.kind} frame={frame} x={frame.x(station.xFt)} y={frame.y(station.yFt)} />
          {!unnamed && <StationName station={station} plan={plan} frame={frame} />}
        </g>
      ))}
    </g>
  );
}

/** Bounding box of a station's mark. */
export const stationBox = ({ xFt, yFt }: Station, { px }: Frame): Box => ({ xFt, yFt, widthFt: px(12), heightFt: px(12) });

export function PlateMark({ frame, x, y, turnDeg }: { frame: Pen; x: number; y: number; turnDeg: number }) {
  const { px } = frame;
  const [wide, high] = [px(4.5), px(6)];
  return (
    <rect
      x={roundHundredth(x - wide / 2)}
      y={roundHundredth(y - high / 2)}
      width={wide}
      height={high}
      fill={frame.ink}
      transform={`rotate(${turnDeg} ${x} ${y})`}
    />
  );
}

/** Corner: filled square. Seam end: open diamond. Side: open ring. */
export function StationMark({ kind, frame, x, y }: { kind: StationKind; frame: Pen; x: number; y: number }) {
  const pen = { stroke: frame.ink, "stroke-width": "1.5", "vector-effect": "non-scaling-stroke" };
  if (kind === "side") return <circle cx={x} cy={y} r={frame.px(3)} fill={frame.ground} {...pen} />;
  const size = frame.px(kind === "corner" ? 8 : 7);
  const turn = kind === "corner" ? undefined : `rotate(45 ${x} ${y})`;
  const fill = kind === "corner" ? frame.ink : frame.ground;
  return (
    <rect
      x={roundHundredth(x - size / 2)}
      y={roundHundredth(y - size / 2)}
      width={size}
      height={size}
      fill={fill}
      transform={turn}
      {...pen}
    />
  );
}

function StationName({ station, plan, frame }: { station: Station } & Props) {
  const corner = station.kind === "corner";
  const [outX, outY] = corner ? CORNER_OUTWARD[station.id as keyof typeof CORNER_OUTWARD] : OUTWARD[station.edge];
  if (!corner && !isNamed(station, plan, frame)) return null;
  const farFt = plan.spec.setbackFt + frame.px(14);
  const x = frame.x(station.xFt + outX * farFt);
  const y = frame.y(station.yFt + outY * farFt);
  return (
    <Label
      frame={frame}
      x={x}
      y={y}
      text={corner ? station.id : station.id.slice(2)}
      px={corner ? 17 : 12}
      bold={station.kind !== "side"}
      class="drawn-station-name"
    />
  );
}

/** Whether there is room for a station's number. If bays are short, only seam ends and every 2nd, 5th, or 10th side are named. */
function isNamed(station: Station, plan: TentPlan, frame: Frame): boolean {
  if (station.kind === "seamEnd") return true;
  const edge = plan.edges.find((e) => e.name === station.edge)!;
  const roomFt = frame.px(edge.name === "AB" || edge.name === "CD" ? 14 : 18);
  const step = [1, 2, 5, 10, 20].find((n) => Math.min(...edge.baysFt) * n >= roomFt) ?? 50;
  const number = Number(station.id.slice(2));
  const clear = plan.stations.every(
    (s) => s.edge !== station.edge || s.kind !== "seamEnd" || Math.abs(Number(s.id.slice(2)) - number) >= step,
  );
  return number % step === 0 && clear;
}
