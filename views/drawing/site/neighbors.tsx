import type { Area, BuriedLine, OverheadLine, SiteModel, Thing } from "../../../machines/site/model.ts";
import { type ClearanceRules, knownFt, zoneTerms } from "../../../machines/site/rules.ts";
import type { Point } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { letterSpot, runsIn, type SitePen } from "./site-frame.ts";
import { UTILITY_COLOR } from "./utility-colors.ts";

type Props = { readonly pen: SitePen; readonly site: SiteModel; readonly words: Words };

const zoneFill = ({ fills = "site" }: SitePen): string => `${fills}-zone`;
const thingFill = ({ fills = "site" }: SitePen): string => `${fills}-thing`;

/** The hatching of zones and of things. Once in each drawing that shows a site. */
export const SiteFills = ({ pen }: { pen: SitePen }) => (
  <defs>
    <pattern id={zoneFill(pen)} width={pen.px(5)} height={pen.px(5)} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line x1={pen.px(2.5)} y1="0" x2={pen.px(2.5)} y2={pen.px(5)} stroke={pen.ink} stroke-width={pen.px(0.9)} stroke-opacity="0.75" />
    </pattern>
    <pattern id={thingFill(pen)} width={pen.px(7)} height={pen.px(7)} patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
      <line x1={pen.px(3.5)} y1="0" x2={pen.px(3.5)} y2={pen.px(7)} stroke={pen.ink} stroke-width={pen.px(0.7)} stroke-opacity="0.6" />
    </pattern>
  </defs>
);

/** The tolerance zone of every buried line, as one hatched surface. It goes under everything else. */
export function Zones({ pen, site, rules }: Props & { rules: ClearanceRules }) {
  const zones = site.buried.map((line) => ({
    points: seen(pen, line.points),
    wide: 2 * knownFt(zoneTerms(line, rules)) * pen.perFt,
  }));
  const each = (stroke: string, more: number) =>
    zones.map(({ points, wide }) =>
      points.map((run) => (
        <polyline points={run} fill="none" stroke={stroke} stroke-width={tenth(pen, wide + pen.px(more))} stroke-linecap="round" />
      )),
    );
  return (
    <g class="drawn-zones">
      {each(pen.ink, 1.6)}
      {each(pen.ground, 0)}
      {each(`url(#${zoneFill(pen)})`, 0)}
    </g>
  );
}

/** All that stands, hangs and lies on a site, and the edges of what was named. Letters come after them, over all else. */
export const Neighbors = ({ pen, site, words }: Props) => (
  <g class="drawn-site">
    {site.ticketArea && <AreaEdge pen={pen} area={site.ticketArea} dash={[2, 4]} />}
    {site.ground && <AreaEdge pen={pen} area={site.ground} dash={[9, 4]} />}
    {site.things.map((thing) => (
      <ThingMark pen={pen} thing={thing} words={words} />
    ))}
    {site.buried.map((line) => (
      <Buried pen={pen} line={line} />
    ))}
    {site.overhead.map((line) => (
      <Wire pen={pen} line={line} />
    ))}
  </g>
);

/** The letter of each line on its middle, and the name of each thing, readable over whatever is under it. */
export const NeighborLetters = ({ pen, site, words: { siteDrawing: text }, isNamed = false }: Props & { isNamed?: boolean }) => (
  <g class="drawn-site-letters">
    {site.buried.map((line) => (
      <Chip
        pen={pen}
        at={letterSpot(pen, line.points)}
        text={text.letter[line.kind]}
        color={UTILITY_COLOR[line.kind]}
        name={isNamed ? line.id : null}
      />
    ))}
    {site.overhead.map((line) => (
      <Chip pen={pen} at={letterSpot(pen, line.points)} text={text.overheadLetter} color={null} name={isNamed ? line.id : null} />
    ))}
    {site.things.map(({ kind, shape }) => {
      const middle = middleOf(shape.is === "circle" ? [shape.middle] : shape.is === "path" ? shape.points : shape.corners);
      // Beside a trunk, not over it.
      const downFt = shape.is === "circle" ? shape.radiusFt + pen.px(9) / pen.perFt : 0;
      return isIn(pen, middle) ? <At pen={pen} p={middle} downFt={downFt} text={text.thing[kind]} /> : null;
    })}
  </g>
);

/** A name inside of what is seen: where its thing runs out of the drawing it is moved in, so that it is read whole. */
function At({ pen, p, downFt, text }: { pen: SitePen; p: Point; downFt: number; text: string }) {
  const halfFt = (pen.px(NAME_PX) * LETTER_EM * text.length) / 2 / pen.perFt;
  const { left, right } = pen.view;
  const [x, y] = pen.at({ ...p, xFt: Math.max(left + halfFt, Math.min(right - halfFt, p.xFt)) });
  return <Label frame={pen} x={x} y={y + downFt * pen.perFt} text={text} px={NAME_PX} bold />;
}
const NAME_PX = 11;
/** How wide a bold letter is at most on average, of its height. */
const LETTER_EM = 0.66;

