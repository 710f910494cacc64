import { edgeTapes, stakeLines, toMm } from "../../../machines/tent/tape.ts";
import type { Point, TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";

type Row = readonly (string | number)[];

/**
 * Every mark on the ground as a row: stations with their reading along their edge, plates with theirs along the stake line,
 * poles by place alone. A corner stands once, with the edge that starts at it. x runs across from A–B, y up from D–A.
 */
export function markRows(plan: TentPlan, { layout, poleKind, stationKind, tapeText }: Words): Row[] {
  const place = ({ xFt, yFt }: Point) => [xFt, yFt, toMm(xFt), toMm(yFt)];
  const reading = (ft: number) => [tapeText(ft, "ft"), toMm(ft)];
  const tapes = edgeTapes(plan);
  const lines = stakeLines(plan);
  const { station, plate, pole } = layout.what;
  return [
    layout.columns,
    ...plan.stations.map((s): Row => {
      const mark = tapes.find((t) => t.edge === s.edge)!.marks.find((m) => m.station === s.id)!;
      const read = [...reading(mark.readingFt), ...reading(mark.backFt)];
      return [s.id, station, stationKind(s.kind), s.edge, ...place(s), ...read, "", s.plates, s.stakes];
    }),
    ...lines.flatMap(({ edge, marks }) =>
      marks.map((m): Row => {
        const at = plan.plates.filter((p) => p.station === m.station)[m.plate - 1]!;
        const kind = stationKind(plan.stations.find((s) => s.id === m.station)!.kind);
        const read = [...reading(m.readingFt), ...reading(m.backFt)];
        return [`${m.station}.${m.plate}`, plate, kind, edge, ...place(at), ...read, m.bearingDeg, 1, m.stakes];
      }),
    ),
    ...plan.poles.map((p): Row => [p.id, pole, poleKind(p.kind), "", ...place(p), "", "", "", "", "", "", ""]),
  ];
}
