import { type BarRow, TEXT_Y, tenth, WIDE } from "./bars.tsx";

const HIGH = 150;
/** Room for what stands below a column. */
const BELOW = 26;
const GAP = 8;

/** Numbers as columns side by side, with the number over each and what it is of below. */
export const Columns = ({ rows, label }: { readonly rows: readonly BarRow[]; readonly label: string }) => {
  const most = Math.max(1, ...rows.map(({ n }) => n));
  const wide = WIDE / Math.max(1, rows.length);
  const foot = TEXT_Y + 6 + HIGH;
  return (
    <svg viewBox={`0 0 ${WIDE} ${foot + BELOW}`} role="img" aria-label={label}>
      {rows.map(({ name, n, text }, i) => {
        const high = (n / most) * HIGH;
        const middle = tenth((i + 0.5) * wide);
        return (
          <>
            <text x={middle} y={tenth(foot - high - 6)} text-anchor="middle" font-weight="700">
              {text}
            </text>
            <rect x={tenth(i * wide + GAP / 2)} y={tenth(foot - high)} width={tenth(wide - GAP)} height={tenth(high)} fill="currentColor" />
            <text x={middle} y={foot + TEXT_Y} text-anchor="middle">
              {name}
            </text>
          </>
        );
      })}
      <line x1="0" y1={foot} x2={WIDE} y2={foot} stroke="currentColor" stroke-width="2" />
    </svg>
  );
};
