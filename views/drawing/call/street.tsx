import { stakeLines } from "../../../machines/tent/tape.ts";
import type { EdgeName, TentPlan } from "../../../machines/tent/types.ts";
import type { XY } from "../dimension.tsx";
import { Label } from "../label.tsx";
import { isLevel, type Side } from "./compass.tsx";
import { outward, type SmallFrame, type Turn, tenth } from "./small-frame.ts";

export type Street = { readonly edge: EdgeName; readonly name: string };

const TEXT_PX = 14;
const LETTERS = 8;
const LINE_PX = TEXT_PX + 2;

/** The side of the picture that an edge is on. */
export function sideOf(edge: EdgeName, turn: Turn): Side {
  const [x, y] = outward(edge, turn);
  if (x !== 0) return x < 0 ? "left" : "right";
  return y < 0 ? "top" : "bottom";
}

/** Two curbs along the edge, and the street's name; nothing where that edge is cut off. */
export function SmallStreet({ plan, frame, street }: { plan: TentPlan; frame: SmallFrame; street: Street }) {
  const laid = streetOf(plan, frame, street);
  return laid === null ? null : (
    <g class="drawn-street">
      {laid.curbs.map(([[x1, y1], [x2, y2]]) => (
        <line x1={x1} y1={y1} x2={x2} y2={y2} stroke={frame.ink} stroke-width="1.5" />
      ))}
      {laid.names.map(({ text, at: [x, y] }) => (
        <Label frame={frame} x={x} y={y} text={text} px={TEXT_PX} bold />
      ))}
    </g>
  );
}

/** Where a street and its name lie, in px; `null` where its edge is not in the part that is shown. */
export function streetOf(plan: TentPlan, frame: SmallFrame, { edge, name }: Street) {
  const side = sideOf(edge, frame.turn);
  const level = isLevel(side);
  const [from, to] = frame.part ? [frame.part.fromPx, frame.part.toPx] : [0, frame.box.highPx];
  const { start, end } = stakeLines(plan).find((l) => l.edge === edge)!;
  const [one, other] = [frame.at(start), frame.at(end)];
  if (level && (one[1] < from - 1 || one[1] > to + 1)) return null;
  const sign = side === "left" || side === "top" ? -1 : 1;
  const lines = level ? [shortened(name, 30)] : linesOf(name);
  const widest = widestOf(lines);
  const [near, far] = level ? [5, 23] : [25, 25 + widest + 4];
  const shown = ([x, y]: XY): XY => [x, tenth(Math.min(to, Math.max(from, y)))];
  const aside = ([x, y]: XY, px: number): XY => (level ? [x, tenth(y + sign * px)] : [tenth(x + sign * px), y]);
  const curbs = [near, far].map((px) => [aside(shown(one), px), aside(shown(other), px)] as const);
  const [mx, my] = aside([(shown(one)[0] + shown(other)[0]) / 2, (shown(one)[1] + shown(other)[1]) / 2], (near + far) / 2);
  const names = lines.map((text, i) => ({ text, at: [tenth(mx), tenth(my + (i - (lines.length - 1) / 2) * LINE_PX)] as XY }));
  const half = level ? [widest / 2, TEXT_PX / 2] : [widest / 2 + 2, (lines.length * LINE_PX) / 2];
  return { curbs, names, taken: { left: mx - half[0]!, right: mx + half[0]!, top: my - half[1]!, bottom: my + half[1]! } };
}

/** About how wide the widest line is, in px. */
export const widestOf = (lines: readonly string[]): number => Math.max(...lines.map((line) => line.length)) * TEXT_PX * 0.64;

/** A name word by word, for where it stands beside the tent. */
export const linesOf = (name: string): string[] =>
  name
    .split(/\s+/)
    .slice(0, 4)
    .map((word) => shortened(word, LETTERS));

const shortened = (text: string, letters: number): string => (text.length <= letters ? text : `${text.slice(0, letters - 1)}…`);
