import type { Child } from "hono/jsx";
import type { Words } from "../../text/words.ts";
import { type BarRow, Bars } from "./bars.tsx";
import { Columns } from "./columns.tsx";
import { type SpanRow, Spans } from "./spans.tsx";
import type { FindingsState } from "./state.ts";

type Props = { readonly state: Pick<FindingsState, "looked" | "phases" | "times" | "refusals">; readonly words: Words };

/** What is left, in three drawings, each with its numbers as a table. Each figure stands beside its mark: none is told by the drawing alone. */
export const Charts = ({ state: { looked, phases, times, refusals }, words, words: { findings, duration } }: Props) => {
  const found: BarRow[] = phases.map(({ name, count }) => ({ name, n: count, text: findings.count(count) }));
  const took: SpanRow[] = times.map(({ name, low, middle, high }) => ({ name, low, middle, high, text: duration(middle * 1000) }));
  const refused: BarRow[] = refusals.map(({ from, to, answers }) => ({
    name: findings.times(from, to),
    n: answers,
    text: findings.count(answers),
  }));
  const answers = refusals.reduce((sum, one) => sum + one.answers, 0);
  const told = (rows: readonly { readonly name: string; readonly text: string }[]) =>
    findings.all(rows.map(({ name, text }) => findings.bar(name, text)));
  const isNarrow = looked.kind !== "" || looked.state !== "";
  return (
    <section class="charts" aria-labelledby="charts">
      <h2 id="charts">{findings.charts}</h2>
      <Chart title={findings.byPhase} told={findings.byPhaseTold} isEmpty={found.length === 0} words={words}>
        <Bars rows={found} label={`${findings.byPhase}. ${told(found)}`} />
        <Numbers heads={[findings.phase, findings.found]} rows={found.map(({ name, text }) => [name, text])} words={words} />
      </Chart>
      <Chart title={findings.phaseTimes} told={findings.phaseTimesTold} isEmpty={took.length === 0} words={words}>
        {isNarrow && <p class="small">{findings.noKindHere}</p>}
        <Spans rows={took} ticks={ticks(words)} label={`${findings.phaseTimes}. ${told(took)}`} />
        <Numbers
          heads={[findings.phase, findings.jobs, findings.low, findings.middle, findings.high]}
          rows={times.map(({ name, jobs, low, middle, high }) => [
            name,
            findings.count(jobs),
            ...[low, middle, high].map((s) => duration(s * 1000)),
          ])}
          words={words}
        />
      </Chart>
      <Chart title={findings.refusals} told={findings.refusalsTold(answers)} isEmpty={answers === 0} words={words}>
        {isNarrow && <p class="small">{findings.noKindHere}</p>}
        <Columns rows={refused} label={`${findings.refusals}. ${told(refused)}`} />
        <Numbers heads={[findings.refused, findings.answers]} rows={refused.map(({ name, text }) => [name, text])} words={words} />
      </Chart>
    </section>
  );
};

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
/** Times that a scale is marked with, in seconds. */
const ticks = ({ duration }: Words) =>
  [1, 10, MINUTE, 10 * MINUTE, HOUR, 6 * HOUR, DAY, 7 * DAY].map((s) => ({ at: s, text: duration(s * 1000) }));

type ChartProps = {
  readonly title: string;
  readonly told: string;
  readonly isEmpty: boolean;
  readonly words: Words;
  readonly children: Child;
};

const Chart = ({ title, told, isEmpty, words: { findings }, children }: ChartProps) => (
  <section class="chart">
    <h3>{title}</h3>
    {isEmpty ? (
      <p>{findings.nothingYet}</p>
    ) : (
      <>
        <p class="small">{told}</p>
        {children}
      </>
    )}
  </section>
);

type NumbersProps = { readonly heads: readonly string[]; readonly rows: readonly (readonly string[])[]; readonly words: Words };

const Numbers = ({ heads, rows, words: { findings } }: NumbersProps) => (
  <details>
    <summary>{findings.asTable}</summary>
    <table class="numbers">
      <thead>
        <tr>
          {heads.map((head) => (
            <th scope="col">{head}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...figures]) => (
          <tr>
            <th scope="row">{name}</th>
            {figures.map((figure) => (
              <td>{figure}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </details>
);
