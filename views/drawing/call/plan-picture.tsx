import type { Child } from "hono/jsx";
import type { Mark } from "../../../machines/picture/mark.ts";
import type { PlanPicture } from "../../../machines/picture/picture.ts";
import { stakeLines } from "../../../machines/tent/tape.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import type { Words } from "../../text/words.ts";
import { Label } from "../label.tsx";
import { outlineOf } from "../pieces.tsx";
import { PoleMark } from "../poles.tsx";
import { lettersAt, NeighborLetters, Neighbors, SiteFills, Zones } from "../site/neighbors.tsx";
import type { SitePen } from "../site/site-frame.ts";
import { StationMark } from "../stations.tsx";
import { apart, around } from "./apart.ts";
import { CornerLetters, letterAt, type Surroundings } from "./around.tsx";
import { Compass, spotsOf, type Toward } from "./compass.tsx";
import { cornersIn, labelsOf, type PlacedLabel, textWidePx } from "./labels.ts";
import { namesOf } from "./names.ts";
import { DrawnShape, Fills, type How, pointsOf } from "./shape.tsx";
import { shapesOf } from "./shapes.ts";
import { reachOf, type SmallFrame, tenth } from "./small-frame.ts";
import { SmallStreet, streetOf } from "./street.tsx";

type Props = {
  picture: PlanPicture;
  plan: TentPlan;
  frame: SmallFrame;
  street: Surroundings["street"];
  ground?: Surroundings["ground"];
  toward: readonly Toward[];
  words: Words;
};

/** The plan in small: all of it thin, what was done quiet, what comes next dashed, and what the call is about strong. */
export function PlanDrawing({ picture, plan, frame, street, ground, toward, words }: Props) {
  const { about, done, next, counts } = picture;
  const drawn = (marks: readonly Mark[], how: How) => (
    <g class={`drawn-${how}`}>
      {marks.map((mark) =>
        shapesOf(mark, plan, frame, counts).map((shape) => (
          // Several pieces are named: hatched, their names could not be read.
          <DrawnShape pen={frame} shape={shape.is === "area" && marks.length > 1 ? { ...shape, open: true } : shape} how={how} />
        )),
      )}
    </g>
  );
  const lines = ground && matters(about) ? { pen: sitePen(plan, frame), site: ground.site, words } : null;
  /** Labels lie over no letter of a corner or a line, over neither the street, north nor the wind, and over no pole that is meant. */
  const taken = [
    ...stakeLines(plan).map(({ start }) => around(letterAt(frame, frame.at(start)).at, 9)),
    ...[(street && streetOf(plan, frame, street)?.taken) ?? []].flat(),
    ...spotsOf(toward, frame).map((at) => around(at, 16)),
    ...(lines ? lettersAt(lines.pen, lines.site).map((at) => around(at, 11)) : []),
    ...about
      .flatMap((m) => (m.is === "poles" ? m.ids : []))
      .map((id) => around(frame.at(plan.poles.find((p) => p.id === id)!), frame.polePx)),
  ];
  const areas = (marks: readonly Mark[]) => marks.filter((m) => m.is === "piece" || m.is === "ground");
  const others = (marks: readonly Mark[]) => marks.filter((m) => m.is !== "piece" && m.is !== "ground");
  return (
    <>
      <Fills pen={frame} />
      {lines && <SiteFills pen={lines.pen} />}
      <Part frame={frame}>
        {lines && <Zones {...lines} rules={ground!.rules} />}
        {drawn(areas(about), "about")}
        <Thin plan={plan} frame={frame} counts={counts} />
        {lines && <Neighbors {...lines} />}
        {!counts && <Poles plan={plan} frame={frame} />}
        {drawn(done, "done")}
        {drawn(next, "next")}
        {drawn(others(about), "about")}
        {lines && <NeighborLetters {...lines} />}
      </Part>
      {street && <SmallStreet plan={plan} frame={frame} street={street} />}
      <Compass toward={toward} frame={frame} words={words} />
      <CornerLetters plan={plan} frame={frame} meant={cornersIn(about)} />
      {apart([...labelsOf(picture, { plan, frame, words }), ...(counts ? [] : namesOf(plan, frame, about))], taken, frame.box).map(
        (label) => (
          <Placed frame={frame} label={label} />
        ),
      )}
    </>
  );
}

