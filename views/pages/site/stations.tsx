import type { Screening } from "../../../machines/loads/screening.ts";
import type { Words } from "../../text/words.ts";
import { OneLine } from "./load-line.tsx";
import { type Column, type Row, stationFigures } from "./station-figures.ts";

type Props = { readonly screening: Screening; readonly words: Words };

/** What is worked out at each station: how, told once for all of them, and then the figures of each plate, the worst first. */
export const Stations = ({ screening, words, words: { loads } }: Props) => {
  const { kinds, columns, rows } = stationFigures(screening);
  const { safeLbf, atMostLbf } = screening.capacity;
  const limit = safeLbf ?? atMostLbf;
  return (
    <>
      {kinds.length > 0 && (
        <section>
          <h3>{loads.atStations}</h3>
          <dl class="lines">
            {kinds.map((kind) => (
              <OneLine
                {...kind}
                inputs={kind.inputs.map(({ column, ...input }) => ({
                  ...input,
                  is: column === null ? loads.amount(input.is, input.name) : loads.inColumn(columnName(column, words)),
                }))}
                allLeftOut={screening.leftOut}
                words={words}
              />
            ))}
            <div>
              <dt>{loads.ratioName}</dt>
              <dd>
                {loads.ratioHow(limit === null ? null : loads.amount({ n: limit, unit: "lbf" }, "capacityFromPulls"), safeLbf === null)}
              </dd>
            </div>
          </dl>
        </section>
      )}
      <section>
        <h3>{loads.figures}</h3>
        <p>{loads.figuresTold}</p>
        <section class="wide-table" aria-label={loads.figures} tabindex={0}>
          <table class="station-figures">
            <thead>
              <tr>
                <th scope="col">{loads.stationName}</th>
                <th scope="col">{loads.ratioName}</th>
                {columns.map((column, i) => (
                  <th scope="col">
                    {loads.heading(columnName(column, words), rows.flatMap(({ figures }) => figures[i] ?? [])[0] ?? null)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <Figures row={row} columns={columns} words={words} />
              ))}
            </tbody>
          </table>
        </section>
      </section>
    </>
  );
};

const figureOf = (column: Column) => (column.is === "result" ? column.formula : column.name);
const columnName = (column: Column, { loads }: Words): string =>
  column.is === "result" ? loads.formula(column.formula).name : loads.inputHeading(column.name);

type FiguresProps = { readonly row: Row; readonly columns: readonly Column[]; readonly words: Words };

const Figures = ({ row: { stations, figures, ratio, isAtLeast, verdict }, columns, words: { loads } }: FiguresProps) => (
  <tr class={verdict}>
    <th scope="row">{stations.map(({ station, plates, of }) => loads.station(station, plates, of)).join("; ")}</th>
    <td>
      {ratio !== null && <b>{loads.ratio(ratio, isAtLeast)} </b>}
      {loads.verdict(verdict)}
    </td>
    {figures.map((figure, i) => (
      <td>{figure === null ? loads.noFigure : loads.figure(figure, figureOf(columns[i]!))}</td>
    ))}
  </tr>
);
