import type { TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";
import { frameOf } from "./frame.ts";
import { Key, keyPx } from "./key.tsx";
import { PieceNames, Pieces } from "./pieces.tsx";
import { Poles, poleBox } from "./poles.tsx";
import { SeamNames, seamBox } from "./seams.tsx";
import { Plates, Stations } from "./stations.tsx";

/**
 * The tent from above, to scale, with edge D–A at the bottom and corner A at the bottom left: pieces in laying order, lace and
 * eyelet edges, seams, poles, stations, and stake plates. Sized for a phone 360 px wide; it scales with its container. Kinds
 * differ by shape, never by color alone; the classes `drawn-…` are for color.
 *
 * @example <TentDrawing plan={planTent(spec)} words={words} />
 */
export function TentDrawing({ plan, words: { drawing: text } }: { plan: TentPlan; words: Words }) {
  const frame = frameOf(plan, keyPx(plan));
  const kinds = (kind: "center" | "quarter") => plan.poles.filter((p) => p.kind === kind).length;
  const counts = {
    pieces: plan.pieces.length,
    seams: plan.seams.length,
    centers: kinds("center"),
    quarters: kinds("quarter"),
    stations: plan.stations.length,
  };
  const taken = [...plan.poles.map((p) => poleBox(p, frame)), ...plan.seams.map((s) => seamBox(s, plan, frame))];
  return (
    <svg
      class="drawn-tent"
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${frame.widthFt} ${frame.heightFt}`}
      width="100%"
      role="img"
      font-family="system-ui, sans-serif"
      font-weight="500"
      text-anchor="middle"
      dominant-baseline="central"
      stroke-linejoin="round"
    >
      <title>{text.title(plan.widthFt, plan.lengthFt)}</title>
      <desc>{text.desc(counts)}</desc>
      <Pieces plan={plan} frame={frame} />
      <Plates plan={plan} frame={frame} />
      <Stations plan={plan} frame={frame} />
      <Poles plan={plan} frame={frame} />
      <SeamNames plan={plan} frame={frame} />
      <PieceNames plan={plan} frame={frame} text={text} taken={taken} />
      <Key plan={plan} frame={frame} text={text} />
    </svg>
  );
}
