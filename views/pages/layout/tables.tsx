import type { Child } from "hono/jsx";
import { diagonalsOf, type EdgeTape, edgeTapes, type StakeLine, stakeLines } from "../../../machines/tent/tape.ts";
import type { JoinEdge, Side, TentPlan } from "../../../machines/tent/types.ts";
import type { Units } from "../../drawing/units.ts";
import type { Words } from "../../text/words.ts";

type Props = { plan: TentPlan; units: Units; words: Words };
type Cell = string | number;
type TableProps = { name: string; note?: string; class?: string; id?: string; head: readonly string[]; rows: readonly (readonly Cell[])[] };

/** What is drawn, as tables: the running readings first, then what lies inside. */
export function LayoutTables(props: Props) {
  const { plan, units, words } = props;
  const lines = stakeLines(plan);
  return (
    <>
      <Corners {...props} />
      {edgeTapes(plan).map((tape, i) => (
        <>
          <Edge tape={tape} units={units} words={words} />
          <Stakes line={lines[i]!} {...props} />
        </>
      ))}
      <Poles {...props} />
      <Pieces {...props} />
      <Seams {...props} />
    </>
  );
}

/** How many rows the tables have, headings counted as they take up room: what decides how small they are printed. */
export const rowsIn = (plan: TentPlan): number =>
  7 + plan.stations.length + 4 + plan.plates.length + 8 + plan.poles.length + plan.pieces.length + 2 * plan.seams.length + 12 * 2.5;

/** A table whose first column heads its rows. */
function Table({ name, note, class: kind, id, head, rows }: TableProps) {
  return (
    <section class="reading" id={id} tabindex={0} aria-label={name}>
      <table class={kind}>
        <caption>
          <b>{name}</b>
          {note && <span>{` ${note}`}</span>}
        </caption>
        <thead>
          <tr>
            {head.map((text) => (
              <th scope="col">{text}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([first, ...rest]) => (
            <tr>
              <th scope="row">{held(first!)}</th>
              {rest.map(
                (cell): Child => (
                  <td>{held(cell)}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Feet and inches may stand on two lines, but a number stays with its unit. */
const held = (cell: Cell): Cell => (typeof cell === "number" ? cell : cell.replace(/(?<=\d) (?=ft|in|\d)/g, "\u00a0"));

function Corners({ plan, units, words: { edgeName, layout, tapeText } }: Props) {
  const { AC, BD } = diagonalsOf(plan);
  const rows = [
    ...plan.edges.map((e) => [edgeName(e.name), tapeText(e.lengthFt, units)]),
    [layout.diagonal("A–C"), tapeText(AC, units)],
    [layout.diagonal("B–D"), tapeText(BD, units)],
    [layout.setback, tapeText(plan.spec.setbackFt, units)],
  ];
  return <Table name={layout.corners} head={[layout.between, layout.length]} rows={rows} class="tape" />;
}

function Edge({ tape: { edge, from, to, marks }, units, words }: Omit<Props, "plan"> & { tape: EdgeTape }) {
  const { layout, stationKind, tapeText } = words;
  return (
    <Table
      id={edge}
      class="tape"
      name={layout.edge(edge)}
      note={layout.tapeFrom(from, to)}
      head={[layout.mark, layout.from.corner(from), layout.back(to), layout.kind]}
      rows={marks.map((m) => [m.station, tapeText(m.readingFt, units), tapeText(m.backFt, units), stationKind(m.kind)])}
    />
  );
}

/** Less than this aside, in feet, cannot be seen on a tape. */
const SEEN_ASIDE_FT = 1 / 96;

function Stakes({ line, units, plan, words: { layout, tapeText } }: Props & { line: StakeLine }) {
  const { edge, from, to, marks, lengthFt, setbackFt } = line;
  const platesAt = (station: string) => plan.plates.filter((plate) => plate.station === station).length;
  const aside = marks.some((m) => Math.abs(m.asideFt) >= SEEN_ASIDE_FT);
  const text = (ft: number) => tapeText(ft, units);
  const extra = (ft: string) => (aside ? [ft] : []);
  return (
    <Table
      class="tape stakes"
      name={layout.stakeLine(edge)}
      note={layout.stakeTapeFrom(from, text(setbackFt))}
      head={[layout.plate, layout.from.start, layout.backEnd, layout.stakes, layout.bearing, ...extra(layout.aside)]}
      rows={[
        [layout.start(from), text(0), text(lengthFt), "", "", ...extra("")],
        ...marks.map((m) => [
          layout.plateOf(m.station, m.plate, platesAt(m.station)),
          text(m.readingFt),
          text(m.backFt),
          m.stakes === 0 ? layout.anchored : m.stakes,
          layout.bearingOf(m.bearingDeg),
          ...extra(text(m.asideFt)),
        ]),
        [layout.end(to), text(lengthFt), text(0), "", "", ...extra("")],
      ]}
    />
  );
}

const Poles = ({ plan, units, words: { layout, poleKind, tapeText } }: Props) => (
  <Table
    name={layout.poles}
    head={[layout.pole, layout.kind, layout.across, layout.along]}
    rows={plan.poles.map((p) => [p.id, poleKind(p.kind), tapeText(p.xFt, units), tapeText(p.yFt, units)])}
  />
);

function Pieces({ plan, units, words: { drawing, layout, sideName, tapeText } }: Props) {
  const sides = (edges: TentPlan["pieces"][number]["edges"], kind: JoinEdge) =>
    (Object.entries(edges) as [Side, JoinEdge][])
      .filter(([, edge]) => edge === kind)
      .map(([side]) => sideName(side))
      .join(", ") || layout.none;
  return (
    <Table
      name={layout.pieces}
      head={[layout.order, layout.piece, layout.size, layout.lace, layout.eyelet]}
      rows={plan.pieces.map(({ order, id, at, edges }) => [
        order,
        drawing.piece(id),
        `${tapeText(at.widthFt, units)} × ${tapeText(at.lengthFt, units)}`,
        sides(edges, "lace"),
        sides(edges, "eyelet"),
      ])}
    />
  );
}

function Seams({ plan, units, words: { drawing, edgeName, layout, tapeText } }: Props) {
  if (plan.seams.length === 0) return null;
  return (
    <Table
      name={layout.seams}
      head={[layout.seam, layout.toward, layout.length, layout.lace, layout.eyelet]}
      rows={plan.seams.flatMap((seam) =>
        seam.halves.map((half) => [
          seam.id,
          edgeName(half.toward),
          tapeText(half.lengthFt, units),
          drawing.piece(half.lacePiece),
          drawing.piece(half.eyeletPiece),
        ]),
      )}
    />
  );
}
