import { MARK_HIGH, MARK_Y, ROW, TEXT_Y, tenth, WIDE } from "./bars.tsx";

/** A name with its quartiles, and the middle one as it is read. */
export type SpanRow = {
  readonly name: string;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly text: string;
};
type Tick = { readonly at: number; readonly text: string };

/** Room for the scale below the rows, and for half of a mark at either end. */
const SCALE_HIGH = 26;
const INSET = 4;
/** Room that the words of a tick take. */
const TICK_WIDE = 60;

/** Quartiles on one scale, on which twice as much is always as far apart: minutes and days stand on the same one. */
export const Spans = ({
  rows,
  ticks,
  label,
}: {
  readonly rows: readonly SpanRow[];
  readonly ticks: readonly Tick[];
  readonly label: string;
}) => {
  const [from, to] = [Math.max(1, Math.min(...rows.map(({ low }) => low))), Math.max(2, ...rows.map(({ high }) => high))];
  const long = Math.log(Math.max(2, to / from));
  const x = (n: number): number => tenth(INSET + (Math.log(Math.max(1, n) / from) / long) * (WIDE - 2 * INSET));
  const high = rows.length * ROW;
  const shown = apart(ticks.filter(({ at }) => at >= from && at <= to).map((tick) => ({ ...tick, x: x(tick.at) })));
  return (
    <svg viewBox={`0 0 ${WIDE} ${high + SCALE_HIGH}`} role="img" aria-label={label}>
      {shown.map(({ x, text }) => (
        <text x={Math.min(WIDE - TICK_WIDE / 2, Math.max(TICK_WIDE / 2, x))} y={high + TEXT_Y} text-anchor="middle">
          {text}
        </text>
      ))}
      {rows.map(({ name, low, middle, high, text }, i) => (
        <g transform={`translate(0 ${i * ROW})`}>
          <text x="0" y={TEXT_Y}>
            {name}
          </text>
          <text x={WIDE} y={TEXT_Y} text-anchor="end" font-weight="700">
            {text}
          </text>
          {shown.map(({ x }) => (
            <line x1={x} y1={MARK_Y - 2} x2={x} y2={MARK_Y + MARK_HIGH + 2} stroke="currentColor" stroke-dasharray="2 2" />
          ))}
          <rect
            x={x(low)}
            y={MARK_Y}
            width={tenth(Math.max(1, x(high) - x(low)))}
            height={MARK_HIGH}
            fill="none"
            stroke="currentColor"
            stroke-width="2"
          />
          <line x1={x(middle)} y1={MARK_Y - 4} x2={x(middle)} y2={MARK_Y + MARK_HIGH + 4} stroke="currentColor" stroke-width="6" />
        </g>
      ))}
    </svg>
  );
};

/** Those that have room for their words beside the one before. */
function apart<T extends { readonly x: number }>(ticks: readonly T[]): T[] {
  const shown: T[] = [];
  for (const tick of ticks) if (tick.x - (shown.at(-1)?.x ?? Number.NEGATIVE_INFINITY) >= TICK_WIDE) shown.push(tick);
  return shown;
}