/** Where the letters of lines and wires stand, so that others keep away. */
export const lettersAt = (pen: SitePen, { buried, overhead }: SiteModel): XY[] =>
  [...buried, ...overhead].flatMap(({ points }) => {
    const spot = letterSpot(pen, points);
    return spot ? [pen.at(spot)] : [];
  });

/** A letter on its own ground, in a ring of its line's color; a wire's is square and has no color. */
type ChipProps = { readonly pen: SitePen; readonly text: string; readonly color: string | null; readonly name: string | null };
export function Chip({ at, ...chip }: ChipProps & { readonly at: Point | null }) {
  return at === null ? null : <ChipAt at={chip.pen.at(at)} {...chip} />;
}
function ChipAt({ pen, at: [x, y], text, color, name }: ChipProps & { readonly at: XY }) {
  const { px, ink, ground } = pen;
  const r = px(9);
  return (
    <g>
      {color === null ? (
        <rect x={x - px(13)} y={y - r} width={px(26)} height={px(18)} rx={px(2)} fill={ground} stroke={ink} stroke-width={px(1.4)} />
      ) : (
        <>
          <circle cx={x} cy={y} r={px(10.6)} fill={ink} />
          <circle cx={x} cy={y} r={px(9.6)} fill={color} />
          <circle cx={x} cy={y} r={px(7)} fill={ground} />
        </>
      )}
      <text x={x} y={y} font-size={px(11)} font-weight="700" fill={ink} text-anchor="middle" dominant-baseline="central">
        {text}
      </text>
      {name !== null && <Label frame={pen} x={x + px(16)} y={y} text={name} anchor="start" bold />}
    </g>
  );
}

/** In its color between two dark edges: a white or a yellow line is seen on light ground, too. */
const Buried = ({ pen, line }: { pen: SitePen; line: BuriedLine }) => (
  <g data-line={line.id}>
    {seen(pen, line.points).map((run) => (
      <>
        <polyline points={run} fill="none" stroke={pen.ink} stroke-width={pen.px(4)} />
        <polyline points={run} fill="none" stroke={UTILITY_COLOR[line.kind]} stroke-width={pen.px(2.6)} />
      </>
    ))}
  </g>
);

/** Long and short dashes: no buried line is drawn so. */
const Wire = ({ pen, line }: { pen: SitePen; line: OverheadLine }) => (
  <g data-line={line.id}>
    {seen(pen, line.points).map((run) => (
      <polyline points={run} fill="none" stroke={pen.ink} stroke-width={pen.px(2.4)} stroke-dasharray={dashes(pen, [11, 3, 2, 3])} />
    ))}
  </g>
);

function ThingMark({ pen, thing: { id, shape } }: { pen: SitePen; thing: Thing; words: Words }) {
  const how = { fill: `url(#${thingFill(pen)})`, stroke: pen.ink, "stroke-width": pen.px(1.8) };
  if (shape.is === "circle") {
    const [cx, cy] = pen.at(shape.middle);
    return isIn(pen, shape.middle) ? (
      <circle data-thing={id} cx={cx} cy={cy} r={tenth(pen, Math.max(pen.px(2), shape.radiusFt * pen.perFt))} {...how} />
    ) : null;
  }
  if (shape.is === "polygon")
    return seen(pen, [...shape.corners, shape.corners[0]!]).length > 0 ? (
      <polygon data-thing={id} points={pointsOf(pen, shape.corners)} {...how} />
    ) : null;
  return (
    <g data-thing={id}>
      {seen(pen, shape.points).map((run) => (
        <polyline points={run} fill="none" stroke={pen.ink} stroke-width={pen.px(2.6)} />
      ))}
    </g>
  );
}

const AreaEdge = ({ pen, area, dash }: { pen: SitePen; area: Area; dash: readonly number[] }) => (
  <polygon
    points={pointsOf(pen, area.corners)}
    fill="none"
    stroke={pen.ink}
    stroke-width={pen.px(1.6)}
    stroke-dasharray={dashes(pen, dash)}
  />
);

const seen = (pen: SitePen, points: readonly Point[]): string[] => runsIn(pen.view, points).map((run) => pointsOf(pen, run));
const pointsOf = (pen: SitePen, points: readonly Point[]): string => points.map((p) => pen.at(p).join(",")).join(" ");
const dashes = (pen: SitePen, lengths: readonly number[]): string => lengths.map(pen.px).join(" ");
/** Finer than is seen on this drawing. */
const tenth = (pen: SitePen, n: number): number => Math.round(n / pen.px(0.01)) * pen.px(0.01);
const isIn = ({ view }: SitePen, { xFt, yFt }: Point): boolean =>
  xFt >= view.left && xFt <= view.right && yFt >= view.near && yFt <= view.far;
const middleOf = (points: readonly Point[]): Point => ({
  xFt: points.reduce((sum, p) => sum + p.xFt, 0) / points.length,
  yFt: points.reduce((sum, p) => sum + p.yFt, 0) / points.length,
});
