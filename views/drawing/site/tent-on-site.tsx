import type { Clearance } from "../../../machines/site/clearances.ts";
import { type Place, type StakeName, standingAt, standingOf } from "../../../machines/site/stand.ts";
import { cornerOf } from "../../../machines/tent/tape.ts";
import { CORNERS, type TentPlan } from "../../../machines/tent/types.ts";
import { Label } from "../label.tsx";
import { onSite, type SitePen } from "./site-frame.ts";

type Props = { readonly plan: TentPlan; readonly place: Place; readonly pen: SitePen; readonly short: readonly Clearance[] };

/** A tent where it stands: cloth, stakes, poles, its corners by their letters. What stands too near is ringed and crossed. */
export function TentOnSite({ plan, place, pen, short }: Props) {
  const { px, ink, ground } = pen;
  const at = (p: Parameters<ReturnType<typeof onSite>>[0]) => pen.at(onSite(plan, place)(p));
  const corners = CORNERS.map((corner) => cornerOf(plan, corner));
  const [a, b] = corners.map(at);
  const middle = pen.at(place.middle);
  const tent = standingAt(standingOf(plan), place);
  const bad = new Set(short.map(({ of }) => JSON.stringify(of)));
  const isBad = (name: Clearance["of"] | StakeName) => bad.has(JSON.stringify(name));
  return (
    <g class="drawn-tent-on-site">
      <polygon points={corners.map((p) => at(p).join(",")).join(" ")} fill="none" stroke={ground} stroke-width={px(5)} />
      <polygon
        points={corners.map((p) => at(p).join(",")).join(" ")}
        fill="none"
        stroke={ink}
        stroke-width={px(isBad({ is: "outline" }) ? 3.4 : 1.8)}
        stroke-dasharray={isBad({ is: "outline" }) ? `${px(4)} ${px(3)}` : undefined}
      />
      <line x1={a![0]} y1={a![1]} x2={b![0]} y2={b![1]} stroke={ink} stroke-width={px(3.4)} />
      {tent.stakes.map(({ name, at: p }) => {
        const [x, y] = pen.at(p);
        return isBad(name) ? (
          <TooNear pen={pen} x={x} y={y} />
        ) : (
          <rect x={x - px(1.7)} y={y - px(1.7)} width={px(3.4)} height={px(3.4)} fill={ink} />
        );
      })}
      {tent.poles.map(({ name, at: p }) => {
        const [x, y] = pen.at(p);
        return isBad(name) ? (
          <TooNear pen={pen} x={x} y={y} />
        ) : (
          <circle cx={x} cy={y} r={px(2.2)} fill={ground} stroke={ink} stroke-width={px(1)} />
        );
      })}
      {CORNERS.map((corner, i) => {
        const [x, y] = at(corners[i]!);
        const [dx, dy] = [middle[0] - x, middle[1] - y];
        const far = Math.hypot(dx, dy) || 1;
        return <Label frame={pen} x={round(x + (dx / far) * px(13))} y={round(y + (dy / far) * px(13))} text={corner} px={13} bold />;
      })}
    </g>
  );
}

/** Ringed and crossed: told by its shape alone. */
const TooNear = ({ pen: { px, ink, ground }, x, y }: { pen: SitePen; x: number; y: number }) => (
  <g class="drawn-too-near">
    <circle cx={x} cy={y} r={px(6)} fill={ground} stroke={ink} stroke-width={px(1.8)} />
    {[1, -1].map((n) => (
      <line x1={x - px(3.4)} y1={y - n * px(3.4)} x2={x + px(3.4)} y2={y + n * px(3.4)} stroke={ink} stroke-width={px(2.2)} />
    ))}
  </g>
);

const round = (n: number): number => Math.round(n * 10) / 10;
