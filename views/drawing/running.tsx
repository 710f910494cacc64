import { OUTWARD } from "../../machines/tent/tape.ts";
import type { EdgeName, TentPlan } from "../../machines/tent/types.ts";
import { thin } from "./dimension.tsx";
import { roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import { RatioMark } from "./ratios.tsx";
import { type EdgeLabels, LEAD_PX, type Sheet, TEXT_PX } from "./sheet.ts";
import { spread } from "./spread.ts";

/** Names and running tape readings of all stations along the four edges, with leaders from their marks. */
export const Running = ({ plan, sheet }: { plan: TentPlan; sheet: Sheet }) => (
  <g class="drawn-running">
    {(Object.keys(OUTWARD) as EdgeName[]).map((edge) => (
      <RunningEdge plan={plan} sheet={sheet} of={sheet.edges[edge]} />
    ))}
  </g>
);

function RunningEdge({ plan, sheet, of }: { plan: TentPlan; sheet: Sheet; of: EdgeLabels }) {
  const { px, reach } = sheet;
  const { xFt: outX, yFt } = OUTWARD[of.edge];
  const outY = -yFt;
  const edgeOf = { AB: reach.left, BC: reach.top, CD: reach.right, DA: reach.bottom }[of.edge];
  const level = outX === 0;
  const stations = new Map(plan.stations.map((s) => [s.id, s]));
  const marks = of.labels
    .map((label) => {
      const s = stations.get(label.station)!;
      const x = sheet.x(s.xFt + OUTWARD[of.edge].xFt * plan.spec.setbackFt);
      const y = sheet.y(s.yFt + OUTWARD[of.edge].yFt * plan.spec.setbackFt);
      return { ...label, at: level ? x : y, line: level ? y : x };
    })
    .sort((a, b) => a.at - b.at);
  const moved = spread(
    marks.map((m) => m.at),
    px(of.gapPx),
  ).map(roundHundredth);
  const sign = level ? outY : outX;
  const out = (from: number, n: number) => roundHundredth(from + sign * px(n));
  return (
    <g class="drawn-running-edge" data-edge={of.edge}>
      {marks.map((m, i) => {
        const path: [number, number][] = [
          [m.at, out(m.line, 7)],
          [m.at, out(edgeOf, 8)],
          [moved[i]!, out(edgeOf, LEAD_PX - 3)],
        ];
        return (
          <g>
            <polyline points={path.map(([a, o]) => (level ? `${a},${o}` : `${o},${a}`)).join(" ")} {...thin(sheet)} />
            <StationReading sheet={sheet} of={of} station={m.station} reading={m.reading} along={moved[i]!} from={edgeOf} />
            {m.ratio && of.ratioPx !== null && (
              <RatioMark
                frame={sheet}
                {...(level
                  ? { x: moved[i]!, y: out(edgeOf, LEAD_PX + of.ratioPx) }
                  : { x: out(edgeOf, LEAD_PX + of.ratioPx), y: moved[i]! })}
                of={m.ratio}
                words={sheet.words}
                {...(of.arrangement === "turned" ? { turnDeg: -90 } : {})}
              />
            )}
          </g>
        );
      })}
    </g>
  );
}

type StationReadingProps = { sheet: Sheet; of: EdgeLabels; station: string; reading: string; along: number; from: number };

/** One station's name and reading, with the name nearest the mark. Rotated text reads from the right. */
function StationReading({ sheet, of, station, reading, along, from }: StationReadingProps) {
  const { px } = sheet;
  const out = of.edge === "AB" || of.edge === "BC" ? -1 : 1;
  const at = (n: number) => roundHundredth(from + out * px(n));
  if (of.arrangement === "rows")
    return (
      <>
        <Label frame={sheet} x={along} y={at(LEAD_PX + 6)} text={station} bold />
        <Label frame={sheet} x={along} y={at(LEAD_PX + 21)} text={reading} />
      </>
    );
  const nameFirst = of.edge === "CD" || of.edge === "BC";
  const [x, y] = of.arrangement === "turned" ? [along, at(LEAD_PX)] : [at(LEAD_PX), along];
  const name = <tspan font-weight="700">{station}</tspan>;
  return (
    <text
      class="drawn-label"
      x={x}
      y={y}
      font-size={px(TEXT_PX)}
      text-anchor={nameFirst ? "start" : "end"}
      fill={sheet.ink}
      transform={of.arrangement === "turned" ? `rotate(-90 ${x} ${y})` : undefined}
    >
      {nameFirst ? name : `${reading} `}
      {nameFirst ? ` ${reading}` : name}
    </text>
  );
}