/** Whether lines matter: not where cloth is laid and laced, for which no stake is driven and no pole stands. */
const matters = (about: readonly Mark[]): boolean => about.some(({ is }) => is !== "piece" && is !== "half");

/** What is around a tent as far as a small drawing shows it. */
function sitePen(plan: TentPlan, frame: SmallFrame): SitePen {
  const [xs, ys] = [reachOf(plan).map(({ xFt }) => xFt), reachOf(plan).map(({ yFt }) => yFt)];
  const roomFt = 4 / frame.pxPerFt;
  const view = {
    left: Math.min(...xs) - roomFt,
    right: Math.max(...xs) + roomFt,
    near: Math.min(...ys) - roomFt,
    far: Math.max(...ys) + roomFt,
  };
  return { ...frame, perFt: frame.pxPerFt, view, avoid: { xFt: plan.widthFt / 2, yFt: plan.lengthFt / 2 } };
}

/** All of the plan; where a part is shown, what lies between its two levels. */
function Part({ frame: { box, part, fills }, children }: { frame: SmallFrame; children?: Child }) {
  if (!part) return <g>{children}</g>;
  const id = `${fills}-part`;
  return (
    <>
      <clipPath id={id}>
        <rect y={part.fromPx} width={box.widePx} height={tenth(part.toPx - part.fromPx)} />
      </clipPath>
      <g clip-path={`url(#${id})`}>{children}</g>
    </>
  );
}

/** The tent without emphasis. What a call counts is left out of it. */
function Thin({ plan, frame, counts }: { plan: TentPlan; frame: SmallFrame; counts: boolean }) {
  const small = { ...frame, px: (n: number) => n * 0.7 };
  return (
    <g class="drawn-thin">
      <polygon
        points={pointsOf(stakeLines(plan).map(({ start }) => frame.at(start)))}
        fill="none"
        stroke={frame.ink}
        stroke-width="0.8"
        stroke-opacity="0.6"
      />
      {plan.pieces.map((piece) => (
        <polygon points={outlineOf(piece, frame)} fill="none" stroke={frame.ink} stroke-width="1.1" stroke-opacity="0.85" />
      ))}
      {!counts &&
        plan.stations.map((station) => {
          const [x, y] = frame.at(station);
          return (
            <g data-station={station.id}>
              <StationMark kind={station.kind} frame={small} x={x} y={y} />
            </g>
          );
        })}
    </g>
  );
}

const Poles = ({ plan, frame }: { plan: TentPlan; frame: SmallFrame }) => (
  <g class="drawn-poles">
    {plan.poles.map((pole) => {
      const [x, y] = frame.at(pole);
      return (
        <g data-pole={pole.id}>
          <PoleMark kind={pole.kind} frame={{ ...frame, px: (n) => n * 0.8 }} x={x} y={y} />
        </g>
      );
    })}
  </g>
);

/** A label on its own ground, so that it can be read over hatching and lines. */
export function Placed({ frame, label: { text, at, px, ring, backed } }: { frame: SmallFrame; label: PlacedLabel }) {
  const [x, y] = at;
  const wide = textWidePx(text, px) + 4;
  return (
    <>
      {ring && <circle cx={x} cy={y} r={tenth(px * 0.68)} fill={frame.ground} stroke={frame.ink} stroke-width="2" />}
      {backed && (
        <rect x={tenth(x - wide / 2)} y={tenth(y - px * 0.55)} width={tenth(wide)} height={tenth(px * 1.1)} rx="3" fill={frame.ground} />
      )}
      <Label frame={frame} x={x} y={y} text={text} px={px} bold />
    </>
  );
}
