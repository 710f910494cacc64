import { cornerOf, edgeTapes, type StakeLine, stakeLines } from "../../machines/tent/tape.ts";
import type { EdgeName, TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";
import { clothToSite, type Frame, roundHundredth } from "./frame.ts";
import { ON_PAGE } from "./palette.ts";
import { RATIO_HIGH_PX, widestPx } from "./ratios.tsx";
import type { StationRatio } from "./station-ratio.ts";
import type { Units } from "./units.ts";

/** Text size in drawing px. A drawing px is 4/3 CSS px on a screen and about 0.19 mm on paper (6.5 pt text). */
export const TEXT_PX = 12;
export const SCREEN_SCALE = 4 / 3;
/** Target size in px: a portrait sheet of A4 or Letter, less margins and a heading. */
const SHEET = { wide: 990, high: 1250 } as const;
/** Spacing of labels along an edge, and distance from the stake line out to the labels. */
const ROW_PX = 14;
export const LEAD_PX = 20;
/** Between the labels and the ratios beyond them. */
const RATIO_GAP_PX = 8;
/** Room outside the labels for a dimension line with its text, and for a street. */
const DIMENSION_PX = 30;
const STREET_PX = 34;
const EDGE_PX = 10;
/** Height of a piece's name and the names of the poles on its seams. Pieces shorter than SHORT_FT are crowded anyway. */
const NAMES_PX = 48;
const SHORT_FT = 10;
/** Minimum width of the drawing: that of the key. */
const MIN_PX = 700;
/** Room for the text of the setback dimension. */
const SETBACK_PX = 110;

export type EdgeLabel = { readonly station: string; readonly reading: string; readonly ratio: StationRatio | null };
export type EdgeLabels = {
  readonly edge: EdgeName;
  readonly labels: readonly EdgeLabel[];
  /** How far the labels reach out, in px. */
  readonly reachPx: number;
  /** The middle of the ratios beyond the labels, in px from where these begin; `null` where none are drawn. */
  readonly ratioPx: number | null;
  /** Minimum spacing of the labels along the edge, in px. */
  readonly gapPx: number;
  /** Beside the mark, in two rows, or rotated to read from the right. */
  readonly arrangement: "beside" | "rows" | "turned";
};
export type Sheet = Frame & {
  readonly edges: Readonly<Record<EdgeName, EdgeLabels>>;
  readonly lines: readonly StakeLine[];
  /** Bounds of the stake line in the drawing. */
  readonly reach: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  readonly units: Units;
  readonly words: Words;
  /** Top of the area below the tent. */
  readonly belowY: number;
  readonly widePx: number;
  readonly highPx: number;
};

/** Estimated width of a text in px: letters of common fonts are 0.4 to 0.62 of the font size wide. */
export const widthPx = (text: string, px = TEXT_PX): number => text.length * px * 0.6;

type SheetOptions = {
  readonly units: Units;
  readonly words: Words;
  /** Room below the tent. */
  readonly belowPx: number;
  /** The edge with a street. */
  readonly street: EdgeName | undefined;
  readonly ratios: ReadonlyMap<string, StationRatio> | null;
};

/** Composes the layout sheet. Coordinates are in feet, y down. */
export function sheetOf(plan: TentPlan, { units, words, belowPx, street, ratios }: SheetOptions): Sheet {
  const lines = stakeLines(plan);
  const xs = lines.map((l) => l.start.xFt);
  const ys = lines.map((l) => l.start.yFt);
  const [left, right, near, far] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const turned = compose("turned");
  const rows = compose("rows");
  const sheet = (["BC", "DA"] as const).every((e) => fits(rows.edges[e], rows.ftPerPx)) ? rows : turned;
  const { ftPerPx, edges, room } = sheet;
  const px = (n: number) => roundHundredth(n * ftPerPx);
  const x = (xFt: number) => roundHundredth(xFt - left + room.left * ftPerPx);
  const y = (yFt: number) => roundHundredth(far - yFt + room.top * ftPerPx);
  const toSite = clothToSite(plan);
  const wideFt = right - left + (room.left + room.right) * ftPerPx;
  const belowY = far - near + (room.top + room.bottom) * ftPerPx;
  return {
    ...ON_PAGE,
    widthFt: roundHundredth(wideFt),
    heightFt: roundHundredth(belowY + belowPx * ftPerPx),
    px,
    x,
    y,
    cloth: (p) => {
      const at = toSite(p);
      return [x(at.xFt), y(at.yFt)];
    },
    edges,
    lines,
    reach: { left: x(left), right: x(right), top: y(far), bottom: y(near) },
    units,
    words,
    belowY: roundHundredth(belowY),
    widePx: Math.round(wideFt / ftPerPx),
    highPx: Math.round(belowY / ftPerPx + belowPx),
  };

  function compose(way: "turned" | "rows") {
    const edges = labelsOf(plan, way, { units, words, ratios });
    const beyond = (edge: EdgeName) =>
      LEAD_PX + edges[edge].reachPx + EDGE_PX + (edge === street ? STREET_PX : 0) + (edge === "AB" || edge === "DA" ? DIMENSION_PX : 0);
    const room = {
      left: beyond("AB"),
      right: Math.max(beyond("CD"), SETBACK_PX),
      top: beyond("BC") + DIMENSION_PX,
      bottom: beyond("DA"),
    };
    const across = (right - left) / (SHEET.wide - room.left - room.right);
    const along = (far - near) / (SHEET.high - room.top - room.bottom - belowPx);
    // If an edge has more labels than fit along it, the drawing grows: it scrolls on a screen and shrinks on paper.
    const crowded = plan.edges.filter((e) => e.name === "AB" || e.name === "CD" || way === "turned");
    const tight = crowded.map((e) => (e.lengthFt + 2 * plan.spec.setbackFt) / (edges[e.name].labels.length * ROW_PX));
    const shortest = Math.max(SHORT_FT, Math.min(...plan.pieces.map((p) => p.at.lengthFt)));
    const ftPerPx = Math.min(Math.max(across, along), shortest / NAMES_PX, ...tight);
    const spare = Math.max(0, MIN_PX - room.left - room.right - (right - left) / ftPerPx) / 2;
    return { edges, ftPerPx, room: { ...room, left: room.left + spare, right: room.right + spare } };
  }

  function fits({ edge, gapPx }: EdgeLabels, ftPerPx: number): boolean {
    return Math.min(...plan.edges.find((e) => e.name === edge)!.baysFt) / ftPerPx >= gapPx;
  }
}

type LabelOptions = Pick<SheetOptions, "units" | "words" | "ratios">;

function labelsOf(
  plan: TentPlan,
  level: "turned" | "rows",
  { units, words: { tapeText }, ratios }: LabelOptions,
): Record<EdgeName, EdgeLabels> {
  const entries = edgeTapes(plan).map(({ edge, marks }): [EdgeName, EdgeLabels] => {
    const arrangement = edge === "AB" || edge === "CD" ? "beside" : level;
    const labels = marks.map(({ station, readingFt }) => ({
      station,
      reading: tapeText(readingFt, units),
      ratio: ratios?.get(station) ?? null,
    }));
    const wide = Math.max(...labels.map((l) => widthPx(arrangement === "rows" ? l.reading : `${l.station} ${l.reading}`)));
    const ratioWidePx = ratios ? widestPx(ratios.values()) : 0;
    const ratioOutPx = arrangement === "rows" ? RATIO_HIGH_PX : ratioWidePx;
    const [room, along] = arrangement === "rows" ? [30, Math.max(wide, ratioWidePx)] : [wide, 0];
    const ratioPx = ratios && room + RATIO_GAP_PX + ratioOutPx / 2;
    const reachPx = ratios ? room + RATIO_GAP_PX + ratioOutPx : room;
    return [edge, { edge, labels, arrangement, reachPx, ratioPx, gapPx: arrangement === "rows" ? along + 8 : ROW_PX }];
  });
  return Object.fromEntries(entries) as Record<EdgeName, EdgeLabels>;
}

/** Position of a corner mark in the drawing. */
export const markAt = (plan: TentPlan, sheet: Frame, corner: "A" | "B" | "C" | "D"): readonly [x: number, y: number] => {
  const { xFt, yFt } = cornerOf(plan, corner);
  return [sheet.x(xFt), sheet.y(yFt)];
};
