/** A name, a number, and the number as it is read. */
export type BarRow = { readonly name: string; readonly n: number; readonly text: string };

/** The width of a drawing, in its own units: about those of the narrowest phone, so that its letters are as large as other ones. */
export const WIDE = 328;
/** A row: its words, and its mark below them. */
export const ROW = 50;
export const TEXT_Y = 18;
export const MARK_Y = 26;
export const MARK_HIGH = 14;

/** A length to a tenth of a unit. */
export const tenth = (n: number): number => Math.round(n * 10) / 10;

/** Numbers as bars, one below the other, with name and number over each. */
export const Bars = ({ rows, label }: { readonly rows: readonly BarRow[]; readonly label: string }) => {
  const most = Math.max(1, ...rows.map(({ n }) => n));
  return (
    <svg viewBox={`0 0 ${WIDE} ${rows.length * ROW}`} role="img" aria-label={label}>
      {rows.map(({ name, n, text }, i) => (
        <g transform={`translate(0 ${i * ROW})`}>
          <text x="0" y={TEXT_Y}>
            {name}
          </text>
          <text x={WIDE} y={TEXT_Y} text-anchor="end" font-weight="700">
            {text}
          </text>
          <rect x="0" y={MARK_Y} width={tenth((n / most) * WIDE)} height={MARK_HIGH} fill="currentColor" />
          <line x1="0" y1={MARK_Y + MARK_HIGH} x2={WIDE} y2={MARK_Y + MARK_HIGH} stroke="currentColor" />
        </g>
      ))}
    </svg>
  );
};
