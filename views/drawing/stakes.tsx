import type { StakePlate, TentPlan } from "../../machines/tent/types.ts";
import { thin } from "./dimension.tsx";
import { type Frame, roundHundredth } from "./frame.ts";

const PLATE_WIDTH_PX = 6;
/** Target width of a drawn plate in feet: side-by-side plates are 2 ft apart and should not touch. */
const PLATE_WIDTH_FT = 1.5;

/** Every stake plate with its stakes, at its bearing, and the strap to its station. */
export function StakedPlates({ plan, frame }: { plan: TentPlan; frame: Frame }) {
  const stations = new Map(plan.stations.map((s) => [s.id, s]));
  const size = Math.min(2, Math.max(1, PLATE_WIDTH_FT / frame.px(PLATE_WIDTH_PX)));
  const nth = new Map<string, number>();
  return (
    <g class="drawn-plates">
      {plan.plates.map((plate) => {
        const no = (nth.get(plate.station) ?? 0) + 1;
        nth.set(plate.station, no);
        const station = stations.get(plate.station)!;
        const [x, y] = [frame.x(plate.xFt), frame.y(plate.yFt)];
        return (
          <g class="drawn-plate" data-plate={`${plate.station}.${no}`}>
            <line x1={frame.x(station.xFt)} y1={frame.y(station.yFt)} x2={x} y2={y} {...thin(frame)} />
            {plate.replaced ? (
              <AnchorMark frame={frame} x={x} y={y} size={size} />
            ) : (
              <StakedPlate frame={frame} x={x} y={y} plate={plate} size={size} />
            )}
          </g>
        );
      })}
    </g>
  );
}

type Props = { frame: Frame; x: number; y: number; plate: Pick<StakePlate, "bearingDeg" | "stakes">; size: number };

/** A plate with a hole for each stake, in two rows along its bearing. */
export function StakedPlate({ frame, x, y, plate, size }: Props) {
  const px = (n: number) => roundHundredth(frame.px(n * size));
  const rows = Math.ceil(plate.stakes / 2);
  const [wide, long] = [px(PLATE_WIDTH_PX), px(3 + 3 * rows)];
  return (
    <g transform={`rotate(${plate.bearingDeg} ${x} ${y})`}>
      <rect x={roundHundredth(x - wide / 2)} y={roundHundredth(y - long / 2)} width={wide} height={long} fill={frame.ink} />
      {Array.from({ length: plate.stakes }, (_, i) => {
        const alone = i === plate.stakes - 1 && plate.stakes % 2 === 1;
        const cx = alone ? x : x + px(i % 2 === 0 ? -1.4 : 1.4);
        const cy = y + (Math.floor(i / 2) - (rows - 1) / 2) * px(3);
        return <circle class="drawn-stake" cx={roundHundredth(cx)} cy={roundHundredth(cy)} r={px(1)} fill={frame.ground} />;
      })}
    </g>
  );
}

/** Where an engineer's anchor is set: a ring with a cross, and no stake. */
export function AnchorMark({ frame, x, y, size }: Omit<Props, "plate">) {
  const half = roundHundredth(frame.px(3.5 * size));
  return (
    <g class="drawn-anchor" stroke={frame.ink} stroke-width={roundHundredth(frame.px(size))}>
      <circle cx={x} cy={y} r={half} fill={frame.ground} />
      <line x1={roundHundredth(x - half)} y1={y} x2={roundHundredth(x + half)} y2={y} />
      <line x1={x} y1={roundHundredth(y - half)} x2={x} y2={roundHundredth(y + half)} />
    </g>
  );
}
