import type { Child } from "hono/jsx";
import { CORNERS, type EdgeName, type TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";
import { type Box, roundHundredth } from "./frame.ts";
import { Label } from "./label.tsx";
import { LayoutKey, layoutKeyPx } from "./layout-key.tsx";
import { DiagonalLengths, Diagonals, diagonalTexts, Outline, Overall } from "./outline.tsx";
import { ON_PAGE, type Palette } from "./palette.ts";
import { PieceNames, Pieces } from "./pieces.tsx";
import { Poles, poleBox } from "./poles.tsx";
import { Running } from "./running.tsx";
import { ScaleBar } from "./scale-bar.tsx";
import { SeamNames, seamBox } from "./seams.tsx";
import { markAt, SCREEN_SCALE, type Sheet, sheetOf } from "./sheet.ts";
import type { GroundAround } from "./site/ground-around.ts";
import { NeighborLetters, Neighbors, SiteFills, Zones } from "./site/neighbors.tsx";
import type { SitePen } from "./site/site-frame.ts";
import { StakedPlates } from "./stakes.tsx";
import { ratiosDrawn, type StationRatio } from "./station-ratio.ts";
import { Stations, stationBox } from "./stations.tsx";
import { North, Street } from "./surroundings.tsx";
import type { Units } from "./units.ts";

export type LayoutProps = {
  plan: TentPlan;
  words: Words;
  /** Compass bearing from A to B in degrees. Without it, no north arrow is drawn. */
  north?: number;
  street?: { readonly edge: EdgeName; readonly name: string };
  units?: Units;
  /** What the screening of the anchors comes to at each station; drawn where any ratio is known. */
  ratios?: readonly StationRatio[] | undefined;
  /** Lines, wires and things around it, where anybody entered any. */
  around?: GroundAround | undefined;
  look?: Look;
};

/** How a drawing is shown: its colors, its letters, how long it is for so many px, and whether it brings its own ground. */
export type Look = {
  readonly palette: Palette;
  readonly font: string;
  readonly length: (px: number) => number | string;
  readonly backed: boolean;
};
const IN_PAGE: Look = { palette: ON_PAGE, font: "system-ui, sans-serif", length: (px) => px, backed: false };

const SCALE_PX = 76;
/** Position of the scale bar and the north arrow below the tent; the key comes after them. */
const BAR_PX = 40;
/** Position of the heading at the top left, below the street if there is one. */
const HEADING_PX = { alone: 16, belowStreet: 48 } as const;

/**
 * The layout from above, to scale, as marked out on the ground: corners, baseline, stations with running readings, plates with
 * stakes, poles, pieces in laying order, seams, overall lengths, diagonals, setback. The view box is in feet. At full size on a
 * screen the letters are 16 CSS px; it is wider than a phone and scrolls. Every number comes from the plan. Kinds differ by
 * shape, never by color alone.
 *
 * @example <LayoutDrawing plan={planTent(spec)} words={words} units="mm" />
 */
export function LayoutDrawing({ plan, words, north, street, units = "ft", ratios: screened, around, look = IN_PAGE }: LayoutProps) {
  const { drawing, layoutDrawing, tapeText } = words;
  const ratios = ratiosDrawn(screened);
  const belowPx = SCALE_PX + layoutKeyPx(plan, words, ratios !== null);
  const sheet: Sheet = { ...sheetOf(plan, { units, words, belowPx, street: street?.edge, ratios }), ...look.palette };
  const { px } = sheet;
  const ground = around && { pen: sitePen(plan, sheet), site: around.site, words };
  const taken: Box[] = [...plan.poles.map((p) => poleBox(p, sheet)), ...plan.seams.map((s) => seamBox(s, plan, sheet))];
  const diagonals = diagonalTexts({ plan, sheet }, [...taken, ...plan.stations.map((s) => stationBox(s, sheet))]);
  const size = [plan.widthFt, plan.lengthFt].map((ft) => tapeText(ft, units)) as [string, string];
  const below = (n: number) => roundHundredth(sheet.belowY + px(n));
  return (
    <svg
      class="drawn-layout"
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${sheet.widthFt} ${sheet.heightFt}`}
      width={look.length(Math.round(sheet.widePx * SCREEN_SCALE))}
      height={look.length(Math.round(sheet.highPx * SCREEN_SCALE))}
      role="img"
      font-family={look.font}
      font-weight="500"
      text-anchor="middle"
      dominant-baseline="central"
      stroke-linejoin="round"
    >
      <title>{layoutDrawing.title(...size)}</title>
      {ground && <SiteFills pen={ground.pen} />}
      {ground && (
        <clipPath id={SITE_CLIP}>
          <rect width={sheet.widthFt} height={sheet.belowY} />
        </clipPath>
      )}
      {look.backed && <rect width={sheet.widthFt} height={sheet.heightFt} fill={sheet.ground} />}
      {ground && (
        <Clipped>
          <Zones {...ground} rules={around!.rules} />
        </Clipped>
      )}
      <Diagonals sheet={sheet} texts={diagonals} />
      <Pieces plan={plan} frame={sheet} />
      <Outline plan={plan} sheet={sheet} />
      {ground && (
        <Clipped>
          <Neighbors {...ground} />
        </Clipped>
      )}
      <StakedPlates plan={plan} frame={sheet} />
      <Stations plan={plan} frame={sheet} unnamed />
      {ground && <NeighborLetters {...ground} isNamed />}
      <Running plan={plan} sheet={sheet} />
      <Overall plan={plan} sheet={sheet} />
      <CornerLetters plan={plan} sheet={sheet} />
      <Poles plan={plan} frame={sheet} />
      <SeamNames plan={plan} frame={sheet} />
      <DiagonalLengths sheet={sheet} texts={diagonals} />
      <PieceNames plan={plan} frame={sheet} text={drawing} taken={[...taken, ...diagonals.flatMap((d) => d.boxes)]} />
      {street && <Street sheet={sheet} {...street} />}
      <Label
        frame={sheet}
        x={px(12)}
        y={px(street?.edge === "BC" ? HEADING_PX.belowStreet : HEADING_PX.alone)}
        text={layoutDrawing.heading(...size)}
        anchor="start"
        px={15}
        bold
      />
      <ScaleBar sheet={sheet} x={px(24)} y={below(BAR_PX)} />
      {north !== undefined && <North plan={plan} sheet={sheet} x={roundHundredth(px(400))} y={below(BAR_PX)} bearingDeg={north} />}
      <LayoutKey plan={plan} sheet={sheet} y={below(SCALE_PX)} ratios={ratios !== null} />
    </svg>
  );
}

const SITE_CLIP = "layout-ground";

/** What lies around a tent, drawn on its layout: all of it between the edges and down to where the scale begins. */
function sitePen(plan: TentPlan, sheet: Sheet): SitePen {
  const { px, x, y, ink, ground, widthFt, belowY } = sheet;
  const [left, top] = [-x(0), y(0)];
  return {
    ink,
    ground,
    px,
    fills: "layout",
    perFt: 1,
    at: (p) => [x(p.xFt), y(p.yFt)],
    view: { left: left + px(16), right: left + widthFt - px(60), near: top - belowY + px(16), far: top - px(40) },
    avoid: { xFt: plan.widthFt / 2, yFt: plan.lengthFt / 2 },
  };
}

const Clipped = ({ children }: { children?: Child }) => <g clip-path={`url(#${SITE_CLIP})`}>{children}</g>;

/** The corner letters, outside the corners of the stake line. */
const CornerLetters = ({ plan, sheet }: { plan: TentPlan; sheet: Sheet }) => (
  <g class="drawn-corners">
    {CORNERS.map((corner) => {
      const [x, y] = markAt(plan, sheet, corner);
      const out = sheet.px(16) + plan.spec.setbackFt;
      const [sx, sy] = { A: [-1, 1], B: [-1, -1], C: [1, -1], D: [1, 1] }[corner] as [number, number];
      return (
        <Label
          frame={sheet}
          x={roundHundredth(x + sx * out)}
          y={roundHundredth(y + sy * out)}
          text={corner}
          px={20}
          bold
          class="drawn-corner"
        />
      );
    })}
  </g>
);
