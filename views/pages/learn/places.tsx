import type { TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { Place } from "./state.ts";

/** The drawing is as wide as a phone's column; a place is pressed in a circle as large as any other target. */
const WIDE_PX = 328;
const TARGET_PX = 72;
const MARK_PX = 17;
const MARGIN_PX = TARGET_PX / 2;
/** Not so high that what answers it is far below. */
const MAX_HIGH_PX = 300;

type Props = {
  readonly plan: TentPlan;
  readonly places: readonly Place[];
  /** The place that was pointed at, or the right one. */
  readonly at: string | null;
  /** Where a press in the drawing leads; `null` where there is nothing more to press. */
  readonly wayTo: ((id: string) => string) | null;
  readonly words: Words;
};

/** The tent from above, near edge below, with nothing on it that says a name but corner A: places with numbers to point at. */
export const PlacesDrawing = ({ plan, places, at, wayTo, words: { learn } }: Props) => {
  const scale = Math.min((WIDE_PX - 2 * MARGIN_PX) / plan.widthFt, (MAX_HIGH_PX - 2 * MARGIN_PX) / plan.lengthFt);
  const left = (WIDE_PX - plan.widthFt * scale) / 2;
  const high = Math.round(plan.lengthFt * scale + 2 * MARGIN_PX);
  const x = (ft: number) => Math.round(left + ft * scale);
  const y = (ft: number) => Math.round(high - MARGIN_PX - ft * scale);
  return (
    <div class="places">
      <svg viewBox={`0 0 ${WIDE_PX} ${high}`} role={wayTo ? "group" : "img"} aria-label={learn.drawing}>
        <rect
          class="cloth"
          x={x(0)}
          y={y(plan.lengthFt)}
          width={Math.round(plan.widthFt * scale)}
          height={Math.round(plan.lengthFt * scale)}
        />
        {plan.seams.map((seam) => (
          <line class="seam" x1={x(seam.from.xFt)} y1={y(seam.from.yFt)} x2={x(seam.to.xFt)} y2={y(seam.to.yFt)} />
        ))}
        {plan.stations.map(({ xFt, yFt }) => (
          <circle class="station" cx={x(xFt)} cy={y(yFt)} r="3" />
        ))}
        <text class="corner-a" x={x(0) - 16} y={y(0) + 24}>
          {FIRST_CORNER}
        </text>
        {places.map(({ id, no, xFt, yFt }) => (
          <Spot no={no} x={x(xFt)} y={y(yFt)} isAt={id === at} to={wayTo ? wayTo(id) : null} label={learn.drawnPlace(no)} />
        ))}
      </svg>
    </div>
  );
};

/** Corners have their letters in every language. */
const FIRST_CORNER = "A";

type SpotProps = { readonly no: number; readonly x: number; readonly y: number; readonly isAt: boolean; readonly to: string | null; readonly label: string }; // biome-ignore format: one line reads best

const Spot = ({ no, x, y, isAt, to, label }: SpotProps) => {
  const drawn = (
    <>
      <circle class="reach" cx={x} cy={y} r={TARGET_PX / 2} />
      <circle class={isAt ? "spot at" : "spot"} cx={x} cy={y} r={MARK_PX} />
      <text class={isAt ? "no at" : "no"} x={x} y={y + 7} text-anchor="middle">
        {no}
      </text>
    </>
  );
  return to === null ? (
    drawn
  ) : (
    <a href={to} aria-label={label}>
      {drawn}
    </a>
  );
};
