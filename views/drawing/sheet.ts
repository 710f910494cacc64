import { cornerOf, edgeTapes, type StakeLine, stakeLines } from "../../machines/tent/tape.ts";
import type { EdgeName, TentPlan } from "../../machines/tent/types.ts";
import type { Words } from "../text/words.ts";
import { type Frame, layOnSite, roundHundredth } from "./frame.ts";
import type { Units } from "./units.ts";

/** Letters of the drawing in its own px; on the screen a px is shown as 4/3 CSS px, on paper as about 0.19 mm (6.5 pt letters). */
export const TEXT_PX = 12;
export const SCREEN_SCALE = 4 / 3;
/** What the drawing is composed for, in px: an upright sheet of A4 or Letter with room for margins and a heading. */
const SHEET = { wide: 990, high: 1250 } as const;
/** From one label of an edge to the next, and from the stake line out to the labels. */
const ROW_PX = 14;
export const LEAD_PX = 20;
/** Room beyond the labels: a dimension line with its text, a street. */
const DIMENSION_PX = 30;
const STREET_PX = 34;
const EDGE_PX = 10;
/** The names of a piece and of the poles on its seams, one over the other; pieces shorter than this are crowded all the same. */
const NAMES_PX = 48;
const SHORT_FT = 10;
/** At the least as wide as the key. */
const MIN_PX = 700;
/** Room for the name of a setback's dimension. */
const SETBACK_PX = 110;

export type EdgeLabel = { readonly station: string; readonly reading: string };
export type EdgeLabels = {
  readonly edge: EdgeName;
  readonly labels: readonly EdgeLabel[];
  /** How far the labels reach out, in px. */
  readonly reachPx: number;
  /** From one to the next along the edge at the least, in px. */
  readonly gapPx: number;
  /** How they are written: level beside the mark, level in two rows, or turned to read from the right. */
  readonly way: "beside" | "rows" | "turned";
};
export type Sheet = Frame & {
  readonly edges: Readonly<Record<EdgeName, EdgeLabels>>;
  readonly lines: readonly StakeLine[];
  /** The stake line's farthest reach, in the drawing. */
  readonly reach: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  readonly units: Units;
  readonly words: Words;
  /** Where what stands below the tent begins. */
  readonly belowY: number;
  readonly widePx: number;
  readonly highPx: number;
};

/** How wide a text is at the most, in px: letters of the usual fonts are 0.4 to 0.62 of their size wide. */
export const widthPx = (text: string, px = TEXT_PX): number => text.length * px * 0.6;

/** Where everything goes on the layout's sheet, `belowPx` high below the tent. Feet to the drawing's unit, y down. */
export function sheetOf(plan: TentPlan, units: Units, belowPx: number, words: Words, street?: EdgeName): Sheet {
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
  const lie = layOnSite(plan);
  const wideFt = right - left + (room.left + room.right) * ftPerPx;
  const belowY = far - near + (room.top + room.bottom) * ftPerPx;
  return {
    widthFt: roundHundredth(wideFt),
    heightFt: roundHundredth(belowY + belowPx * ftPerPx),
    px,
    x,
    y,
    cloth: (p) => {
      const at = lie(p);
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
    const edges = labelsOf(plan, units, way, words);
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
    // Where an edge has more labels than fit beside it the drawing grows: it is scrolled, and shrinks on paper.
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

function labelsOf(plan: TentPlan, units: Units, level: "turned" | "rows", { tapeText }: Words): Record<EdgeName, EdgeLabels> {
  const of = edgeTapes(plan).map(({ edge, marks }): [EdgeName, EdgeLabels] => {
    const way = edge === "AB" || edge === "CD" ? "beside" : level;
    const labels = marks.map((m) => ({ station: m.station, reading: tapeText(m.readingFt, units) }));
    const wide = Math.max(...labels.map((l) => widthPx(way === "rows" ? l.reading : `${l.station} ${l.reading}`)));
    return [edge, { edge, labels, way, reachPx: way === "rows" ? 30 : wide, gapPx: way === "rows" ? wide + 8 : ROW_PX }];
  });
  return Object.fromEntries(of) as Record<EdgeName, EdgeLabels>;
}

/** Corner marks in the drawing. */
export const markAt = (plan: TentPlan, sheet: Frame, corner: "A" | "B" | "C" | "D"): readonly [x: number, y: number] => {
  const { xFt, yFt } = cornerOf(plan, corner);
  return [sheet.x(xFt), sheet.y(yFt)];
};
